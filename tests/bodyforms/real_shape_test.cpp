// How far the sections of the forms lie from those of real-shaped limbs of the same girth.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <numbers>
#include <numeric>

#include "bodyforms/form.hpp"
#include "model/body/check_body.hpp"
#include "model/io/readers/mesh_reader.hpp"

namespace wrapgauge {
namespace {

constexpr int kDirections = 72;
constexpr double kTurn = 2.0 * std::numbers::pi;
using Radii = std::array<double, kDirections>;  // mm, from the middle of the area

std::vector<Vec2> longest_outline(const Body& body, Length station) {
  std::vector<Vec2> outline;
  Length most;
  for (const SectionLine& line : section_at(body, station)) {
    if (line.length() < most) continue;
    most = line.length();
    outline.clear();
    for (const Vec3& point : line.points_m) outline.push_back(1e3 * point.head<2>());
  }
  double area = 0.0;
  Vec2 moment = Vec2::Zero();
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Vec2 &a = outline[i], &b = outline[(i + 1) % outline.size()];
    const double cross = a.x() * b.y() - a.y() * b.x();
    area += 0.5 * cross;
    moment += cross / 6.0 * (a + b);
  }
  for (Vec2& point : outline) point -= moment / area;
  return outline;
}

Radii radii_of(const Body& body, Length station) {
  const std::vector<Vec2> outline = longest_outline(body, station);
  Radii radii{};
  for (int k = 0; k < kDirections; ++k) {
    const Vec2 way(std::cos(kTurn * k / kDirections), std::sin(kTurn * k / kDirections));
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Vec2 &a = outline[i], side = outline[(i + 1) % outline.size()] - a;
      const double slant = way.x() * side.y() - way.y() * side.x();
      if (std::abs(slant) < 1e-12) continue;
      const double out = (a.x() * side.y() - a.y() * side.x()) / slant,
                   along = (a.x() * way.y() - a.y() * way.x()) / slant;
      if (along >= 0.0 && along <= 1.0) radii[k] = std::max(radii[k], out);
    }
  }
  return radii;
}

struct Difference {
  double mean_mm = 1e9, p95_mm = 1e9;
};

// One turn about the axis, and one side of the body, for the whole limb; girths matched at every station.
Difference least_difference(const std::vector<Radii>& real, const std::vector<Radii>& form) {
  Difference best;
  for (const bool mirrored : {false, true})
    for (int turn = 0; turn < kDirections; ++turn) {
      std::vector<double> gaps;
      for (std::size_t s = 0; s < real.size(); ++s)
        for (int k = 0; k < kDirections; ++k) {
          const int other = ((mirrored ? -k : k) + turn + kDirections) % kDirections;
          gaps.push_back(std::abs(real[s][k] - form[s][other]));
        }
      std::sort(gaps.begin(), gaps.end());
      const double mean = std::accumulate(gaps.begin(), gaps.end(), 0.0) / static_cast<double>(gaps.size());
      if (mean < best.mean_mm) best = {mean, gaps[gaps.size() * 95 / 100]};
    }
  return best;
}

struct Case {
  const char *file, *form, *distal, *widest, *proximal;
  double mean_mm, p95_mm;  // accepted
};

class FormShape : public testing::TestWithParam<Case> {};

TEST_P(FormShape, IsLikeARealShapedLimbOfTheSameGirths) {
  const Case& limb = GetParam();
  const auto file = std::filesystem::path(WRAPGAUGE_SHARED_DIR) / "data/bodies" / limb.file;
  if (!std::filesystem::exists(file)) GTEST_SKIP() << "NOT CHECKED: there is no limb at " << file;
  auto raw = read_mesh(file);
  ASSERT_TRUE(raw.ok());
  const auto checked =
      check_body(std::move(raw).value(), {limb.file, LengthUnit::kMillimetre, Vec3(0, 0, 1)});
  ASSERT_TRUE(checked.ok());
  const Body& real = checked->body;
  const Length length = body_length(real);
  double widest = 0.0;
  for (const Girth& girth : girth_profile(real)) widest = std::max(widest, girth.girth / mm);
  const auto form = make_form(limb.form, {{"length", length / mm},
                                          {limb.distal, girth_at(real, 0.02 * length).girth / mm},
                                          {limb.widest, widest},
                                          {limb.proximal, girth_at(real, 0.98 * length).girth / mm}});
  ASSERT_TRUE(form.ok()) << form.problem().message;
  std::vector<Radii> real_radii, form_radii;
  for (const double share : {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9}) {
    const Length station = share * length;
    const double scale = girth_at(real, station).girth / girth_at(*form, station).girth;
    real_radii.push_back(radii_of(real, station));
    form_radii.push_back(radii_of(*form, station));
    for (double& radius : form_radii.back()) radius *= scale;
  }
  const Difference found = least_difference(real_radii, form_radii);
  std::printf("  shape of form %s against %s: mean %.1f mm, 95 %% below %.1f mm\n", limb.form, limb.file,
              found.mean_mm, found.p95_mm);
  EXPECT_LT(found.mean_mm, limb.mean_mm);
  EXPECT_LT(found.p95_mm, limb.p95_mm);
}

constexpr Case arm(const char* file, double mean_mm, double p95_mm) {
  return {file, "forearm", "girth_wrist", "girth_forearm", "girth_elbow", mean_mm, p95_mm};
}
constexpr Case leg(const char* file, double mean_mm, double p95_mm) {
  return {file, "calf", "girth_ankle", "girth_calf", "girth_knee", mean_mm, p95_mm};
}

// The harmonics of the sections were fitted to the two mA limbs; the others played no part.
INSTANTIATE_TEST_SUITE_P(Limbs, FormShape,
                         testing::Values(arm("mpfb_mA_forearm.obj", 2.5, 5.5),
                                         arm("mpfb_fA_forearm.stl", 2.5, 5.5),
                                         arm("hubmap_VH_M_forearm.stl", 2.5, 5.5),
                                         leg("mpfb_mA_calf.obj", 2.0, 4.5), leg("mpfb_fA_calf.stl", 2.0, 4.5),
                                         leg("hubmap_VH_M_calf.stl", 2.0, 4.5)),
                         [](const auto& limb) {
                           const std::string name = limb.param.file;
                           return name.substr(0, name.find('.'));
                         });

}  // namespace
}  // namespace wrapgauge
