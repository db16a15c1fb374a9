// A rim that is glued or taped to the skin: all of it, and it holds.
#include <gtest/gtest.h>

#include <cmath>

#include "model/inflation/tissue_contact.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr double kChamber = 0.020, kOutline = 0.030;

class Flat : public SignedDistance {
 public:
  DistanceSample at(const Vec3& point_m) const override { return {point_m.z(), Vec3::UnitZ(), Mat3::Zero()}; }
};

Polygon circle(double radius_m) {
  Polygon polygon;
  for (int k = 0; k < 48; ++k)
    polygon.emplace_back(radius_m * std::cos(2.0 * M_PI * k / 48), radius_m * std::sin(2.0 * M_PI * k / 48));
  return polygon;
}

// A round pad with one round chamber on flat tissue; one inset spot in its middle, which is no rim.
InflationSetup disc() {
  InflationSetup setup;
  setup.layout.outline_m = circle(kOutline);
  setup.layout.chambers.push_back({"one", circle(kChamber), {InsetSpot{Vec2(0.0, 0.0), 3.0 * mm}}, {}});
  setup.layout.inlets.push_back({"inlet", {0.0, 0.010}});
  setup.layout.skin_sheet = setup.layout.outer_sheet = {"soft", 1.5 * mm};
  setup.layout.rim_bonded = true;
  FlatMeshOptions options;
  options.edge = options.seam_edge = 4.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  setup.skin_law = setup.outer_law = NeoHookean{30.0 * kPa};
  const Eigen::Index count = setup.flat.vertices_m.rows();
  small::lay_flat(setup);
  setup.body = std::make_shared<Flat>();
  setup.foundation_pa_per_m = Eigen::VectorXd::Constant(count, 2e6);
  setup.friction = 0.3;
  return setup;
}

double radius_m(const InflationSetup& setup, int vertex) {
  return setup.flat.vertices_m.row(vertex).norm();
}

TEST(GluedRim, IsEveryFusedPointOutsideTheChamberAndOnItsEdge) {
  const InflationSetup setup = disc();
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  const std::vector<bool> glued = glued_vertices(setup, sheet);
  const double edge = kChamber * std::cos(M_PI / 48) - 1e-6;
  int rim = 0, on_chamber_edge = 0;
  for (int v = 0; v < static_cast<int>(glued.size()); ++v) {
    const double r = radius_m(setup, v);
    EXPECT_EQ(glued[v], r >= edge) << "at " << setup.flat.vertices_m.row(v);
    rim += r >= edge ? 1 : 0;
    on_chamber_edge += std::abs(r - kChamber) < 0.1e-3 ? 1 : 0;
  }
  EXPECT_GT(rim, 60);
  EXPECT_GT(on_chamber_edge, 20);
}

TEST(GluedRim, IsNothingWhereNothingIsGlued) {
  InflationSetup setup = disc();
  setup.layout.rim_bonded = false;
  for (bool glued : glued_vertices(setup, make_sheet_mesh(setup.flat))) EXPECT_FALSE(glued);
}

// Every point of the rim stays where it was put: along the skin within the bond's give, and no higher off it
// than tissue that is pulled gives.
TEST(GluedRim, HoldsEveryPointOfADiscThatIsBlownUp) {
  const InflationSetup setup = disc();
  InflationOptions options;
  options.steps = 2;
  const auto path = inflate(setup, {1.5 * kPa}, options);
  ASSERT_TRUE(path) << path.problem().message;
  const EquilibriumState& last = path->states.back();
  EXPECT_GT(last.group_volume_m3(0), 1e-6);
  const std::vector<bool> glued = glued_vertices(setup, path->sheet);
  double most_along = 0.0, most_off = 0.0;
  for (int v = 0; v < static_cast<int>(glued.size()); ++v) {
    if (!glued[v]) continue;
    const Vec3 moved = (last.positions_m.row(path->sheet.skin_node[v]) - setup.start_m.row(v)).transpose() -
                       Vec3(0.0, 0.0, 0.75e-3);
    EXPECT_LT(moved.head<2>().norm(), TissueSettings{}.elastic_slip_m) << setup.flat.vertices_m.row(v);
    EXPECT_LT(moved.z() * 2e6, TissueSettings{}.bond_pa) << setup.flat.vertices_m.row(v);
    most_along = std::max(most_along, moved.head<2>().norm());
    most_off = std::max(most_off, moved.z());
  }
  std::cout << "  moved by " << 1e3 * most_along << " mm along the skin at most, by " << 1e3 * most_off
            << " mm off it\n";
  EXPECT_GT(most_along, 1e-6);
}

TEST(GluedRim, HoldsToItsStrengthAndNoFurther) {
  const InflationSetup setup = disc();
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  Points3 start_m(sheet.node_count, 3);
  for (int n = 0; n < sheet.node_count; ++n) start_m.row(n) = setup.start_m.row(sheet.flat_vertex[n]);
  TissueContact tissue(setup, sheet, {}, start_m);
  const TissueSettings settings;
  for (const ContactNode& node : tissue.nodes()) {
    if (!node.bonded) continue;
    const auto shear_n = [&](double way_m) {
      return tissue.term(node, node.grip_m + way_m * Vec3::UnitX(), false).gradient.head<2>().norm();
    };
    const double strength_n = settings.bond_pa * node.area_m2;
    EXPECT_GT(shear_n(0.5 * settings.elastic_slip_m), 0.7 * strength_n);
    EXPECT_LT(shear_n(0.5 * settings.elastic_slip_m), strength_n);
    EXPECT_NEAR(shear_n(5e-3), strength_n, 1e-9 * strength_n);
  }
  // What is glued grips where it was put, however far it was pulled.
  Points3 pulled = start_m;
  pulled.col(0).array() += 5e-3;
  tissue.drag_grips(pulled);
  for (const ContactNode& node : tissue.nodes()) {
    if (node.bonded) {
      EXPECT_EQ(node.grip_m.x(), start_m(node.node, 0));
    }
  }
}

}  // namespace
}  // namespace wrapgauge
