#include "model/io/readers/svg_shape.hpp"

#include <2geom/svg-path-parser.h>

#include <algorithm>
#include <cmath>

#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/svg_sink.hpp"
#include "model/io/readers/svg_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostPathBytes = 2'000'000;  // of one path (judgement)

// Reads the lengths of one element; keeps the first fault.
class Lengths {
 public:
  Lengths(pugi::xml_node node, const SvgStyle& style, const SvgViewport& viewport, std::string& fault)
      : node_(node), style_(style), viewport_(viewport), fault_(fault) {}

  double across(const char* name) { return number(name, viewport_.width).value_or(0.0); }
  double down(const char* name) { return number(name, viewport_.height).value_or(0.0); }
  double round(const char* name) { return number(name, diagonal()).value_or(0.0); }
  std::optional<double> radius(const char* name) {
    const std::string said = svg_own(node_, style_, name);
    if (said.empty() || said == "auto") return std::nullopt;
    return number(name, name[1] == 'x' ? viewport_.width : viewport_.height);
  }

 private:
  double diagonal() const { return std::hypot(viewport_.width, viewport_.height) / std::sqrt(2.0); }

  std::optional<double> number(const char* name, double whole) {
    const std::string said = svg_own(node_, style_, name);
    if (said.empty() && !node_.attribute(name)) return std::nullopt;
    const auto value = svg_length(said, whole);
    if (!value && fault_.empty())
      fault_ = std::string("has ") + name + "=" + in_quotes(said) + ", which is not a length";
    return value;
  }

  pugi::xml_node node_;
  const SvgStyle& style_;
  const SvgViewport& viewport_;
  std::string& fault_;
};

void ellipse_path(SvgSink& sink, const Geom::Point& centre, double rx, double ry) {
  const Geom::Point right = centre + Geom::Point(rx, 0), left = centre - Geom::Point(rx, 0);
  sink.moveTo(right);
  sink.arcTo(rx, ry, 0.0, false, true, left);
  sink.arcTo(rx, ry, 0.0, false, true, right);
  sink.closePath();
}

void rounded_rectangle(SvgSink& sink, const Geom::Point& low, const Geom::Point& size, double rx, double ry) {
  const Geom::Point high = low + size;
  const double x0 = low.x(), y0 = low.y(), x1 = high.x(), y1 = high.y();
  const auto corner = [&](double x, double y) {
    if (rx > 0.0 && ry > 0.0) sink.arcTo(rx, ry, 0.0, false, true, {x, y});
  };
  sink.moveTo({x0 + rx, y0});
  sink.lineTo({x1 - rx, y0});
  corner(x1, y0 + ry);
  sink.lineTo({x1, y1 - ry});
  corner(x1 - rx, y1);
  sink.lineTo({x0 + rx, y1});
  corner(x0, y1 - ry);
  sink.lineTo({x0, y0 + ry});
  corner(x0 + rx, y0);
  sink.closePath();
}

void rectangle(SvgSink& sink, Lengths& of) {
  const Geom::Point low(of.across("x"), of.down("y")), size(of.across("width"), of.down("height"));
  if (!(size.x() > 0.0 && size.y() > 0.0)) return;
  auto rx = of.radius("rx"), ry = of.radius("ry");
  if (!rx) rx = ry;  // SVG 1.1, 9.2: one given stands for both
  if (!ry) ry = rx;
  const bool round = rx && *rx > 0.0 && *ry > 0.0;
  const double a = round ? std::min(*rx, 0.5 * size.x()) : 0.0;
  const double b = round ? std::min(*ry, 0.5 * size.y()) : 0.0;
  rounded_rectangle(sink, low, size, a, b);
}

void ellipse(SvgSink& sink, Lengths& of, const Geom::Affine& to_m, bool circle, DrawnShape& shape) {
  const Geom::Point centre(of.across("cx"), of.down("cy"));
  auto rx = circle ? of.round("r") : of.radius("rx"), ry = circle ? rx : of.radius("ry");
  if (!rx) rx = ry;
  if (!ry) ry = rx;
  if (!rx || !(*rx > 0.0 && *ry > 0.0)) return;
  ellipse_path(sink, centre, *rx, *ry);
  const Geom::Point middle = centre * to_m;
  if (*rx == *ry && keeps_angles(to_m))
    shape.circle = DrawnCircle{{middle.x(), middle.y()}, *rx * std::hypot(to_m[0], to_m[1])};
}

void corners(SvgSink& sink, const char* text, bool closed, std::string& fault) {
  const auto numbers = svg_numbers(text);
  if (!numbers || numbers->size() % 2 != 0) {
    fault = "has points that are not pairs of numbers";
    return;
  }
  for (std::size_t i = 0; i + 1 < numbers->size(); i += 2) {
    const Geom::Point p((*numbers)[i], (*numbers)[i + 1]);
    i == 0 ? sink.moveTo(p) : sink.lineTo(p);
  }
  if (closed && numbers->size() >= 6) sink.closePath();
}

// What is wrong with path data that lib2geom refused.
std::string path_fault(std::string_view data) {
  const std::size_t at = data.find_first_not_of("MmZzLlHhVvCcSsQqTtAa0123456789eE+-., \t\r\n\f");
  if (at == data.npos) return "has path data that breaks off, or with a number too few or too many";
  return "has path data that makes no sense at character " + std::to_string(at + 1) + ", " +
         in_quotes(data.substr(at, 8));
}

void path_data(SvgSink& sink, std::string_view data, std::string& fault) {
  if (data.size() > kMostPathBytes) {
    fault = "has more than 2 MB of path data";
    return;
  }
  if (svg_trimmed(data).empty() || svg_trimmed(data) == "none") return;
  try {
    Geom::SVGPathParser(sink).parse(std::string(data));
  } catch (const std::bad_alloc&) {
    throw;  // no fault of the input
  } catch (const std::exception&) {
    if (!sink.full()) fault = path_fault(data);
  }
}

void trace_into(SvgSink& sink, pugi::xml_node node, const SvgStyle& style, const Geom::Affine& to_m,
                const SvgViewport& viewport, DrawnShape& shape) {
  const std::string_view element = shape.kind;
  Lengths of(node, style, viewport, shape.fault);
  if (element == "rect") rectangle(sink, of);
  if (element == "circle" || element == "ellipse") ellipse(sink, of, to_m, element == "circle", shape);
  if (element == "line") {
    sink.moveTo({of.across("x1"), of.down("y1")});
    sink.lineTo({of.across("x2"), of.down("y2")});
  }
  if (element == "polyline" || element == "polygon")
    corners(sink, node.attribute("points").value(), element == "polygon", shape.fault);
  if (element == "path" && style.own.contains("d"))
    shape.fault = "has its path in its style (d), which is not read; write it as an attribute";
  else if (element == "path")
    path_data(sink, node.attribute("d").value(), shape.fault);
}

}  // namespace

bool keeps_angles(const Geom::Affine& map) {
  const double size = std::hypot(map[0], map[1]);
  return std::abs(map[0] * map[2] + map[1] * map[3]) <= 1e-9 * size * size &&
         std::abs(std::hypot(map[2], map[3]) - size) <= 1e-9 * size;
}

bool is_svg_shape(std::string_view element) {
  constexpr std::string_view kShapes[] = {"rect", "circle", "ellipse", "line", "polyline", "polygon", "path"};
  return std::find(std::begin(kShapes), std::end(kShapes), element) != std::end(kShapes);
}

void trace_svg_shape(pugi::xml_node node, const SvgStyle& style, const Geom::Affine& to_m,
                     const SvgViewport& viewport, DrawnShape& shape) {
  SvgSink sink(to_m);
  try {
    trace_into(sink, node, style, to_m, viewport, shape);
    shape.paths = sink.take();
  } catch (const std::bad_alloc&) {
    throw;                           // no fault of the input
  } catch (const std::exception&) {  // lib2geom reports by exceptions
    if (shape.fault.empty()) shape.fault = "has a curve that cannot be followed";
  }
  if (sink.full()) shape.fault = "has more than 10 000 points";
  use_exact_circle(shape);
  if (!std::all_of(shape.paths.begin(), shape.paths.end(), usable)) shape.fault = kUnusableNumbers;
  if (!shape.fault.empty()) {
    shape.paths.clear();
    shape.circle.reset();
  }
}

}  // namespace wrapgauge
