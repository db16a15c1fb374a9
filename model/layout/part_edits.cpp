#include "model/layout/part_edits.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

using Kind = LayoutPart::Kind;

template <class Named>
bool taken(const std::vector<Named>& all, const std::string& name, std::size_t except) {
  for (std::size_t i = 0; i < all.size(); ++i)
    if (i != except && all[i].name == name) return true;
  return false;
}

// "chamber 3", the first number that is free.
template <class Named>
std::string free_name(const std::vector<Named>& all, const std::string& word) {
  for (std::size_t number = all.size() + 1;; ++number) {
    const std::string name = word + " " + std::to_string(number);
    if (!taken(all, name, all.size())) return name;
  }
}

Polygon rectangle_m(const Vec2& centre, double width, double height) {
  const Vec2 half(0.5 * width, 0.5 * height);
  return {centre - half, centre + Vec2(half.x(), -half.y()), centre + half,
          centre + Vec2(-half.x(), half.y())};
}

Vec2 middle_m(const Polygon& loop) {
  const Bounds2 box = bounds(loop);
  return 0.5 * (box.low + box.high);
}

bool strap_at(const Layout& layout, const Vec2& point) {
  return std::any_of(layout.straps.begin(), layout.straps.end(),
                     [&](const Strap& strap) { return contains(strap.boundary_m, point); });
}

// Where cloth can go on: the longest stretch of the outline that looks along x and has none yet, on the right
// if there is one.
std::pair<Vec2, Vec2> edge_for_strap(const Layout& layout) {
  const Polygon loop = counter_clockwise(layout.outline_m);
  std::pair<Vec2, Vec2> best{loop[0], loop[1 % loop.size()]};
  double most = -1.0;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec2 a = loop[i], b = loop[(i + 1) % loop.size()];
    const double rise = b.y() - a.y();  // counter-clockwise: a rising edge looks to the right
    const bool used = strap_at(layout, 0.5 * (a + b) + Vec2(rise > 0.0 ? 1e-3 : -1e-3, 0.0));
    const double worth = used ? 0.0 : rise > 0.0 ? rise : -0.5 * rise;
    if (worth <= most) continue;
    most = worth;
    best = {a, b};
  }
  return best;
}

// Eight tenths of that edge wide, 60 mm long; cloth as in the demo (judgement).
Strap new_strap(const Layout& layout) {
  const auto [a, b] = edge_for_strap(layout);
  const Vec2 low = a + 0.1 * (b - a), high = b - 0.1 * (b - a);
  const Vec2 on(b.y() > a.y() ? 0.06 : -0.06, 0.0);
  return {free_name(layout.straps, "strap"), {low, low + on, high + on, high}, 20.0 * N_per_mm, 1.0 * mm};
}

template <class List>
void erase_at(List& list, std::size_t index) {
  if (index < list.size()) list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
}

}  // namespace

void map_chamber(Layout& layout, std::size_t index, const BoxMap& map) {
  Chamber& chamber = layout.chambers[index];
  for (Inlet& inlet : layout.inlets)
    if (contains(chamber.boundary_m, inlet.point_m)) inlet.point_m = map(inlet.point_m);
  for (Channel& channel : layout.channels)
    for (Vec2& point : channel.path_m)
      if (contains(chamber.boundary_m, point)) point = map(point);
  for (InsetSpot& spot : chamber.inset_spots) spot.centre_m = map(spot.centre_m);
  for (InsetLine& line : chamber.inset_lines) map_loop(line.path_m, map);
  map_loop(chamber.boundary_m, map);
}

Layout with_part_moved(Layout layout, const LayoutPart& part, const Vec2& by_m) {
  const BoxMap map{{0.0, 0.0}, {1.0, 1.0}, by_m};
  switch (part.kind) {
    case Kind::kOutline:
      map_loop(layout.outline_m, map);
      break;
    case Kind::kChamber:
      map_chamber(layout, part.index, map);
      break;
    case Kind::kInsetSpot:
      layout.chambers[part.index].inset_spots[part.inset].centre_m += by_m;
      break;
    case Kind::kInsetLine:
      map_loop(layout.chambers[part.index].inset_lines[part.inset].path_m, map);
      break;
    case Kind::kChannel:
      map_loop(layout.channels[part.index].path_m, map);
      break;
    case Kind::kInlet:
      layout.inlets[part.index].point_m += by_m;
      break;
    case Kind::kStrap:
      map_loop(layout.straps[part.index].boundary_m, map);
  }
  return layout;
}

std::optional<Layout> with_name(Layout layout, const LayoutPart& part, const std::string& name) {
  const auto rename = [&](auto& all) {
    if (name.empty() || taken(all, name, part.index)) return false;
    all[part.index].name = name;
    return true;
  };
  bool renamed = false;
  if (part.kind == Kind::kChamber) renamed = rename(layout.chambers);
  if (part.kind == Kind::kChannel) renamed = rename(layout.channels);
  if (part.kind == Kind::kInlet) renamed = rename(layout.inlets);
  if (part.kind == Kind::kStrap) renamed = rename(layout.straps);
  if (!renamed) return std::nullopt;
  return layout;
}

Layout without_part(Layout layout, const LayoutPart& part) {
  if (part.kind == Kind::kChamber) erase_at(layout.chambers, part.index);
  if (part.kind == Kind::kInsetSpot) erase_at(layout.chambers[part.index].inset_spots, part.inset);
  if (part.kind == Kind::kInsetLine) erase_at(layout.chambers[part.index].inset_lines, part.inset);
  if (part.kind == Kind::kChannel) erase_at(layout.channels, part.index);
  if (part.kind == Kind::kInlet) erase_at(layout.inlets, part.index);
  if (part.kind == Kind::kStrap) erase_at(layout.straps, part.index);
  return layout;
}

Layout with_new_part(Layout layout, Kind kind, std::size_t chamber) {
  const Vec2 middle =
      layout.chambers.empty() ? middle_m(layout.outline_m) : middle_m(layout.chambers[chamber].boundary_m);
  const std::size_t next = layout.chambers.empty() ? 0 : (chamber + 1) % layout.chambers.size();
  switch (kind) {
    case Kind::kChamber:
      layout.chambers.push_back({free_name(layout.chambers, "chamber"),
                                 rectangle_m(middle_m(layout.outline_m), 0.02, 0.02),
                                 {},
                                 {}});
      break;
    case Kind::kInsetSpot:
      layout.chambers[chamber].inset_spots.push_back({middle, 2.0 * mm});
      break;
    case Kind::kInsetLine:
      layout.chambers[chamber].inset_lines.push_back(
          {{middle - Vec2(0.005, 0.0), middle + Vec2(0.005, 0.0)}, 3.0 * mm});
      break;
    case Kind::kChannel:
      layout.channels.push_back({free_name(layout.channels, "channel"),
                                 {middle, middle_m(layout.chambers[next].boundary_m)},
                                 4.0 * mm});
      break;
    case Kind::kInlet:
      layout.inlets.push_back({free_name(layout.inlets, "inlet"), middle});
      break;
    case Kind::kStrap:
      layout.straps.push_back(new_strap(layout));
      break;
    case Kind::kOutline:
      break;
  }
  return layout;
}

}  // namespace wrapgauge
