#include "model/note/summarise.hpp"

#include <algorithm>

#include "model/body/part_rules.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/version.hpp"
#include "model/wrap/fit_words.hpp"

namespace wrapgauge {
namespace {

std::string mm_text(Length length, int decimals = 1) {
  return fixed_text(length / mm, decimals) + " mm";
}

std::string sheet_words(const char* side, const Sheet& sheet, const SiliconeGrade& grade) {
  return std::string(side) + " sheet: silicone " + grade.hardness + ", " + mm_text(sheet.thickness);
}

std::vector<std::string> worn_words(const Plan& plan, const Estimate& estimate) {
  const Layout& layout = plan.layout;
  std::vector<std::string> words;
  words.push_back("Layout '" + layout.name + "' with " + std::to_string(layout.chambers.size()) +
                  " chambers on body '" + estimate.body.name + "'.");
  words.push_back(sheet_words("Skin", layout.skin_sheet, estimate.skin_grade) + "; " +
                  sheet_words("outer", layout.outer_sheet, estimate.outer_grade) + ".");
  if (!estimate.wrap.fit.sections.empty())
    words.push_back(english(fastened_words(estimate.wrap.fit)));
  else
    words.push_back("Laid on without going round.");
  return words;
}

std::string sourced(const std::string& what, const std::string& status, const std::string& source) {
  return what + " (" + status + "; " + source + ").";
}

std::string grade_words(const SiliconeGrade& grade) {
  std::string words =
      sourced("Silicone " + grade.hardness + ": " + std::string(law_name(grade.law)) + ", shear modulus " +
                  fixed_text(initial_shear_modulus(grade.law) / kPa, 0) + " kPa",
              grade.status, grade.source);
  return grade.caution.empty() ? words : words + " " + grade.caution;
}

std::string tissue_model_words(const Plan& plan) {
  return plan.tissue_model == TissueModel::kCoupled
             ? "a coupled layer on bone (a pressed place lowers its surroundings too)"
             : "an elastic foundation (each place sinks under its own pressure only)";
}

std::string distance_words(const SkinRegion& region) {
  std::string words;
  for (const TissueAtDistance& step : region.by_distance) {
    words.append(words.empty() ? "" : "; ").append("at ").append(mm_text(step.distance));
    if (step.tissue_depth) words.append(" ").append(mm_text(*step.tissue_depth)).append(" deep");
    if (step.stiffness_factor)
      words.append(" ").append(fixed_text(*step.stiffness_factor, 2)).append(" times as stiff");
  }
  return words;
}

std::string region_words(const SkinRegion& region) {
  std::string words = "Over '";
  words.append(region.name).append("' the plan sets the tissue");
  if (region.tissue_depth) words.append(" ").append(mm_text(*region.tissue_depth)).append(" deep");
  if (region.tissue_depth && region.stiffness_factor) words.append(" and");
  if (region.stiffness_factor)
    words.append(" ").append(fixed_text(*region.stiffness_factor, 2)).append(" times as stiff");
  if (!region.by_distance.empty())
    words.append(" by the distance from its point: ").append(distance_words(region));
  return words.append(".");
}

// A row of the table that was made for another part, or that the table does not have for this one.
std::optional<std::string> unconfirmed_tissue_words(const Body& body) {
  if (!body.part || tissue_was_chosen_for(body.part, body.tissue_site)) return std::nullopt;
  std::string rows;
  for (const std::string_view row : tissue_rows_of(*body.part))
    rows.append(rows.empty() ? "'" : ", '").append(row).append("'");
  return "Tissue not confirmed: the row '" + body.tissue_site + "' was not chosen for the part '" +
         std::string(body_part_name(*body.part)) + "', for which the table has " +
         (rows.empty() ? "no row" : rows) + " (judgement).";
}

std::string depth_words(const Estimate& estimate) {
  if (const auto& bone = estimate.limit_inputs.bone_anywhere)
    return "no more than " + mm_text(std::min(*bone, estimate.tissue.depth)) +
           " to bone, as over the shallowest bone: nobody has said where the bones lie";
  return mm_text(estimate.tissue.depth) + " to bone unless a map or bony site says otherwise";
}

std::vector<std::string> assumed_words(const Plan& plan, const Estimate& estimate) {
  const TissueSite& tissue = estimate.tissue;
  std::vector<std::string> words;
  words.push_back(sourced("Tissue '" + tissue.name + "' as " + tissue_model_words(plan) + ": modulus " +
                              fixed_text(tissue.young * plan.tissue_stiffness_factor.value_or(1.0) / kPa, 1) +
                              " kPa, " + depth_words(estimate),
                          tissue.status, tissue.source));
  if (auto unconfirmed = unconfirmed_tissue_words(estimate.body)) words.push_back(std::move(*unconfirmed));
  for (const SkinRegion& region : plan.regions)
    if (region.tissue_depth || region.stiffness_factor || !region.by_distance.empty())
      words.push_back(region_words(region));
  words.push_back(grade_words(estimate.skin_grade));
  if (estimate.outer_grade.hardness != estimate.skin_grade.hardness)
    words.push_back(grade_words(estimate.outer_grade));
  words.push_back("Friction of skin on silicone " + fixed_text(plan.friction, 2) +
                  " (as the plan gives it).");
  words.push_back(std::string("The limb is still and ") +
                  std::string(posture_name(plan.posture.value_or(Posture::kRelaxed))) +
                  "; bone, muscle tone, clothing and movement are not modelled. The "
                  "overlapping tail of a closure is left out.");
  const std::string whose = estimate.limits.differs_words ? " (not the program's own set)" : "";
  words.push_back("Limits: " + estimate.limits.name + whose + "; " + english(use_words(plan.use)) + ".");
  return words;
}

std::string asked_text(const InflationTarget& target) {
  if (const auto* pressure = std::get_if<Pressure>(&target)) return pressure_text(*pressure);
  if (const auto* volume = std::get_if<Volume>(&target)) return fixed_text(*volume / mL, 1) + " mL";
  return fixed_text(std::get<TrappedAir>(target).pushed / mL, 1) + " mL of air pushed in";
}

std::vector<InflatedInlet> inlets_reached(const Plan& plan, const Estimate& estimate) {
  const EquilibriumState& last = estimate.path.states.back();
  std::vector<InflatedInlet> inlets;
  for (std::size_t g = 0; g < estimate.setup.flat.group_inlet.size(); ++g) {
    const std::string& name = plan.layout.inlets[index_of(estimate.setup.flat.group_inlet[g])].name;
    InflatedInlet inlet{clean_text(name), "", Pressure(last.group_pressure_pa[static_cast<Eigen::Index>(g)]),
                        Volume(last.group_volume_m3[static_cast<Eigen::Index>(g)])};
    for (const InletProgram& program : plan.inflation)
      if (program.inlet == name) inlet.asked = asked_text(program.target), inlet.steps = program.steps;
    inlets.push_back(inlet);
  }
  return inlets;
}

std::optional<std::string> limit_point_words(const Plan& plan, const Estimate& estimate) {
  const auto& limit = estimate.path.limit_point;
  if (!limit) return std::nullopt;
  const InletId inlet = estimate.setup.flat.group_inlet[index_of(limit->group)];
  const std::string at = "Above " + pressure_text(limit->pressure) + " (" +
                         fixed_text(limit->volume / mL, 1) + " mL) ",
                    fed = "the chambers fed by inlet '" + plan.layout.inlets[index_of(inlet)].name + "'";
  if (limit->kind == LimitKind::kOverstretched)
    return at + "a sheet of " + fed + " is stretched further than its material is known for (" +
           fixed_text(estimate.setup.skin_stretch_limit, 1) + " times its length on the skin side, " +
           fixed_text(estimate.setup.outer_stretch_limit, 1) +
           " outside). The figures below are at that limit, not at the inflation asked for.";
  if (limit->kind == LimitKind::kFolds)
    return at + "in " + fed +
           " a sheet folds, and no shape with its folds was found. The figures below are those of the last "
           "smooth shape, not at the inflation asked for; a fold presses in a line, harder than they say.";
  return at + fed +
         " run away when a regulator holds the pressure: the bulge grows by itself. Filled by volume they "
         "reach " +
         fixed_text(limit->past_volume / mL, 1) + " mL at " + pressure_text(limit->past_pressure) +
         ". The figures below are at that limit, not at the pressure asked for.";
}

// Each row once, with the times that hold in this use, strictest first.
std::vector<LimitRow> rows_in_use(const Estimate& estimate) {
  std::vector<LimitRow> rows;
  const auto all = rows_on_layout(estimate.limits, estimate.limit_inputs, estimate.setup,
                                  estimate.path.states.back(), estimate.path.sheet, estimate.figures);
  for (const LimitRow& row : estimate.limits.rows)
    for (std::size_t v = 0; v < all.size(); ++v)
      if (all[v] == &row && estimate.map.mean_1cm2_pa[static_cast<Eigen::Index>(v)] > 0.0) {
        rows.push_back(row);
        rows.back().times = times_that_hold(estimate.limits, row, estimate.limit_inputs.use);
        break;
      }
  std::stable_sort(rows.begin(), rows.end(),
                   [](const LimitRow& a, const LimitRow& b) { return a.limit < b.limit; });
  return rows;
}

// What was put together from names out of files.
void clean_words(Summary& summary) {
  for (std::vector<std::string>* words : {&summary.worn, &summary.assumed, &summary.tables_differ})
    for (std::string& sentence : *words) sentence = clean_text(sentence);
  for (InputFile& input : summary.inputs) input.name = clean_text(input.name);
  if (summary.limit_point) summary.limit_point = clean_text(*summary.limit_point);
}

}  // namespace

void say_note_words(const Plan& plan, Summary& summary) {
  summary.plan = clean_text(plan.name);
  summary.wearers = plan.wearers;
  summary.date = plan.date;
}

Summary summarise(const Plan& plan, const Estimate& estimate, const std::vector<Phrase>& differ,
                  std::vector<InputFile> inputs) {
  Summary summary;
  summary.program_version = program_version();
  summary.inputs = std::move(inputs);
  say_note_words(plan, summary);
  summary.body = clean_text(estimate.body.name);
  summary.layout = clean_text(plan.layout.name);
  summary.worn = worn_words(plan, estimate);
  summary.assumed = assumed_words(plan, estimate);
  summary.inlets = inlets_reached(plan, estimate);
  summary.limit_point = limit_point_words(plan, estimate);
  summary.figures = estimate.figures;
  for (ChamberFigures& chamber : summary.figures.chambers) chamber.chamber = clean_text(chamber.chamber);
  summary.audit = estimate.audit;
  summary.mesh_error = estimate.mesh_error;
  summary.comparisons = estimate.comparisons;
  const FlatMeshOptions mesh = mesh_of_plan(plan);
  summary.mesh = {mesh.edge, mesh.seam_edge, estimate.path.sheet.node_count,
                  static_cast<int>(estimate.path.sheet.triangles.rows())};
  summary.model_factor = estimate.limits.model_factor;
  summary.calibration = estimate.limits.calibration;
  summary.findings = estimate.findings;
  summary.worst = estimate.worst();
  summary.exposure = estimate.exposure;
  summary.hazards = estimate.hazards;
  summary.relief = estimate.relief;
  summary.limits_name =
      estimate.limits.name + (estimate.limits.differs_words ? " (not the program's own set)" : "");
  summary.use = english(use_words(plan.use));
  summary.rows_in_use = rows_in_use(estimate);
  summary.release = estimate.limits.release;
  summary.session = plan.session;
  summary.part = estimate.body.part;
  summary.side = estimate.body.side;
  summary.bony_sites = estimate.limit_inputs.bony_sites;
  summary.sites_known = estimate.limit_inputs.sites_known;
  summary.bone_anywhere = estimate.limit_inputs.bone_anywhere;
  summary.sites_confirmed = plan.sites_confirmed;
  summary.cleared_by = plan.cleared_by;
  summary.tissue_confirmed = tissue_was_chosen_for(estimate.body.part, estimate.body.tissue_site);
  if (estimate.limits.differs_words) summary.tables_differ.push_back(english(*estimate.limits.differs_words));
  for (const Phrase& table : differ) summary.tables_differ.push_back(english(table));
  summary.limits_override = english(estimate.limits.override_words);
  summary.quality = estimate.wrap.quality;
  clean_words(summary);
  summary.closure = estimate.wrap.closure;
  return summary;
}

}  // namespace wrapgauge
