#include "model/body/girth.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "model/body/check_body.hpp"
#include "shapes.hpp"

namespace wrapgauge {
namespace {

CheckedBody checked(const RawMesh& raw) {
  BodyOptions options;
  options.axis_direction = Vec3(0, 0, 1);
  auto body = check_body(raw, options);
  EXPECT_TRUE(body.ok());
  return std::move(body).value();
}

TEST(Girth, OfACylinderIsTwoPiR) {
  const CheckedBody body = checked(shapes::limb(40, 40, 200, 720, 50));
  for (const double station : {1.0, 50.0, 123.4, 199.0}) {
    const Girth girth = girth_at(body.body, station * mm);
    EXPECT_EQ(girth.kind, SectionKind::kOneLoop);
    EXPECT_NEAR(girth.girth / mm, 2.0 * std::numbers::pi * 40.0, 1e-3);
  }
}

TEST(Girth, OfAConeGrowsAsItsRadius) {
  const CheckedBody body = checked(shapes::limb(30, 40, 240, 720, 60));
  for (const double station : {6.0, 77.7, 180.0})
    EXPECT_NEAR(girth_at(body.body, station * mm).girth / mm,
                2.0 * std::numbers::pi * (30.0 + station / 24.0), 2e-3);
}

TEST(Girth, SaysWhenThePlaneMisses) {
  const CheckedBody body = checked(shapes::limb());
  EXPECT_EQ(girth_at(body.body, 241.0 * mm).kind, SectionKind::kNone);
  EXPECT_EQ(girth_at(body.body, -1.0 * mm).kind, SectionKind::kNone);
  EXPECT_EQ(girth_at(body.body, -1.0 * mm).girth.si(), 0.0);
}

TEST(Girth, SaysWhenTheSectionIsSeveralLoops) {
  Body legs;
  RawMesh two = shapes::limb(30, 30, 200, 48, 40);
  shapes::append_mesh(two, shapes::limb(20, 20, 200, 48, 40), 100.0);
  legs.surface = {two.vertices * 1e-3, two.faces};
  const Girth girth = girth_at(legs, 99.0 * mm);
  EXPECT_EQ(girth.kind, SectionKind::kSeveralLoops);
  EXPECT_EQ(girth.loops, 2);
  EXPECT_NEAR(girth.girth / mm, 96 * 30.0 * std::sin(std::numbers::pi / 48), 1e-9);
}

TEST(Girth, BridgesEveryGapOfASectionOnce) {
  // Two gaps of two faces' width at the same height, opposite each other.
  RawMesh raw = shapes::limb(30, 30, 200, 48, 40);
  Triangles kept(0, 3);
  for (int f = 0; f < raw.faces.rows(); ++f) {
    const int ring = raw.faces(f, 0) / 48, place = raw.faces(f, 0) % 48;
    if (ring == 20 && (place / 2 == 3 || place / 2 == 15)) continue;
    kept.conservativeResize(kept.rows() + 1, 3);
    kept.bottomRows(1) = raw.faces.row(f);
  }
  raw.faces = kept;
  const CheckedBody body = checked(raw);
  const Girth girth = girth_at(body.body, 102.5 * mm);
  const double side = 2.0 * 30.0 * std::sin(std::numbers::pi / 48);
  const double chord = 2.0 * 30.0 * std::sin(2.0 * std::numbers::pi / 48);
  EXPECT_EQ(girth.kind, SectionKind::kOpen);
  EXPECT_NEAR(girth.bridged / mm, 2 * chord, 0.01);
  EXPECT_NEAR(girth.girth / mm, 44 * side + 2 * chord, 0.01);
  EXPECT_EQ(body.report.open_ends.size(), 4u);
}

}  // namespace
}  // namespace wrapgauge
