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

namespace {

bool lies_in(const Polygon& inner, const Polygon& outer) {
  return contains(outer, inner.front()) && closest_places(outer, inner).distance_m > 0.0;
}

bool is_ring_hole(const LayoutShapes& shapes, const Polygon& inset) {
  return std::any_of(
      shapes.chambers.begin(), shapes.chambers.end(),
      [&inset](const LayoutShapes::OpenChamber& other) { return lies_in(other.boundary_m, inset); });
}

}  // namespace

std::optional<ClosestPlaces> seam_in_hole(const LayoutShapes& shapes, const OpenLoop& a, const OpenLoop& b) {
  if (a.region.kind != RegionKind::kChamber || b.region.kind != RegionKind::kChamber) return std::nullopt;
  for (const auto& [ring, inner] : {std::pair(&a, &b), std::pair(&b, &a)})
    for (const Polygon& inset : shapes.chambers[ring->region.part].insets_m)
      if (lies_in(*inner->loop, inset)) return closest_places(*inner->loop, inset);
  return std::nullopt;
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
    const auto inset = std::find_if(chamber.insets_m.begin(), chamber.insets_m.end(), holds);
    if (inset != chamber.insets_m.end()) {
      if (!is_ring_hole(shapes, *inset)) return FlatRegion{};
      continue;
    }
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
