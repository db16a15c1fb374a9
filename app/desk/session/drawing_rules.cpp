#include "app/desk/session/drawing_rules.hpp"

#include <algorithm>

#include "app/desk/session/checked_plan.hpp"

namespace wrapgauge {
namespace {

bool look_alike(const DrawnShape& a, const DrawnShape& b) {
  if (!a.groups.empty() || !b.groups.empty())
    return !a.groups.empty() && !b.groups.empty() && a.groups.front() == b.groups.front();
  return a.fill == b.fill && a.stroke == b.stroke && all_closed(a) == all_closed(b);
}

bool fits_these_alone(const Drawing& drawing, const DrawingRule& rule,
                      const std::vector<std::size_t>& shapes) {
  return shapes_that_fit(drawing, rule) == shapes;
}

DrawingRule rule_for(const Drawing& drawing, std::size_t shape, DrawnPart part) {
  const std::vector<std::string> keys = shape_keys(drawing.shapes[shape]);
  for (const std::string& key : keys) {
    const DrawingRule rule{DrawingRule::Of::kShape, key, part, {}};
    if (fits_these_alone(drawing, rule, {shape})) return rule;
  }
  return {DrawingRule::Of::kShape, keys.back(), part, {}};
}

bool about_the_same(const DrawingRule& a, const DrawingRule& b) {
  return a.of == b.of && a.pattern == b.pattern;
}

// Widths and cloths that a drawing mostly leaves unsaid.
DrawingMap bare_map() {
  DrawingMap map;
  map.channel_width = 4.0 * mm;
  map.inset_width = 3.0 * mm;
  map.details.strap_stiffness = 20.0 * N_per_mm;
  map.details.strap_thickness = 1.0 * mm;
  return map;
}

const DrawingMap* said_of(const std::filesystem::path& file, const Plan& plan) {
  if (!plan.layout_drawing) return nullptr;
  std::error_code error;
  const bool same = std::filesystem::equivalent(plan.folder / plan.layout_drawing->file, file, error);
  return same && !error ? std::get_if<DrawingMap>(&plan.layout_drawing->map) : nullptr;
}

}  // namespace

std::vector<std::size_t> alike_shapes(const Drawing& drawing, const std::vector<DrawnAs>& parts,
                                      std::size_t shape) {
  std::vector<std::size_t> alike;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i)
    if (i == shape ||
        (parts[i].part == parts[shape].part && look_alike(drawing.shapes[i], drawing.shapes[shape])))
      alike.push_back(i);
  return alike;
}

std::string shared_group(const Drawing& drawing, const std::vector<std::size_t>& shapes) {
  if (shapes.empty() || drawing.shapes[shapes.front()].groups.empty()) return {};
  const std::string& group = drawing.shapes[shapes.front()].groups.front();
  const bool shared = std::all_of(shapes.begin(), shapes.end(), [&](std::size_t i) {
    return !drawing.shapes[i].groups.empty() && drawing.shapes[i].groups.front() == group;
  });
  return shared ? group : std::string();
}

void say_part(DrawingMap& map, const Drawing& drawing, const std::vector<std::size_t>& shapes,
              DrawnPart part) {
  std::vector<DrawingRule> rules;
  const DrawingRule of_group{DrawingRule::Of::kName, shared_group(drawing, shapes), part, {}};
  if (shapes.size() > 1 && !of_group.pattern.empty() && fits_these_alone(drawing, of_group, shapes))
    rules = {of_group};
  else
    for (const std::size_t shape : shapes) rules.push_back(rule_for(drawing, shape, part));
  std::erase_if(map.rules, [&](const DrawingRule& old) {
    return std::any_of(rules.begin(), rules.end(),
                       [&](const DrawingRule& rule) { return about_the_same(rule, old); });
  });
  map.rules.insert(map.rules.begin(), rules.begin(), rules.end());
}

StartingMap starting_map(const std::filesystem::path& file, const Plan& plan,
                         const std::optional<DrawingMap>& remembered) {
  DrawingMap map = bare_map();
  const DrawingMap* said = said_of(file, plan);
  if (!said && remembered) said = &*remembered;
  if (said) {
    const DrawingMap bare = map;
    map = *said;
    if (!map.channel_width) map.channel_width = bare.channel_width;
    if (!map.inset_width) map.inset_width = bare.inset_width;
    if (!map.details.strap_stiffness) map.details.strap_stiffness = bare.details.strap_stiffness;
    if (!map.details.strap_thickness) map.details.strap_thickness = bare.details.strap_thickness;
  }
  if (has_layout(plan)) map.details.closure = plan.layout.closure;
  return {std::move(map), said != nullptr};
}

}  // namespace wrapgauge
