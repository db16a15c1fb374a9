#include "model/io/template_svg.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/io/svg_writer.hpp"

namespace wrapgauge {
namespace {

constexpr double kRoom_m = 22e-3;  // round the layout: the check bar and its words fit below

// Numbers to a thousandth of a millimetre; y is turned over.
std::string mm_text(double length_m) {
  return fixed_text(1e3 * length_m, 3);
}
std::string point_text(const Vec2& p) {
  return mm_text(p.x()) + "," + mm_text(-p.y());
}

std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '&')
      out += "&amp;";
    else if (c == '<')
      out += "&lt;";
    else if (c == '>')
      out += "&gt;";
    else
      out += static_cast<unsigned char>(c) < 32 ? ' ' : c;
  }
  return out;
}

bool is_mark(TemplateStroke stroke) {
  return stroke == TemplateStroke::kFold || stroke == TemplateStroke::kCentre ||
         stroke == TemplateStroke::kKeepClear;
}

std::string line_text(const TemplateLine& line) {
  const char* dashes = line.stroke == TemplateStroke::kFold     ? "3,1,0.4,1"
                       : line.stroke == TemplateStroke::kCentre ? "3,1"
                                                                : "0.4,0.8";
  std::string text = line.closed ? "<polygon" : "<polyline";
  text += " fill=\"none\" stroke=\"#606060\" stroke-width=\"0.35\" stroke-dasharray=\"";
  text += dashes;
  text += "\" points=\"";
  for (const Vec2& p : line.path_m) {
    if (&p != line.path_m.data()) text += ' ';
    text += point_text(p);
  }
  text += "\"><title>";  // one piece after the other: a chain of + trips a false warning of the compiler
  text += stroke_name(line.stroke);
  return text += line.closed ? "</title></polygon>\n" : "</title></polyline>\n";
}

std::string words_text(const Vec2& at, const std::string& words, bool centred = false) {
  return "<text x=\"" + mm_text(at.x()) + "\" y=\"" + mm_text(-at.y()) +
         "\" font-family=\"sans-serif\" font-size=\"3\"" + (centred ? " text-anchor=\"middle\">" : ">") +
         escaped(words) + "</text>\n";
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

Bounds2 layout_box(const Layout& layout) {
  std::vector<Vec2> all = layout.outline_m;
  for (const Strap& strap : layout.straps)
    all.insert(all.end(), strap.boundary_m.begin(), strap.boundary_m.end());
  return bounds(all);
}

}  // namespace

std::string template_svg(const Layout& layout, const TemplateDrawing& drawing) {
  const Bounds2 box = layout_box(layout);
  const double beyond =
      std::max({0.0, (box.low - drawing.box.low).maxCoeff(), (drawing.box.high - box.high).maxCoeff()});
  std::string marks = "<g id=\"template-marks\">\n";
  for (const TemplateLine& line : drawing.lines)
    if (is_mark(line.stroke)) marks += line_text(line);
  marks += arrow_text(drawing.distal_arrow_m);
  for (const TemplateWords& words : drawing.words)
    marks += words_text(words.place_m, words.words, words.centred);
  marks += check_bar_text({box.low.x(), drawing.box.low.y() - 6e-3});
  marks += "</g>\n";
  const std::string svg = layout_svg(layout, Length(beyond + kRoom_m));
  return svg.substr(0, svg.rfind("</svg>")) + marks + "</svg>\n";
}

}  // namespace wrapgauge
