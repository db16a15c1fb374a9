#include "model/casting/template_drawing.hpp"

#include <algorithm>
#include <numbers>

#include "model/geometry/stroke.hpp"
#include "model/layout/closing_window.hpp"
#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {
namespace {

constexpr double kFinestSide_m = 5e-4;  // of round spots
constexpr double kArrow_m = 15e-3;
constexpr double kWordsGap_m = 2e-3;

void add_layout_lines(const Layout& layout, TemplateDrawing& drawing) {
  const LayoutShapes shapes = layout_shapes(layout, kFinestSide_m);
  const auto add = [&](TemplateStroke stroke, const Polygon& loop) {
    drawing.lines.push_back({stroke, loop, true});
  };
  add(TemplateStroke::kCut, shapes.outline_m);
  for (const Polygon& strap : shapes.straps_m) add(TemplateStroke::kStrap, strap);
  for (const auto& chamber : shapes.chambers) add(TemplateStroke::kSeam, chamber.boundary_m);
  for (const auto& chamber : shapes.chambers)
    for (const Polygon& inset : chamber.insets_m) add(TemplateStroke::kInset, inset);
  for (const Polygon& channel : shapes.channels_m) add(TemplateStroke::kChannel, channel);
  for (const Inlet& inlet : layout.inlets) drawing.inlets_m.push_back(inlet.point_m);
}

void add_closing_lines(const Layout& layout, const TemplateMarks& marks, const Bounds2& box,
                       TemplateDrawing& drawing) {
  if (!layout.closure) return;
  const auto length = marks.closing_length ? marks.closing_length : layout.closure->closing_length;
  const ClosingWindow window = window_of(layout, length.value_or(Length()));
  const auto line = [&](const auto& x_at) {
    drawing.lines.push_back({TemplateStroke::kFold,
                             {{x_at(box.low.y()), box.low.y()}, {x_at(box.high.y()), box.high.y()}},
                             false});
  };
  line([&](double y) { return window.from_at_m(y); });
  if (length) line([&](double y) { return window.to_at_m(y); });
}

void add_names(const Layout& layout, TemplateDrawing& drawing) {
  for (const Chamber& chamber : layout.chambers) {
    const Bounds2 box = bounds(chamber.boundary_m);
    drawing.words.push_back({box.low + Vec2(0.5, 0.25).cwiseProduct(box.high - box.low), chamber.name, true});
  }
  for (const Inlet& inlet : layout.inlets)
    drawing.words.push_back({inlet.point_m + Vec2(kWordsGap_m, kWordsGap_m), "inlet " + inlet.name});
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
    drawing.words.push_back(
        {site.centre_m, "keep clear: " + site.name +
                            (site.kind == SiteKind::kBone ? "" : " (" + site_word(site.kind) + ")")});
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
    case TemplateStroke::kChannel:
      return "channel";
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
      return "edge of a chamber";
    case TemplateStroke::kInset:
      return "inset seam, filled";
    case TemplateStroke::kChannel:
      return "edge of a channel";
    case TemplateStroke::kFold:
      return "fold or join here: closing line";
    case TemplateStroke::kCentre:
      return "centre line";
    case TemplateStroke::kKeepClear:
      break;
  }
  return "bony site: keep clear";
}

TemplateDrawing template_drawing(const Layout& layout, const TemplateMarks& marks) {
  TemplateDrawing drawing;
  drawing.name = layout.name;
  const Bounds2 box = bounds(layout.outline_m);
  add_layout_lines(layout, drawing);
  add_closing_lines(layout, marks, box, drawing);
  add_names(layout, drawing);
  add_marks(marks, box, drawing);
  std::vector<Vec2> all;
  for (const TemplateLine& line : drawing.lines)
    all.insert(all.end(), line.path_m.begin(), line.path_m.end());
  drawing.box = bounds(all);
  return drawing;
}

std::string check_bar_words() {
  return "This bar has to measure 50 mm: print at 100 %, without fitting to the page.";
}

}  // namespace wrapgauge
