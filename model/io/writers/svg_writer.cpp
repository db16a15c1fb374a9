#include "model/io/writers/svg_writer.hpp"

#include <cmath>

#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/core/xml_text.hpp"
#include "model/layout/carried_map.hpp"

namespace wrapgauge {
namespace {

constexpr double kInletRadius = 1e-3;     // m, of the circle that marks an inlet
constexpr const char* kHairline = "0.2";  // mm, of drawn outlines

std::string in_mm(double length_m) {
  return number_word(std::round(length_m * 1e9) / 1e6 + 0.0);
}
std::string pair(const Vec2& p) {
  return in_mm(p.x()) + "," + in_mm(-p.y());
}

class SvgText {
 public:
  void open(const char* group, const char* fill, const char* stroke, const char* width = kHairline) {
    text_ += std::string("<g id=\"") + group + "\" fill=\"" + fill + "\" stroke=\"" + stroke +
             "\" stroke-width=\"" + width + "\">\n";
  }
  void close() { text_ += "</g>\n"; }

  void polygon(const Polygon& loop, const std::string& name) {
    text_ += "<polygon points=\"";
    points(loop);
    end("\"", "polygon", name);
  }
  void line(const Polyline& path, Length width, const std::string& name) {
    text_ += "<polyline stroke-width=\"" + in_mm(width.si()) + "\" points=\"";
    points(path);
    end("\"", "polyline", name);
  }
  void circle(const Vec2& centre, double radius, const std::string& name) {
    text_ += "<circle cx=\"" + in_mm(centre.x()) + "\" cy=\"" + in_mm(-centre.y()) + "\" r=\"" +
             in_mm(radius) + "\"";
    end("", "circle", name);
  }

  std::string text_;

 private:
  void points(const std::vector<Vec2>& list) {
    for (std::size_t i = 0; i < list.size(); ++i) {
      if (i > 0) text_ += ' ';
      text_ += pair(list[i]);
    }
  }
  void end(const char* quote, const char* element, const std::string& name) {
    text_ += quote;
    text_ +=
        name.empty() ? "/>\n" : "><title>" + xml_text(name) + "</title></" + std::string(element) + ">\n";
  }
};

void grow(Bounds2& box, const std::vector<Vec2>& points) {
  if (points.empty()) return;
  const Bounds2 more = bounds(points);
  box = {box.low.cwiseMin(more.low), box.high.cwiseMax(more.high)};
}

std::string head(const Layout& layout, double margin) {
  Bounds2 box = bounds(layout.outline_m);
  for (const Strap& strap : layout.straps) grow(box, strap.boundary_m);
  const Vec2 size = box.high - box.low + 2.0 * Vec2(margin, margin);
  const std::string width = in_mm(size.x()), height = in_mm(size.y());
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
         width + "mm\" height=\"" + height + "mm\" viewBox=\"" + in_mm(box.low.x() - margin) + " " +
         in_mm(-box.high.y() - margin) + " " + width + " " + height + "\">\n<title>" + xml_text(layout.name) +
         "</title>\n<desc>" + xml_text(carried_text(layout)) + "</desc>\n";
}

void write_insets(SvgText& svg, const Layout& layout) {
  svg.open("inset-seams", "none", "#a0522d");
  for (const Chamber& chamber : layout.chambers) {
    for (const InsetSpot& spot : chamber.inset_spots) svg.circle(spot.centre_m, spot.radius.si(), "");
    for (const InsetLine& line : chamber.inset_lines) svg.line(line.path_m, line.width, "");
  }
  svg.close();
}

}  // namespace

std::string layout_svg(const Layout& layout, Length margin) {
  SvgText svg;
  svg.text_ = head(layout, margin.si());
  svg.open("straps", "none", "#808080");
  for (const Strap& strap : layout.straps) svg.polygon(strap.boundary_m, strap.name);
  svg.close();
  svg.open("outline", "none", "#000000");
  svg.polygon(layout.outline_m, "");
  svg.close();
  svg.open("channels", "none", "#6a5acd");
  for (const Channel& channel : layout.channels) svg.line(channel.path_m, channel.width, channel.name);
  svg.close();
  svg.open("chambers", "none", "#1f4e9c");
  for (const Chamber& chamber : layout.chambers) svg.polygon(chamber.boundary_m, chamber.name);
  svg.close();
  write_insets(svg, layout);
  svg.open("inlets", "none", "#000000");
  for (const Inlet& inlet : layout.inlets) svg.circle(inlet.point_m, kInletRadius, inlet.name);
  svg.close();
  return svg.text_ + "</svg>\n";
}

Result<std::monostate> write_layout_svg(const Layout& layout, const std::filesystem::path& file) {
  return write_file_atomically(file, layout_svg(layout));
}

}  // namespace wrapgauge
