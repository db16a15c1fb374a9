#include "model/layout/drawing.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"

namespace wrapgauge {
namespace {

bool cross_one_another(const std::vector<DrawnPath>& paths) {
  for (std::size_t i = 0; i < paths.size(); ++i)
    for (std::size_t j = i + 1; j < paths.size(); ++j)
      if (closest_places(paths[i].points_m, paths[j].points_m).distance_m <= 0.0) return true;
  return false;
}

// How often the other loops wind round this one: each counts once (even-odd), or by its direction.
int winding_outside(const DrawnShape& shape, std::size_t self) {
  int winding = 0;
  for (std::size_t i = 0; i < shape.paths.size(); ++i) {
    const DrawnPath& other = shape.paths[i];
    if (i == self || !contains(other.points_m, shape.paths[self].points_m.front())) continue;
    const bool backwards = shape.fill_rule == FillRule::kNonZero && other.swept_m2 < 0.0;
    winding += backwards ? -1 : 1;
  }
  return winding;
}

bool filled(int winding, FillRule rule) {
  return rule == FillRule::kNonZero ? winding != 0 : winding % 2 != 0;
}

std::string drawn_so(const DrawnShape& shape) {
  if (shape.paths.empty()) return shape.kind + " at line " + std::to_string(shape.line);
  const Bounds2 box = bounds(shape);
  const auto tenths = [](double metres) { return fixed_text(std::round(metres * 1e4) / 10.0 + 0.0, 1); };
  const Vec2 size = box.high - box.low, middle = 0.5 * (box.low + box.high);
  std::string key =
      shape.kind;  // one piece after the other: a chain of + trips a false warning of the compiler
  for (const auto& [between, metres] : {std::pair(" of ", size.x()), std::pair(" x ", size.y()),
                                        std::pair(" mm at (", middle.x()), std::pair(", ", middle.y())}) {
    key += between;
    key += tenths(metres);
  }
  return key += ")";
}

}  // namespace

bool all_closed(const DrawnShape& shape) {
  return !shape.paths.empty() &&
         std::all_of(shape.paths.begin(), shape.paths.end(), [](const DrawnPath& p) { return p.closed; });
}

Bounds2 bounds(const DrawnShape& shape) {
  std::vector<Vec2> points;
  for (const DrawnPath& path : shape.paths)
    points.insert(points.end(), path.points_m.begin(), path.points_m.end());
  return bounds(points);
}

double length_m(const DrawnShape& shape) {
  double sum = 0.0;
  for (const DrawnPath& path : shape.paths) sum += path.length_m;
  return sum;
}

std::optional<Vec2> crossing_of(const DrawnShape& shape) {
  for (const DrawnPath& path : shape.paths)
    if (path.closed)
      if (const auto place = self_crossing(path.points_m)) return place;
  return std::nullopt;
}

std::optional<double> area_m2(const DrawnShape& shape) {
  if ((!shape.fault.empty() && !shape.cut) || !all_closed(shape) || crossing_of(shape) ||
      cross_one_another(shape.paths))
    return std::nullopt;
  double area = 0.0;
  for (std::size_t i = 0; i < shape.paths.size(); ++i) {
    const DrawnPath& path = shape.paths[i];
    const int outside = winding_outside(shape, i);
    const bool backwards = shape.fill_rule == FillRule::kNonZero && path.swept_m2 < 0.0;
    const bool fills_inside = filled(outside + (backwards ? -1 : 1), shape.fill_rule);
    const bool fills_outside = filled(outside, shape.fill_rule);
    if (fills_inside != fills_outside) area += (fills_inside ? 1.0 : -1.0) * std::abs(path.swept_m2);
  }
  return std::max(0.0, area);  // chords and curves differ by a little
}

std::string faults_sentence(const std::string& file, const std::vector<std::string>& faults) {
  constexpr std::size_t kMostFaults = 12;  // judgement
  if (faults.empty()) return "";
  if (faults.size() == 1) return file + ": " + faults[0];
  std::string text = file + " has " + std::to_string(faults.size()) + " faults.";
  for (std::size_t i = 0; i < std::min(faults.size(), kMostFaults); ++i)
    text += " (" + std::to_string(i + 1) + ") " + faults[i];
  if (faults.size() > kMostFaults) text += " And " + std::to_string(faults.size() - kMostFaults) + " more.";
  return text;
}

std::string note_text(const DrawnNote& note) {
  return english(note.words) + (note.by_option.empty() ? "" : " " + note.by_option);
}

std::vector<std::string> shape_keys(const DrawnShape& shape) {
  std::vector<std::string> keys;
  const auto add_name = [&](const std::string& name) {
    if (!name.empty()) keys.push_back(shape.kind + " '" + name + "'");
  };
  for (const std::string& name : shape.names) add_name(name);
  add_name(shape.name);
  keys.push_back(drawn_so(shape));
  return keys;
}

std::string shown_name(const std::string& name) {
  constexpr std::size_t kLongest = 60;
  if (name.size() <= kLongest) return name;
  std::size_t end = kLongest;
  while (end > 0 && (static_cast<unsigned char>(name[end]) & 0xC0) == 0x80) --end;  // inside a letter
  return name.substr(0, end) + "...";
}

std::string place_text(const DrawnShape& shape) {
  std::string text = shape.kind;
  if (!shape.name.empty()) text += " '" + shown_name(shape.name) + "'";
  return text + " at line " + std::to_string(shape.line);
}

}  // namespace wrapgauge
