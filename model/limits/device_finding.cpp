#include "model/limits/device_finding.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/inflation/chamber_names.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

Phrase newtons(double force_n, int decimals) {
  return figures_of(fixed_text(force_n, decimals) + " N");
}

Phrase in_mm(double metres) {
  return figures_of(fixed_text(metres * 1e3, 0) + " mm");
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
  const Phrase line = above ? Phrase::worded("above the limit of %1", {percent_of(limits.strain_limit)})
                            : Phrase::worded("above the warning of %1", {percent_of(limits.strain_warn)});
  out.push_back(
      {above ? Severity::kAboveLimit : Severity::kWarn, worst->chamber,
       Phrase::worded(
           "Under chamber '%1' the tissue is predicted to be compressed by %2 of its depth (%3), %4 "
           "(%5). Lower the inflation or make the chamber larger.",
           {name_of(worst->chamber), percent_of(worst->tissue_strain),
            figures_of(fixed_text(worst->indentation_max / mm, 1) + " mm"), line,
            table_words(limits.strain_source)}),
       worst->tissue_strain / limits.strain_limit});
}

// Why nothing was found beyond the load path's last point.
Phrase limit_point_words(const LimitPoint& point, const std::string& chambers) {
  const std::vector<Phrase> values = {
      figures_of(point.pressure), figures_of(fixed_text(point.volume / mL, 0) + " mL"), name_of(chambers)};
  if (point.kind == LimitKind::kFolds)
    return Phrase::worded(
        "Above %1 and %2 in chamber %3 a sheet folds. No shape with its folds was found, and every figure "
        "here belongs to the last smooth one. Ask for less, close it less tightly or take a thicker sheet.",
        values);
  if (point.kind == LimitKind::kOverstretched)
    return Phrase::worded(
        "Above %1 and %2 a sheet of chamber %3 is stretched further than its material is known for, and "
        "every "
        "figure here belongs to the last equilibrium before. Ask for less, take a thicker or stiffer sheet "
        "or "
        "add inset seams.",
        values);
  return Phrase::worded(
      "Chamber %3 runs away above %1, reached at %2: the pressure asked for has no equilibrium, and every "
      "figure here belongs to that last one. Ask for less, fill by volume, take a thicker or stiffer sheet "
      "or "
      "add inset seams.",
      values);
}

void add_limit_point(const InflationSetup& setup, const LoadPath& path, std::vector<Finding>& out) {
  if (!path.limit_point) return;
  const std::string names = chambers_of(setup, path.limit_point->group);
  out.push_back({Severity::kAboveLimit, names, limit_point_words(*path.limit_point, names), 0.0});
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

void add_sheet_stretch(const LimitSet& limits, const ChamberFigures& chamber, std::vector<Finding>& out) {
  const bool near_break = chamber.share_of_break > limits.share_of_break_limit;
  const bool above = near_break || chamber.stretch_max > limits.stretch_limit;
  if (!above && chamber.stretch_max <= limits.stretch_warn) return;
  out.push_back(
      {above ? Severity::kAboveLimit : Severity::kWarn, chamber.chamber,
       Phrase::worded("A sheet of chamber '%1' is predicted to stretch to %2 times its length, %3 of its "
                      "elongation at break, above %4 (%5). Lower the inflation, take a thicker sheet or add "
                      "inset seams.",
                      {name_of(chamber.chamber), figures_of(fixed_text(chamber.stretch_max, 2)),
                       percent_of(chamber.share_of_break), stretch_line(limits, near_break, above),
                       table_words(limits.stretch_source)}),
       std::max(chamber.share_of_break / limits.share_of_break_limit,
                (chamber.stretch_max - 1.0) / std::max(limits.stretch_limit - 1.0, 1e-9))});
}

Phrase seam_words(const SeamFigures& seam) {
  return Phrase::worded(
      "the %1 with %2 in the %3 sheet, at x %4 y %5 of the layout, %6 times the mean along it",
      {seam.seam, figures_of(number_text(seam.largest / N_per_mm, 2) + " N/mm"), seam.sheet,
       figures_of(fixed_text(seam.at_flat_m.x() * 1e3, 0)), in_mm(seam.at_flat_m.y()),
       figures_of(fixed_text(seam.concentration, 1))});
}

// The most loaded seam, and the most loaded inset seam where that is another one.
bool add_ranked_seams(const ContactFigures& figures, std::vector<Finding>& out) {
  if (figures.seams.empty() || figures.seams.front().largest <= LineTension()) return false;
  const SeamFigures& first = figures.seams.front();
  const auto inset = std::find_if(figures.seams.begin(), figures.seams.end(),
                                  [](const SeamFigures& seam) { return seam.inset; });
  const bool another = inset != figures.seams.end() && inset != figures.seams.begin();
  out.push_back(
      {Severity::kNote, english(first.seam),
       another
           ? Phrase::worded("The seam that is pulled hardest is %1; of the inset seams it is %2; what a seam "
                            "holds is not known here, so they are ranked by tension alone: burst a sample on "
                            "the bench before anyone wears it.",
                            {seam_words(first), seam_words(*inset)})
           : Phrase::worded(
                 "The seam that is pulled hardest is %1; what a seam holds is not known here, so "
                 "they are ranked by tension alone: burst a sample on the bench before anyone wears "
                 "it.",
                 {seam_words(first)}),
       0.0});
  return true;
}

void add_seam_tension(const ContactFigures& figures, std::vector<Finding>& out) {
  if (add_ranked_seams(figures, out)) return;
  const ChamberFigures* worst = largest(figures, [](const ChamberFigures& c) { return c.seam_tension; });
  if (!worst || worst->seam_tension <= LineTension()) return;
  out.push_back(
      {Severity::kNote, worst->chamber,
       Phrase::worded(
           "The largest tension at a seam is %1, at chamber '%2'; what a seam holds is not known "
           "here, so burst a sample on the bench before anyone wears it.",
           {figures_of(number_text(worst->seam_tension / N_per_mm, 2) + " N/mm"), name_of(worst->chamber)}),
       0.0});
}

void add_push(const InflationSetup& setup, const ContactFigures& figures, const Audit& audit,
              std::vector<Finding>& out) {
  const double push_n = audit.push_along_axis / newton,
               held_n = setup.friction * figures.total_force / newton;
  if (std::abs(push_n) < 0.05) return;
  const bool slips = std::abs(push_n) > held_n;
  const Phrase where =
      push_n < 0.0 ? Phrase::worded("away from the trunk") : Phrase::worded("towards the trunk");
  const Phrase outcome =
      slips ? Phrase::worded(", which is less: it will creep. Anchor it or choose a less tapered place.")
            : Phrase::worded("; a sweaty or moving skin may hold less, so watch whether it creeps.");
  out.push_back(
      {slips ? Severity::kWarn : Severity::kNote, "whole cuff",
       Phrase::worded("Contact pressure alone pushes the device %1 with %2, and friction %3 on %4 of "
                      "contact can hold %5%6",
                      {where, newtons(std::abs(push_n), 1), figures_of(number_text(setup.friction, 2)),
                       newtons(figures.total_force / newton, 0), newtons(held_n, 1), outcome}),
       0.0});
}

void add_balance(const InflationSetup& setup, const Audit& audit, std::vector<Finding>& out) {
  constexpr double kShare = 0.02;
  const double worst =
      std::max(audit.cut_balance, setup.flat.closing_from.empty() ? 0.0 : audit.lateral_balance);
  if (worst <= kShare) return;
  out.push_back(
      {Severity::kWarn, "audit",
       Phrase::worded("Contact forces, sheet tensions and chamber pressures balance only to %1, where 2 % is "
                      "asked for, so the figures are rougher than shown. Solve with a finer mesh.",
                      {figures_of(fixed_text(100.0 * worst, 1) + " %")}),
       0.0});
}

// A loose pad comes to rest where it presses with next to nothing.
void add_unheld(const InflationSetup& setup, std::vector<Finding>& out) {
  if (setup.body == nullptr || setup.layout.closure || setup.layout.rim_bonded) return;
  out.push_back(
      {Severity::kWarn, "whole device",
       Phrase::worded(
           "Nothing in the plan holds the device on the body, neither a closing nor a glued or taped rim, so "
           "it is shown lying loose and presses with next to nothing. Whatever holds it in use makes it "
           "press "
           "harder than shown: put that into the plan."),
       0.0});
}

void add_buckling(const LoadPath& path, std::vector<Finding>& out) {
  if (path.states.empty() || !path.states.back().about_to_buckle) return;
  out.push_back(
      {Severity::kWarn, "sheets",
       Phrase::worded(
           "A sheet is pushed together so far that it is about to fold. It is shown smooth; a fold presses "
           "in a line, harder than the figures here. Lower the inflation, close it less tightly or take a "
           "thicker sheet, and look for folds on the bench."),
       0.0});
}

}  // namespace

std::vector<Finding> device_findings(const LimitSet& limits, const LimitInputs& inputs,
                                     const InflationSetup& setup, const LoadPath& path,
                                     const ContactFigures& figures, const Audit& audit) {
  std::vector<Finding> out;
  add_limit_point(setup, path, out);
  if (!is_test_object(inputs)) add_tissue_strain(limits, figures, out);
  for (const ChamberFigures& chamber : figures.chambers) add_sheet_stretch(limits, chamber, out);
  add_seam_tension(figures, out);
  add_push(setup, figures, audit, out);
  add_balance(setup, audit, out);
  add_buckling(path, out);
  add_unheld(setup, out);
  return out;
}

}  // namespace wrapgauge
