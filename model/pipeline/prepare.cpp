#include "model/pipeline/prepare.hpp"

#include <algorithm>

#include "model/body/part_rules.hpp"
#include "model/body/region_places.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"
#include "model/geometry/grid_distance.hpp"
#include "model/inflation/kept_closing.hpp"
#include "model/layout/layout_check.hpp"
#include "model/limits/fit_finding.hpp"
#include "model/pipeline/said_of_body.hpp"
#include "model/wrap/fit_words.hpp"
#include "model/wrap/no_go.hpp"

namespace wrapgauge {
namespace {

std::optional<Problem> first_layout_problem(const Layout& layout) {
  std::vector<Problem> problems = check_layout(layout);
  if (problems.empty()) return std::nullopt;
  if (problems.size() == 1) return problems[0];
  return reworded(problems[0], Phrase::worded("%1 (and %2 more in this layout)",
                                              {phrase_of(problems[0]),
                                               figures_of(static_cast<int>(problems.size()) - 1)}));
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

Result<TissueSite> tissue_of(const Plan& plan, const Body& body, const Resources& resources) {
  const auto row = find_tissue(resources.tissues, body.tissue_site);
  if (!row) return row.problem();
  TissueSite tissue = *row;
  if (plan.tissue_poisson) tissue.poisson = *plan.tissue_poisson;
  if (auto problem = take_posture(plan.posture, tissue)) return *problem;
  if (const auto& calibration = resources.limits.calibration) {
    tissue.young = tissue.young * calibration->factors.tissue;
    if (calibration->factors.tissue != 1.0)
      tissue.source += " Times " + number_text(calibration->factors.tissue, 3) + ", by readings.";
  }
  return tissue;
}

std::shared_ptr<const BodySurface> surface_of(const Body& body, const KnownBefore& known) {
  if (known.surface) return {std::shared_ptr<const void>(), known.surface};
  return std::make_shared<const BodySurface>(body);
}

// Proposed sites are looked at, but until someone has confirmed or dropped each, others may be missing.
bool sites_are_known(const Plan& plan, const std::vector<BonySite>& sites) {
  if (plan.sites_confirmed) return true;
  return !sites.empty() && std::none_of(sites.begin(), sites.end(), is_proposed);
}

// Depths that differ from place to place say where the bones lie.
bool has_depth_map(const Body& body) {
  return body.tissue_depth_m.size() > 0 && body.tissue_depth_m.minCoeff() < body.tissue_depth_m.maxCoeff();
}

// Over bone a device presses harder than over soft tissue, not only is less allowed: where bones may lie
// anywhere, tissue is taken as thin as over the shallowest of them. A test object has what its plan gives it.
std::optional<Length> bone_anywhere(const Plan& plan, const Body& body, const std::vector<BonySite>& sites) {
  if (sites_are_known(plan, sites) || has_depth_map(body)) return std::nullopt;
  if (body.part && !is_worn(*body.part)) return std::nullopt;
  return shallowest_site(body.part);
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
  auto bed = tissue_bed(body, prepared.tissue,
                        {.sites = prepared.bony_sites,
                         .regions = prepared.regions,
                         .stiffness_factor = plan.tissue_stiffness_factor.value_or(1.0),
                         .bone_anywhere = prepared.bone_anywhere},
                        worn);
  if (!bed) return bed.problem();
  prepared.bed = std::move(bed).value();
  prepared.setup.body = std::move(distance).value();
  prepared.setup.foundation_pa_per_m = prepared.bed.foundation_pa_per_m;
  if (plan.tissue_model == TissueModel::kCoupled)
    prepared.setup.coupled_tissue = TissueLayer{prepared.tissue.young.si(), prepared.tissue.poisson,
                                                prepared.bed.depth_m, prepared.bed.stiffness_factor};
  return std::nullopt;
}

// What readings have made of the sheets.
void take_factors(const SheetFactors& factors, LaidOut& laid_out) {
  laid_out.skin_grade.law = scaled(laid_out.skin_grade.law, factors.skin_law);
  laid_out.outer_grade.law = scaled(laid_out.outer_grade.law, factors.outer_law);
  laid_out.skin_thickness = factors.thickness_of(laid_out.skin_thickness, factors.skin_thicker);
  laid_out.outer_thickness = factors.thickness_of(laid_out.outer_thickness, factors.outer_thicker);
}

// The law holds where it was fitted; beyond its elongation at break a sheet has torn.
double known_stretch(const SiliconeGrade& grade) {
  return std::min(grade.stretch_max, 1.0 + grade.elongation_at_break);
}

void set_up_sheets(const Plan& plan, Prepared& prepared) {
  prepared.setup.layout = plan.layout;
  prepared.setup.layout.skin_sheet.thickness = prepared.skin_thickness;
  prepared.setup.layout.outer_sheet.thickness = prepared.outer_thickness;
  prepared.setup.skin_law = prepared.skin_grade.law;
  prepared.setup.outer_law = prepared.outer_grade.law;
  prepared.setup.skin_stretch_limit = known_stretch(prepared.skin_grade);
  prepared.setup.outer_stretch_limit = known_stretch(prepared.outer_grade);
  prepared.setup.start_m = prepared.wrap.worn_m;
  prepared.setup.start_outward = prepared.wrap.outward_at_worn;
  prepared.setup.friction = plan.friction;
  std::vector<Phrase> misfit;
  for (const Finding& finding : fit_findings(prepared.wrap.fit)) misfit.push_back(finding.sentence);
  if (!misfit.empty()) prepared.setup.misfit = in_a_row(std::move(misfit));
  prepared.closing = std::make_shared<KeptClosing>();
}

// What each group's inlet does over the session.
std::vector<std::vector<ProgrammeStep>> programmes_of_groups(const Plan& plan, const FlatMesh& flat) {
  std::vector<std::vector<ProgrammeStep>> programmes;
  for (const InletId id : flat.group_inlet) {
    programmes.push_back(session_steps(*plan.session));
    for (const InletProgram& program : plan.inflation)
      if (program.inlet == plan.layout.inlets[index_of(id)].name && !program.steps.empty())
        programmes.back() = program.steps;
  }
  return programmes;
}

}  // namespace

Result<Body> body_of_plan(const Plan& plan, Body body) {
  if (!plan.tissue_site.empty()) body.tissue_site = plan.tissue_site;
  if (auto problem = take_what_is_said(plan, body)) return *problem;
  if (plan.tissue_depth_mm.empty()) return body;
  const auto vertices = static_cast<std::size_t>(body.surface.vertices_m.rows());
  if (plan.tissue_depth_mm.size() == 1) {
    body.tissue_depth_m =
        Eigen::VectorXd::Constant(body.surface.vertices_m.rows(), 1e-3 * plan.tissue_depth_mm.front());
    return body;
  }
  if (plan.tissue_depth_mm.size() != vertices)
    return bad_input(Phrase::worded(
        "the plan gives %1 tissue depths but the checked body has %2 vertices: give one for the whole body, "
        "one "
        "a vertex, or none.",
        {figures_of(std::to_string(plan.tissue_depth_mm.size())), figures_of(std::to_string(vertices))}));
  body.tissue_depth_m = 1e-3 * Eigen::Map<const Eigen::VectorXd>(plan.tissue_depth_mm.data(),
                                                                 static_cast<Eigen::Index>(vertices));
  return body;
}

namespace {

// A valve of an inlet that is not there would leave the one that is meant without it.
std::optional<Problem> unknown_valve(const Plan& plan) {
  const auto& inlets = plan.layout.inlets;
  for (const auto& valve : plan.supply.inlet_relief) {
    const std::string& name = valve.first;
    if (std::none_of(inlets.begin(), inlets.end(), [&](const Inlet& inlet) { return inlet.name == name; }))
      return bad_input(Phrase::worded(
          "supply, inlet_relief_kpa names the inlet '%1', which the layout does not have: give it "
          "the name of one that is there.",
          {name_of(name)}));
  }
  return std::nullopt;
}

}  // namespace

std::optional<Problem> set_targets(const Plan& plan, Prepared& prepared) {
  prepared.targets.clear();
  for (const InletId id : prepared.setup.flat.group_inlet) {
    const std::string& name = plan.layout.inlets[index_of(id)].name;
    const InletProgram* found = nullptr;
    for (const InletProgram& program : plan.inflation)
      if (program.inlet == name) found = &program;
    if (!found)
      return bad_input(
          Phrase::worded("inlet '%1' is given no pressure or volume: add it to the plan's inflation.",
                         {name_of(name)}),
          {{ProblemPlace::Kind::kInlet, static_cast<int>(index_of(id))}});
    prepared.targets.push_back(found->target);
  }
  return unknown_valve(plan);
}

Result<TakenBody> take_body(const Plan& plan, Body body, const Resources& resources,
                            const KnownBefore& known) {
  auto own = body_of_plan(plan, std::move(body));
  if (!own) return own.problem();
  if (auto problem = part_missing(own->name, own->part)) return *problem;
  TakenBody taken;
  taken.body = std::make_shared<const Body>(std::move(own).value());
  taken.bony_sites = taken.body->bony_sites;
  taken.bony_sites.insert(taken.bony_sites.end(), plan.bony_sites.begin(), plan.bony_sites.end());
  auto regions = placed_regions(plan.regions, {plan.landmarks, plan.bony_sites, taken.body->bony_sites});
  if (!regions) return regions.problem();
  taken.regions = std::move(regions).value();
  auto tissue = tissue_of(plan, *taken.body, resources);
  if (!tissue) return tissue.problem();
  taken.tissue = std::move(tissue).value();
  if (taken.body->surface.faces.rows() == 0) return bad_input(Phrase::worded("The body has no faces."));
  if (known.prepared) return taken;
  taken.surface = surface_of(*taken.body, known);
  if (auto problem = place_off_skin(plan, taken.bony_sites, taken.surface->nearest())) return *problem;
  return taken;
}

Result<LaidOut> lay_out(const Plan& plan, const TakenBody& body, const Resources& resources,
                        const FlatMeshOptions& mesh, const KnownBefore& known) {
  if (known.prepared)
    return LaidOut{known.prepared->skin_grade,     known.prepared->outer_grade,
                   known.prepared->skin_thickness, known.prepared->outer_thickness,
                   known.prepared->closing_length, known.prepared->setup.flat};
  if (!known.layout_is_sound)
    if (auto problem = first_layout_problem(plan.layout)) return *problem;
  const auto skin = find_grade(resources.silicones, plan.layout.skin_sheet.material);
  if (!skin) return skin.problem();
  const auto outer = find_grade(resources.silicones, plan.layout.outer_sheet.material);
  if (!outer) return outer.problem();
  const auto closing = resolve_closing_length(*body.surface, plan.layout, plan.placement);
  if (!closing) return closing.problem();
  auto flat = triangulate_layout(plan.layout, *closing, mesh);
  if (!flat) return flat.problem();
  LaidOut laid_out{*skin,
                   *outer,
                   plan.layout.skin_sheet.thickness,
                   plan.layout.outer_sheet.thickness,
                   *closing,
                   std::move(flat).value()};
  if (const auto& calibration = resources.limits.calibration) take_factors(calibration->factors, laid_out);
  return laid_out;
}

Result<Prepared> put_on(const Plan& plan, const TakenBody& body, LaidOut laid_out, const KnownBefore& known) {
  if (known.prepared) return *known.prepared;
  auto wrap = wrap_layout(*body.surface, plan.layout, laid_out.flat, plan.placement);
  if (!wrap) return wrap.problem();
  if (auto problem = laps_itself(wrap->fit)) return *problem;
  Prepared prepared;
  prepared.closing_length = laid_out.closing_length;
  prepared.skin_thickness = laid_out.skin_thickness;
  prepared.outer_thickness = laid_out.outer_thickness;
  prepared.skin_grade = std::move(laid_out.skin_grade);
  prepared.outer_grade = std::move(laid_out.outer_grade);
  prepared.tissue = body.tissue;
  prepared.wrap = std::move(wrap).value();
  prepared.setup.flat = std::move(laid_out.flat);
  prepared.bony_sites = body.bony_sites;
  prepared.regions = body.regions;
  prepared.part = body.body->part;
  prepared.bone_anywhere = bone_anywhere(plan, *body.body, body.bony_sites);
  if (auto problem = covered_no_go(body.regions, body.body->axis, prepared.setup.flat, prepared.wrap.worn_m))
    return *problem;
  if (auto problem = set_targets(plan, prepared)) return *problem;
  if (auto problem = set_up_contact(plan, *body.body, known.distances, prepared)) return *problem;
  set_up_sheets(plan, prepared);
  return prepared;
}

Result<Prepared> prepare(const Plan& plan, const Body& body, const Resources& resources,
                         const FlatMeshOptions& mesh, const KnownBefore& known) {
  const auto taken = take_body(plan, body, resources, known);
  if (!taken) return taken.problem();
  auto laid_out = lay_out(plan, *taken, resources, mesh, known);
  if (!laid_out) return laid_out.problem();
  return put_on(plan, *taken, std::move(laid_out).value(), known);
}

LimitInputs limit_inputs(const Plan& plan, const Prepared& prepared) {
  LimitInputs inputs{.use = plan.use,
                     .bony_sites = prepared.bony_sites,
                     .targets = prepared.targets,
                     .session = plan.session,
                     .programme = {},
                     .part = prepared.part,
                     .sites_known = sites_are_known(plan, prepared.bony_sites),
                     .bone_anywhere = prepared.bone_anywhere,
                     .sites_confirmed = plan.sites_confirmed,
                     .cleared_by = plan.cleared_by,
                     .fit = prepared.wrap.fit};
  if (plan.session) inputs.programme = programmes_of_groups(plan, prepared.setup.flat);
  return inputs;
}

}  // namespace wrapgauge
