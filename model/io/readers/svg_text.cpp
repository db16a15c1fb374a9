#include "model/io/readers/svg_text.hpp"

#include <2geom/transforms.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>

#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
}

void skip(std::string_view& text, bool commas) {
  while (!text.empty() && (is_space(text[0]) || (commas && text[0] == ','))) text.remove_prefix(1);
}

// Takes a finite number off the front.
std::optional<double> take_number(std::string_view& text) {
  std::string_view rest = text;
  if (rest.size() > 1 && rest[0] == '+' && rest[1] != '-') rest.remove_prefix(1);
  double value = 0.0;
  const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), value);
  if (error != std::errc{} || !std::isfinite(value)) return std::nullopt;
  text = rest.substr(static_cast<std::size_t>(end - rest.data()));
  return value;
}

double radians(double degrees) {
  return degrees * std::numbers::pi / 180.0;
}

std::optional<Geom::Affine> one_transform(std::string_view name, const std::vector<double>& n) {
  const std::size_t count = n.size();
  if (name == "matrix" && count == 6) return Geom::Affine(n[0], n[1], n[2], n[3], n[4], n[5]);
  if (name == "translate" && (count == 1 || count == 2))
    return Geom::Affine(1, 0, 0, 1, n[0], count == 2 ? n[1] : 0.0);
  if (name == "scale" && (count == 1 || count == 2))
    return Geom::Affine(n[0], 0, 0, count == 2 ? n[1] : n[0], 0, 0);
  if (name == "rotate" && (count == 1 || count == 3)) {
    const Geom::Point centre = count == 3 ? Geom::Point(n[1], n[2]) : Geom::Point(0, 0);
    return Geom::Affine(Geom::Translate(-centre)) * Geom::Rotate(radians(n[0])) * Geom::Translate(centre);
  }
  if (name == "skewX" && count == 1) return Geom::Affine(1, 0, std::tan(radians(n[0])), 1, 0, 0);
  if (name == "skewY" && count == 1) return Geom::Affine(1, std::tan(radians(n[0])), 0, 1, 0, 0);
  return std::nullopt;
}

std::string small_letters(std::string_view text) {
  std::string out(text);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

// A CSS angle in degrees.
std::optional<double> degrees_of(std::string_view text) {
  skip(text, false);
  const auto value = take_number(text);
  if (!value) return std::nullopt;
  static const std::map<std::string, double, std::less<>> units = {
      {"", 1.0}, {"deg", 1.0}, {"grad", 0.9}, {"turn", 360.0}, {"rad", 180.0 / std::numbers::pi}};
  const auto found = units.find(small_letters(svg_trimmed(text)));
  return found == units.end() ? std::nullopt : std::optional(*value * found->second);
}

enum class CssArgument { kNumber, kLength, kAngle };

std::optional<double> css_argument(std::string_view text, CssArgument kind) {
  if (kind == CssArgument::kAngle) return degrees_of(text);
  if (text.find('%') != text.npos) return std::nullopt;
  if (kind == CssArgument::kLength) return svg_length(text, 0.0);
  const auto numbers = svg_numbers(text);
  return numbers && numbers->size() == 1 ? std::optional(numbers->front()) : std::nullopt;
}

// The arguments of a CSS function, parted by commas.
std::optional<std::vector<double>> css_arguments(std::string_view text, CssArgument kind) {
  std::vector<double> out;
  for (;;) {
    const std::size_t comma = text.find(',');
    const auto value = css_argument(text.substr(0, comma), kind);
    if (!value || out.size() > 6) return std::nullopt;
    out.push_back(*value);
    if (comma == text.npos) return out;
    text.remove_prefix(comma + 1);
  }
}

// CSS names in terms of those of the attribute.
std::optional<Geom::Affine> one_css_transform(const std::string& name, std::string_view text) {
  const CssArgument kind = name.starts_with("translate")                          ? CssArgument::kLength
                           : name.starts_with("rotate") || name.starts_with("sk") ? CssArgument::kAngle
                                                                                  : CssArgument::kNumber;
  const auto n = css_arguments(text, kind);
  if (!n) return std::nullopt;
  const std::size_t count = n->size();
  if (name == "rotate" && count != 1) return std::nullopt;
  if (name == "translateX" && count == 1) return one_transform("translate", {n->front(), 0.0});
  if (name == "translateY" && count == 1) return one_transform("translate", {0.0, n->front()});
  if (name == "scaleX" && count == 1) return one_transform("scale", {n->front(), 1.0});
  if (name == "scaleY" && count == 1) return one_transform("scale", {1.0, n->front()});
  if (name == "skew" && count <= 2)
    return Geom::Affine(1, count == 2 ? std::tan(radians((*n)[1])) : 0.0, std::tan(radians((*n)[0])), 1, 0,
                        0);
  return one_transform(name, *n);
}

// How much of the free space lies before the view: xMin 0, xMid 0.5, xMax 1.
double share_before(std::string_view align, std::size_t at) {
  const std::string_view word = align.size() >= at + 3 ? align.substr(at, 3) : std::string_view("Mid");
  return word == "Min" ? 0.0 : word == "Max" ? 1.0 : 0.5;
}

}  // namespace

std::optional<std::vector<double>> svg_numbers(std::string_view text) {
  std::vector<double> out;
  for (skip(text, true); !text.empty(); skip(text, true)) {
    const auto value = take_number(text);
    if (!value) return std::nullopt;
    out.push_back(*value);
  }
  return out;
}

std::optional<double> svg_length(std::string_view text, double whole) {
  skip(text, false);
  const auto value = take_number(text);
  if (!value) return std::nullopt;
  const std::string unit = small_letters(svg_trimmed(text));
  if (unit == "%") return 0.01 * *value * whole;
  // px of each unit: CSS 2.1, 4.3.2.
  static const std::map<std::string, double, std::less<>> units = {
      {"", 1.0},           {"px", 1.0},         {"in", 96.0}, {"cm", 96.0 / 2.54},
      {"mm", 96.0 / 25.4}, {"pt", 96.0 / 72.0}, {"pc", 16.0}, {"q", 96.0 / 101.6}};
  const auto found = units.find(unit);
  if (found == units.end()) return std::nullopt;
  return *value * found->second;
}

std::optional<Geom::Affine> svg_transform(std::string_view text) {
  Geom::Affine total = Geom::identity();
  for (skip(text, true); !text.empty(); skip(text, true)) {
    const std::size_t open = text.find('('), shut = text.find(')');
    if (open == text.npos || shut == text.npos || shut < open) return std::nullopt;
    const auto numbers = svg_numbers(text.substr(open + 1, shut - open - 1));
    if (!numbers) return std::nullopt;
    const auto next = one_transform(svg_trimmed(text.substr(0, open)), *numbers);
    if (!next) return std::nullopt;
    total = *next * total;  // the last one written acts first
    text.remove_prefix(shut + 1);
  }
  return total;
}

std::optional<Geom::Affine> css_transform(std::string_view text) {
  Geom::Affine total = Geom::identity();
  if (small_letters(svg_trimmed(text)) == "none") return total;
  for (skip(text, false); !text.empty(); skip(text, false)) {
    const std::size_t open = text.find('('), shut = text.find(')');
    if (open == text.npos || shut == text.npos || shut < open) return std::nullopt;
    const auto next =
        one_css_transform(svg_trimmed(text.substr(0, open)), text.substr(open + 1, shut - open - 1));
    if (!next) return std::nullopt;
    total = *next * total;  // the last one written acts first
    text.remove_prefix(shut + 1);
  }
  return total;
}

std::optional<Geom::Affine> svg_view_map(const SvgBox& view, const SvgBox& port, std::string_view aspect) {
  if (!(view.width > 0.0 && view.height > 0.0 && port.width > 0.0 && port.height > 0.0)) return std::nullopt;
  double across = port.width / view.width, down = port.height / view.height;
  std::vector<std::string> words = svg_words(aspect);
  if (!words.empty() && words.front() == "defer") words.erase(words.begin());
  const std::string align = words.empty() ? "xMidYMid" : words.front();
  if (align == "none")
    return Geom::Affine(across, 0, 0, down, port.x - across * view.x, port.y - down * view.y);
  const bool slice = words.size() > 1 && words[1] == "slice";
  const double scale = slice ? std::max(across, down) : std::min(across, down);
  const double left = share_before(align, 1) * (port.width - scale * view.width);
  const double above = share_before(align, 5) * (port.height - scale * view.height);
  return Geom::Affine(scale, 0, 0, scale, port.x + left - scale * view.x, port.y + above - scale * view.y);
}

SvgDeclarations svg_declarations(std::string_view text) {
  SvgDeclarations out;
  while (!text.empty()) {
    const std::string_view one = text.substr(0, text.find(';'));
    text.remove_prefix(std::min(text.size(), one.size() + 1));
    const std::size_t colon = one.find(':');
    if (colon == one.npos) continue;
    const std::string_view value = one.substr(colon + 1);
    const std::size_t mark = value.find('!');
    const bool important =
        mark != value.npos && small_letters(svg_trimmed(value.substr(mark + 1))) == "important";
    lay_over(out, {{small_letters(svg_trimmed(one.substr(0, colon))),
                    {svg_trimmed(value.substr(0, mark)), important}}});
  }
  return out;
}

void lay_over(SvgDeclarations& below, const SvgDeclarations& above) {
  for (const auto& [property, said] : above) {
    const auto there = below.find(property);
    if (there == below.end() || said.important || !there->second.important) below[property] = said;
  }
}

std::vector<std::string> svg_words(std::string_view text) {
  std::vector<std::string> out;
  for (std::string_view word = take_word(text); !word.empty(); word = take_word(text)) out.emplace_back(word);
  return out;
}

std::string svg_trimmed(std::string_view text) {
  skip(text, false);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return std::string(text);
}

}  // namespace wrapgauge
