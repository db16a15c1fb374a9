#include "model/layout/part_numbers.hpp"

#include <algorithm>

#include "model/layout/box_map.hpp"
#include "model/layout/part_edits.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutPart::Kind;

// Points of a line that has ends; a line of one point or none has them at the origin.
Vec2 first_m(const Polyline& line) {
  return line.empty() ? Vec2(0.0, 0.0) : line.front();
}
Vec2 last_m(const Polyline& line) {
  return line.empty() ? Vec2(0.0, 0.0) : line.back();
}

std::vector<PartNumber> box_numbers(const Polygon& loop) {
  const Bounds2 box = bounds(loop);
  const Vec2 size = box.high - box.low;
  return {{Phrase::worded("x"), "mm", 1e3 * box.low.x()},
          {Phrase::worded("y"), "mm", 1e3 * box.low.y()},
          {Phrase::worded("Width"), "mm", 1e3 * size.x(), 0.1},
          {Phrase::worded("Height"), "mm", 1e3 * size.y(), 0.1}};
}

std::vector<PartNumber> line_numbers(const Polyline& line, Length width) {
  return {{Phrase::worded("From x"), "mm", 1e3 * first_m(line).x()},
          {Phrase::worded("From y"), "mm", 1e3 * first_m(line).y()},
          {Phrase::worded("To x"), "mm", 1e3 * last_m(line).x()},
          {Phrase::worded("To y"), "mm", 1e3 * last_m(line).y()},
          {Phrase::worded("Width"), "mm", width / mm, 0.1}};
}

BoxMap map_with_number(const Polygon& loop, std::size_t number, double value_m) {
  const Bounds2 box = bounds(loop);
  const Vec2 size = (box.high - box.low).cwiseMax(1e-6);
  BoxMap map{box.low, {1.0, 1.0}, box.low};
  const auto axis = static_cast<Eigen::Index>(number % 2);
  if (number < 2)
    map.to_m[axis] = value_m;
  else
    map.scale[axis] = std::max(value_m, 1e-4) / size[axis];
  return map;
}

void set_line(Polyline& line, Length& width, std::size_t number, double value) {
  if (number == 4) {
    width = std::max(value, 0.1) * mm;
    return;
  }
  if (line.empty()) return;
  Vec2& end = number < 2 ? line.front() : line.back();
  end[static_cast<Eigen::Index>(number % 2)] = 1e-3 * value;
}

void set_spot(InsetSpot& spot, std::size_t number, double value) {
  if (number == 2)
    spot.radius = std::max(value, 0.1) * mm;
  else
    spot.centre_m[static_cast<Eigen::Index>(number)] = 1e-3 * value;
}

void set_strap(Strap& strap, std::size_t number, double value) {
  if (number < 4) return map_loop(strap.boundary_m, map_with_number(strap.boundary_m, number, 1e-3 * value));
  if (number == 4)
    strap.stiffness = value * N_per_mm;
  else
    strap.thickness = value * mm;
}

}  // namespace

std::vector<PartNumber> part_numbers(const Layout& layout, const LayoutPart& part) {
  switch (part.kind) {
    case Kind::kOutline:
      return box_numbers(layout.outline_m);
    case Kind::kChamber:
      return box_numbers(layout.chambers[part.index].boundary_m);
    case Kind::kInsetSpot: {
      const InsetSpot& spot = layout.chambers[part.index].inset_spots[part.inset];
      return {{Phrase::worded("x"), "mm", 1e3 * spot.centre_m.x()},
              {Phrase::worded("y"), "mm", 1e3 * spot.centre_m.y()},
              {Phrase::worded("Radius"), "mm", spot.radius / mm, 0.1}};
    }
    case Kind::kInsetLine: {
      const InsetLine& line = layout.chambers[part.index].inset_lines[part.inset];
      return line_numbers(line.path_m, line.width);
    }
    case Kind::kChannel:
      return line_numbers(layout.channels[part.index].path_m, layout.channels[part.index].width);
    case Kind::kInlet: {
      const Vec2& point = layout.inlets[part.index].point_m;
      return {{Phrase::worded("x"), "mm", 1e3 * point.x()}, {Phrase::worded("y"), "mm", 1e3 * point.y()}};
    }
    case Kind::kStrap:
      break;
  }
  const Strap& strap = layout.straps[part.index];
  std::vector<PartNumber> numbers = box_numbers(strap.boundary_m);
  numbers.push_back({Phrase::worded("Stiffness"), "N/mm", strap.stiffness / N_per_mm, 0.0});
  numbers.push_back({Phrase::worded("Thickness"), "mm", strap.thickness / mm, 0.0});
  return numbers;
}

Layout with_number(Layout layout, const LayoutPart& part, std::size_t number, double value) {
  switch (part.kind) {
    case Kind::kOutline:
      map_loop(layout.outline_m, map_with_number(layout.outline_m, number, 1e-3 * value));
      break;
    case Kind::kChamber:
      map_chamber(layout, part.index,
                  map_with_number(layout.chambers[part.index].boundary_m, number, 1e-3 * value));
      break;
    case Kind::kInsetSpot:
      set_spot(layout.chambers[part.index].inset_spots[part.inset], number, value);
      break;
    case Kind::kInsetLine: {
      InsetLine& line = layout.chambers[part.index].inset_lines[part.inset];
      set_line(line.path_m, line.width, number, value);
      break;
    }
    case Kind::kChannel:
      set_line(layout.channels[part.index].path_m, layout.channels[part.index].width, number, value);
      break;
    case Kind::kInlet:
      layout.inlets[part.index].point_m[static_cast<Eigen::Index>(number)] = 1e-3 * value;
      break;
    case Kind::kStrap:
      set_strap(layout.straps[part.index], number, value);
  }
  return layout;
}

}  // namespace wrapgauge
