#include "model/study/study_case.hpp"

#include <tuple>

#include "model/contact/audit.hpp"
#include "model/limits/limit_share.hpp"
#include "model/pipeline/solved_relief.hpp"

namespace wrapgauge {
namespace {

// The worse first. Among what is above a limit, pressure and its kind come before the session, and a time
// that no pressure keeps before what pressure and time come to together; then the larger share.
void take_nearer(LimitShare candidate, bool session, LimitShare& nearest, int& nearest_kind) {
  const bool above = candidate.severity >= Severity::kAboveLimit;
  const int kind = !above ? 0 : !session ? 3 : candidate.of_time ? 2 : 1;
  const auto rank = [](const LimitShare& of, int of_kind) {
    return std::tuple(of_kind > 0 ? of.severity : Severity::kNote, of_kind, of.share);
  };
  if (!(rank(candidate, kind) > rank(nearest, nearest_kind))) return;
  nearest = std::move(candidate);
  nearest_kind = kind;
}

// The path to a state on the way; what stopped it later is left out.
LoadPath ended_at(const LoadPath& path, std::size_t state) {
  LoadPath ended;
  ended.sheet = path.sheet;
  ended.states.assign(path.states.begin(), path.states.begin() + static_cast<std::ptrdiff_t>(state) + 1);
  return ended;
}

}  // namespace

LimitShare nearest_limit(const Judgement& judgement) {
  LimitShare nearest;
  int kind = 0;
  for (const Finding& finding : judgement.findings) {
    const bool session = finding.cause == Cause::kTime || finding.where == "exposure";
    take_nearer({finding.share_of_limit, finding.where, english(finding.sentence), finding.severity,
                 session && finding.share_of_limit <= 0.0},
                session, nearest, kind);
  }
  for (const Hazard& hazard : judgement.hazards)
    if (hazard.kind != HazardKind::kStuck)
      take_nearer({0.0, english(hazard.name), english(hazard.sentence), hazard.severity, false}, false,
                  nearest, kind);
  return nearest;
}

Result<StudyCase> StudyCase::make(const Plan& plan, const Body& body, const Resources& resources,
                                  const FlatMeshOptions& mesh, const KnownBefore& known) {
  auto prepared = prepare(plan, body, resources, mesh, known);
  if (!prepared) return prepared.problem();
  StudyCase made;
  made.body_ = body;
  made.prepared_ = std::move(prepared).value();
  made.limits_ = resources.limits;
  made.comparisons_ = resources.comparisons;
  made.limit_inputs_ = limit_inputs(plan, made.prepared_);
  made.supply_ = plan.supply;
  made.filling_ = plan.filling;
  made.solver_ = plan.solver;
  made.solver_.closed_state = true;
  return made;
}

Result<StudyCase> StudyCase::with_inflation_of(const Plan& plan) const {
  StudyCase other = *this;
  if (auto problem = set_targets(plan, other.prepared_)) return *problem;
  other.limit_inputs_ = limit_inputs(plan, other.prepared_);
  other.supply_ = plan.supply;
  return other;
}

Result<LoadPath> StudyCase::inflate_to(const std::vector<InflationTarget>& targets,
                                       Progress& progress) const {
  return inflate(prepared_.setup, targets, solver_, progress, prepared_.closing.get());
}

StateReading StudyCase::read(const LoadPath& path, std::size_t state) const {
  const bool whole = state + 1 == path.states.size() && !path.limit_point;
  return whole ? read(path) : read(ended_at(path, state));
}

StateReading StudyCase::read(const LoadPath& path) const {
  return read(path, supply_, std::nullopt);
}

StateReading StudyCase::read_with_supply(const LoadPath& path, std::vector<InletRelief> settings,
                                         const Supply& supply) const {
  return read(path, supply, std::move(settings));
}

Result<StateReading> StudyCase::read_with_relief(const LoadPath& path, Progress& progress) const {
  const auto solved = solved_relief({body_, prepared_, solver_, limits_, limit_inputs_},
                                    read(path).judgement.relief, progress);
  if (!solved) return solved.problem();
  StateReading reading = read(path, supply_, solved->settings);
  if (!solved->settings.empty()) reading.relief_share = solved->place_share;
  return reading;
}

StateReading StudyCase::read(const LoadPath& path, const Supply& supply,
                             std::optional<std::vector<InletRelief>> relief) const {
  const EquilibriumState& state = path.states.back();
  StateReading reading;
  for (Eigen::Index g = 0; g < state.group_pressure_pa.size(); ++g) {
    reading.gauge.emplace_back(state.group_pressure_pa[g]);
    reading.volume.emplace_back(state.group_volume_m3[g]);
  }
  const InflationSetup& setup = prepared_.setup;
  MappedContact found = contact(path, state);
  reading.map = std::move(found.map);
  reading.figures = std::move(found.figures);
  const Audit balance = audit(body_, setup, path, state);
  reading.judgement = judged({setup, path, reading.map, reading.figures, balance},
                             {limits_, comparisons_, limit_inputs_, supply, filling_, std::move(relief)});
  reading.nearest = nearest_limit(reading.judgement);
  return reading;
}

FigureInputs StudyCase::figure_inputs() const {
  return {prepared_.skin_grade.elongation_at_break, prepared_.outer_grade.elongation_at_break,
          prepared_.bed.depth_m};
}

std::vector<ChamberFigures> StudyCase::brief_figures(const LoadPath& path,
                                                     const EquilibriumState& state) const {
  return brief_chamber_figures(prepared_.setup, figure_inputs(), path, state,
                               contact_map(prepared_.setup, path, state));
}

MappedContact StudyCase::contact(const LoadPath& path, const EquilibriumState& state) const {
  const FigureInputs inputs = figure_inputs();
  ContactMap map = contact_map(prepared_.setup, path, state);
  ContactFigures figures = contact_figures(body_, prepared_.setup, inputs, path, state, map);
  return {std::move(map), std::move(figures)};
}

Eigen::VectorXd StudyCase::share_on_layout(const LoadPath& path, const MappedContact& contact) const {
  return share_of_limit(limits_, limit_inputs_, prepared_.setup, path.states.back(), path.sheet,
                        contact.figures, contact.map.mean_1cm2_pa);
}

Eigen::VectorXd StudyCase::limit_on_layout(const LoadPath& path, const MappedContact& contact) const {
  return limit_on_layout_pa(limits_, limit_inputs_, prepared_.setup, path.states.back(), path.sheet,
                            contact.figures);
}

std::string StudyCase::inlet_of(std::size_t group) const {
  return prepared_.setup.layout.inlets[index_of(prepared_.setup.flat.group_inlet[group])].name;
}

}  // namespace wrapgauge
