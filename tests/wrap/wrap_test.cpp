#include "model/wrap/wrap.hpp"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "flat_rectangle.hpp"
#include "tests/geometry/shapes.hpp"

namespace wrapgauge {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kRadius = 0.04, kHeight = 0.2;
constexpr int kAround = 720;

double prism_girth() {
  return 2.0 * kAround * kRadius * std::sin(kPi / kAround);
}

Body body_of(TriangleMesh mesh) {
  Body body;
  body.surface = std::move(mesh);
  return body;
}
const Body& cylinder() {
  static const Body body = body_of(shapes::tube(kRadius, kRadius, kHeight, kAround, 40));
  return body;
}

Placement at_station(double station_m, double angle_deg = 0.0, double turn_deg = 0.0) {
  Placement placement;
  placement.anchor = AnchorAtStation{station_m * metre, angle_deg};
  placement.turn_deg = turn_deg;
  return placement;
}

void expect_says(const auto& result, const std::string& words) {
  ASSERT_FALSE(result.ok());
  EXPECT_NE(result.problem().message.find(words), std::string::npos) << result.problem().message;
}

TEST(Wrap, OnACylinderIsTheRolledUpLayoutTurnedByAnyAngle) {
  const auto flat = flat::rectangle(0.12, 0.06, 0.004, false);
  for (double turn_deg : {0.0, 25.0, -90.0}) {
    const auto wrap = wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.11, 130.0, turn_deg));
    ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
    const double turn = turn_deg * kPi / 180.0, start = 130.0 * kPi / 180.0;
    for (int i = 0; i < flat.mesh.vertices_m.rows(); ++i) {
      const double x = flat.mesh.vertices_m(i, 0) - 0.06, y = flat.mesh.vertices_m(i, 1) - 0.03;
      const double angle = start + (x * std::cos(turn) - y * std::sin(turn)) / kRadius;
      const Vec3 expected(kRadius * std::cos(angle), kRadius * std::sin(angle),
                          0.11 + x * std::sin(turn) + y * std::cos(turn));
      EXPECT_LT((wrap->laid_m.row(i).transpose() - expected).norm(), 5e-6);
      EXPECT_LT(
          (wrap->outward_at_worn.row(i).transpose() - Vec3(expected.x(), expected.y(), 0) / kRadius).norm(),
          6e-3);
    }
    for (const auto& quality : wrap->quality) {
      EXPECT_NEAR(quality.stretch_min, 1.0, 1e-3) << quality.part;
      EXPECT_NEAR(quality.stretch_max, 1.0, 1e-3) << quality.part;
      EXPECT_LT(quality.shear_max_deg, 0.05) << quality.part;
    }
    EXPECT_EQ(wrap->quality.size(), 3u);
    EXPECT_FALSE(wrap->closure.has_value());
    EXPECT_EQ(wrap->worn_m, wrap->laid_m);
  }
}

TEST(Wrap, FrameIsRightHandedWithAcrossTowardsProximal) {
  const auto flat = flat::rectangle(0.05, 0.05, 0.01, false);
  const auto wrap = wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.1, 30.0));
  ASSERT_TRUE(wrap.ok());
  EXPECT_LT((wrap->wrap_direction.cross(wrap->across_direction) - wrap->outward).norm(), 1e-12);
  EXPECT_GT(wrap->across_direction.z(), 0.999999);
  EXPECT_NEAR(std::atan2(wrap->outward.y(), wrap->outward.x()), kPi / 6, 5e-3);
  EXPECT_NEAR(std::atan2(wrap->anchor_m.y(), wrap->anchor_m.x()), kPi / 6, 1e-6);
  EXPECT_NEAR(wrap->anchor_m.z(), 0.1, 1e-9);
}

TEST(Wrap, ClosingLengthNeededOnACylinderIsItsGirthAndTheGapIsWhatIsMissing) {
  for (double used_m : {0.2, 0.25, 0.28}) {  // girth 251.3 mm: open, nearly closed, overlapping
    const auto flat = flat::rectangle(used_m, 0.06, 0.005, true);
    const auto wrap = wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.1));
    ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
    ASSERT_TRUE(wrap->closure.has_value());
    EXPECT_NEAR(wrap->closure->girth_at_anchor.si(), prism_girth(), 1e-9);
    EXPECT_NEAR(wrap->closure->closing_length_needed.si(), 2 * kPi * kRadius, 2e-6);
    EXPECT_NEAR(wrap->closure->closing_length_used.si(), used_m, 1e-12);
    EXPECT_NEAR(wrap->closure->gap_distal.si(), prism_girth() - used_m, 1e-5);
    EXPECT_NEAR(wrap->closure->gap_proximal.si(), prism_girth() - used_m, 1e-5);
  }
}

TEST(Wrap, WornEdgesMeetAndTheStretchIsEven) {
  const auto flat = flat::rectangle(0.23, 0.06, 0.005, true);
  Placement placement = at_station(0.1, 77.0);
  placement.layout_point_m = Vec2(0.03, 0.01);
  const auto wrap = wrap_layout(cylinder(), flat.layout, flat.mesh, placement);
  ASSERT_TRUE(wrap.ok());
  for (std::size_t i = 0; i < flat.mesh.closing_from.size(); ++i)
    EXPECT_LT(
        (wrap->worn_m.row(flat.mesh.closing_from[i]) - wrap->worn_m.row(flat.mesh.closing_to[i])).norm(),
        1e-9);
  for (int i = 0; i < flat.mesh.vertices_m.rows(); ++i) {
    const double angle = 77.0 * kPi / 180.0 + 2 * kPi * (flat.mesh.vertices_m(i, 0) - 0.03) / 0.23;
    const Vec3 expected(kRadius * std::cos(angle), kRadius * std::sin(angle),
                        0.09 + flat.mesh.vertices_m(i, 1));
    EXPECT_LT((wrap->worn_m.row(i).transpose() - expected).norm(), 5e-6);
  }
}

TEST(Wrap, WornTurnedOnACylinderGoesRoundTheEllipticSection) {
  const auto flat = flat::rectangle(0.25, 0.03, 0.005, true);
  const auto wrap = wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.1, 0.0, 20.0));
  ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
  const Vec3 normal = Eigen::AngleAxisd(20.0 * kPi / 180.0, wrap->outward) * Vec3::UnitZ();
  double low = 1.0, high = -1.0;
  for (int vertex : flat.mesh.closing_from) {
    const double level = (wrap->worn_m.row(vertex).transpose() - wrap->anchor_m).dot(normal);
    low = std::min(low, level);
    high = std::max(high, level);
  }
  EXPECT_NEAR(high, 0.015,
              1e-5);  // the geodesic across starts along the section's normal, then leaves it slowly
  EXPECT_NEAR(low, -0.015, 1e-5);
  const double b = kRadius, a = kRadius / std::cos(20.0 * kPi / 180.0), h = std::pow((a - b) / (a + b), 2);
  ASSERT_TRUE(wrap->closure);
  EXPECT_NEAR(wrap->closure->girth_at_anchor.si(), kPi * (a + b) * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h))),
              3e-6);
}

// A cuff put on upside down goes round the other way. Where the limb looks the same after half a turn about
// the outward direction at the anchor, so does everything laid on it.
TEST(Wrap, TurnedByHalfATurnOnALimbAlikeBothWaysItIsTheSameWrapTurned) {
  const auto flat = flat::rectangle(0.23, 0.06, 0.005, true);
  Placement placement = at_station(0.5 * kHeight, 77.0);
  placement.layout_point_m = Vec2(0.1, 0.02);
  const auto upright = wrap_layout(cylinder(), flat.layout, flat.mesh, placement);
  placement.turn_deg = 180.0;
  const auto turned = wrap_layout(cylinder(), flat.layout, flat.mesh, placement);
  ASSERT_TRUE(upright.ok());
  ASSERT_TRUE(turned.ok()) << turned.problem().message;
  const double angle = 77.0 * kPi / 180.0;
  const Vec3 outward(std::cos(angle), std::sin(angle), 0.0), middle(0.0, 0.0, 0.5 * kHeight);
  const auto half_turned = [&](const Vec3& point_m) {
    return Vec3(middle + Eigen::AngleAxisd(kPi, outward) * (point_m - middle));
  };
  for (int i = 0; i < flat.mesh.vertices_m.rows(); ++i) {
    EXPECT_LT((half_turned(upright->laid_m.row(i)) - Vec3(turned->laid_m.row(i))).norm(), 5e-6);
    EXPECT_LT((half_turned(upright->worn_m.row(i)) - Vec3(turned->worn_m.row(i))).norm(), 5e-6);
  }
  ASSERT_TRUE(upright->closure && turned->closure);
  EXPECT_NEAR(turned->closure->closing_length_needed.si(), upright->closure->closing_length_needed.si(),
              2e-6);
  EXPECT_NEAR(turned->closure->girth_at_anchor.si(), upright->closure->girth_at_anchor.si(), 1e-9);
  EXPECT_NEAR(turned->closure->gap_distal.si(), upright->closure->gap_proximal.si(), 1e-5);
}

// What is distal stays distal: the gap is the wide side's whichever way up the cuff is.
TEST(Wrap, TurnedByHalfATurnOnAConeItClosesAtTheSameGirthAndGapesAtTheSameEnd) {
  const Body cone = body_of(shapes::tube(0.03, 0.05, kHeight, 1440, 60));
  const auto flat = flat::rectangle(0.25, 0.04, 0.005, true);
  const auto upright = wrap_layout(cone, flat.layout, flat.mesh, at_station(0.1));
  const auto turned = wrap_layout(cone, flat.layout, flat.mesh, at_station(0.1, 0.0, 180.0));
  ASSERT_TRUE(upright.ok());
  ASSERT_TRUE(turned.ok()) << turned.problem().message;
  ASSERT_TRUE(upright->closure && turned->closure);
  EXPECT_NEAR(turned->closure->girth_at_anchor.si(), upright->closure->girth_at_anchor.si(), 1e-9);
  EXPECT_NEAR(turned->closure->closing_length_needed.si(), upright->closure->closing_length_needed.si(),
              2e-5);
  EXPECT_NEAR(turned->closure->gap_distal.si(), upright->closure->gap_distal.si(), 2e-4);
  EXPECT_NEAR(turned->closure->gap_proximal.si(), upright->closure->gap_proximal.si(), 2e-4);
  for (std::size_t i = 0; i < flat.mesh.closing_from.size(); ++i)
    EXPECT_LT(
        (turned->worn_m.row(flat.mesh.closing_from[i]) - turned->worn_m.row(flat.mesh.closing_to[i])).norm(),
        1e-9);
}

TEST(Wrap, TurnedByHalfATurnItSaysHowFarItRunsOffAsItDoesUpright) {
  const auto flat = flat::rectangle(0.25, 0.04, 0.004, true);
  for (const double turn_deg : {0.0, 180.0}) {
    expect_says(wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.19, 0.0, turn_deg)),
                "10.0 mm past the proximal end");
    expect_says(wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.01, 0.0, turn_deg)),
                "10.0 mm past the distal end");
  }
}

// A cone unrolls without stretch, so the laid layout is the flat one placed on the developed sector: the
// anchor at slant distance s from the apex, y along the generator away from the apex, x across it.
TEST(Wrap, OnAConeIsItsDevelopment) {
  const double low = 0.03, high = 0.05;
  const Body cone = body_of(shapes::tube(low, high, kHeight, 1440, 60));
  const auto flat = flat::rectangle(0.18, 0.06, 0.005, false);
  const auto wrap = wrap_layout(cone, flat.layout, flat.mesh, at_station(0.1));
  ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
  const double sine = (high - low) / std::hypot(high - low, kHeight), cosine = std::sqrt(1 - sine * sine);
  const double slant = 0.04 / sine, apex = -low * cosine / sine;
  for (int i = 0; i < flat.mesh.vertices_m.rows(); ++i) {
    const double x = flat.mesh.vertices_m(i, 0) - 0.09, y = flat.mesh.vertices_m(i, 1) - 0.03;
    const double s = std::hypot(slant + y, x), angle = std::atan2(x, slant + y) / sine;
    const Vec3 expected(s * sine * std::cos(angle), s * sine * std::sin(angle), apex + s * cosine);
    EXPECT_LT((wrap->laid_m.row(i).transpose() - expected).norm(), 6e-5) << "x " << x << " y " << y;
  }
  EXPECT_NEAR(wrap->quality.back().stretch_min, 1.0, 2e-3);
  EXPECT_NEAR(wrap->quality.back().stretch_max, 1.0, 2e-3);
}

// Developed sector angle of a whole turn is 2 pi sin(half angle); a straight line perpendicular to the
// generator at slant distance s, centred on the anchor, spans it with the length 2 s tan(pi sin(half angle)).
TEST(Wrap, ClosingLengthNeededOnAConeIsTheChordOfItsDevelopment) {
  const double low = 0.03, high = 0.05;
  const Body cone = body_of(shapes::tube(low, high, kHeight, 1440, 60));
  const double sine = (high - low) / std::hypot(high - low, kHeight), slant = 0.04 / sine;
  const double needed = 2.0 * slant * std::tan(kPi * sine);
  const auto flat = flat::rectangle(needed, 0.04, 0.005, true);
  const auto wrap = wrap_layout(cone, flat.layout, flat.mesh, at_station(0.1));
  ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
  ASSERT_TRUE(wrap->closure);
  EXPECT_NEAR(wrap->closure->closing_length_needed.si(), needed, 5e-5);
  EXPECT_NEAR(wrap->closure->girth_at_anchor.si(), 2 * kPi * 0.04, 2e-6);
  EXPECT_LT(wrap->closure->gap_distal,
            wrap->closure->gap_proximal);  // a straight strip gapes on the wide side
  const double mean = 0.5 * (wrap->closure->gap_distal + wrap->closure->gap_proximal).si();
  EXPECT_NEAR(mean, 0.0, 2e-3);
}

// On a cone a straight cuff is stretched more where the limb is thicker; closing lines that slant with the
// girths stretch it alike at every height.
TEST(Wrap, SlantedClosingLinesStretchACuffEvenlyOnACone) {
  const double low = 0.03, high = 0.05, height = 0.06;
  const Body cone = body_of(shapes::tube(low, high, kHeight, 720, 60));
  const double growth =
      2.0 * kPi * (high - low) / std::hypot(high - low, kHeight);  // of girth along the skin
  const double girth = 2.0 * kPi * 0.04, width = girth / 1.05;
  const auto spread = [&](double taper) {
    auto flat = flat::rectangle(width, height, 0.005, true);
    for (int i = 0; i < flat.mesh.vertices_m.rows(); ++i)
      flat.mesh.vertices_m(i, 0) +=
          (flat.mesh.vertices_m(i, 0) / width - 0.5) * taper * (flat.mesh.vertices_m(i, 1) - 0.5 * height);
    flat.layout.closure->taper = taper;
    const auto wrap = wrap_layout(cone, flat.layout, flat.mesh, at_station(0.1));
    EXPECT_TRUE(wrap.ok()) << wrap.problem().message;
    double least = 10.0, most = 0.0;
    for (std::size_t i = 0; i < flat.mesh.closing_from.size(); ++i) {
      const int from = flat.mesh.closing_from[i], to = flat.mesh.closing_to[i];
      EXPECT_LT((wrap->worn_m.row(from) - wrap->worn_m.row(to)).norm(), 1e-9);
      const double round = 2.0 * kPi * wrap->worn_m.row(from).head<2>().norm();
      const double stretch = round / (flat.mesh.vertices_m(to, 0) - flat.mesh.vertices_m(from, 0));
      least = std::min(least, stretch);
      most = std::max(most, stretch);
    }
    return std::make_pair(least, most);
  };
  const auto [least, most] = spread(growth / 1.05);
  EXPECT_NEAR(least, 1.05, 2e-3);
  EXPECT_NEAR(most, 1.05, 2e-3);
  EXPECT_GT(spread(0.0).second / spread(0.0).first, 1.1);
}

// Between lines that slant, a point goes round by its share of the length at its own height: on a cone at the
// angle 2 pi (x - x_from(y)) / length(y) from the first line, at the slant distance that y says.
TEST(Wrap, ATaperedCuffOnAConeLiesWhereItsShareOfTheLengthAtItsOwnHeightSays) {
  const double low = 0.03, high = 0.05, height = 0.06;
  const Body cone = body_of(shapes::tube(low, high, kHeight, 720, 60));
  const double sine = (high - low) / std::hypot(high - low, kHeight), cosine = std::sqrt(1.0 - sine * sine);
  const double width = 2.0 * kPi * 0.04 / 1.05, taper = 2.0 * kPi * sine / 1.05;
  auto flat = flat::rectangle(width, height, 0.005, true);
  const auto from_x = [&](double y) { return -0.5 * taper * (y - 0.5 * height); };
  const auto length = [&](double y) { return width + taper * (y - 0.5 * height); };
  const Points2 straight = flat.mesh.vertices_m;
  for (int i = 0; i < straight.rows(); ++i)
    flat.mesh.vertices_m(i, 0) = from_x(straight(i, 1)) + straight(i, 0) / width * length(straight(i, 1));
  flat.layout.closure->taper = taper;
  Placement placement = at_station(0.1);
  placement.layout_point_m = Vec2(0.5 * width, 0.5 * height);
  const auto wrap = wrap_layout(cone, flat.layout, flat.mesh, placement);
  ASSERT_TRUE(wrap.ok()) << wrap.problem().message;
  for (int i = 0; i < straight.rows(); ++i) {
    const double up = straight(i, 1) - 0.5 * height, angle = 2.0 * kPi * (straight(i, 0) / width - 0.5);
    const double radius = 0.04 + up * sine;
    const Vec3 expected(radius * std::cos(angle), radius * std::sin(angle), 0.1 + up * cosine);
    EXPECT_LT((wrap->worn_m.row(i).transpose() - expected).norm(), 1e-4) << "vertex " << i;
  }
  ASSERT_TRUE(wrap->closure);
  EXPECT_NEAR(wrap->closure->closing_length_used.si(), width, 1e-9);
}

TEST(Wrap, MovesWithBodyAndAnchor) {
  const Body body = body_of(shapes::tube(0.032, 0.045, kHeight, 90, 30));
  const auto flat = flat::rectangle(0.22, 0.05, 0.006, true);
  Placement placement;
  placement.anchor = AnchorAtPoint{Vec3(0.02, 0.03, 0.11)};
  placement.turn_deg = 8.0;
  const Eigen::Isometry3d motion =
      Eigen::Translation3d(1.0, -0.3, 0.2) * Eigen::AngleAxisd(1.1, Vec3(2, -1, 0.5).normalized());
  Body moved = body;
  moved.surface.vertices_m = (motion * body.surface.vertices_m.transpose()).transpose();
  moved.axis = {motion * body.axis.origin_m, motion.linear() * body.axis.direction};
  Placement moved_placement = placement;
  moved_placement.anchor = AnchorAtPoint{motion * Vec3(0.02, 0.03, 0.11)};
  const auto here = wrap_layout(body, flat.layout, flat.mesh, placement);
  const auto there = wrap_layout(moved, flat.layout, flat.mesh, moved_placement);
  ASSERT_TRUE(here.ok() && there.ok());
  for (int i = 0; i < flat.mesh.vertices_m.rows(); ++i) {
    EXPECT_LT((motion * Vec3(here->laid_m.row(i)) - Vec3(there->laid_m.row(i))).norm(), 1e-8);
    EXPECT_LT((motion * Vec3(here->worn_m.row(i)) - Vec3(there->worn_m.row(i))).norm(), 1e-8);
  }
  ASSERT_TRUE(here->closure && there->closure);
  EXPECT_NEAR(here->closure->gap_distal.si(), there->closure->gap_distal.si(), 1e-8);
}

TEST(Wrap, RefusesALayoutThatRunsOffAndSaysHowFarPastWhichEnd) {
  const auto flat = flat::rectangle(0.1, 0.12, 0.004, false);
  const auto wrap_at = [&](double station_m) {
    return wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(station_m));
  };
  expect_says(wrap_at(0.15), "10.0 mm past the proximal end");
  expect_says(wrap_at(0.0475), "12.5 mm past the distal end");
  EXPECT_TRUE(wrap_at(0.1).ok());
  const auto tall = flat::rectangle(0.1, 0.25, 0.004, false);
  expect_says(wrap_layout(cylinder(), tall.layout, tall.mesh, at_station(0.1)),
              "25.0 mm past the distal end of the body and 25.0 mm past the proximal end");
  const auto along = flat::rectangle(0.25, 0.02, 0.004, false);
  expect_says(wrap_layout(cylinder(), along.layout, along.mesh, at_station(0.14, 0.0, 90.0)),
              "65.0 mm past the proximal end");
}

TEST(Wrap, RefusesATurnedClosingLayoutWhoseSectionReachesTheEnd) {
  const auto flat = flat::rectangle(0.25, 0.02, 0.004, true);
  const auto wrap = wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.18, 0.0, 20.0));
  ASSERT_FALSE(wrap.ok());
  EXPECT_EQ(wrap.problem().kind, ProblemKind::kBadInput);
}

TEST(Wrap, RefusesAnchorsThatAreNotOnTheBody) {
  const auto flat = flat::rectangle(0.05, 0.05, 0.01, false);
  const auto wrap_with = [&](const Placement& placement) {
    return wrap_layout(cylinder(), flat.layout, flat.mesh, placement);
  };
  Placement placement;
  placement.anchor = AnchorAtPoint{Vec3(0.1, 0.0, 0.1)};
  expect_says(wrap_with(placement), "60.0 mm from the nearest skin");
  placement.anchor = AnchorAtPoint{Vec3(std::nan(""), 0.0, 0.1)};
  expect_says(wrap_with(placement), "not a finite number");
  expect_says(wrap_with(at_station(0.3)), "300.0 mm, but the body reaches from 0 to 200.0 mm");
  expect_says(wrap_with(at_station(0.1, 0.0, std::nan(""))), "turn is not a finite number");
  const Body ball = body_of(shapes::sphere(0.05, 40, 80));
  placement.anchor = AnchorAtPoint{Vec3(0.0, 0.0, 0.05)};
  expect_says(wrap_layout(ball, flat.layout, flat.mesh, placement), "faces along the body's axis");
  expect_says(wrap_layout(Body{}, flat.layout, flat.mesh, placement), "no faces");
}

TEST(Wrap, RefusesAClosingLayoutThatDoesNotGoRound) {
  const auto flat = flat::rectangle(0.1, 0.02, 0.004, true);
  EXPECT_FALSE(wrap_layout(cylinder(), flat.layout, flat.mesh, at_station(0.1, 0.0, 90.0)).ok());
}

TEST(ClosingLength, ComesFromTheStretchAndTheGirthAtTheAnchor) {
  const auto flat = flat::rectangle(0.05, 0.05, 0.01, false);
  Layout layout = flat.layout;
  EXPECT_FALSE(resolve_closing_length(cylinder(), layout, at_station(0.1))->has_value());
  layout.closure = Closure{.from_x_m = 0.0, .closing_length = {}, .stretch = 0.05};
  const auto length = resolve_closing_length(cylinder(), layout, at_station(0.1));
  ASSERT_TRUE(length.ok());
  EXPECT_NEAR((*length)->si(), prism_girth() / 1.05, 1e-9);
  layout.closure = Closure{.from_x_m = 0.0, .closing_length = 0.2 * metre, .stretch = {}};
  EXPECT_EQ((**resolve_closing_length(cylinder(), layout, at_station(0.1))).si(), 0.2);
  layout.closure = Closure{.from_x_m = 0.0, .closing_length = {}, .stretch = -1.5};
  expect_says(resolve_closing_length(cylinder(), layout, at_station(0.1)), "stretch is -1.5");
}

}  // namespace
}  // namespace wrapgauge
