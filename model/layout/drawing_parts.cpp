#include "model/layout/drawing_parts.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"
#include "model/layout/drawing_colour.hpp"
#include "model/layout/drawing_guess.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostOverlapPoints = 20000;  // that are looked through for overlaps
constexpr std::size_t kMostOverlaps = 200;  // as many as shapes are listed; more help nobody to correct it
constexpr double kOverlap = 1e-8;           // m2: 0.01 mm2

// What of the shape the rule fits.
std::optional<std::string> match_of(const DrawingRule& rule, const DrawnShape& shape) {
  const auto fitting = [&](const std::string& pattern, const std::string& said) {
    return matches(pattern, said) ? std::optional(said) : std::nullopt;
  };
  if (rule.of == DrawingRule::Of::kShape) {
    for (const std::string& key : shape_keys(shape))
      if (matches(rule.pattern, key)) return key;
    return std::nullopt;
  }
  if (rule.of != DrawingRule::Of::kName) {
    const std::string& colour = rule.of == DrawingRule::Of::kFill ? shape.fill : shape.stroke;
    return fitting(plain_colour(rule.pattern), colour);
  }
  if (!shape.name.empty() && matches(rule.pattern, shape.name)) return shape.name;
  for (const auto* names : {&shape.names, &shape.groups})
    for (const std::string& name : *names)
      if (matches(rule.pattern, name)) return name;
  return std::nullopt;
}

// A title is the part's name, so it does not say which part it is.
DrawnAs by_own_name(const DrawnShape& shape) {
  for (const auto* names : {&shape.names, &shape.groups})
    for (const std::string& name : *names)
      if (const auto part = part_from_numbered_name(name))
        return {part, Phrase::worded("called '%1'", {name_of(shown_name(name))}), {}};
  return {std::nullopt, Phrase::worded("no rule fits it"), {}};
}

Phrase why_it_fits(const DrawingRule& rule, const Phrase& fits) {
  switch (rule.of) {
    case DrawingRule::Of::kFill:
      return Phrase::worded("fill '%1'", {fits});
    case DrawingRule::Of::kStroke:
      return Phrase::worded("stroke '%1'", {fits});
    case DrawingRule::Of::kShape:
      return Phrase::worded("said of this shape");
    case DrawingRule::Of::kName:
      break;
  }
  return Phrase::worded("called '%1'", {fits});
}

DrawnAs part_of(const DrawnShape& shape, const DrawingMap& map) {
  for (const DrawingRule& rule : map.rules)
    if (const auto fits = match_of(rule, shape))
      return {rule.part, why_it_fits(rule, name_of(shown_name(*fits))), rule.width,
              rule.of == DrawingRule::Of::kShape};
  return by_own_name(shape);
}

constexpr std::size_t kMostKeys = 12;  // in a sentence

// The drawing's keys, as many as one sentence bears.
std::string all_keys(const Drawing& drawing) {
  std::vector<std::string> keys;
  for (const DrawnShape& shape : drawing.shapes)
    for (const std::string& key : keys_of(shape))
      if (keys.size() <= kMostKeys && std::find(keys.begin(), keys.end(), key) == keys.end())
        keys.push_back(key);
  std::string text;
  for (std::size_t i = 0; i < std::min(keys.size(), kMostKeys); ++i)
    text += (i > 0 ? ", " : "") + shown_name(keys[i]);
  return keys.empty() ? "none" : keys.size() > kMostKeys ? text + " and more" : text;
}

// A single closed path that may be a chamber.
bool may_overlap(const DrawnShape& shape, const DrawnAs& as) {
  return (!as.part || *as.part == DrawnPart::kChamber) && shape.paths.size() == 1 && all_closed(shape) &&
         !crossing_of(shape);
}

bool boxes_meet(const Bounds2& first, const Bounds2& second) {
  return (first.low.array() <= second.high.array()).all() && (second.low.array() <= first.high.array()).all();
}

}  // namespace

Phrase part_words(DrawnPart part) {
  switch (part) {
    case DrawnPart::kOutline:
      return Phrase::worded("outline");
    case DrawnPart::kChamber:
      return Phrase::worded("chamber");
    case DrawnPart::kInsetSeam:
      return Phrase::worded("inset seam");
    case DrawnPart::kChannel:
      return Phrase::worded("channel");
    case DrawnPart::kInlet:
      return Phrase::worded("inlet");
    case DrawnPart::kStrap:
      return Phrase::worded("strap");
    case DrawnPart::kIgnore:
      break;
  }
  return Phrase::worded("left out");
}

DrawingMap whole_map(const Drawing& drawing, const DrawingMap& said) {
  return drawing.carried ? with_carried(said, *drawing.carried) : said;
}

std::vector<DrawnAs> drawn_parts(const Drawing& drawing, const DrawingMap& said) {
  const DrawingMap map = whole_map(drawing, said);
  std::vector<DrawnAs> out;
  for (const DrawnShape& shape : drawing.shapes) out.push_back(part_of(shape, map));
  if (map.guess) guess_parts(drawing, out);
  for (std::size_t i = 0; i < out.size(); ++i) {
    DrawnAs& as = out[i];
    const bool channel = as.part == DrawnPart::kChannel, inset = as.part == DrawnPart::kInsetSeam;
    if (!as.width && channel) as.width = map.channel_width;
    if (!as.width && inset) as.width = map.inset_width;
    if (!as.width && (channel || inset)) as.width = drawing.shapes[i].stroke_width;
  }
  return out;
}

std::vector<std::string> keys_of(const DrawnShape& shape) {
  std::vector<std::string> keys;
  const auto add = [&keys](const std::string& key) {
    if (!key.empty() && std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
  };
  add(shape.name);
  for (const auto* names : {&shape.names, &shape.groups})
    for (const std::string& name : *names) add(name);
  if (!shape.fill.empty() && shape.fill != "none") add("fill:" + shape.fill);
  if (!shape.stroke.empty() && shape.stroke != "none") add("stroke:" + shape.stroke);
  if (keys.empty()) add("shape:" + shape_keys(shape).back());
  return keys;
}

std::vector<std::size_t> shapes_that_fit(const Drawing& drawing, const DrawingRule& rule) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i)
    if (match_of(rule, drawing.shapes[i])) out.push_back(i);
  return out;
}

std::vector<std::string> idle_rule_sentences(const Drawing& drawing, const DrawingMap& map) {
  std::vector<std::string> out;
  std::vector<bool> taken(drawing.shapes.size(), false);
  for (const DrawingRule& rule : map.rules) {
    bool fits = false, leads = false;
    for (std::size_t i = 0; i < drawing.shapes.size(); ++i) {
      if (!match_of(rule, drawing.shapes[i])) continue;
      fits = true;
      leads = leads || !taken[i];
      taken[i] = true;
    }
    if (leads) continue;
    out.push_back("The mapping '" + rule_text(rule) +
                  (fits ? "' changes nothing: an earlier one takes every shape that it fits."
                        : "' fits no shape of " + drawing.file + "; keys there: " + all_keys(drawing) + "."));
  }
  return out;
}

std::vector<std::string> overlap_sentences(const Drawing& drawing, const std::vector<DrawnAs>& parts) {
  std::vector<std::string> out;
  std::vector<const DrawnShape*> closed;
  std::vector<Bounds2> boxes;  // once each: there are as many pairs as shapes squared
  std::size_t points = 0;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i)
    if (may_overlap(drawing.shapes[i], parts[i])) {
      closed.push_back(&drawing.shapes[i]);
      boxes.push_back(bounds(drawing.shapes[i]));
      points += drawing.shapes[i].paths[0].points_m.size();
    }
  if (points > kMostOverlapPoints)
    return {"Overlaps were not looked for: the drawing has more than 20 000 points."};
  for (std::size_t i = 0; i < closed.size(); ++i)
    for (std::size_t j = i + 1; j < closed.size(); ++j) {
      const Polygon &a = closed[i]->paths[0].points_m, &b = closed[j]->paths[0].points_m;
      if (!boxes_meet(boxes[i], boxes[j]) || closest_places(a, b).distance_m > 0.0) continue;
      const double area = common_area_m2(counter_clockwise(a), counter_clockwise(b));
      if (area <= kOverlap) continue;
      if (out.size() == kMostOverlaps) {
        out.push_back("More shapes overlap; only the first " + std::to_string(kMostOverlaps) +
                      " overlaps are told.");
        return out;
      }
      out.push_back("The " + place_text(*closed[i]) + " and the " + place_text(*closed[j]) + " overlap by " +
                    fixed_text(area / 1e-6, 2) + " mm2.");
    }
  return out;
}

}  // namespace wrapgauge
