// Two sheets on each other: the cells between them, the law they press by, and what comes of both.
#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>

#include "model/inflation/cavity.hpp"
#include "model/inflation/equilibrium_system.hpp"
#include "model/inflation/possible_state.hpp"
#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

struct Worn {
  InflationSetup setup = small::closed_cuff(0.3, 0.007);
  SheetMesh sheet = make_sheet_mesh(setup.flat);
  // Both sheets on the limb, the outer one `apart` above the skin sheet and turned about it by `slid`.
  Points3 laid_m(double apart_m, double slid_m) const {
    Points3 x(sheet.node_count, 3);
    for (int node = 0; node < sheet.node_count; ++node) {
      const int vertex = sheet.flat_vertex[node];
      Vec3 place = setup.start_m.row(vertex).transpose();
      if (node != sheet.skin_node[vertex])
        place = Eigen::AngleAxisd(slid_m / 0.030, Vec3::UnitZ()) *
                (place + apart_m * setup.start_outward.row(vertex).transpose());
      x.row(node) = place.transpose();
    }
    return x;
  }
};

// Those whose whole ring is free to slide.
bool inside(const GapCell& cell) {
  for (const GapCell::RingPlace& place : cell.ring)
    if (place.skin == place.outer) return false;
  return true;
}

TEST(GapCells, AddUpToTheVolumeBetweenTheSheetsWhateverTheirShape) {
  const Worn worn;
  Points3 x = worn.laid_m(1e-3, 3e-3);
  for (Eigen::Index i = 0; i < x.size(); ++i)
    x.data()[i] += 1e-3 * std::sin(12.9898 * static_cast<double>(i));
  double cells = 0.0, prisms = 0.0;
  for (const GapCell& cell : gap_cells(worn.setup.flat, worn.sheet)) cells += gap_volume_m3(cell, x);
  for (Eigen::Index t = 0; t < worn.setup.flat.triangles.rows(); ++t)
    prisms += prism_volume_m3(worn.setup.flat, t, worn.sheet, x);
  const double closed_surface = cavity_volume_m3(worn.sheet, GroupId{0}, x);
  EXPECT_GT(closed_surface, 1e-6);
  EXPECT_NEAR(cells, closed_surface, 1e-9 * closed_surface);
  EXPECT_NEAR(prisms, closed_surface, 1e-9 * closed_surface);
}

TEST(GapCells, HaveTheSheetsDistanceAsTheirHeight) {
  const Worn worn;
  const Points3 x = worn.laid_m(0.5e-3, 0.0);
  int cells = 0;
  for (const GapCell& cell : gap_cells(worn.setup.flat, worn.sheet)) {
    if (!inside(cell)) continue;
    ++cells;
    EXPECT_NEAR(gap_volume_m3(cell, x) / cell.rest_area_m2, 0.5e-3, 0.03e-3);  // the limb is round
  }
  EXPECT_GT(cells, 10);
}

// Along a fixed normal a slide of 2 mm round 30 mm would look like a gap or a penetration of 0.067 mm.
TEST(GapCells, DoNotTakeSlidingAlongASurfaceForAGap) {
  const Worn worn;
  const Points3 x = worn.laid_m(0.0, 2e-3);
  int cells = 0;
  for (const GapCell& cell : gap_cells(worn.setup.flat, worn.sheet)) {
    if (!inside(cell)) continue;
    ++cells;
    EXPECT_LT(std::abs(gap_volume_m3(cell, x) / cell.rest_area_m2), 0.010e-3);
  }
  EXPECT_GT(cells, 10);
}

TEST(GapLaw, IsAPotentialWithoutJumpsThatPressesFromTheFilmOn) {
  const GapLaw law{40e-6, 90e3};
  for (double gap : {35e-6, 10e-6, 1e-6, -1e-6, -200e-6}) {
    const double step = 1e-10;
    EXPECT_NEAR((law.energy_n_per_m(gap - step) - law.energy_n_per_m(gap + step)) / (2 * step),
                law.pressure_at(gap), 1e-5 * law.pressure_at(gap));
    EXPECT_NEAR((law.pressure_at(gap - step) - law.pressure_at(gap + step)) / (2 * step),
                law.stiffness_at(gap), 1e-5 * law.stiffness_at(gap));
  }
  EXPECT_EQ(law.pressure_at(40e-6), 0.0);
  EXPECT_EQ(law.energy_n_per_m(50e-6), 0.0);
  EXPECT_EQ(law.stiffness_at(50e-6), 0.0);
  EXPECT_DOUBLE_EQ(law.pressure_at(0.0), 90e3);
  EXPECT_NEAR(law.energy_n_per_m(-1e-12), law.energy_n_per_m(1e-12), 1e-6);
}

// A layout far too short for its limb: the outer sheet presses the skin sheet with some kPa.
InflationSetup tight_cuff() {
  InflationSetup setup = small::closed_cuff(0.3, 0.007);
  setup.body = std::make_shared<small::RoundLimb>(0.036);
  return setup;
}

TEST(SheetsOnEachOther, KeepEveryCellAboveNothingUnderATightEmptyCuff) {
  const InflationSetup setup = tight_cuff();
  InflationOptions options;
  options.steps = 1;
  const auto path = inflate(setup, {0.05 * kPa}, options);
  ASSERT_TRUE(path) << path.problem().message;
  double pressed_pa = 0.0;
  for (const EquilibriumState& state : path->states) {
    const GapLaw law = gap_law(setup, options.settings.sheets);
    for (const GapCell& cell : gap_cells(setup.flat, path->sheet)) {
      const double gap = gap_volume_m3(cell, state.positions_m) / cell.rest_area_m2;
      EXPECT_GE(gap, 0.0);
      pressed_pa = std::max(pressed_pa, law.pressure_at(gap));
    }
    EXPECT_GE(state.group_volume_m3(0), 0.0);
  }
  EXPECT_GT(pressed_pa, 500.0);  // they do press on each other
}

TEST(PossibleState, IsWhatASolvedCuffIs) {
  const InflationSetup setup = small::closed_cuff(0.3, 0.007);
  InflationOptions options;
  options.steps = 1;
  const auto path = inflate(setup, {TrappedAir{5.0 * mL, 20.0 * mL}}, options);
  ASSERT_TRUE(path) << path.problem().message;
  const double before_m3 = path->states.front().group_volume_m3(0);
  const ClosedAir air{before_m3 + 25e-6, 20e-6};
  EXPECT_FALSE(
      why_impossible(setup, path->sheet, gap_cells(setup.flat, path->sheet), path->states.back(), {air}));
}

struct Impossible {
  Worn worn;
  EquilibriumState state;
  explicit Impossible(double apart_m) {
    state.positions_m = worn.laid_m(apart_m, 0.0);
    state.group_pressure_pa = state.group_volume_m3 = Eigen::VectorXd::Zero(1);
  }
  std::string why(const PossibleState& may_miss = {}, std::optional<ClosedAir> air = {}) const {
    const auto cells = gap_cells(worn.setup.flat, worn.sheet);
    const auto problem = why_impossible(worn.setup, worn.sheet, cells, state, {air}, may_miss);
    if (!problem) return "";
    EXPECT_EQ(problem->kind, ProblemKind::kNotConverged);
    return problem->message;
  }
};

// The thinner sheet has 1.5 mm: 2 % of it are 0.03 mm.
TEST(PossibleState, HasNoSheetsThroughOneAnother) {
  PossibleState any_volume;
  any_volume.least_volume_m3 = -1.0;
  EXPECT_NE(Impossible(-0.045e-3).why(any_volume).find("3.0 % of the thinner one's thickness"),
            std::string::npos);
  EXPECT_EQ(Impossible(-0.02e-3).why(any_volume), "");
}

TEST(PossibleState, HasNoChamberBelowZero) {
  EXPECT_NE(Impossible(-0.02e-3).why().find("the chambers of inlet 'inlet' hold -0.0"), std::string::npos);
  EXPECT_EQ(Impossible(0.02e-3).why(), "");
}

TEST(PossibleState, HasNoChamberBelowZeroEvenIfItsGroupIsNot) {
  Impossible two(0.02e-3);
  FlatMesh& flat = two.worn.setup.flat;
  flat.chamber_group.push_back(flat.chamber_group[0]);
  two.worn.setup.layout.chambers.push_back(two.worn.setup.layout.chambers[0]);
  two.worn.setup.layout.chambers[1].name = "two";
  for (std::size_t t = 0; t < flat.regions.size(); ++t)
    if (flat.regions[t].kind == RegionKind::kChamber)
      flat.regions[t].part =
          flat.vertices_m(flat.triangles(static_cast<Eigen::Index>(t), 0), 0) < 0.115 ? 0 : 1;
  EXPECT_EQ(two.why(), "");
  for (std::size_t v = 0; v < two.worn.sheet.outer_node.size(); ++v) {
    const auto vertex = static_cast<Eigen::Index>(v);
    if (flat.vertices_m(vertex, 0) < 0.117 || two.worn.sheet.outer_node[v] == two.worn.sheet.skin_node[v])
      continue;
    two.state.positions_m.row(two.worn.sheet.outer_node[v]) -=
        0.045e-3 * two.worn.setup.start_outward.row(vertex);
  }
  EXPECT_NE(two.why().find("chamber 'two' holds -0.0"), std::string::npos) << two.why();
}

TEST(PossibleState, LosesNoAir) {
  Impossible filled(2e-3);
  const double volume_m3 = cavity_volume_m3(filled.worn.sheet, GroupId{0}, filled.state.positions_m);
  filled.state.group_pressure_pa(0) = 1000.0;
  const double air_m3 = (1.0 + 1000.0 / 101325.0) * (volume_m3 + 20e-6);
  EXPECT_EQ(filled.why({}, ClosedAir{air_m3, 20e-6}), "");
  EXPECT_EQ(filled.why({}, ClosedAir{air_m3 * (1.0 + 0.5e-6), 20e-6}), "");
  EXPECT_NE(
      filled.why({}, ClosedAir{air_m3 * (1.0 + 2e-6), 20e-6}).find("mL of air closed in at inlet 'inlet'"),
      std::string::npos);
}

}  // namespace
}  // namespace wrapgauge
