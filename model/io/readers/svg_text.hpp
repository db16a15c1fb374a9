#pragma once
// Numbers, lengths, transforms and styles as SVG writes them (SVG 1.1 and CSS 2.1, W3C recommendations; from
// memory). lib2geom's affine maps apply to row vectors: p' = p * A.

#include <2geom/affine.h>

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wrapgauge {

inline constexpr double kPixel = 0.0254 / 96.0;  // m; 96 px an inch (CSS 2.1, 4.3.2)

// All numbers of a list parted by white space or commas; none when anything else stands between.
std::optional<std::vector<double>> svg_numbers(std::string_view text);

// In px. A number alone is px; mm, cm, in, pt, pc, q and px are known; % is of `whole`. None: not a length,
// not finite, or a unit that depends on a font.
std::optional<double> svg_length(std::string_view text, double whole);

// matrix, translate, scale, rotate, skewX, skewY in sequence; none when it is not such a list.
std::optional<Geom::Affine> svg_transform(std::string_view text);

// The same in CSS: lengths and angles carry units, and there are translateX, scaleY, skew and the like;
// "none" moves nothing (CSS Transforms 1, W3C recommendation; from memory). None for anything else, 3D, % and
// lengths that depend on a font among it.
std::optional<Geom::Affine> css_transform(std::string_view text);

struct SvgBox {
  double x = 0.0, y = 0.0, width = 0.0, height = 0.0;
};
// The map that puts `view` into the viewport `port` as preserveAspectRatio says; none for an empty view or
// port.
std::optional<Geom::Affine> svg_view_map(const SvgBox& view, const SvgBox& port, std::string_view aspect);

struct SvgDeclaration {
  std::string value;
  bool important = false;
};
using SvgDeclarations = std::map<std::string, SvgDeclaration>;  // by property, in small letters
// "a: b; c: d !important" as a map.
SvgDeclarations svg_declarations(std::string_view text);
// What `above` says holds, but for what is important in `below` alone.
void lay_over(SvgDeclarations& below, const SvgDeclarations& above);

std::vector<std::string> svg_words(std::string_view text);
std::string svg_trimmed(std::string_view text);

}  // namespace wrapgauge
