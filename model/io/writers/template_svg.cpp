#include "model/io/writers/template_svg.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/core/xml_text.hpp"
#include "model/io/readers/template_layout.hpp"

namespace wrapgauge {
namespace {

constexpr double kRoom_m = 22e-3;  // round the layout
constexpr double kLegend_m =
    16e-3;  // from the layout down to the legend: the check bar and its words lie between
constexpr double kRow_m = 4.5e-3;  // of the legend
// Numbers to a thousandth of a millimetre; y is turned over.
std::string mm_text(double length_m) {
  return fixed_text(1e3 * length_m, 3);
}
std::string point_text(const Vec2& p) {
  return mm_text(p.x()) + "," + mm_text(-p.y());
}

struct Look {
  const char* colour;
  const char* width_mm;
  const char* dashes;  // empty: full
};

Look look_of(TemplateStroke stroke) {
  switch (stroke) {
    case TemplateStroke::kCut:
      return {"#000000", "0.5", ""};
    case TemplateStroke::kStrap:
      return {"#000000", "0.5", "3,1.5"};
    case TemplateStroke::kSeam:
    case TemplateStroke::kInset:
      return {"#000000", "0.25", ""};
    case TemplateStroke::kFold:
      return {"#606060", "0.35", "3,1,0.4,1"};
    case TemplateStroke::kCentre:
      return {"#606060", "0.25", "3,1"};
    case TemplateStroke::kKeepClear:
      break;
  }
  return {"#606060", "0.35", "0.4,0.8"};
}

std::string line_text(const TemplateLine& line) {
  std::string text = line.closed ? "<polygon points=\"" : "<polyline points=\"";
  for (const Vec2& p : line.path_m) {
    if (&p != line.path_m.data()) text += ' ';
    text += point_text(p);
  }
  return text += "\"/>\n";
}

// One piece after the other: a chain of + trips a false warning of the compiler.
std::string paint_text(TemplateStroke stroke) {
  const Look look = look_of(stroke);
  // Inset seams are filled, so that welds inside a chamber are seen at a glance.
  std::string text = stroke == TemplateStroke::kInset ? "fill=\"#aaaaaa" : "fill=\"none";
  text += "\" stroke=\"";
  text += look.colour;
  text += "\" stroke-width=\"";
  text += look.width_mm;
  if (*look.dashes != 0) (text += "\" stroke-dasharray=\"") += look.dashes;
  return text += '"';
}

// All lines of a kind in one group.
std::string group_text(const TemplateDrawing& drawing, TemplateStroke stroke) {
  std::string lines;
  for (const TemplateLine& line : drawing.lines)
    if (line.stroke == stroke) lines += line_text(line);
  if (lines.empty()) return lines;
  std::string text = "<g id=\"";
  text += stroke_name(stroke);
  text += "\" ";
  text += paint_text(stroke);
  return text += ">\n" + lines + "</g>\n";
}

std::string words_text(const Vec2& at, const std::string& words, WordsFrom from = WordsFrom::kLeft) {
  const char* anchor = from == WordsFrom::kLeft     ? ">"
                       : from == WordsFrom::kMiddle ? " text-anchor=\"middle\">"
                                                    : " text-anchor=\"end\">";
  return "<text x=\"" + mm_text(at.x()) + "\" y=\"" + mm_text(-at.y()) +
         "\" stroke=\"none\" font-family=\"sans-serif\" font-size=\"3\"" + anchor + xml_text(words) +
         "</text>\n";
}

std::string arrow_text(const Vec2& tail) {
  const Vec2 tip = tail - Vec2(0, 15e-3);
  return "<path fill=\"none\" stroke=\"#000000\" stroke-width=\"0.6\" d=\"M " + point_text(tail) + " L " +
         point_text(tip) + " M " + point_text(tip + Vec2(-2e-3, 4e-3)) + " L " + point_text(tip) + " L " +
         point_text(tip + Vec2(2e-3, 4e-3)) + "\"/>\n";
}

std::string check_bar_text(const Vec2& corner) {
  return "<rect fill=\"#000000\" x=\"" + mm_text(corner.x()) + "\" y=\"" + mm_text(-corner.y()) +
         "\" width=\"" + mm_text(kCheckBar.si()) + "\" height=\"2.000\"/>\n" +
         words_text(corner + Vec2(0, -6e-3), check_bar_words());
}

std::string inlet_text(const Vec2& at) {
  const Vec2 across(2e-3, 0.0), up(0.0, 2e-3);
  return "<circle fill=\"none\" stroke=\"#000000\" stroke-width=\"0.25\" cx=\"" + mm_text(at.x()) +
         "\" cy=\"" + mm_text(-at.y()) +
         "\" r=\"1.500\"/>\n<path fill=\"none\" stroke=\"#000000\" stroke-width=\"0.25\" d=\"M " +
         point_text(at - across) + " L " + point_text(at + across) + " M " + point_text(at - up) + " L " +
         point_text(at + up) + "\"/>\n";
}

std::size_t legend_rows(const TemplateDrawing& drawing) {
  const std::size_t symbols = drawing.inlets_m.empty() ? 1 : 2;  // the arrow; the inlet
  return 1 + strokes_of(drawing).size() + symbols + drawing.notes.size();
}

// Below the check bar: every kind of line and sign that is there, then the notes.
std::string legend_text(const TemplateDrawing& drawing) {
  Vec2 at = drawing.box.low - Vec2(0.0, kLegend_m);
  std::string text = words_text(at, drawing.title());
  const Vec2 beside(14e-3, 0.0);
  for (const TemplateStroke stroke : strokes_of(drawing)) {
    at.y() -= kRow_m;
    text += "<polyline ";
    text += paint_text(stroke);
    text +=
        " points=\"" + point_text(at + Vec2(0.0, 1e-3)) + " " + point_text(at + Vec2(12e-3, 1e-3)) + "\"/>\n";
    text += words_text(at + beside, stroke_meaning(stroke));
  }
  if (!drawing.inlets_m.empty()) {
    at.y() -= kRow_m;
    text += inlet_text(at + Vec2(6e-3, 1e-3)) + words_text(at + beside, kInletMeaning);
  }
  at.y() -= kRow_m;
  text += words_text(at + beside, std::string("arrow: ") + kArrowMeaning);
  for (const std::string& note : drawing.notes) {
    at.y() -= kRow_m;
    text += words_text(at, note);
  }
  return text;
}

std::string head_text(const TemplateDrawing& drawing) {
  const double below = kLegend_m + kRow_m * static_cast<double>(legend_rows(drawing));
  const Vec2 low = drawing.box.low - Vec2(kRoom_m, below), high = drawing.box.high + Vec2(kRoom_m, kRoom_m);
  const std::string width = mm_text(high.x() - low.x()), height = mm_text(high.y() - low.y());
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
         width + "mm\" height=\"" + height + "mm\" viewBox=\"" + mm_text(low.x()) + " " + mm_text(-high.y()) +
         " " + width + " " + height + "\">\n<title>" + xml_text(drawing.name) + "</title>\n";
}

}  // namespace

std::string template_svg(const TemplateDrawing& drawing, const Layout& layout) {
  std::string svg = head_text(drawing);
  for (const TemplateStroke stroke : strokes_of(drawing)) svg += group_text(drawing, stroke);
  svg += "<g id=\"marks\">\n";
  for (const Vec2& inlet : drawing.inlets_m) svg += inlet_text(inlet);
  svg += arrow_text(drawing.distal_arrow_m);
  for (const TemplateWords& words : drawing.words) svg += words_text(words.place_m, words.words, words.from);
  svg += check_bar_text({drawing.box.low.x(), drawing.box.low.y() - 6e-3});
  svg += legend_text(drawing);
  return with_layout(svg + "</g>\n</svg>\n", layout);
}

}  // namespace wrapgauge
