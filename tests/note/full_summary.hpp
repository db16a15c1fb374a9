#pragma once
// A summary made by hand in which every figure differs from every other, so that one that stands under
// another's name, or in another's unit, shows.

#include "model/note/note.hpp"

namespace wrapgauge {

inline ChamberFigures full_chamber() {
  ChamberFigures chamber;
  chamber.chamber = "pad";
  chamber.gauge = 7.1 * kPa, chamber.volume = 23.47 * mL;
  chamber.mean = 4.2 * kPa, chamber.peak = 5.3 * kPa, chamber.p95 = 6.4 * kPa;
  chamber.peak_at_m = Vec3(0.011, 0.022, 0.033);
  chamber.peak_at_flat_m = Vec2(0.044, 0.055);
  chamber.drawn_area = 15.5 * cm2, chamber.contact_area = 12.27 * cm2, chamber.contact_fraction = 0.815;
  chamber.force = 6.51 * newton;
  chamber.stretch_max = 1.31, chamber.share_of_break = 0.071, chamber.seam_tension = 0.163 * N_per_mm;
  chamber.indentation_max = 3.7 * mm, chamber.tissue_strain = 0.185;
  return chamber;
}

inline ChamberFigures lesser_chamber() {
  ChamberFigures chamber = full_chamber();
  chamber.chamber = "other";
  chamber.gauge = 3.3 * kPa, chamber.volume = 11.9 * mL;
  chamber.mean = 1.6 * kPa, chamber.peak = 1.9 * kPa, chamber.p95 = 1.8 * kPa;
  return chamber;
}

inline LimitRow full_row() {
  return {SiteClass::kSoft,
          UsePattern::kSustained,
          2.7 * kPa,
          4.0 * kPa,
          std::nullopt,
          {15.0 * minute, 60.0 * minute, 50.0 * minute, 0.2, 120.0 * minute},
          "chosen below others",
          "judgement",
          "why"};
}

inline SkinExposure full_exposure() {
  SkinExposure exposure;
  exposure.worst_share = 0.47;
  exposure.worst_part = Phrase::worded("chamber 'pad'");
  exposure.worst_row = full_row();
  exposure.worst.session = 42.0 * minute;
  exposure.worst.product = 188.0 * kPa_min;
  exposure.worst.longest_hold = 95.0 * second;
  exposure.worst.duty = 0.61;
  exposure.broken = {{TimeRule::kHold, 1.3, Phrase::worded("pressed for too long")}};
  exposure.still_pressed = 2.2 * kPa;
  exposure.first_check = 9.0 * minute;
  exposure.rest_after = 35.0 * minute;
  return exposure;
}

inline SeamFigures full_seam() {
  SeamFigures seam;
  seam.seam = Phrase::worded("inset spot 1 of chamber 'pad'");
  seam.inset = true;
  seam.largest = 0.81 * N_per_mm, seam.mean = 0.52 * N_per_mm, seam.concentration = 1.56;
  seam.at_flat_m = Vec2(0.061, 0.072);
  seam.sheet = Phrase::worded("outer");
  seam.length = 25.1 * mm;
  return seam;
}

inline std::vector<Hazard> full_hazards() {
  return {{HazardKind::kVent, Phrase::worded("Vents too slowly"), Severity::kNote,
           Phrase::worded("It falls in 0.5 s."), Phrase::worded("Time it.")},
          {HazardKind::kStuck, Phrase::worded("A valve or pump that sticks"), Severity::kAboveLimit,
           Phrase::worded("It opens too late."), Phrase::worded("Fit another.")}};
}

inline Summary full_summary() {
  Summary summary;
  summary.program_version = "0.1.0";
  summary.plan = "small band", summary.body = "forearm", summary.layout = "band";
  summary.inputs = {{"plan", "plan.json", std::string(64, 'a')}};
  summary.worn = {"Laid on without going round."};
  summary.assumed = {"The limb is still and relaxed."};
  summary.inlets = {{"valve", "7.0 kPa (53 mmHg)", 8.2 * kPa, 27.5 * mL}};
  summary.figures.chambers = {full_chamber(), lesser_chamber()};
  summary.figures.peak_anywhere = 9.3 * kPa;
  summary.figures.peak_part = Phrase::worded("seam");
  summary.figures.peak_at_m = Vec3(0.1, 0.2, 0.3);
  summary.figures.share_of_girth = 0.43;
  summary.figures.total_force = 14.7 * newton;
  summary.figures.seams = {full_seam()};
  summary.audit = {0.0011, 0.0022, -1.7 * newton, 0.0044, 5, 0.00066};
  summary.mesh_error = MeshError{6.4 * mm, -0.12 * kPa, 0.34 * kPa};
  summary.comparisons = {{"tissue as a foundation",
                          {{"pad", 4.2 * kPa, 3.9 * kPa, 5.3 * kPa, 4.8 * kPa}},
                          9.3 * kPa,
                          8.1 * kPa,
                          ""}};
  summary.mesh = {4.5 * mm, 1.5 * mm, 1234, 2345};
  summary.model_factor = 1.7;
  summary.findings = {{Severity::kAboveLimit, "pad", Phrase::worded("The pad presses."), 2.2526, 1.7},
                      {Severity::kWarn, "other", Phrase::worded("The other presses."), 0.81, 1.7}};
  summary.hazards = full_hazards();
  summary.worst = Severity::kAboveLimit;
  summary.relief = {{"valve", 4.6 * kPa}};
  summary.limits_name = "first set", summary.use = "held for a session";
  summary.rows_in_use = {full_row()};
  summary.release = {3.0 * second, 0.5 * kPa, "judgement, no source"};
  summary.session = Session{42.0 * minute, std::nullopt, std::nullopt, Time()};
  summary.exposure = full_exposure();
  summary.quality = {{"pad", 0.91, 1.08, 4.3}};
  summary.closure = ClosureReport{251.0 * mm, 246.0 * mm, 253.0 * mm, 5.5 * mm, 7.25 * mm};
  return summary;
}

}  // namespace wrapgauge
