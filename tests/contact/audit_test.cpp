#include "model/contact/audit.hpp"

#include <gtest/gtest.h>

#include "hand_made.hpp"

namespace wrapgauge {
namespace {

constexpr double kRadius = 0.04, kWidth = 0.06, kStretch = 1.2;

// Tension of a fused neo-Hookean strip (2 x 1.5 mm) pulled to `kStretch` with its width held, N a metre of
// width.
double hoop_tension() {
  return 3e-3 * 30e3 * (kStretch - 1.0 / (kStretch * kStretch * kStretch));
}

// Laplace: q R = T.
hand_made::Worn ring_in_balance() {
  hand_made::Worn worn = hand_made::ring(kRadius, kWidth, kStretch, 144, 10);
  hand_made::press_ring(worn, hoop_tension() / kRadius);
  return worn;
}

TEST(Audit, FindsARingUnderLaplacePressureInBalance) {
  const hand_made::Worn worn = ring_in_balance();
  const Audit found = audit(worn.body, worn.setup, worn.path, worn.path.states.back());
  EXPECT_GE(found.cuts, 6);
  // The strip is not pulled flat across its width, which the closed form leaves out of the wrap direction
  // only.
  EXPECT_LT(found.cut_balance, 2e-3);
  EXPECT_LT(found.lateral_balance, 1e-9);
  EXPECT_LT(found.axial_balance, 1e-9);
}

TEST(Audit, SeesAContactPressureThatIsTenPercentTooHigh) {
  hand_made::Worn worn = ring_in_balance();
  hand_made::press_ring(worn, 1.1 * hoop_tension() / kRadius);
  const Audit found = audit(worn.body, worn.setup, worn.path, worn.path.states.back());
  EXPECT_NEAR(found.cut_balance, 0.1 / 1.1, 3e-3);
}

TEST(Audit, SeesAForceAlongTheAxisThatNothingHolds) {
  hand_made::Worn worn = ring_in_balance();
  Points3& force = worn.path.states.back().contact_force_n;
  const double sum = force.rowwise().norm().sum();
  force.col(2).array() += 0.01 * sum / static_cast<double>(force.rows());
  const Audit found = audit(worn.body, worn.setup, worn.path, worn.path.states.back());
  EXPECT_NEAR(found.axial_balance, 0.01, 1e-4);
}

class Cone : public SignedDistance {
 public:
  explicit Cone(double slope) : slope_(slope) {}
  DistanceSample at(const Vec3& point) const override {
    DistanceSample sample;
    sample.gradient = Vec3(point.x(), point.y(), 0.0).normalized() - slope_ * Vec3::UnitZ();
    sample.gradient.normalize();
    return sample;
  }

 private:
  double slope_;
};

TEST(Audit, TaperPushesTheDeviceTowardsTheThinEnd) {
  hand_made::Worn worn = ring_in_balance();
  const double slope = 0.1;  // girth grows towards proximal (+z)
  worn.setup.body = std::make_shared<Cone>(slope);
  const Audit found = audit(worn.body, worn.setup, worn.path, worn.path.states.back());
  const double pressure = hoop_tension() / kRadius, area = 2.0 * std::numbers::pi * kRadius * kWidth;
  EXPECT_NEAR(found.push_along_axis.si(), -pressure * area * slope / std::hypot(1.0, slope), 0.01);
}

}  // namespace
}  // namespace wrapgauge
