// A long strip with clamped edges, free, on a rigid plate and on an elastic foundation. Plane strain of a
// neo-Hookean membrane: N = mu t (lambda - lambda^-3), circular arcs; closed forms, the foundation's figures
// by integrating the arc (membrane_profile.cpp).
#include "tests/published/membrane_profile.hpp"
#include "tests/published/plane_strain.hpp"

namespace wrapgauge::published {
namespace {

constexpr double kHalf = 0.020, kThickness = 0.0015, kShear = 30e3, kLength = 3.0 * kHalf;
constexpr const char* kSection = "Long strip of half width a, plane strain";
const Source kStrip{kSection, "closed form of circular arcs", "derived", {}, "membrane_profile.cpp"};
const Source kFoundation{kSection, "arc on a foundation, integrated", "derived", {}, "membrane_profile.cpp"};

// The skin sheet bulges to -z; the other one is thicker and only closes the chamber.
InflationSetup strip_setup(Length edge, Length rim_edge) {
  InflationSetup setup;
  const Polygon whole = rectangle(-kHalf, -0.5 * kLength, kHalf, 0.5 * kLength);
  setup.layout.outline_m = whole;
  setup.layout.chambers.push_back({"strip", whole, {}, {}});
  setup.layout.inlets.push_back({"inlet", Vec2::Zero()});
  setup.layout.skin_sheet = {"free", Length(kThickness)};
  setup.layout.outer_sheet = {"other", Length(5.0 * kThickness)};
  FlatMeshOptions options;
  options.edge = edge;
  options.seam_edge = rim_edge;
  options.seam_band = 0.0 * mm;
  setup.flat = triangulate_layout(setup.layout, std::nullopt, options).value();
  setup.skin_law = setup.outer_law = NeoHookean{Pressure(kShear)};
  lay_flat_and_clamp(setup);
  return setup;
}

Pressure load(double p) {
  return Pressure(p * kShear * kThickness / kHalf);
}

std::vector<int> short_ends(const InflationSetup& setup) {
  std::vector<int> ends;
  for (int v : setup.held)
    if (std::abs(setup.flat.vertices_m(v, 1)) > 0.5 * kLength - 1e-6 &&
        std::abs(setup.flat.vertices_m(v, 0)) < kHalf - 1e-6)
      ends.push_back(v);
  return ends;
}

// Read over the middle third of the length.
struct Middle {
  double height_a, volume_a2, force_per_length, q_pa;
};
Middle solve_strip(const InflationSetup& setup, const std::vector<double>& loads) {
  std::vector<Pressure> pressures;
  for (double p : loads) pressures.push_back(load(p));
  const auto solved = inflate_plane(setup, short_ends(setup), 1, 0.0, pressures, membrane_only(2));
  if (!solved) {
    ADD_FAILURE() << solved.problem().message;
    return {};
  }
  if (loads.size() > 2) {  // what is left shrinks about fivefold a round
    EXPECT_LT(solved->end_change_m, 0.06 * kHalf);
  }
  const LoadPath& path = solved->path;
  const EquilibriumState& state = path.states.back();
  const auto in_middle = [](const Vec2& at) { return std::abs(at.y()) < 0.5 * kHalf; };
  const Bulge section = bulge(setup.flat, path, state, in_middle);
  Middle middle{};
  middle.height_a = -MiddleLine(setup.flat, path, state, 0.0).at(0.0).z() / kHalf;
  middle.volume_a2 = section.volume_m3 / section.area_m2 * 2.0 / kHalf;
  Eigen::VectorXd rest_area = Eigen::VectorXd::Zero(setup.flat.vertices_m.rows());
  for (Eigen::Index t = 0; t < setup.flat.triangles.rows(); ++t) {
    const auto c = setup.flat.triangles.row(t);
    const Vec2 a = setup.flat.vertices_m.row(c(0)), u = setup.flat.vertices_m.row(c(1)).transpose() - a,
               v = setup.flat.vertices_m.row(c(2)).transpose() - a;
    for (int k = 0; k < 3; ++k) rest_area(c(k)) += (u.x() * v.y() - u.y() * v.x()) / 6.0;
  }
  double force = 0.0, area = 0.0;
  for (Eigen::Index v = 0; v < rest_area.size(); ++v) {
    if (!in_middle(setup.flat.vertices_m.row(v).transpose())) continue;
    force += state.contact_pressure_pa(v) * state.contact_area_m2(v);
    area += rest_area(v);
    if (setup.flat.vertices_m.row(v).norm() < 0.3 * kHalf)
      middle.q_pa = std::max(middle.q_pa, state.contact_pressure_pa(v));
  }
  middle.force_per_length = force / area * 2.0 * kHalf;
  return middle;
}

// The row at P 2 is left out: a piece this short, held at its ends, has no equilibrium there.
TEST(LongStrip, BulgesAsTheClosedForm) {
  for (const auto& [p, height, volume] :
       std::vector<std::array<double, 3>>{{.5, .547032, .771327}, {1.0, .810602, 1.211774}}) {
    expect_derived(height, free_strip(p).height);
    expect_derived(volume, free_strip(p).area);
    const Middle middle = solve_strip(strip_setup(2.5 * mm, 2.5 * mm), {p, p, p});
    expect_within(kStrip, "free, P " + number_text(p) + ": h/a", middle.height_a, height, 0.01);
    expect_within(kStrip, "free, P " + number_text(p) + ": V/a²", middle.volume_a2, volume, 0.01);
  }
}

TEST(LongStrip, PressesAPlateAsTheClosedForm) {
  for (const auto& [distance, patch, force] :
       std::vector<std::array<double, 3>>{{.2, .714176, 1.428352}, {.4, .456924, .913848}}) {
    expect_derived(patch, strip_on_plate(1.0, distance).patch);
    expect_derived(force, strip_on_plate(1.0, distance).force);
    InflationSetup setup = strip_setup(1.5 * mm, 1.5 * mm);
    press_on(setup, std::make_shared<PlateBelow>(-distance * kHalf), kRigidPaPerM);
    const Middle middle = solve_strip(setup, {1.0, 1.0, 1.0});
    const std::string label = "plate at d/a " + number_text(distance) + ", P 1: ";
    expect_within(kStrip, label + "F/(μt)", middle.force_per_length / (kShear * kThickness), force, 0.01);
    expect_within(kStrip, label + "patch c/a (from force over pressure)",
                  middle.force_per_length / (2.0 * load(1.0).si() * kHalf), patch, 0.01);
  }
}

// Our foundation pushes along the normal of the body, here the plane's. One that pushes along the sheet's own
// normal is another model, whose figures are told beside ours: the two part on the steep slopes at the
// clamps.
struct FoundationRow {
  double k, p, depth, force, other_depth, other_force;
  double force_tolerance = 0.01;
};

void check_foundation(const FoundationRow& row) {
  const StripShape reference = strip_on_foundation(row.p, row.k, Push::kAlongPlaneNormal),
                   other = strip_on_foundation(row.p, row.k, Push::kAlongSheetNormal);
  expect_derived(row.depth, reference.height);
  expect_derived(row.force, reference.force);
  expect_derived(row.other_depth, other.height);
  expect_derived(row.other_force, other.force);
  InflationSetup setup = strip_setup(2.0 * mm, 0.5 * mm);
  press_on(setup, std::make_shared<PlateBelow>(0.0), row.k * kShear * kThickness / (kHalf * kHalf));
  const Middle middle = solve_strip(setup, {row.p, row.p});
  const double force = middle.force_per_length / (2.0 * load(row.p).si() * kHalf);
  const std::string label = "foundation K " + number_text(row.k) + ", P " + number_text(row.p) + ": ";
  expect_within(kFoundation, label + "z0/a", middle.height_a, row.depth, 0.01);
  expect_within(kFoundation, label + "q max/p", middle.q_pa / load(row.p).si(), row.k * row.depth / row.p,
                0.01);
  expect_within(kFoundation, label + "F/(2pa)", force, row.force, row.force_tolerance);
  tell(kFoundation, label + "z0/a, F/(2pa) of a foundation along the sheet's normal, another model",
       number_text(row.other_depth) + ", " + number_text(row.other_force));
}

// On the hardest the sheet leaves the plane within a hundredth of the half width, less than an element of
// this mesh: its force is accepted to 1.5 %.
TEST(LongStrip, PressesAFoundationAsTheReference) {
  for (const FoundationRow& row : {FoundationRow{2, 1, .401171, .657893, .405042, .609452},
                                   {20, 1, .050000, .965190, .050000, .955781},
                                   {20, 4, .199615, .988657, .199899, .918404},
                                   {60, 1, .016667, .988436, .016667, .985180, 0.015}})
    check_foundation(row);
}

}  // namespace
}  // namespace wrapgauge::published
