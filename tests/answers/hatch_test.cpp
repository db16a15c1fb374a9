// What is hatched is what is judged: a place lies above its limit exactly where a finding above the limit
// points.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/answers/many_plans.hpp"

namespace wrapgauge::answers {
namespace {

bool is_of_pressure(const Finding& finding) {
  return finding.at_m && finding.measured && finding.measured->amount == Amount::kPressure;
}

// Of the flat vertex whose skin lies nearest.
double share_at(const Estimate& estimate, const Eigen::VectorXd& share, const Vec3& point_m) {
  const auto& nodes = estimate.path.sheet.skin_node;
  double nearest = 1e9, found = 0.0;
  for (std::size_t v = 0; v < nodes.size(); ++v) {
    const Vec3 skin = estimate.path.states.back().positions_m.row(nodes[v]);
    const double distance = (skin - point_m).norm();
    if (distance < nearest) nearest = distance, found = share[static_cast<Eigen::Index>(v)];
  }
  return found;
}

TEST(Hatch, LiesExactlyWhereAFindingAboveTheLimitPoints) {
  int hatched = 0, plain = 0;
  for (const AskedPlan& asked : many_plans()) {
    const auto& estimate = answer_of(asked);
    if (!estimate) continue;
    const Eigen::VectorXd share = shares(*estimate);
    const bool hatch = share.size() > 0 && share.maxCoeff() > 1.0;
    const bool above = std::any_of(
        estimate->findings.begin(), estimate->findings.end(),
        [](const Finding& f) { return is_of_pressure(f) && f.severity >= Severity::kAboveLimit; });
    EXPECT_EQ(hatch, above) << asked.words << ": highest share " << share.maxCoeff();
    ++(hatch ? hatched : plain);
    for (const Finding& finding : estimate->findings) {
      if (is_of_pressure(finding) && finding.severity >= Severity::kAboveLimit) {
        EXPECT_GT(share_at(*estimate, share, *finding.at_m), 1.0)
            << asked.words << ": a click on '" << finding.where << "' lands beside its hatch";
      }
    }
  }
  EXPECT_GE(hatched, 10);
  EXPECT_GE(plain, 3);
}

}  // namespace
}  // namespace wrapgauge::answers
