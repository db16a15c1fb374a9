#include "model/casting/template_drawing.hpp"

#include <algorithm>
#include <numbers>

#include "model/casting/free_circle.hpp"
#include "model/casting/open_edges.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/stroke.hpp"
#include "model/layout/closing_window.hpp"
#include "model/layout/layout_shapes.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kFinestSide_m = 5e-4;  // of round spots
constexpr double kArrow_m = 15e-3;
constexpr double kWordsGap_m = 2e-3;
constexpr double kWordsHeight_m = 3e-3;

void add_layout_lines(const Layout& layout, TemplateDrawing& drawing) {
  const LayoutShapes shapes = layout_shapes(layout, kFinestSide_m);
  const auto add = [&](TemplateStroke stroke, const Polygon& loop) {
    drawing.lines.push_back({stroke, loop, true});
  };
  add(TemplateStroke::kCut, shapes.outline_m);
  for (const Polygon& strap : shapes.straps_m) add(TemplateStroke::kStrap, strap);
  for (const Polygon& open : open_outlines(shapes)) add(TemplateStroke::kSeam, open);
  for (const auto& chamber : shapes.chambers)
    for (const Polygon& inset : chamber.insets_m)
      if (!holds_chamber(shapes, inset)) add(TemplateStroke::kInset, inset);  // else its two edges are drawn
  for (const Inlet& inlet : layout.inlets) drawing.inlets_m.push_back(inlet.point_m);
}

void add_closing_lines(const Layout& layout, const TemplateMarks& marks, const Bounds2& box,
                       TemplateDrawing& drawing) {
  if (!layout.closure) return;
  const auto length = marks.closing_length ? marks.closing_length : layout.closure->closing_length;
  const ClosingWindow window = window_of(layout, length.value_or(Length()));
  const auto line = [&](const auto& x_at) {
    std::vector<Vec2> along;
    for (const double y : window.heights_m(box.low.y(), box.high.y())) along.emplace_back(x_at(y), y);
    drawing.lines.push_back({TemplateStroke::kFold, std::move(along), false});
  };
  line([&](double y) { return window.from_at_m(y); });
  if (length) line([&](double y) { return window.to_at_m(y); });
}

std::string sheet_words(const std::string& name, const Sheet& sheet) {
  return name + ": " + sheet.material + ", " + in_millimetres(sheet.thickness.si()) + " thick";
}

// Below the middle, where inlets seldom lie; in a chamber that is not there, where it has the most room.
Vec2 name_place(const LayoutShapes::OpenChamber& chamber) {
  const Bounds2 box = bounds(chamber.boundary_m);
  const Vec2 low = box.low + Vec2(0.5, 0.25).cwiseProduct(box.high - box.low);
  const bool there =
      contains(chamber.boundary_m, low) && distance_to_loop_m(chamber.boundary_m, low) >= kWordsHeight_m;
  return there ? low : largest_free_circle(chamber.boundary_m, chamber.insets_m).centre_m;
}

// Along the lower rim, where the outline has room for it.
void add_sheets_in_rim(const Layout& layout, const Bounds2& box, TemplateDrawing& drawing) {
  if (layout.skin_sheet.material.empty()) return;
  const std::string words =
      sheet_words("skin", layout.skin_sheet) + "; " + sheet_words("outer", layout.outer_sheet);
  const Vec2 from = box.low + Vec2(kWordsGap_m, kWordsGap_m);
  const Vec2 to = from + Vec2(0.6 * kWordsHeight_m * static_cast<double>(words.size()), kWordsHeight_m);
  for (const Vec2& corner : {from, to, Vec2(from.x(), to.y()), Vec2(to.x(), from.y())})
    if (!contains(layout.outline_m, corner)) return;
  drawing.words.push_back({from, words});
}

void add_names(const Layout& layout, TemplateDrawing& drawing) {
  const LayoutShapes shapes = layout_shapes(layout, kFinestSide_m);
  for (std::size_t i = 0; i < layout.chambers.size(); ++i)
    drawing.words.push_back({name_place(shapes.chambers[i]), layout.chambers[i].name, WordsFrom::kMiddle});
  for (const Inlet& inlet : layout.inlets)
    drawing.words.push_back({inlet.point_m + Vec2(kWordsGap_m, kWordsGap_m), inlet_label(inlet)});
  for (const Strap& strap : layout.straps) {
    const Bounds2 box = bounds(strap.boundary_m);
    const Vec2 place = box.low + Vec2(0.5, 0.25).cwiseProduct(box.high - box.low);
    drawing.words.push_back({place, strap.name, WordsFrom::kMiddle});
  }
}

void add_marks(const TemplateMarks& marks, const Bounds2& box, TemplateDrawing& drawing) {
  const double x = marks.layout_point_m ? marks.layout_point_m->x() : 0.5 * (box.low.x() + box.high.x());
  drawing.lines.push_back({TemplateStroke::kCentre, {{x, box.low.y()}, {x, box.high.y()}}, false});
  drawing.words.push_back(
      {{x + kWordsGap_m, box.high.y() - 3.0 * kWordsGap_m}, "centre line: along the limb"});
  drawing.distal_arrow_m = {x + 3.0 * kWordsGap_m, box.low.y() + kArrow_m + kWordsGap_m};
  drawing.words.push_back({drawing.distal_arrow_m + Vec2(kWordsGap_m, -0.8 * kArrow_m), "distal"});
  for (const SiteOnLayout& site : marks.sites) {
    drawing.lines.push_back(
        {TemplateStroke::kKeepClear, circle_polygon(site.centre_m, site.radius.si(), kFinestSide_m), true});
    drawing.words.push_back({site.centre_m, "keep clear: " + site.name});
  }
}

void add_amount_notes(const TemplateMarks& marks, std::vector<std::string>& notes) {
  for (const SheetAmount& amount : marks.amounts)
    notes.push_back(sheet_words(amount.sheet, {amount.material, amount.thickness}) + ", mix about " +
                    about_amount(amount.grams_to_mix) + " g");
  notes.push_back("Grams hold a trim border of " + in_millimetres(marks.allowance.trim_border.si()) +
                  " and " + number_text(100.0 * marks.allowance.spill) +
                  " % for spill; densities are from memory.");
}

void add_notes(const Layout& layout, const TemplateMarks& marks, std::vector<std::string>& notes) {
  if (!marks.amounts.empty()) {
    add_amount_notes(marks, notes);
  } else if (!layout.skin_sheet.material.empty()) {
    notes.push_back(sheet_words("skin sheet", layout.skin_sheet));
    notes.push_back(sheet_words("outer sheet", layout.outer_sheet));
  }
  for (const Strap& strap : layout.straps)
    notes.push_back("strap " + strap.name + ": cloth, " + in_millimetres(strap.thickness.si()) + " thick");
  for (const SiteOnLayout& site : marks.sites)
    notes.push_back("keep clear: " + site.name + " (" + site_word(site.kind) + ")");
}

void mirror(TemplateDrawing& drawing) {
  const auto turn = [](Vec2& p) { p.x() = -p.x(); };
  for (TemplateLine& line : drawing.lines)
    for (Vec2& p : line.path_m) turn(p);
  for (Vec2& inlet : drawing.inlets_m) turn(inlet);
  turn(drawing.distal_arrow_m);
  for (TemplateWords& words : drawing.words) {
    turn(words.place_m);
    if (words.from == WordsFrom::kLeft) words.from = WordsFrom::kRight;
  }
}

}  // namespace

const char* stroke_name(TemplateStroke stroke) {
  switch (stroke) {
    case TemplateStroke::kCut:
      return "cut";
    case TemplateStroke::kStrap:
      return "strap";
    case TemplateStroke::kSeam:
      return "seam";
    case TemplateStroke::kInset:
      return "inset";
    case TemplateStroke::kFold:
      return "closing";
    case TemplateStroke::kCentre:
      return "centre";
    case TemplateStroke::kKeepClear:
      break;
  }
  return "keep-clear";
}

const char* stroke_meaning(TemplateStroke stroke) {
  switch (stroke) {
    case TemplateStroke::kCut:
      return "cut the silicone";
    case TemplateStroke::kStrap:
      return "cut the cloth";
    case TemplateStroke::kSeam:
      return "edge of chambers and channels";
    case TemplateStroke::kInset:
      return "inset seam";
    case TemplateStroke::kFold:
      return "fold or join here: closing line";
    case TemplateStroke::kCentre:
      return "centre line";
    case TemplateStroke::kKeepClear:
      break;
  }
  return "site to keep clear";
}

TemplateDrawing template_drawing(const Layout& layout, const TemplateMarks& marks) {
  TemplateDrawing drawing;
  drawing.name = layout.name;
  const Bounds2 box = bounds(layout.outline_m);
  add_layout_lines(layout, drawing);
  add_closing_lines(layout, marks, box, drawing);
  add_names(layout, drawing);
  add_sheets_in_rim(layout, box, drawing);
  add_marks(marks, box, drawing);
  add_notes(layout, marks, drawing.notes);
  drawing.skin_side = marks.skin_side;
  if (marks.skin_side) mirror(drawing);
  std::vector<Vec2> all;
  for (const TemplateLine& line : drawing.lines)
    all.insert(all.end(), line.path_m.begin(), line.path_m.end());
  drawing.box = bounds(all);
  return drawing;
}

std::string TemplateDrawing::title() const {
  return name + ", template 1:1, " +
         (skin_side ? "skin sheet towards you (mirrored)" : "outer sheet towards you");
}

std::vector<TemplateStroke> strokes_of(const TemplateDrawing& drawing) {
  std::vector<TemplateStroke> there;
  for (const TemplateStroke stroke :
       {TemplateStroke::kCut, TemplateStroke::kStrap, TemplateStroke::kSeam, TemplateStroke::kInset,
        TemplateStroke::kFold, TemplateStroke::kCentre, TemplateStroke::kKeepClear})
    if (std::any_of(drawing.lines.begin(), drawing.lines.end(),
                    [&](const TemplateLine& line) { return line.stroke == stroke; }))
      there.push_back(stroke);
  return there;
}

std::string check_bar_words() {
  return "Print at 100 %, not fitted to the page: this bar measures 50 mm.";
}

}  // namespace wrapgauge
