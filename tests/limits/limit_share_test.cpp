#include "model/limits/limit_share.hpp"

#include <gtest/gtest.h>

#include "tests/contact/hand_made.hpp"

namespace wrapgauge {
namespace {

// 1.2 kPa over 1 cm2 everywhere: x 1.5 is 1.8 kPa, 60 % of the soft limit of 3 kPa and 120 % of the bony 1.5.
TEST(ShareOfLimit, IsTheMeanTimesTheFactorOverTheLimitOfThatPlace) {
  const LimitSet limits = read_limit_set(WRAPGAUGE_SOURCE_DIR "/resources/limits.json").value();
  const hand_made::Worn worn = hand_made::flat_pad(4, 0.04);
  LimitInputs inputs;
  inputs.part = BodyPart::kForearm;
  inputs.sites_known = true;
  inputs.bony_sites = {{"ulna", Vec3::Zero(), 11.0 * mm, 5.0 * mm}};
  const EquilibriumState& state = worn.path.states.front();
  const Eigen::VectorXd mean = Eigen::VectorXd::Constant(worn.setup.flat.vertices_m.rows(), 1.2e3);
  const auto share = [&] {
    return share_of_limit(limits, inputs, worn.setup, state, worn.path.sheet, {}, mean);
  };
  const Eigen::VectorXd known = share();
  int bony = 0;
  for (Eigen::Index v = 0; v < known.size(); ++v) {
    const bool over = worn.setup.flat.vertices_m.row(v).norm() <= 0.0111;
    bony += over;
    EXPECT_NEAR(known[v], over ? 1.2 : 0.6, 1e-12) << v;
  }
  EXPECT_EQ(bony, 3);
  inputs.sites_known = false;
  EXPECT_NEAR(share().minCoeff(), 1.2, 1e-12);
  inputs.part = BodyPart::kTestObject;
  EXPECT_EQ(share().maxCoeff(), 0.0);
}

}  // namespace
}  // namespace wrapgauge
