#include "model/layout/drawing_map.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace wrapgauge {
namespace {

constexpr DrawnPart kParts[] = {DrawnPart::kOutline, DrawnPart::kChamber, DrawnPart::kInsetSeam,
                                DrawnPart::kChannel, DrawnPart::kInlet,   DrawnPart::kStrap,
                                DrawnPart::kIgnore};
constexpr double kWidest = 10000.0;  // mm

char small_letter(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

struct KeyKind {
  DrawingRule::Of of;
  const char* start;
};
constexpr KeyKind kKeyKinds[] = {{DrawingRule::Of::kFill, "fill:"},
                                 {DrawingRule::Of::kStroke, "stroke:"},
                                 {DrawingRule::Of::kShape, "shape:"}};

// Splits "channel 4" into the part's name and its width.
std::optional<Length> take_width(std::string_view& part) {
  const std::size_t space = part.rfind(' ');
  if (space == part.npos) return std::nullopt;
  const std::string_view word = part.substr(space + 1);
  double value = 0.0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (error != std::errc{} || end != word.data() + word.size()) return std::nullopt;
  part = trimmed(part.substr(0, space));
  return value * mm;
}

}  // namespace

const char* part_name(DrawnPart part) {
  switch (part) {
    case DrawnPart::kOutline:
      return "outline";
    case DrawnPart::kChamber:
      return "chamber";
    case DrawnPart::kInsetSeam:
      return "inset seam";
    case DrawnPart::kChannel:
      return "channel";
    case DrawnPart::kInlet:
      return "inlet";
    case DrawnPart::kStrap:
      return "strap";
    case DrawnPart::kIgnore:
      break;
  }
  return "ignore";
}

std::optional<DrawnPart> part_from_name(std::string_view name) {
  std::string plain;
  for (const char c : trimmed(name)) plain += c == '-' || c == '_' ? ' ' : small_letter(c);
  for (const DrawnPart part : kParts)
    for (const char* ending : {"", "s"})
      if (plain == std::string(part_name(part)).append(ending)) return part;
  return std::nullopt;
}

std::optional<DrawnPart> part_from_numbered_name(std::string_view name) {
  while (!name.empty() && std::string_view("0123456789-_. ").find(name.back()) != name.npos)
    name.remove_suffix(1);
  return part_from_name(name);
}

std::string rule_text(const DrawingRule& rule) {
  std::string of;
  for (const KeyKind& kind : kKeyKinds)
    if (kind.of == rule.of) of = kind.start;
  return of + rule.pattern + "=" + part_name(rule.part);
}

DrawingMap with_carried(DrawingMap said, const DrawingMap& carried) {
  said.rules.insert(said.rules.end(), carried.rules.begin(), carried.rules.end());
  said.guess = said.guess && carried.guess;
  if (!said.channel_width) said.channel_width = carried.channel_width;
  if (!said.inset_width) said.inset_width = carried.inset_width;
  LayoutDetails& top = said.details;
  const LayoutDetails& below = carried.details;
  if (top.name.empty()) top.name = below.name;
  if (!top.skin_sheet) top.skin_sheet = below.skin_sheet;
  if (!top.outer_sheet) top.outer_sheet = below.outer_sheet;
  if (top.backing == Backing{}) top.backing = below.backing;
  // A cloth that is said is meant for every strap.
  if (!top.strap_stiffness && top.strap_cloths.empty()) {
    top.strap_stiffness = below.strap_stiffness;
    top.strap_thickness = below.strap_thickness;
    top.strap_cloths = below.strap_cloths;
  }
  if (!top.closure) top.closure = below.closure;
  top.rim_bonded = top.rim_bonded || below.rim_bonded;
  if (top.corner_m == Vec2::Zero()) top.corner_m = below.corner_m;
  if (top.inlets.empty()) top.inlets = below.inlets;
  return said;
}

bool matches(std::string_view pattern, std::string_view text) {
  std::size_t p = 0, t = 0, star = pattern.npos, back = 0;
  while (t < text.size()) {
    if (p < pattern.size() && pattern[p] == '*') {
      star = p++;
      back = t;
    } else if (p < pattern.size() && small_letter(pattern[p]) == small_letter(text[t])) {
      ++p, ++t;
    } else if (star != pattern.npos) {  // let the last star take one letter more
      p = star + 1;
      t = ++back;
    } else {
      return false;
    }
  }
  return std::all_of(pattern.begin() + static_cast<std::ptrdiff_t>(p), pattern.end(),
                     [](char c) { return c == '*'; });
}

Result<DrawingRule> rule_from_text(std::string_view text) {
  const Phrase whole = name_of(std::string(text));
  const std::size_t sign = text.rfind('=');
  if (sign == text.npos)
    return bad_input(Phrase::worded("The mapping '%1' is not KEY=PART, e.g. 'cells=chamber'.", {whole}));
  std::string_view key = trimmed(text.substr(0, sign)), part = trimmed(text.substr(sign + 1));
  DrawingRule rule;
  rule.width = take_width(part);
  for (const KeyKind& kind : kKeyKinds)
    if (key.starts_with(kind.start)) {
      rule.of = kind.of;
      key = trimmed(key.substr(std::string_view(kind.start).size()));
      break;
    }
  rule.pattern = key;
  const auto known = part_from_name(part);
  if (key.empty() || !known)
    return bad_input(
        Phrase::worded("The mapping '%1' names no part: after = write outline, chamber, inset seam, channel, "
                       "inlet, strap or ignore.",
                       {whole}));
  if (rule.width && !(rule.width->si() > 0.0 && *rule.width / mm <= kWidest))
    return bad_input(
        Phrase::worded("The mapping '%1' has a width that is not between 0 and 10 000 mm.", {whole}));
  rule.part = *known;
  return rule;
}

}  // namespace wrapgauge
