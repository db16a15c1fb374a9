#include "model/layout/layout_shapes.hpp"

#include <algorithm>

#include "model/geometry/stroke.hpp"

namespace wrapgauge {

LayoutShapes layout_shapes(const Layout& layout, double longest_side_m) {
  LayoutShapes shapes;
  shapes.outline_m = layout.outline_m;
  for (const Chamber& chamber : layout.chambers) {
    LayoutShapes::OpenChamber open{chamber.boundary_m, {}};
    for (const InsetSpot& spot : chamber.inset_spots)
      open.insets_m.push_back(circle_polygon(spot.centre_m, spot.radius.si(), longest_side_m));
    for (const InsetLine& line : chamber.inset_lines)
      open.insets_m.push_back(stroke(line.path_m, line.width.si()));
    shapes.chambers.push_back(std::move(open));
  }
  for (const Channel& channel : layout.channels)
    shapes.channels_m.push_back(stroke(channel.path_m, channel.width.si()));
  for (const Strap& strap : layout.straps) shapes.straps_m.push_back(strap.boundary_m);
  return shapes;
}

std::optional<FlatRegion> region_at(const LayoutShapes& shapes, const Vec2& point) {
  const auto holds = [&point](const Polygon& polygon) { return contains(polygon, point); };
  if (!holds(shapes.outline_m)) {
    for (std::size_t i = 0; i < shapes.straps_m.size(); ++i)
      if (holds(shapes.straps_m[i])) return FlatRegion{RegionKind::kStrap, static_cast<int>(i)};
    return std::nullopt;
  }
  for (std::size_t i = 0; i < shapes.chambers.size(); ++i) {
    const LayoutShapes::OpenChamber& chamber = shapes.chambers[i];
    if (!holds(chamber.boundary_m)) continue;
    if (std::any_of(chamber.insets_m.begin(), chamber.insets_m.end(), holds)) return FlatRegion{};
    return FlatRegion{RegionKind::kChamber, static_cast<int>(i)};
  }
  for (std::size_t i = 0; i < shapes.channels_m.size(); ++i)
    if (holds(shapes.channels_m[i])) return FlatRegion{RegionKind::kChannel, static_cast<int>(i)};
  return FlatRegion{};
}

std::vector<OpenLoop> open_loops(const LayoutShapes& shapes) {
  std::vector<OpenLoop> loops;
  for (int i = 0; i < static_cast<int>(shapes.chambers.size()); ++i)
    loops.push_back(
        {&shapes.chambers[i].boundary_m, {RegionKind::kChamber, i}, {ProblemPlace::Kind::kChamber, i}});
  for (int i = 0; i < static_cast<int>(shapes.channels_m.size()); ++i)
    loops.push_back({&shapes.channels_m[i], {RegionKind::kChannel, i}, {ProblemPlace::Kind::kChannel, i}});
  return loops;
}

bool same(const std::optional<FlatRegion>& a, const std::optional<FlatRegion>& b) {
  return a.has_value() == b.has_value() && (!a || (a->kind == b->kind && a->part == b->part));
}

}  // namespace wrapgauge
