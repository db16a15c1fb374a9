#include "model/layout/layout_check.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"
#include "model/layout/layout_check_parts.hpp"
#include "model/layout/mesh_request.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kSmallest = 5e-3, kLargest = 3.0;  // m, of a layout (judgement)
constexpr double kThickest = 20e-3;                 // m, of a sheet (judgement)

template <class Part>
void check_names_of(const LayoutCheck& check, const std::vector<Part>& parts, const Phrase& what,
                    ProblemPlace::Kind kind) {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const ProblemPlace place{kind, static_cast<int>(i)};
    if (parts[i].name.empty())
      check.add(Phrase::worded("%1 %2 has no name.", {what, figures_of(place.index + 1)}), {place});
    else if (!seen.insert(parts[i].name).second)
      check.add(
          Phrase::worded("Two %1s are named '%2'; give each its own name.", {what, name_of(parts[i].name)}),
          {place});
  }
}

void check_thickness(std::vector<Problem>& problems, const Phrase& what, Length thickness) {
  if (thickness.si() > 0.0 && thickness.si() <= kThickest) return;
  problems.push_back(
      bad_input(Phrase::worded("%1 is %2 mm thick; give a thickness above 0 and at most 20 mm.",
                               {what, figures_of(number_text(thickness / mm))})));
}

void check_stiffness(std::vector<Problem>& problems, const Phrase& what, LineTension stiffness) {
  if (std::isfinite(stiffness.si()) && stiffness.si() >= 0.0) return;
  problems.push_back(bad_input(Phrase::worded("%1 has a stiffness of %2 N/mm; it cannot be negative.",
                                              {what, figures_of(number_text(stiffness / N_per_mm))})));
}

void check_sheets(const Layout& layout, std::vector<Problem>& problems) {
  check_thickness(problems, Phrase::worded("The skin sheet"), layout.skin_sheet.thickness);
  check_thickness(problems, Phrase::worded("The outer sheet"), layout.outer_sheet.thickness);
  if (layout.skin_sheet.material.empty())
    problems.push_back(bad_input(
        Phrase::worded("The skin sheet has no material; name a hardness from the silicone table.")));
  if (layout.outer_sheet.material.empty())
    problems.push_back(bad_input(
        Phrase::worded("The outer sheet has no material; name a hardness from the silicone table.")));
  check_stiffness(problems, Phrase::worded("The backing along x"), layout.backing.along);
  check_stiffness(problems, Phrase::worded("The backing across"), layout.backing.across);
}

}  // namespace

double thicker_sheet_m(const Layout& layout) {
  return std::max(layout.skin_sheet.thickness, layout.outer_sheet.thickness).si();
}

void check_numbers(const Layout& layout, std::vector<Problem>& problems) {
  if (auto problem = unusable_shapes(layout)) {
    problems.push_back(*problem);
    return;  // the other checks need usable shapes
  }
  const Bounds2 box = bounds(layout.outline_m);
  const Vec2 extent = box.high - box.low;
  if (extent.minCoeff() < kSmallest || extent.maxCoeff() > kLargest)
    problems.push_back(bad_input(Phrase::worded(
        "The outline measures %1 by %2; it should lie between 5 and 3000 mm, so check the unit.",
        {millimetres_of(Length(extent.x())), millimetres_of(Length(extent.y()))})));
  check_sheets(layout, problems);
  for (const Strap& strap : layout.straps) {
    check_thickness(problems, Phrase::worded("The strap '%1'", {name_of(strap.name)}), strap.thickness);
    check_stiffness(problems, Phrase::worded("Strap '%1'", {name_of(strap.name)}), strap.stiffness);
  }
  if (layout.chambers.empty())
    problems.push_back(
        bad_input(Phrase::worded("The layout has no chamber; draw at least one inside the outline.")));
}

void check_names(const LayoutCheck& check) {
  check_names_of(check, check.layout.chambers, Phrase::worded("chamber"), ProblemPlace::Kind::kChamber);
  check_names_of(check, check.layout.channels, Phrase::worded("channel"), ProblemPlace::Kind::kChannel);
  check_names_of(check, check.layout.inlets, Phrase::worded("inlet"), ProblemPlace::Kind::kInlet);
  check_names_of(check, check.layout.straps, Phrase::worded("strap"), ProblemPlace::Kind::kStrap);
}

void check_self_crossings(const LayoutCheck& check) {
  const auto report = [&](const Polygon& loop, const Phrase& what, const Phrase& advice,
                          std::vector<ProblemPlace> places) {
    if (const auto p = self_crossing(loop))
      check.add(Phrase::worded("%1 crosses or touches itself at %2; %3", {what, at_mm(*p), advice}),
                std::move(places));
  };
  const Phrase simple = Phrase::worded("redraw it as one simple loop.");
  const Phrase gentle = Phrase::worded("bend it more gently or make it narrower.");
  report(check.shapes.outline_m, Phrase::worded("The outline"), simple, {});
  for (int i = 0; i < static_cast<int>(check.layout.chambers.size()); ++i) {
    const Chamber& chamber = check.layout.chambers[i];
    const ProblemPlace place{ProblemPlace::Kind::kChamber, i};
    report(chamber.boundary_m, part_name_first(check.layout, {RegionKind::kChamber, i}), simple, {place});
    for (std::size_t k = chamber.inset_spots.size(); k < check.shapes.chambers[i].insets_m.size(); ++k)
      report(check.shapes.chambers[i].insets_m[k],
             Phrase::worded("An inset line of chamber '%1'", {name_of(chamber.name)}), gentle, {place});
  }
  for (int i = 0; i < static_cast<int>(check.layout.channels.size()); ++i)
    report(check.shapes.channels_m[i], part_name_first(check.layout, {RegionKind::kChannel, i}), gentle,
           {{ProblemPlace::Kind::kChannel, i}});
  for (int i = 0; i < static_cast<int>(check.layout.straps.size()); ++i)
    report(check.shapes.straps_m[i], part_name_first(check.layout, {RegionKind::kStrap, i}), simple,
           {{ProblemPlace::Kind::kStrap, i}});
}

std::vector<Problem> check_layout(const Layout& layout) {
  std::vector<Problem> problems;
  check_numbers(layout, problems);
  if (unusable_shapes(layout)) return problems;
  // Spots by finer polygons than the mesh's, so that gaps are those of the circle within 1 %.
  const LayoutShapes shapes = layout_shapes(layout, 1e-3);
  const LayoutLines lines = layout_lines(shapes, std::nullopt);
  const LayoutCheck check{layout, shapes, lines, problems};
  check_names(check);
  const std::size_t before = problems.size();
  check_self_crossings(check);
  if (problems.size() != before) return problems;  // inside and outside mean nothing for such loops
  check_open_regions(check);
  check_insets(check);
  check_air(check);
  check_straps(check);
  check_closure(check);
  return problems;
}

}  // namespace wrapgauge
