// On a form whose places are known, a landmark of its own has to bring the others back to where they are.
#include "model/wrap/carry_sites.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>

#include "bodyforms/form.hpp"
#include "bodyforms/standard_sites.hpp"
#include "model/body/girth.hpp"
#include "model/body/part_rules.hpp"

namespace wrapgauge {
namespace {

Body forearm(BodySide side = BodySide::kRight) {
  return make_form("forearm", {}, {std::nullopt, std::nullopt, side}).value();
}

Landmark landmark(const Body& body, const std::string& name) {
  for (const BonySite& site : body.bony_sites)
    if (site.name == name) return {name, site.point_m};
  ADD_FAILURE() << name;
  return {};
}

Result<CarriedSites> carry(const Body& body, const std::vector<Landmark>& landmarks, CarryOptions options) {
  return carry_sites(body, standard_sites(options.part), landmarks, options);
}

std::string refusal(const Body& body, const std::vector<Landmark>& landmarks, const CarryOptions& options) {
  const auto carried = carry(body, landmarks, options);
  return carried ? "" : carried.problem().message;
}

double farthest_mm(const CarriedSites& carried, const Body& body) {
  EXPECT_EQ(carried.proposals.size(), body.bony_sites.size());
  double farthest = 0.0;
  for (const SiteProposal& proposal : carried.proposals)
    farthest =
        std::max(farthest, 1e3 * (proposal.site.point_m - landmark(body, proposal.site.name).point_m).norm());
  return farthest;
}

const CarryOptions kRightForearm{BodyPart::kForearm, BodySide::kRight, {}, {}};
const std::string kStyloid = "ulnar styloid", kElbow = "olecranon side of the elbow";

TEST(CarriedSites, OfAFormLieWhereTheFormsOwnDo) {
  for (const BodySide side : {BodySide::kRight, BodySide::kLeft}) {
    const Body body = forearm(side);
    CarryOptions options = kRightForearm;
    options.side = side;
    const auto two = carry(body, {landmark(body, kStyloid), landmark(body, kElbow)}, options);
    ASSERT_TRUE(two.ok()) << two.problem().message;
    EXPECT_LT(farthest_mm(*two, body), 3.0) << side_name(side);
    EXPECT_GT(two->front.dot(Vec3::UnitY()), std::cos(0.1));
    const auto one = carry(body, {landmark(body, kStyloid)}, options);
    ASSERT_TRUE(one.ok()) << one.problem().message;
    EXPECT_LT(farthest_mm(*one, body), 3.0) << side_name(side);
    for (const SiteProposal& proposal : one->proposals) EXPECT_EQ(proposal.site.status, kProposedSite);
  }
}

TEST(CarriedSites, GoWithTheScanHoweverItLies) {
  Body body = forearm();
  const auto before = carry(body, {landmark(body, kStyloid)}, kRightForearm);
  const Eigen::Affine3d move = Eigen::Translation3d(0.3, -0.2, 0.1) * Eigen::AngleAxisd(0.4, Vec3::UnitZ());
  Body moved = body;
  for (int v = 0; v < moved.surface.vertices_m.rows(); ++v)
    moved.surface.vertices_m.row(v) = (move * Vec3(body.surface.vertices_m.row(v).transpose())).transpose();
  moved.axis.origin_m = move * body.axis.origin_m;
  for (BonySite& site : moved.bony_sites) site.point_m = move * site.point_m;
  const auto after = carry(moved, {landmark(moved, kStyloid)}, kRightForearm);
  ASSERT_TRUE(before.ok() && after.ok());
  for (std::size_t s = 0; s < before->proposals.size(); ++s)
    EXPECT_NEAR((move * before->proposals[s].site.point_m - after->proposals[s].site.point_m).norm(), 0.0,
                1e-5);
}

TEST(CarriedSites, OfTheOtherSideAreRefusedByNameOfTheSide) {
  const Body left = forearm(BodySide::kLeft);
  EXPECT_NE(refusal(left, {landmark(left, kStyloid), landmark(left, kElbow)}, kRightForearm)
                .find("lie as on a left part, not a right one"),
            std::string::npos)
      << refusal(left, {landmark(left, kStyloid), landmark(left, kElbow)}, kRightForearm);
  CarryOptions with_front = kRightForearm;
  with_front.front = Vec3::UnitY();
  const Landmark at_front = landmark(forearm(), "median nerve at the wrist");
  EXPECT_EQ(refusal(forearm(), {at_front}, with_front), "");
  with_front.front = Vec3(-Vec3::UnitY());
  EXPECT_NE(refusal(forearm(), {at_front}, with_front).find("lies on the wrong side"), std::string::npos);
}

TEST(CarriedSites, LandmarksThatCannotBeAreRefused) {
  const Body body = forearm();
  Landmark styloid = landmark(body, kStyloid), elbow = landmark(body, kElbow);
  EXPECT_NE(refusal(body, {}, kRightForearm).find("one or two landmarks"), std::string::npos);
  EXPECT_NE(refusal(body, {styloid, styloid}, kRightForearm).find("given twice"), std::string::npos);
  EXPECT_NE(refusal(body, {{"kneecap", styloid.point_m}}, kRightForearm).find("no standard place"),
            std::string::npos);
  Landmark off = styloid;
  off.point_m.x() += off.point_m.x() > 0.0 ? 0.03 : -0.03;
  EXPECT_NE(refusal(body, {off}, kRightForearm).find("mm off the skin"), std::string::npos);
  std::swap(styloid.point_m, elbow.point_m);
  EXPECT_NE(refusal(body, {styloid, elbow}, kRightForearm), "") << "wrong order along the axis";
  EXPECT_NE(refusal(body, {styloid}, kRightForearm).find("state the axis"), std::string::npos)
      << "the scan lies end to end";
  styloid.point_m = landmark(body, "radial styloid").point_m;
  EXPECT_NE(refusal(body, {styloid, {kElbow, landmark(body, kElbow).point_m}}, kRightForearm), "")
      << "half round the limb apart";
}

TEST(CarriedSites, BeyondTheScanAreLeftOutByName) {
  const Body body = forearm();
  CarryOptions longer = kRightForearm;
  longer.length = 1.5 * body_length(body);
  const auto carried = carry(body, {landmark(body, kStyloid)}, longer);
  ASSERT_TRUE(carried.ok()) << carried.problem().message;
  EXPECT_NE(std::find(carried->beyond.begin(), carried->beyond.end(), kElbow), carried->beyond.end());
  EXPECT_LT(carried->proposals.size(), body.bony_sites.size());
}

}  // namespace
}  // namespace wrapgauge
