#include "model/layout/drawn_names.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace wrapgauge {
namespace {

constexpr std::size_t kLongestName = 80;         // bytes (judgement)
constexpr std::size_t kMostLooks = 100'000'000;  // pairs of a text and a point

bool is_loop(const DrawnShape& shape) {
  return shape.fault.empty() && shape.paths.size() == 1 && shape.paths[0].closed;
}

// The smallest closed shape round a point.
std::optional<std::size_t> shape_round(const Drawing& drawing, const std::vector<Bounds2>& boxes,
                                       const Vec2& point) {
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i) {
    const DrawnShape& shape = drawing.shapes[i];
    if (!is_loop(shape) || (point.array() < boxes[i].low.array()).any() ||
        (point.array() > boxes[i].high.array()).any())
      continue;
    const double area = std::abs(shape.paths[0].swept_m2);
    if (found && std::abs(drawing.shapes[*found].paths[0].swept_m2) <= area) continue;
    if (contains(shape.paths[0].points_m, point)) found = i;
  }
  return found;
}

bool lies_in(const Bounds2& inner, const Bounds2& outer) {
  return (inner.low.array() > outer.low.array()).all() && (inner.high.array() < outer.high.array()).all();
}

// The frame round all others, most likely the outline: text in it is a note on the drawing.
bool is_frame(const Drawing& drawing, const std::vector<Bounds2>& boxes, std::size_t shape) {
  bool encloses = false, enclosed = false;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    if (!is_loop(drawing.shapes[i])) continue;
    encloses = encloses || lies_in(boxes[i], boxes[shape]);
    enclosed = enclosed || lies_in(boxes[shape], boxes[i]);
  }
  return encloses && !enclosed;
}

}  // namespace

void name_by_words(Drawing& drawing) {
  std::map<std::size_t, std::vector<std::size_t>> words_in;  // shape -> words
  std::vector<bool> used(drawing.words.size(), false);
  std::vector<Bounds2> boxes;
  std::size_t points = 0;
  for (const DrawnShape& shape : drawing.shapes) {
    boxes.push_back(bounds(shape));
    for (const DrawnPath& path : shape.paths) points += 1 + path.points_m.size();
  }
  if (points * drawing.words.size() <= kMostLooks)
    for (std::size_t w = 0; w < drawing.words.size(); ++w)
      if (const auto shape = shape_round(drawing, boxes, drawing.words[w].place_m))
        words_in[*shape].push_back(w);
  for (const auto& [shape, words] : words_in) {
    std::string& name = drawing.shapes[shape].name;
    const std::string& text = drawing.words[words.front()].words;
    if (is_frame(drawing, boxes, shape)) continue;
    if (words.size() == 1 && name.empty() && text.size() <= kLongestName) name = text;
    used[words.front()] = !text.empty() && name == text;
  }
  for (std::size_t w = 0; w < drawing.words.size(); ++w)
    if (!used[w])
      drawing.left_out.push_back(
          {drawing.words[w].line, drawing.words[w].kind, "is text that names no shape"});
}

void name_by_groups(Drawing& drawing) {
  std::map<std::string, int> shapes_in;
  for (const DrawnShape& shape : drawing.shapes)
    for (const std::string& group : shape.groups) ++shapes_in[group];
  for (DrawnShape& shape : drawing.shapes)
    for (const std::string& group : shape.groups)
      if (shape.name.empty() && shapes_in[group] == 1 && group != "0" && !part_from_name(group))
        shape.name = group;
}

}  // namespace wrapgauge
