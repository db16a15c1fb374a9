#include "model/io/writers/dxf_writer.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <utility>

#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/carried_map.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kLongestData = 200;  // bytes of one string; a DXF takes 255
constexpr double kTextHeight = 4.0;        // mm

// Name and colour number.
constexpr std::array<std::pair<const char*, int>, 8> kLayers = {{{"0", 7},
                                                                 {"OUTLINE", 7},
                                                                 {"CHAMBERS", 5},
                                                                 {"INSET_SEAMS", 1},
                                                                 {"CHANNELS", 6},
                                                                 {"INLETS", 3},
                                                                 {"STRAPS", 8},
                                                                 {"NAMES", 9}}};

std::string dxf_mm(double length_m) {
  return number_word(std::round(length_m * 1e9) / 1e6 + 0.0);
}

// Takes one letter off UTF-8; a byte that begins none stands for itself.
std::uint32_t take_letter(std::string_view& text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const std::size_t more = byte(0) >= 0xF0 ? 3 : byte(0) >= 0xE0 ? 2 : byte(0) >= 0xC0 ? 1 : 0;
  std::uint32_t code = more == 3   ? byte(0) & 0x07u
                       : more == 2 ? byte(0) & 0x0Fu
                       : more == 1 ? byte(0) & 0x1Fu
                                   : byte(0);
  const std::size_t length = std::min(more + 1, text.size());
  for (std::size_t i = 1; i < length; ++i) code = (code << 6) | (byte(i) & 0x3Fu);
  text.remove_prefix(length);
  return code;
}

std::string coded(std::uint32_t unit) {
  char text[16];
  std::snprintf(text, sizeof text, "\\U+%04X", static_cast<unsigned>(unit & 0xFFFFu));
  return text;
}

// Letters that a DXF of any age and tongue holds; the others as codes. `blanks` too, where a reader trims
// them.
std::string coded_text(std::string_view text, bool blanks) {
  std::string out;
  while (!text.empty()) {
    const std::uint32_t letter = take_letter(text);
    const bool plain = letter > 32 && letter < 127 && letter != '\\' && letter != '{' && letter != '}';
    if (plain || (letter == 32 && !blanks))
      out += static_cast<char>(letter);
    else if (letter < 0x10000)
      out += coded(letter);
    else
      out += coded(0xD800u + ((letter - 0x10000u) >> 10)) + coded(0xDC00u + ((letter - 0x10000u) & 0x3FFu));
  }
  return out;
}

class DxfText {
 public:
  void group(int code, const std::string& value) { text_ += std::to_string(code) + "\n" + value + "\n"; }
  void point(const Vec2& p) {
    group(10, dxf_mm(p.x()));
    group(20, dxf_mm(p.y()));
    group(30, "0");
  }
  void entity(const char* type, const char* layer) {
    group(0, type);
    group(8, layer);
  }
  void data(const std::string& name, const std::string& carried = "") {
    group(1001, "WRAPGAUGE");
    strings("name:", name);
    strings("carried:", carried);
  }
  // A width of 0: a thin line.
  void polyline(const char* layer, const std::vector<Vec2>& points, bool closed, double width_m,
                const std::string& name, const std::string& carried = "") {
    entity("POLYLINE", layer);
    group(66, "1");
    group(70, closed ? "1" : "0");
    point(Vec2::Zero());
    if (width_m > 0.0)
      for (const int code : {40, 41}) group(code, dxf_mm(width_m));
    data(name, carried);
    for (const Vec2& p : points) {
      entity("VERTEX", layer);
      point(p);
    }
    entity("SEQEND", layer);
  }
  void words(const Vec2& place, const std::string& words) {
    entity("TEXT", "NAMES");
    point(place);
    group(40, number_word(kTextHeight));
    group(1, coded_text(words, false));
    group(72, "1");  // centred at its second point
    group(11, dxf_mm(place.x()));
    group(21, dxf_mm(place.y()));
    group(31, "0");
  }

  std::string text_;

 private:
  void strings(const std::string& title, const std::string& value) {
    const std::string all = coded_text(value, true);
    for (std::size_t at = 0; at < all.size(); at += kLongestData)
      group(1000, title + all.substr(at, kLongestData));
  }
};

void add_head(DxfText& dxf) {
  dxf.text_ += "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n";
  dxf.text_ += "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n70\n" + std::to_string(kLayers.size()) + "\n";
  for (const auto& [name, colour] : kLayers) {
    dxf.group(0, "LAYER");
    dxf.group(2, name);
    dxf.group(70, "0");
    dxf.group(62, std::to_string(colour));
    dxf.group(6, "CONTINUOUS");
  }
  dxf.text_ += "0\nENDTAB\n0\nTABLE\n2\nAPPID\n70\n1\n0\nAPPID\n2\nWRAPGAUGE\n70\n0\n0\nENDTAB\n0\nENDSEC\n";
}

// A quarter of the way up the chamber; none where that is not in it or in an inset spot.
void add_name(DxfText& dxf, const Chamber& chamber) {
  const Bounds2 box = bounds(chamber.boundary_m);
  const Vec2 place = box.low + Vec2(0.5, 0.25).cwiseProduct(box.high - box.low);
  const bool in_spot =
      std::any_of(chamber.inset_spots.begin(), chamber.inset_spots.end(),
                  [&](const InsetSpot& spot) { return (spot.centre_m - place).norm() <= spot.radius.si(); });
  if (contains(chamber.boundary_m, place) && !in_spot) dxf.words(place, chamber.name);
}

void add_insets(DxfText& dxf, const Chamber& chamber, int& number) {
  for (const InsetSpot& spot : chamber.inset_spots) {
    dxf.entity("CIRCLE", "INSET_SEAMS");
    dxf.point(spot.centre_m);
    dxf.group(40, dxf_mm(spot.radius.si()));
  }
  for (const InsetLine& line : chamber.inset_lines)
    dxf.polyline("INSET_SEAMS", line.path_m, false, line.width.si(), "inset " + std::to_string(++number));
}

}  // namespace

std::string layout_dxf(const Layout& layout) {
  DxfText dxf;
  add_head(dxf);
  dxf.text_ += "0\nSECTION\n2\nENTITIES\n";
  dxf.polyline("OUTLINE", layout.outline_m, true, 0.0, "outline", carried_text(layout));
  for (const Strap& strap : layout.straps) dxf.polyline("STRAPS", strap.boundary_m, true, 0.0, strap.name);
  for (const Channel& channel : layout.channels)
    dxf.polyline("CHANNELS", channel.path_m, false, channel.width.si(), channel.name);
  for (const Chamber& chamber : layout.chambers)
    dxf.polyline("CHAMBERS", chamber.boundary_m, true, 0.0, chamber.name);
  int insets = 0;
  for (const Chamber& chamber : layout.chambers) add_insets(dxf, chamber, insets);
  for (const Inlet& inlet : layout.inlets) {
    dxf.entity("POINT", "INLETS");
    dxf.point(inlet.point_m);
    dxf.data(inlet.name);
  }
  for (const Chamber& chamber : layout.chambers) add_name(dxf, chamber);
  return dxf.text_ + "0\nENDSEC\n0\nEOF\n";
}

Result<std::monostate> write_layout_dxf(const Layout& layout, const std::filesystem::path& file) {
  return write_file_atomically(file, layout_dxf(layout));
}

}  // namespace wrapgauge
