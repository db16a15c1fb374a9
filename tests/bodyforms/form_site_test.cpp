// Bony sites, nerves, vessels and tendons that come with the forms.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <set>

#include "bodyforms/standard_sites.hpp"
#include "made.hpp"
#include "model/body/girth.hpp"
#include "model/body/part_rules.hpp"
#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {
namespace {

// Middle of the section's outline, weighted by length.
Vec2 section_middle(const Body& body, Length station) {
  Vec2 sum = Vec2::Zero();
  double weight = 0.0;
  for (const SectionLine& line : section_at(body, station))
    for (std::size_t i = 0; i < line.points_m.size(); ++i) {
      const Vec3 &a = line.points_m[i], &b = line.points_m[(i + 1) % line.points_m.size()];
      sum += 0.5 * (b - a).norm() * (a + b).head<2>();
      weight += (b - a).norm();
    }
  return sum / weight;
}

double angle_between_deg(double a, double b) {
  return std::abs(std::remainder(a - b, 360.0));
}

// What is taken where nobody has said where the bones lie is no deeper than any of them.
TEST(FormSites, AreNoShallowerThanTheShallowestOfTheirPart) {
  for (int i = 0; i <= static_cast<int>(BodyPart::kTestObject); ++i) {
    const auto part = static_cast<BodyPart>(i);
    EXPECT_LE(shallowest_site(std::nullopt), shallowest_site(part));
    const auto sites = standard_sites(part);
    if (sites.empty()) {
      EXPECT_EQ(shallowest_site(part), shallowest_site(std::nullopt)) << body_part_name(part);
      continue;
    }
    double least = 1e9;
    for (const StandardSite& site : sites) least = std::min(least, site.depth_mm);
    EXPECT_NEAR(shallowest_site(part) / mm, least, 1e-12) << body_part_name(part);
  }
}

TEST(FormSites, LieOnTheSkin) {
  for (const Form& form : forms())
    for (const double percentile : {5.0, 50.0, 95.0}) {
      const auto made = forms_in_tests::made(form.name, {Sex::kFemale, percentile, BodySide::kRight});
      ASSERT_TRUE(made.ok());
      const NearestPoint skin(made->body.surface);
      for (const BonySite& site : made->body.bony_sites)
        EXPECT_LT(skin.at(site.point_m).distance_m, 0.1e-3) << form.name << " " << site.name;
    }
}

TEST(FormSites, StayInPlaceFromTheSmallestToTheLargestPerson) {
  for (const Form& form : forms()) {
    const auto small = forms_in_tests::made(form.name, {Sex::kMale, 5.0, BodySide::kRight}),
               large = forms_in_tests::made(form.name, {Sex::kMale, 95.0, BodySide::kRight});
    ASSERT_TRUE(small.ok() && large.ok());
    const Body &a = small->body, &b = large->body;
    ASSERT_EQ(a.bony_sites.size(), b.bony_sites.size());
    for (std::size_t i = 0; i < a.bony_sites.size(); ++i) {
      const Vec3 p = a.bony_sites[i].point_m, q = b.bony_sites[i].point_m;
      EXPECT_NEAR(p.z() / body_length(a).si(), q.z() / body_length(b).si(), 1e-9);
      const Vec2 from_p = p.head<2>() - section_middle(a, Length(p.z())),
                 from_q = q.head<2>() - section_middle(b, Length(q.z()));
      const double to_deg = 180.0 / std::numbers::pi;
      EXPECT_LT(angle_between_deg(std::atan2(from_p.y(), from_p.x()) * to_deg,
                                  std::atan2(from_q.y(), from_q.x()) * to_deg),
                2.0)
          << form.name << " " << a.bony_sites[i].name;
    }
  }
}

TEST(FormSites, OfEveryLimbAreNamedOnceWithDepthStatusAndKind) {
  for (const Form& form : forms()) {
    const auto made = forms_in_tests::made(form.name);
    ASSERT_TRUE(made.ok());
    EXPECT_EQ(made->body.bony_sites.empty(), form.tissue_site.empty()) << form.name;
    std::set<std::string> names;
    bool nerve = false, bone = false;
    for (const BonySite& site : made->body.bony_sites) {
      EXPECT_TRUE(names.insert(site.name).second) << form.name << " " << site.name;
      EXPECT_EQ(site.status, "from memory");
      EXPECT_GE(site.tissue_depth / mm, 2.0);
      EXPECT_GE(site.radius / mm, 9.0);
      nerve |= site.kind == SiteKind::kNerve;
      bone |= site.kind == SiteKind::kBone;
    }
    EXPECT_TRUE(made->body.bony_sites.empty() || (nerve && (bone || form.name == "hand-back"))) << form.name;
  }
}

// The places that the anatomy books name (from memory): each has to be on the form that covers it.
TEST(FormSites, CoverThePlacesThatBearLeast) {
  const std::pair<const char*, std::vector<const char*>> wanted[] = {
      {"forearm", {"ulnar styloid", "radial styloid", "olecranon", "median nerve", "back edge of the ulna"}},
      {"wrist", {"ulnar styloid", "radial styloid", "median nerve"}},
      {"upper-arm", {"medial epicondyle", "lateral epicondyle", "ulnar nerve", "radial nerve", "olecranon"}},
      {"calf", {"tibial crest", "common peroneal nerve", "head of the fibula", "Achilles"}},
      {"lower-leg", {"tibial crest", "medial malleolus", "lateral malleolus", "common peroneal nerve"}},
      {"ankle", {"medial malleolus", "lateral malleolus", "tibial nerve", "Achilles"}},
      {"knee", {"kneecap", "tibial tuberosity", "common peroneal nerve", "epicondyle"}},
      {"torso", {"iliac crest", "ribs", "breastbone", "spine", "sacrum", "front spine of the hip bone"}},
      {"head-band", {"forehead", "brow nerve", "back of the skull"}},
      {"hand-back", {"knuckle", "median nerve"}},
      {"thigh", {"femoral vessels", "condyle"}}};
  for (const auto& [form, names] : wanted) {
    const auto made = forms_in_tests::made(form);
    ASSERT_TRUE(made.ok());
    for (const char* name : names) {
      bool found = false;
      for (const BonySite& site : made->body.bony_sites) found |= site.name.find(name) != std::string::npos;
      EXPECT_TRUE(found) << form << " " << name;
    }
  }
}

// In front, behind, lateral and medial, for a right leg: +y is the front, +x the person's right.
TEST(FormSites, LieOnTheirSideOfTheBody) {
  const auto site = [](const std::string& form, const std::string& name) {
    const auto made = forms_in_tests::made(form);
    for (const BonySite& found : made->body.bony_sites)
      if (found.name.find(name) != std::string::npos) return found.point_m;
    ADD_FAILURE() << form << " " << name;
    return Vec3(Vec3::Zero());
  };
  EXPECT_GT(site("calf", "tibial crest").y(), 0.0);
  EXPECT_GT(site("calf", "common peroneal").x(), 0.0);
  EXPECT_LT(site("lower-leg", "Achilles").y(), 0.0);
  EXPECT_GT(site("ankle", "lateral malleolus").x(), 0.0);
  EXPECT_LT(site("ankle", "medial malleolus").x(), 0.0);
  EXPECT_LT(site("forearm", "ulnar styloid").x(), 0.0);
  EXPECT_LT(site("forearm", "olecranon").y(), 0.0);
  EXPECT_GT(site("torso", "right iliac crest").x(), 0.0);
}

}  // namespace
}  // namespace wrapgauge
