#include "model/limits/device_finding.hpp"

#include <algorithm>
#include <cmath>

#include "model/contact/bond_load.hpp"
#include "model/core/beside_limit.hpp"
#include "model/core/number_text.hpp"
#include "model/inflation/chamber_names.hpp"
#include "model/limits/deflated_state.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

Phrase newtons(double force_n, int decimals) {
  return figures_of(fixed_text(force_n, decimals) + " N");
}

Phrase in_mm(double metres) {
  return figures_of(fixed_text(metres * 1e3, 0) + " mm");
}

// A finding whose sentence ends with what to do.
Finding with_action(Severity severity, std::string where, Phrase place, Cause cause, Phrase action,
                    const char* source_key) {
  Finding finding{severity, std::move(where), {}};
  finding.place = std::move(place);
  finding.cause = cause;
  finding.action = std::move(action);
  finding.source_key = source_key;
  return finding;
}

// The chamber with the largest of some figure; null when there are none.
template <class Figure>
const ChamberFigures* largest(const ContactFigures& figures, Figure figure) {
  const auto found = std::max_element(
      figures.chambers.begin(), figures.chambers.end(),
      [&](const ChamberFigures& a, const ChamberFigures& b) { return figure(a) < figure(b); });
  return found == figures.chambers.end() ? nullptr : &*found;
}

// Deepest sunk of a chamber's places when the device is fastened and deflated; 0: nothing is known of that.
double deflated_indentation_m(const InflationSetup& setup, const LoadPath& path, std::size_t chamber) {
  const EquilibriumState* deflated = deflated_state(setup, path);
  if (!deflated) return 0.0;
  double deepest_m = 0.0;
  for (std::size_t t = 0; t < setup.flat.regions.size(); ++t) {
    const FlatRegion& region = setup.flat.regions[t];
    if (region.kind != RegionKind::kChamber || static_cast<std::size_t>(region.part) != chamber) continue;
    for (int corner = 0; corner < 3; ++corner)
      deepest_m = std::max(
          deepest_m, deflated->indentation_m[setup.flat.triangles(static_cast<Eigen::Index>(t), corner)]);
  }
  return deepest_m;
}

Phrase percent_beside_line(double share, double line) {
  return figures_of(number_beside(100.0 * share, 100.0 * line, 0) + " %");
}

void add_tissue_strain(const LimitSet& limits, const InflationSetup& setup, const LoadPath& path,
                       const ContactFigures& figures, std::vector<Finding>& out) {
  const ChamberFigures* worst = largest(figures, [](const ChamberFigures& c) { return c.tissue_strain; });
  if (!worst || worst->tissue_strain <= limits.strain_warn) return;
  const bool above = worst->tissue_strain > limits.strain_limit;
  const double crossed = above ? limits.strain_limit : limits.strain_warn;
  const double sunk_m = worst->indentation_max.si();
  const double deflated_share =
      sunk_m > 0.0
          ? deflated_indentation_m(setup, path, static_cast<std::size_t>(worst - figures.chambers.data())) /
                sunk_m
          : 0.0;
  const bool fastening = worst->tissue_strain * deflated_share > crossed;
  Finding finding = with_action(above ? Severity::kAboveLimit : Severity::kWarn, worst->chamber,
                                Phrase::worded("Tissue under %1", {name_of(worst->chamber)}),
                                fastening ? Cause::kFastening : Cause::kInflation,
                                fastening ? Phrase::worded("Fasten it more loosely.")
                                          : Phrase::worded("Lower the pressure or make the chamber larger."),
                                "tissue strain");
  finding.share_of_limit = worst->tissue_strain / limits.strain_limit;
  finding.measured = Measured{Amount::kStrain, worst->tissue_strain, worst->tissue_strain,
                              limits.strain_limit, Phrase::worded("share of the tissue's depth")};
  finding.at_m = worst->peak_at_m;
  const Phrase line = above ? Phrase::worded("above the limit of %1", {percent_of(crossed)})
                            : Phrase::worded("above the warning of %1", {percent_of(crossed)});
  finding.sentence = Phrase::worded(
      "Under chamber '%1' the tissue is predicted to be compressed by %2 of its depth (%3), %4 (%5). %6",
      {name_of(worst->chamber), percent_beside_line(worst->tissue_strain, crossed),
       figures_of(fixed_text(sunk_m * 1e3, 1) + " mm"), line, table_words(limits.strain_source),
       finding.action});
  out.push_back(std::move(finding));
}

Phrase limit_point_action(LimitKind kind) {
  if (kind == LimitKind::kFolds)
    return Phrase::worded("Ask for less, fasten it more loosely or take a thicker sheet.");
  if (kind == LimitKind::kOverstretched)
    return Phrase::worded("Ask for less, take a thicker or stiffer sheet or add inset seams.");
  return Phrase::worded("Ask for less, fill by volume, take a thicker or stiffer sheet or add inset seams.");
}

// Why nothing was found beyond the load path's last point.
Phrase limit_point_words(const LimitPoint& point, const std::string& chambers, const Phrase& action) {
  const std::vector<Phrase> values = {figures_of(point.pressure),
                                      figures_of(fixed_text(point.volume / mL, 0) + " mL"), name_of(chambers),
                                      action};
  if (point.kind == LimitKind::kFolds)
    return Phrase::worded(
        "Above %1 and %2 in chamber %3 a sheet folds. No shape with its folds was found, and every figure "
        "here belongs to the last smooth one. %4",
        values);
  if (point.kind == LimitKind::kOverstretched)
    return Phrase::worded(
        "Above %1 and %2 a sheet of chamber %3 is stretched further than its material is known for, and "
        "every "
        "figure here belongs to the last equilibrium before. %4",
        values);
  return Phrase::worded(
      "Chamber %3 runs away above %1, reached at %2: the pressure asked for has no equilibrium, and every "
      "figure here belongs to that last one. %4",
      values);
}

void add_limit_point(const InflationSetup& setup, const LoadPath& path, std::vector<Finding>& out) {
  if (!path.limit_point) return;
  const std::string names = chambers_of(setup, path.limit_point->group);
  const bool folds = path.limit_point->kind == LimitKind::kFolds;
  Finding finding =
      with_action(Severity::kAboveLimit, names, name_of(names), folds ? Cause::kInflation : Cause::kRunaway,
                  limit_point_action(path.limit_point->kind), "limit point");
  finding.sentence = limit_point_words(*path.limit_point, names, finding.action);
  out.push_back(std::move(finding));
}

// Which line the stretch is beyond.
Phrase stretch_line(const LimitSet& limits, bool near_break, bool above) {
  if (near_break)
    return Phrase::worded("the limit of %1 of elongation at break",
                          {percent_of(limits.share_of_break_limit)});
  const double stretch = above ? limits.stretch_limit : limits.stretch_warn;
  const std::vector<Phrase> values = {figures_of(fixed_text(stretch, 1))};
  return above ? Phrase::worded("the limit of stretch %1", values)
               : Phrase::worded("the warning at stretch %1", values);
}

// The stretch at which the nearer of its two limits is reached.
double stretch_limit_of(const LimitSet& limits, const ChamberFigures& chamber) {
  if (chamber.share_of_break <= 0.0) return limits.stretch_limit;
  const double at_share =
      1.0 + (chamber.stretch_max - 1.0) * limits.share_of_break_limit / chamber.share_of_break;
  return std::min(limits.stretch_limit, at_share);
}

void add_sheet_stretch(const LimitSet& limits, const ChamberFigures& chamber, std::vector<Finding>& out) {
  const bool near_break = chamber.share_of_break > limits.share_of_break_limit;
  const bool above = near_break || chamber.stretch_max > limits.stretch_limit;
  if (!above && chamber.stretch_max <= limits.stretch_warn) return;
  Finding finding = with_action(
      above ? Severity::kAboveLimit : Severity::kWarn, chamber.chamber,
      Phrase::worded("Sheet of %1", {name_of(chamber.chamber)}), Cause::kInflation,
      Phrase::worded("Lower the pressure, take a thicker sheet or add inset seams."), "sheet stretch");
  finding.share_of_limit = std::max(chamber.share_of_break / limits.share_of_break_limit,
                                    (chamber.stretch_max - 1.0) / std::max(limits.stretch_limit - 1.0, 1e-9));
  finding.measured =
      Measured{Amount::kStretch, chamber.stretch_max, chamber.stretch_max, stretch_limit_of(limits, chamber),
               Phrase::worded("stretch of a silicone sheet")};
  finding.at_m = chamber.peak_at_m;
  const double crossed = near_break ? stretch_limit_of(limits, chamber)
                         : above    ? limits.stretch_limit
                                    : limits.stretch_warn;
  finding.sentence = Phrase::worded(
      "A sheet of chamber '%1' is predicted to stretch to %2 times its length, %3 of its elongation at "
      "break, "
      "above %4 (%5). %6",
      {name_of(chamber.chamber), figures_of(number_beside(chamber.stretch_max, crossed, 2)),
       percent_beside_line(chamber.share_of_break, limits.share_of_break_limit),
       stretch_line(limits, near_break, above), table_words(limits.stretch_source), finding.action});
  out.push_back(std::move(finding));
}

Phrase seam_words(const SeamFigures& seam) {
  return Phrase::worded("%2 at %1 in the %3 sheet, at x %4 y %5 of the layout, %6 times the mean along it",
                        {seam.seam, figures_of(number_text(seam.largest / N_per_mm, 2) + " N/mm"), seam.sheet,
                         figures_of(fixed_text(seam.at_flat_m.x() * 1e3, 0)), in_mm(seam.at_flat_m.y()),
                         figures_of(fixed_text(seam.concentration, 1))});
}

Finding seam_finding(std::string where, Phrase place) {
  return with_action(Severity::kNote, std::move(where), std::move(place), Cause::kInflation,
                     Phrase::worded("Burst a sample on the bench before anyone wears it."), "seam tension");
}

// The most loaded seam, and the most loaded inset seam where that is another one.
bool add_ranked_seams(const ContactFigures& figures, std::vector<Finding>& out) {
  if (figures.seams.empty() || figures.seams.front().largest <= LineTension()) return false;
  const SeamFigures& first = figures.seams.front();
  const auto inset = std::find_if(figures.seams.begin(), figures.seams.end(),
                                  [](const SeamFigures& seam) { return seam.inset; });
  const bool another = inset != figures.seams.end() && inset != figures.seams.begin();
  Finding finding = seam_finding(english(first.seam), first.seam);
  finding.sentence = another ? Phrase::worded(
                                   "Highest tension at a seam: %1; at an inset seam: %2. What a seam holds "
                                   "is not known here; seams are ranked by tension alone. %3",
                                   {seam_words(first), seam_words(*inset), finding.action})
                             : Phrase::worded(
                                   "Highest tension at a seam: %1. What a seam holds is not known here; "
                                   "seams are ranked by tension alone. %2",
                                   {seam_words(first), finding.action});
  out.push_back(std::move(finding));
  return true;
}

// What peeled samples held, against the most loaded seam: half of it is a warning (judgement).
void add_held_seam(const LimitSet& limits, const ContactFigures& figures, std::vector<Finding>& out) {
  constexpr double kWarnShare = 0.5;
  const SeamHold& hold = *limits.calibration->seams;
  const SeamFigures& worst = figures.seams.front();
  const double share = limits.model_factor * (worst.largest / hold.holds);
  Finding finding = seam_finding("seam", worst.seam);
  finding.severity = share > 1.0          ? Severity::kAboveLimit
                     : share > kWarnShare ? Severity::kWarn
                                          : Severity::kNote;
  finding.share_of_limit = share;
  finding.model_factor = limits.model_factor;
  finding.action = share > kWarnShare
                       ? Phrase::worded("Lower the pressure, round the seam's corners or fuse it wider.")
                       : Phrase::worded("Burst a sample on the bench before anyone wears it.");
  finding.sentence = Phrase::worded(
      "Highest tension at a seam: %1. Times the model factor %2 that is %3 of the %4 that the weakest of %5 "
      "peeled samples held. %6",
      {seam_words(worst), figures_of(number_text(limits.model_factor, 3)), percent_beside_line(share, 1.0),
       figures_of(number_text(hold.holds / N_per_mm, 2) + " N/mm"), figures_of(hold.readings),
       finding.action});
  out.push_back(std::move(finding));
}

void add_seam_tension(const LimitSet& limits, const ContactFigures& figures, std::vector<Finding>& out) {
  if (limits.calibration && limits.calibration->seams && !figures.seams.empty())
    return add_held_seam(limits, figures, out);
  if (add_ranked_seams(figures, out)) return;
  const ChamberFigures* worst = largest(figures, [](const ChamberFigures& c) { return c.seam_tension; });
  if (!worst || worst->seam_tension <= LineTension()) return;
  Finding finding = seam_finding(worst->chamber, Phrase::worded("Seam of %1", {name_of(worst->chamber)}));
  finding.sentence = Phrase::worded(
      "Highest tension at a seam: %1, at chamber '%2'. What a seam holds is not known here. %3",
      {figures_of(number_text(worst->seam_tension / N_per_mm, 2) + " N/mm"), name_of(worst->chamber),
       finding.action});
  out.push_back(std::move(finding));
}

void add_push(const InflationSetup& setup, const ContactFigures& figures, const Audit& audit,
              std::vector<Finding>& out) {
  const double push_n = audit.push_along_axis / newton,
               held_n = setup.friction * figures.total_force / newton;
  if (std::abs(push_n) < 0.05) return;
  const bool slips = std::abs(push_n) > held_n;
  const Phrase where =
      push_n < 0.0 ? Phrase::worded("away from the trunk") : Phrase::worded("towards the trunk");
  const Phrase action = slips ? Phrase::worded("Anchor it or choose a less tapered place.")
                              : Phrase::worded("Watch whether it creeps: sweaty or moving skin holds less.");
  Finding finding = with_action(slips ? Severity::kWarn : Severity::kNote, "whole cuff",
                                Phrase::worded("Whole device, along the limb"), Cause::kInflation, action,
                                "push along the limb");
  const std::vector<Phrase> values = {where,
                                      newtons(std::abs(push_n), 1),
                                      figures_of(number_text(setup.friction, 2)),
                                      newtons(figures.total_force / newton, 0),
                                      newtons(held_n, 1),
                                      action};
  finding.sentence =
      slips ? Phrase::worded(
                  "Contact pressure alone pushes the device %1 with %2, and friction %3 on %4 of "
                  "contact can hold only %5: it will creep. %6",
                  values)
            : Phrase::worded(
                  "Contact pressure alone pushes the device %1 with %2, and friction %3 on %4 of "
                  "contact can hold %5. %6",
                  values);
  out.push_back(std::move(finding));
}

void add_balance(const InflationSetup& setup, const Audit& audit, std::vector<Finding>& out) {
  constexpr double kShare = 0.02;
  const double worst =
      std::max(audit.cut_balance, setup.flat.closing_from.empty() ? 0.0 : audit.lateral_balance);
  if (worst <= kShare) return;
  Finding finding = with_action(Severity::kWarn, "audit", Phrase::worded("Balance of forces"), Cause::kNone,
                                !setup.misfit ? Phrase::worded("Solve with a finer mesh.")
                                              : Phrase::worded("Correct how it fits first."),
                                "balance of forces");
  finding.sentence = Phrase::worded(
      "Contact forces, sheet tensions and chamber pressures balance only to %1, where %2 is asked for, so "
      "the "
      "figures are rougher than shown. %3",
      {figures_of(number_beside(100.0 * worst, 100.0 * kShare, 1) + " %"), percent_of(kShare),
       finding.action});
  out.push_back(std::move(finding));
}

// A loose pad comes to rest where it presses with next to nothing, which no limit can be held against.
void add_unheld(const InflationSetup& setup, std::vector<Finding>& out) {
  if (setup.body == nullptr || is_held(setup.layout)) return;
  Finding finding =
      with_action(Severity::kAboveLimit, "whole device", Phrase::worded("Whole device, not held"),
                  Cause::kNone, Phrase::worded("Put what holds it in use into the plan."), "not held");
  finding.sentence = Phrase::worded(
      "Nothing in the plan holds the device on the body, neither a closure nor a glued or taped rim, so it "
      "is "
      "shown lying loose and presses with next to nothing. Whatever holds it in use makes it press harder "
      "than shown. %1",
      {finding.action});
  out.push_back(std::move(finding));
}

// What slides bears the bond's strength and no more.
void add_bond(const InflationSetup& setup, const LoadPath& path, std::vector<Finding>& out) {
  constexpr double kReached = 0.99;
  if (path.states.empty()) return;
  const Pressure strength(TissueSettings{}.bond_pa);
  const Pressure load = bond_load(setup, path.sheet, path.states.back());
  if (load < kReached * strength) return;
  Finding finding = with_action(
      Severity::kWarn, "rim", Phrase::worded("Glued or taped rim"), Cause::kInflation,
      Phrase::worded("Lower the pressure or make the rim wider, and pull at it on the bench."), "bond");
  finding.sentence = Phrase::worded(
      "Glue or tape at the rim bears %1 where it bears the most, and no more than %2 is counted on: it may "
      "come off there, and the figures do not show that. %3",
      {figures_of(fixed_text(load.si() / 1000.0, 1) + " kPa"),
       figures_of(fixed_text(strength.si() / 1000.0, 1) + " kPa"), finding.action});
  out.push_back(std::move(finding));
}

void add_buckling(const LoadPath& path, std::vector<Finding>& out) {
  if (path.states.empty() || !path.states.back().about_to_buckle) return;
  Finding finding = with_action(
      Severity::kWarn, "sheets", Phrase::worded("Sheets, close to buckling"), Cause::kInflation,
      Phrase::worded("Lower the pressure, fasten it more loosely or take a thicker sheet, and look for folds "
                     "on the bench."),
      "buckling");
  finding.sentence = Phrase::worded(
      "A sheet is close to buckling. It is shown smooth; a fold presses in a line, harder than the figures "
      "here. %1",
      {finding.action});
  out.push_back(std::move(finding));
}

}  // namespace

std::vector<Finding> device_findings(const LimitSet& limits, const LimitInputs& inputs,
                                     const InflationSetup& setup, const LoadPath& path,
                                     const ContactFigures& figures, const Audit& audit) {
  std::vector<Finding> out;
  add_limit_point(setup, path, out);
  if (!is_test_object(inputs)) add_tissue_strain(limits, setup, path, figures, out);
  for (const ChamberFigures& chamber : figures.chambers) add_sheet_stretch(limits, chamber, out);
  add_seam_tension(limits, figures, out);
  add_push(setup, figures, audit, out);
  add_balance(setup, audit, out);
  add_bond(setup, path, out);
  add_buckling(path, out);
  add_unheld(setup, out);
  return out;
}

}  // namespace wrapgauge
