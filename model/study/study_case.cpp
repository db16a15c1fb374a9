#include "model/study/study_case.hpp"

#include "model/limits/device_finding.hpp"
#include "model/limits/pressure_finding.hpp"

namespace wrapgauge {

Result<StudyCase> StudyCase::make(const Plan& plan, const Body& body, const Resources& resources,
                                  const FlatMeshOptions& mesh) {
  auto prepared = prepare(plan, body, resources, mesh);
  if (!prepared) return prepared.problem();
  StudyCase made;
  made.body_ = body;
  made.prepared_ = std::move(prepared).value();
  made.limits_ = resources.limits;
  made.limit_inputs_ = limit_inputs(plan, made.prepared_);
  made.solver_ = plan.solver;
  made.solver_.closed_state = true;
  return made;
}

Result<LoadPath> StudyCase::inflate_to(const std::vector<InflationTarget>& targets,
                                       Progress& progress) const {
  return inflate(prepared_.setup, targets, solver_, progress, prepared_.closing.get());
}

StateReading StudyCase::read(const LoadPath& path, const EquilibriumState& state) const {
  StateReading reading;
  for (Eigen::Index g = 0; g < state.group_pressure_pa.size(); ++g) {
    reading.gauge.emplace_back(state.group_pressure_pa[g]);
    reading.volume.emplace_back(state.group_volume_m3[g]);
  }
  const ContactMap map = contact_map(body_, prepared_.setup, path, state);
  const FigureInputs inputs{prepared_.skin_grade.elongation_at_break,
                            prepared_.outer_grade.elongation_at_break, prepared_.bed.depth_m};
  reading.figures = contact_figures(body_, prepared_.setup, inputs, path, state, map);
  const PressedState pressed = pressed_state(prepared_.setup, path, state, map, reading.figures);
  std::vector<Finding> all = pressure_findings(limits_, limit_inputs_, pressed);
  // The balance of forces has no limit to share in, so the device is judged without an audit.
  for (auto& more : {cuff_findings(limits_, pressed), device_findings(limits_, limit_inputs_, prepared_.setup,
                                                                      path, reading.figures, Audit{})})
    all.insert(all.end(), more.begin(), more.end());
  for (const Finding& finding : all)
    if (finding.share_of_limit > reading.nearest.share)
      reading.nearest = {finding.share_of_limit, finding.where, english(finding.sentence)};
  return reading;
}

std::string StudyCase::inlet_of(std::size_t group) const {
  return prepared_.setup.layout.inlets[index_of(prepared_.setup.flat.group_inlet[group])].name;
}

bool StudyCase::goes_round(const StateReading& reading) const {
  return reading.figures.share_of_girth >= limits_.circumferential_share;
}

}  // namespace wrapgauge
