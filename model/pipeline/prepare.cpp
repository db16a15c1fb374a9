#include "model/pipeline/prepare.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/geometry/grid_distance.hpp"
#include "model/inflation/kept_closing.hpp"
#include "model/layout/layout_check.hpp"
#include "model/pipeline/no_go.hpp"
#include "model/pipeline/region_places.hpp"
#include "model/wrap/body_surface.hpp"

namespace wrapgauge {
namespace {

std::optional<Problem> first_layout_problem(const Layout& layout) {
  std::vector<Problem> problems = check_layout(layout);
  if (problems.empty()) return std::nullopt;
  if (problems.size() > 1)
    problems[0].message += " (and " + std::to_string(problems.size() - 1) + " more in this layout)";
  return problems[0];
}

// The row that results name is the one that was reckoned with.
std::optional<Problem> take_posture(std::optional<Posture> posture, TissueSite& tissue) {
  const auto factor = posture_factor(tissue, posture);
  if (!factor) return factor.problem();
  if (*factor == 1.0) return std::nullopt;
  tissue.young = tissue.young * *factor;
  tissue.name += ", tense";
  tissue.source += " Tense: modulus times " + number_text(*factor, 3) + " (judgement).";
  return std::nullopt;
}

std::optional<Problem> choose_materials(const Plan& plan, const Body& body, const Resources& resources,
                                        Prepared& prepared) {
  const auto skin = find_grade(resources.silicones, plan.layout.skin_sheet.material);
  if (!skin) return skin.problem();
  const auto outer = find_grade(resources.silicones, plan.layout.outer_sheet.material);
  if (!outer) return outer.problem();
  const auto tissue = find_tissue(resources.tissues, body.tissue_site);
  if (!tissue) return tissue.problem();
  prepared.skin_grade = *skin;
  prepared.outer_grade = *outer;
  prepared.tissue = *tissue;
  if (plan.tissue_poisson) prepared.tissue.poisson = *plan.tissue_poisson;
  return take_posture(plan.posture, prepared.tissue);
}

std::optional<Problem> lay_on(const Plan& plan, const Body& body, const BodySurface& surface,
                              const FlatMeshOptions& mesh, Prepared& prepared) {
  const auto closing = resolve_closing_length(surface, plan.layout, plan.placement);
  if (!closing) return closing.problem();
  prepared.closing_length = *closing;
  auto flat = triangulate_layout(plan.layout, *closing, mesh);
  if (!flat) return flat.problem();
  auto wrap = wrap_layout(surface, plan.layout, *flat, plan.placement);
  if (!wrap) return wrap.problem();
  prepared.setup.flat = std::move(flat).value();
  prepared.wrap = std::move(wrap).value();
  return covered_no_go(prepared.regions, body.axis, prepared.setup.flat, prepared.wrap.worn_m);
}

std::optional<Problem> set_up_contact(const Plan& plan, const Body& body, DistanceBlocks* distances,
                                      Prepared& prepared) {
  constexpr double kRoom_m = 0.03;  // sheets bulge and tissue is pressed in by less than this
  const Points3& worn = prepared.wrap.worn_m;
  const Vec3 low = worn.colwise().minCoeff().array() - kRoom_m;
  const Vec3 high = worn.colwise().maxCoeff().array() + kRoom_m;
  auto distance =
      distances ? distances->over(body.surface, low, high) : make_grid_distance(body.surface, low, high);
  if (!distance) return distance.problem();
  auto bed =
      tissue_bed(body, prepared.tissue,
                 {prepared.bony_sites, prepared.regions, plan.tissue_stiffness_factor.value_or(1.0)}, worn);
  if (!bed) return bed.problem();
  prepared.bed = std::move(bed).value();
  prepared.setup.body = std::move(distance).value();
  prepared.setup.foundation_pa_per_m = prepared.bed.foundation_pa_per_m;
  if (plan.tissue_model == TissueModel::kCoupled)
    prepared.setup.coupled_tissue = TissueLayer{prepared.tissue.young.si(), prepared.tissue.poisson,
                                                prepared.bed.depth_m, prepared.bed.stiffness_factor};
  return std::nullopt;
}

// The law holds where it was fitted; beyond its elongation at break a sheet has torn.
double known_stretch(const SiliconeGrade& grade) {
  return std::min(grade.stretch_max, 1.0 + grade.elongation_at_break);
}

void set_up_sheets(const Plan& plan, Prepared& prepared) {
  prepared.setup.layout = plan.layout;
  prepared.setup.skin_law = prepared.skin_grade.law;
  prepared.setup.outer_law = prepared.outer_grade.law;
  prepared.setup.skin_stretch_limit = known_stretch(prepared.skin_grade);
  prepared.setup.outer_stretch_limit = known_stretch(prepared.outer_grade);
  prepared.setup.start_m = prepared.wrap.worn_m;
  prepared.setup.start_outward = prepared.wrap.outward_at_worn;
  prepared.setup.friction = plan.friction;
  prepared.closing = std::make_shared<KeptClosing>();
}

}  // namespace

Result<Body> body_of_plan(const Plan& plan, Body body) {
  if (!plan.tissue_site.empty()) body.tissue_site = plan.tissue_site;
  if (plan.tissue_depth_mm.empty()) return body;
  const auto vertices = static_cast<std::size_t>(body.surface.vertices_m.rows());
  if (plan.tissue_depth_mm.size() != vertices)
    return bad_input("the plan gives " + std::to_string(plan.tissue_depth_mm.size()) +
                     " tissue depths but the checked body has " + std::to_string(vertices) +
                     " vertices: give one a vertex, or none.");
  body.tissue_depth_m = 1e-3 * Eigen::Map<const Eigen::VectorXd>(plan.tissue_depth_mm.data(),
                                                                 static_cast<Eigen::Index>(vertices));
  return body;
}

std::optional<Problem> set_targets(const Plan& plan, Prepared& prepared) {
  prepared.targets.clear();
  for (const InletId id : prepared.setup.flat.group_inlet) {
    const std::string& name = plan.layout.inlets[index_of(id)].name;
    const InletProgram* found = nullptr;
    for (const InletProgram& program : plan.inflation)
      if (program.inlet == name) found = &program;
    if (!found)
      return bad_input("inlet '" + name + "' is given no pressure or volume: add it to the plan's inflation.",
                       {{ProblemPlace::Kind::kInlet, static_cast<int>(index_of(id))}});
    prepared.targets.push_back(found->target);
  }
  return std::nullopt;
}

FlatMeshOptions mesh_of_plan(const Plan& plan, double factor) {
  FlatMeshOptions mesh;
  mesh.edge = factor * plan.mesh_edge;
  mesh.seam_edge = std::min(mesh.edge, factor * plan.mesh_seam_edge.value_or(plan.mesh_edge));
  mesh.seam_band = plan.mesh_seam_band.value_or(mesh.seam_band);
  return mesh;
}

Result<Prepared> prepare(const Plan& plan, const Body& body, const Resources& resources,
                         const FlatMeshOptions& mesh, const KnownBefore& known) {
  Prepared prepared;
  prepared.bony_sites = body.bony_sites;
  prepared.bony_sites.insert(prepared.bony_sites.end(), plan.bony_sites.begin(), plan.bony_sites.end());
  if (!known.layout_is_sound)
    if (auto problem = first_layout_problem(plan.layout)) return *problem;
  auto regions = placed_regions(plan, body.bony_sites);
  if (!regions) return regions.problem();
  prepared.regions = std::move(regions).value();
  if (auto problem = choose_materials(plan, body, resources, prepared)) return *problem;
  if (body.surface.faces.rows() == 0) return bad_input("The body has no faces.");
  std::optional<BodySurface> made;
  const BodySurface& surface = known.surface ? *known.surface : made.emplace(body);
  if (auto problem = lay_on(plan, body, surface, mesh, prepared)) return *problem;
  if (auto problem = set_targets(plan, prepared)) return *problem;
  if (auto problem = set_up_contact(plan, body, known.distances, prepared)) return *problem;
  set_up_sheets(plan, prepared);
  return prepared;
}

}  // namespace wrapgauge
