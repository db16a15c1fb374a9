#include "model/bench/response_table.hpp"

namespace wrapgauge {

Eigen::VectorXd ResponseTable::predict(const Eigen::VectorXd& parameters) const {
  const Eigen::VectorXd way = parameters - at;
  return log_values + slopes * way + 0.5 * curvatures * way.cwiseAbs2();
}

LogResponse ResponseTable::response() const {
  return {[this](const Eigen::VectorXd& p) -> Result<Eigen::VectorXd> { return predict(p); },
          [this](const Eigen::VectorXd& p) -> Result<Eigen::MatrixXd> {
            Eigen::MatrixXd at_p = slopes;
            for (Eigen::Index c = 0; c < at_p.cols(); ++c) at_p.col(c) += (p(c) - at(c)) * curvatures.col(c);
            return at_p;
          }};
}

Result<ResponseTable> response_table(const LogPredictor& predict, const Eigen::VectorXd& at,
                                     const std::vector<bool>& is_free) {
  const auto middle = predict(at);
  if (!middle) return middle.problem();
  ResponseTable table{at, *middle, Eigen::MatrixXd::Zero(middle->size(), at.size()),
                      Eigen::MatrixXd::Zero(middle->size(), at.size())};
  for (Eigen::Index c = at.size() - 1; c >= 0; --c) {  // the tissue, which is quickest, from where it is
    if (!is_free[static_cast<std::size_t>(c)]) continue;
    Eigen::VectorXd up = at, down = at;
    up(c) += kTableStep;
    down(c) -= kTableStep;
    const auto above = predict(up);
    if (!above) return above.problem();
    const auto below = predict(down);
    if (!below) return below.problem();
    table.slopes.col(c) = (*above - *below) / (2.0 * kTableStep);
    table.curvatures.col(c) = (*above - 2.0 * *middle + *below) / (kTableStep * kTableStep);
  }
  return table;
}

}  // namespace wrapgauge
