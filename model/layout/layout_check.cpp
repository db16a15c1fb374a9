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
void check_names_of(const LayoutCheck& check, const std::vector<Part>& parts, const std::string& what,
                    ProblemPlace::Kind kind) {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const ProblemPlace place{kind, static_cast<int>(i)};
    if (parts[i].name.empty())
      check.add(what + " " + std::to_string(i + 1) + " has no name.", {place});
    else if (!seen.insert(parts[i].name).second)
      check.add("Two " + what + "s are named '" + parts[i].name + "'; give each its own name.", {place});
  }
}

void check_thickness(std::vector<Problem>& problems, const std::string& what, Length thickness) {
  if (thickness.si() > 0.0 && thickness.si() <= kThickest) return;
  problems.push_back(bad_input("The " + what + " is " + number_text(thickness / mm) +
                               " mm thick; give a thickness above 0 and at most 20 mm."));
}

void check_stiffness(std::vector<Problem>& problems, const std::string& what, LineTension stiffness) {
  if (std::isfinite(stiffness.si()) && stiffness.si() >= 0.0) return;
  problems.push_back(bad_input(what + " has a stiffness of " + number_text(stiffness / N_per_mm) +
                               " N/mm; it cannot be negative."));
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
    problems.push_back(bad_input("The outline measures " + in_millimetres(extent.x()) + " by " +
                                 in_millimetres(extent.y()) +
                                 "; it should lie between 5 and 3000 mm, so check the unit."));
  check_thickness(problems, "skin sheet", layout.skin_sheet.thickness);
  check_thickness(problems, "outer sheet", layout.outer_sheet.thickness);
  for (const auto* sheet : {&layout.skin_sheet, &layout.outer_sheet})
    if (sheet->material.empty())
      problems.push_back(bad_input(std::string("The ") + (sheet == &layout.skin_sheet ? "skin" : "outer") +
                                   " sheet has no material; name a hardness from the silicone table."));
  check_stiffness(problems, "The backing along x", layout.backing.along);
  check_stiffness(problems, "The backing across", layout.backing.across);
  for (const Strap& strap : layout.straps) {
    check_thickness(problems, "strap '" + strap.name + "'", strap.thickness);
    check_stiffness(problems, "Strap '" + strap.name + "'", strap.stiffness);
  }
  if (layout.chambers.empty())
    problems.push_back(bad_input("The layout has no chamber; draw at least one inside the outline."));
}

void check_names(const LayoutCheck& check) {
  check_names_of(check, check.layout.chambers, "chamber", ProblemPlace::Kind::kChamber);
  check_names_of(check, check.layout.channels, "channel", ProblemPlace::Kind::kChannel);
  check_names_of(check, check.layout.inlets, "inlet", ProblemPlace::Kind::kInlet);
  check_names_of(check, check.layout.straps, "strap", ProblemPlace::Kind::kStrap);
}

void check_self_crossings(const LayoutCheck& check) {
  const auto report = [&](const Polygon& loop, const std::string& what, const std::string& advice,
                          std::vector<ProblemPlace> places) {
    if (const auto p = self_crossing(loop))
      check.add(what + " crosses or touches itself at " + at_mm(*p) + "; " + advice, std::move(places));
  };
  const std::string simple = "redraw it as one simple loop.";
  report(check.shapes.outline_m, "The outline", simple, {});
  for (int i = 0; i < static_cast<int>(check.layout.chambers.size()); ++i) {
    const Chamber& chamber = check.layout.chambers[i];
    const ProblemPlace place{ProblemPlace::Kind::kChamber, i};
    report(chamber.boundary_m, "Chamber '" + chamber.name + "'", simple, {place});
    for (std::size_t k = chamber.inset_spots.size(); k < check.shapes.chambers[i].insets_m.size(); ++k)
      report(check.shapes.chambers[i].insets_m[k], "An inset line of chamber '" + chamber.name + "'",
             "bend it more gently or make it narrower.", {place});
  }
  for (int i = 0; i < static_cast<int>(check.layout.channels.size()); ++i)
    report(check.shapes.channels_m[i], "Channel '" + check.layout.channels[i].name + "'",
           "bend it more gently or make it narrower.", {{ProblemPlace::Kind::kChannel, i}});
  for (int i = 0; i < static_cast<int>(check.layout.straps.size()); ++i)
    report(check.shapes.straps_m[i], "Strap '" + check.layout.straps[i].name + "'", simple,
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
