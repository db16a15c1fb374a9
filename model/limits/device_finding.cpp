#include "model/limits/device_finding.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/inflation/chamber_names.hpp"

namespace wrapgauge {
namespace {

std::string percent(double share) {
  return fixed_text(100.0 * share, 0) + " %";
}

// The chamber with the largest of some figure; null when there are none.
template <class Figure>
const ChamberFigures* largest(const ContactFigures& figures, Figure figure) {
  const auto found = std::max_element(
      figures.chambers.begin(), figures.chambers.end(),
      [&](const ChamberFigures& a, const ChamberFigures& b) { return figure(a) < figure(b); });
  return found == figures.chambers.end() ? nullptr : &*found;
}

void add_tissue_strain(const LimitSet& limits, const ContactFigures& figures, std::vector<Finding>& out) {
  const ChamberFigures* worst = largest(figures, [](const ChamberFigures& c) { return c.tissue_strain; });
  if (!worst || worst->tissue_strain <= limits.strain_warn) return;
  const bool above = worst->tissue_strain > limits.strain_limit;
  out.push_back({above ? Severity::kAboveLimit : Severity::kWarn, worst->chamber,
                 "Under chamber '" + worst->chamber + "' the tissue is predicted to be compressed by " +
                     percent(worst->tissue_strain) + " of its depth (" +
                     fixed_text(worst->indentation_max / mm, 1) + " mm), above the " +
                     (above ? "limit" : "warning") + " of " +
                     percent(above ? limits.strain_limit : limits.strain_warn) + " (" + limits.strain_source +
                     "). Lower the inflation or make the chamber larger.",
                 worst->tissue_strain / limits.strain_limit});
}

void add_limit_point(const InflationSetup& setup, const LoadPath& path, std::vector<Finding>& out) {
  if (!path.limit_point) return;
  const LimitPoint& point = *path.limit_point;
  const std::string names = chambers_of(setup, point.group);
  if (point.kind == LimitKind::kFolds) {
    out.push_back({Severity::kAboveLimit, names,
                   "Above " + pressure_text(point.pressure) + " and " + fixed_text(point.volume / mL, 0) +
                       " mL in chamber " + names +
                       " a sheet folds. No shape with its folds was found, and every figure here belongs to "
                       "the last smooth one. Ask for less, close it less tightly or take a thicker sheet.",
                   0.0});
    return;
  }
  if (point.kind == LimitKind::kOverstretched) {
    out.push_back({Severity::kAboveLimit, names,
                   "Above " + pressure_text(point.pressure) + " and " + fixed_text(point.volume / mL, 0) +
                       " mL a sheet of chamber " + names +
                       " is stretched further than its material is known for, and every figure here belongs "
                       "to the last equilibrium before. Ask for less, take a thicker or stiffer sheet or add "
                       "inset seams.",
                   0.0});
    return;
  }
  out.push_back(
      {Severity::kAboveLimit, names,
       "Chamber " + names + " runs away above " + pressure_text(point.pressure) + ", reached at " +
           fixed_text(point.volume / mL, 0) +
           " mL: the pressure asked for has no equilibrium, and every figure here belongs to that last one. "
           "Ask for less, fill by volume, take a thicker or stiffer sheet or add inset seams.",
       0.0});
}

void add_sheet_stretch(const LimitSet& limits, const ChamberFigures& chamber, std::vector<Finding>& out) {
  const bool near_break = chamber.share_of_break > limits.share_of_break_limit;
  const bool above = near_break || chamber.stretch_max > limits.stretch_limit;
  if (!above && chamber.stretch_max <= limits.stretch_warn) return;
  const std::string line =
      near_break ? "the limit of " + percent(limits.share_of_break_limit) + " of elongation at break"
                 : std::string(above ? "the limit of " : "the warning at ") + "stretch " +
                       fixed_text(above ? limits.stretch_limit : limits.stretch_warn, 1);
  out.push_back({above ? Severity::kAboveLimit : Severity::kWarn, chamber.chamber,
                 "A sheet of chamber '" + chamber.chamber + "' is predicted to stretch to " +
                     fixed_text(chamber.stretch_max, 2) + " times its length, " +
                     percent(chamber.share_of_break) + " of its elongation at break, above " + line + " (" +
                     limits.stretch_source +
                     "). Lower the inflation, take a thicker sheet or add inset seams.",
                 std::max(chamber.share_of_break / limits.share_of_break_limit,
                          (chamber.stretch_max - 1.0) / std::max(limits.stretch_limit - 1.0, 1e-9))});
}

std::string seam_words(const SeamFigures& seam) {
  return "the " + seam.seam + " with " + number_text(seam.largest / N_per_mm, 2) + " N/mm in the " +
         seam.sheet + " sheet, at x " + fixed_text(seam.at_flat_m.x() * 1e3, 0) + " y " +
         fixed_text(seam.at_flat_m.y() * 1e3, 0) + " mm of the layout, " + fixed_text(seam.concentration, 1) +
         " times the mean along it";
}

// The most loaded seam, and the most loaded inset seam where that is another one.
bool add_ranked_seams(const ContactFigures& figures, std::vector<Finding>& out) {
  if (figures.seams.empty() || figures.seams.front().largest <= LineTension()) return false;
  const SeamFigures& first = figures.seams.front();
  const auto inset = std::find_if(figures.seams.begin(), figures.seams.end(),
                                  [](const SeamFigures& seam) { return seam.inset; });
  std::string words = "The seam that is pulled hardest is " + seam_words(first);
  if (inset != figures.seams.end() && inset != figures.seams.begin())
    words += "; of the inset seams it is " + seam_words(*inset);
  out.push_back(
      {Severity::kNote, first.seam,
       words + "; what a seam holds is not known here, so they are ranked by tension alone: burst a sample "
               "on the bench before anyone wears it.",
       0.0});
  return true;
}

void add_seam_tension(const ContactFigures& figures, std::vector<Finding>& out) {
  if (add_ranked_seams(figures, out)) return;
  const ChamberFigures* worst = largest(figures, [](const ChamberFigures& c) { return c.seam_tension; });
  if (!worst || worst->seam_tension <= LineTension()) return;
  out.push_back(
      {Severity::kNote, worst->chamber,
       "The largest tension at a seam is " + number_text(worst->seam_tension / N_per_mm, 2) +
           " N/mm, at chamber '" + worst->chamber +
           "'; what a seam holds is not known here, so burst a sample on the bench before anyone wears it.",
       0.0});
}

void add_push(const InflationSetup& setup, const ContactFigures& figures, const Audit& audit,
              std::vector<Finding>& out) {
  const double push_n = audit.push_along_axis / newton,
               held_n = setup.friction * figures.total_force / newton;
  if (std::abs(push_n) < 0.05) return;
  const bool slips = std::abs(push_n) > held_n;
  out.push_back({slips ? Severity::kWarn : Severity::kNote, "whole cuff",
                 "Contact pressure alone pushes the device " +
                     std::string(push_n < 0.0 ? "away from" : "towards") + " the trunk with " +
                     fixed_text(std::abs(push_n), 1) + " N, and friction " + number_text(setup.friction, 2) +
                     " on " + fixed_text(figures.total_force / newton, 0) + " N of contact can hold " +
                     fixed_text(held_n, 1) + " N" +
                     (slips ? ", which is less: it will creep. Anchor it or choose a less tapered place."
                            : "; a sweaty or moving skin may hold less, so watch whether it creeps."),
                 0.0});
}

void add_balance(const InflationSetup& setup, const Audit& audit, std::vector<Finding>& out) {
  constexpr double kShare = 0.02;
  const double worst =
      std::max(audit.cut_balance, setup.flat.closing_from.empty() ? 0.0 : audit.lateral_balance);
  if (worst <= kShare) return;
  out.push_back(
      {Severity::kWarn, "audit",
       "Contact forces, sheet tensions and chamber pressures balance only to " +
           fixed_text(100.0 * worst, 1) +
           " %, where 2 % is asked for, so the figures are rougher than shown. Solve with a finer mesh.",
       0.0});
}

// A loose pad comes to rest where it presses with next to nothing.
void add_unheld(const InflationSetup& setup, std::vector<Finding>& out) {
  if (setup.body == nullptr || setup.layout.closure || setup.layout.rim_bonded) return;
  out.push_back(
      {Severity::kWarn, "whole device",
       "Nothing in the plan holds the device on the body, neither a closing nor a glued or taped rim, so "
       "it is shown lying loose and presses with next to nothing. Whatever holds it in use makes it press "
       "harder than shown: put that into the plan.",
       0.0});
}

void add_buckling(const LoadPath& path, std::vector<Finding>& out) {
  if (path.states.empty() || !path.states.back().about_to_buckle) return;
  out.push_back(
      {Severity::kWarn, "sheets",
       "A sheet is pushed together so far that it is about to fold. It is shown smooth; a fold presses "
       "in a line, harder than the figures here. Lower the inflation, close it less tightly or take a "
       "thicker sheet, and look for folds on the bench.",
       0.0});
}

}  // namespace

std::vector<Finding> device_findings(const LimitSet& limits, const InflationSetup& setup,
                                     const LoadPath& path, const ContactFigures& figures,
                                     const Audit& audit) {
  std::vector<Finding> out;
  add_limit_point(setup, path, out);
  add_tissue_strain(limits, figures, out);
  for (const ChamberFigures& chamber : figures.chambers) add_sheet_stretch(limits, chamber, out);
  add_seam_tension(figures, out);
  add_push(setup, figures, audit, out);
  add_balance(setup, audit, out);
  add_buckling(path, out);
  add_unheld(setup, out);
  return out;
}

}  // namespace wrapgauge
