#include "model/bench/bench_setup.hpp"

#include <Eigen/Geometry>
#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/geometry/innermost_point.hpp"

namespace wrapgauge {
namespace {

constexpr double kGravity = 9.81;

void lay_flat(InflationSetup& setup) {
  const Eigen::Index count = setup.flat.vertices_m.rows();
  setup.start_m = setup.start_outward = Points3::Zero(count, 3);
  setup.start_m.leftCols(2) = setup.flat.vertices_m;
  setup.start_outward.col(2).setOnes();
}

void clamp_fused(InflationSetup& setup) {
  const SheetMesh sheet = make_sheet_mesh(setup.flat);
  for (std::size_t v = 0; v < sheet.skin_node.size(); ++v)
    if (sheet.skin_node[v] == sheet.outer_node[v]) setup.held.push_back(static_cast<int>(v));
}

double known_stretch(const SiliconeGrade& grade) {
  return std::min(grade.stretch_max, 1.0 + grade.elongation_at_break);
}

Vec3 weight_pa(const SiliconeGrade& grade, const Sheet& sheet) {
  return kGravity * grade.density.si() * sheet.thickness.si() * Vec3::UnitZ();
}

std::optional<Problem> gap_problem(const Layout& layout, Length gap) {
  const Length empty = layout.skin_sheet.thickness + layout.outer_sheet.thickness;
  if (gap > empty) return std::nullopt;
  return bad_input(Phrase::worded(
      "a gap of %1 under the plate leaves no room: the empty device is %2 thick; measure from "
      "the table to the plate's underside.",
      {figures_of(number_text(gap / mm, 3) + " mm"), figures_of(number_text(empty / mm, 3) + " mm")}));
}

// Of the table over the nodes, which lie in the middle of the skin sheet while the chambers are empty.
double table_height_m(const Layout& layout) {
  return 0.5 * layout.skin_sheet.thickness.si() + layout.outer_sheet.thickness.si();
}

// Area of the sheet round a node as it lies, over its area as drawn.
double area_growth(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
                   int node) {
  double now = 0.0, drawn = 0.0;
  for (Eigen::Index t = 0; t < path.sheet.triangles.rows(); ++t) {
    const auto nodes = path.sheet.triangles.row(t);
    if (nodes(0) != node && nodes(1) != node && nodes(2) != node) continue;
    const auto corner = [&](int c) -> Vec3 { return state.positions_m.row(nodes(c)).transpose(); };
    const auto flat = [&](int c) -> Vec2 {
      return setup.flat.vertices_m.row(path.sheet.flat_vertex[nodes(c)]).transpose();
    };
    now += (corner(1) - corner(0)).cross(corner(2) - corner(0)).norm();
    const Vec2 p = flat(1) - flat(0), q = flat(2) - flat(0);
    drawn += std::abs(p.x() * q.y() - p.y() * q.x());
  }
  return drawn > 0.0 ? now / drawn : 1.0;
}

}  // namespace

Result<InflationSetup> bench_setup(const Plan& plan, const Resources& resources, const FlatMeshOptions& mesh,
                                   Bedding bedding, Length gap) {
  InflationSetup setup;
  setup.layout = plan.layout;
  setup.layout.closure.reset();
  setup.layout.rim_bonded = false;
  setup.layout.straps.clear();  // cloth that lies loose beside the device
  const auto skin = find_grade(resources.silicones, plan.layout.skin_sheet.material);
  if (!skin) return skin.problem();
  const auto outer = find_grade(resources.silicones, plan.layout.outer_sheet.material);
  if (!outer) return outer.problem();
  auto flat = triangulate_layout(setup.layout, std::nullopt, mesh);
  if (!flat) return flat.problem();
  setup.flat = std::move(flat).value();
  setup.skin_law = skin->law;
  setup.outer_law = outer->law;
  setup.skin_stretch_limit = known_stretch(*skin);
  setup.outer_stretch_limit = known_stretch(*outer);
  lay_flat(setup);
  if (bedding == Bedding::kClamped) {
    clamp_fused(setup);
    return setup;
  }
  const double table_m = table_height_m(setup.layout);
  setup.plates.push_back({PlateFaces::kOuterSheet, table_m * Vec3::UnitZ(), -Vec3::UnitZ()});
  setup.skin_weight_pa = weight_pa(*skin, setup.layout.skin_sheet);
  setup.outer_weight_pa = weight_pa(*outer, setup.layout.outer_sheet);
  if (bedding == Bedding::kTable) return setup;
  if (auto problem = gap_problem(setup.layout, gap)) return *problem;
  setup.plates.push_back({PlateFaces::kSkinSheet, (table_m - gap.si()) * Vec3::UnitZ(), Vec3::UnitZ()});
  return setup;
}

int middle_vertex(const InflationSetup& setup, ChamberId chamber) {
  const Vec2 middle = innermost_point_m(setup.layout.chambers[index_of(chamber)].boundary_m);
  Eigen::Index nearest = 0;
  (setup.flat.vertices_m.rowwise() - middle.transpose()).rowwise().squaredNorm().minCoeff(&nearest);
  return static_cast<int>(nearest);
}

Length bulge_height(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
                    int flat_vertex, Bedding bedding) {
  const int top = path.sheet.skin_node[static_cast<std::size_t>(flat_vertex)];
  const double rest_m = setup.layout.skin_sheet.thickness.si();
  const double face_m = state.positions_m(top, 2) - 0.5 * rest_m / area_growth(setup, path, state, top);
  if (bedding == Bedding::kClamped) return Length(-0.5 * rest_m - face_m);
  return Length(setup.plates.front().point_m.z() - face_m);
}

}  // namespace wrapgauge
