#include "model/study/influence.hpp"

#include <Eigen/QR>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace wrapgauge {
namespace {

// Ranks with mean 0 and length 1; zero for values that are all the same.
Eigen::VectorXd standard_ranks(const Eigen::VectorXd& values) {
  Eigen::VectorXd out = ranks(values);
  out.array() -= out.mean();
  const double length = out.norm();
  return length > 0.0 ? Eigen::VectorXd(out / length) : Eigen::VectorXd::Zero(values.size());
}

}  // namespace

Eigen::VectorXd ranks(const Eigen::VectorXd& values) {
  std::vector<Eigen::Index> order(static_cast<std::size_t>(values.size()));
  std::iota(order.begin(), order.end(), Eigen::Index{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](Eigen::Index a, Eigen::Index b) { return values[a] < values[b]; });
  Eigen::VectorXd out(values.size());
  for (std::size_t first = 0; first < order.size();) {
    std::size_t end = first + 1;
    while (end < order.size() && values[order[end]] == values[order[first]]) ++end;
    const double shared = 0.5 * static_cast<double>(first + 1 + end);
    for (std::size_t i = first; i < end; ++i) out[order[i]] = shared;
    first = end;
  }
  return out;
}

InfluenceRanking rank_influence(const Eigen::MatrixXd& sample, const Eigen::VectorXd& result) {
  const Eigen::Index runs = sample.rows(), inputs = sample.cols();
  Eigen::MatrixXd columns(runs, inputs);
  for (Eigen::Index i = 0; i < inputs; ++i) columns.col(i) = standard_ranks(sample.col(i));
  const Eigen::VectorXd y = standard_ranks(result);
  const Eigen::VectorXd correlation = columns.transpose() * y;
  const bool enough = runs > inputs + 1;
  const Eigen::VectorXd regression =
      enough ? Eigen::VectorXd(columns.colPivHouseholderQr().solve(y)) : correlation;

  InfluenceRanking ranking;
  for (int i = 0; i < inputs; ++i) ranking.inputs.push_back({i, correlation[i], regression[i]});
  std::stable_sort(ranking.inputs.begin(), ranking.inputs.end(), [](const Influence& a, const Influence& b) {
    return std::abs(a.regression) > std::abs(b.regression);
  });
  if (enough && y.norm() > 0.0) ranking.explained = 1.0 - (y - columns * regression).squaredNorm();
  return ranking;
}

double chance_correlation(int runs) {
  return runs > 1 ? 1.96 / std::sqrt(runs - 1.0) : 1.0;
}

}  // namespace wrapgauge
