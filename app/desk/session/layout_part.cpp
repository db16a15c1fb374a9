#include "app/desk/session/layout_part.hpp"

#include <QCoreApplication>
#include <algorithm>

namespace wrapgauge {
namespace {

using Kind = LayoutPart::Kind;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(LayoutPart)
};

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
  return {{Words::tr("x"), "mm", 1e3 * box.low.x()},
          {Words::tr("y"), "mm", 1e3 * box.low.y()},
          {Words::tr("Width"), "mm", 1e3 * size.x(), 0.1},
          {Words::tr("Height"), "mm", 1e3 * size.y(), 0.1}};
}

std::vector<PartNumber> line_numbers(const Polyline& line, Length width) {
  return {{Words::tr("From x"), "mm", 1e3 * first_m(line).x()},
          {Words::tr("From y"), "mm", 1e3 * first_m(line).y()},
          {Words::tr("To x"), "mm", 1e3 * last_m(line).x()},
          {Words::tr("To y"), "mm", 1e3 * last_m(line).y()},
          {Words::tr("Width"), "mm", width / mm, 0.1}};
}

// A map of the plane that takes one box to another.
struct BoxMap {
  Vec2 from_m, scale, to_m;
  Vec2 operator()(const Vec2& point) const { return to_m + scale.cwiseProduct(point - from_m); }
};

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

void map_loop(Polygon& loop, const BoxMap& map) {
  for (Vec2& point : loop) point = map(point);
}

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

template <class List>
void erase_at(List& list, std::size_t index) {
  if (index < list.size()) list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
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

}  // namespace

std::vector<LayoutPart> layout_parts(const Layout& layout) {
  std::vector<LayoutPart> parts{{Kind::kOutline, 0, 0}};
  for (std::size_t c = 0; c < layout.chambers.size(); ++c) {
    parts.push_back({Kind::kChamber, c, 0});
    for (std::size_t i = 0; i < layout.chambers[c].inset_spots.size(); ++i)
      parts.push_back({Kind::kInsetSpot, c, i});
    for (std::size_t i = 0; i < layout.chambers[c].inset_lines.size(); ++i)
      parts.push_back({Kind::kInsetLine, c, i});
  }
  for (std::size_t i = 0; i < layout.channels.size(); ++i) parts.push_back({Kind::kChannel, i, 0});
  for (std::size_t i = 0; i < layout.inlets.size(); ++i) parts.push_back({Kind::kInlet, i, 0});
  for (std::size_t i = 0; i < layout.straps.size(); ++i) parts.push_back({Kind::kStrap, i, 0});
  return parts;
}

QString part_title(const Layout& layout, const LayoutPart& part) {
  const auto named = [](const QString& word, const std::string& name) {
    return word.arg(QString::fromStdString(name));
  };
  const auto inset = [&](const QString& word) {
    return word.arg(part.inset + 1).arg(QString::fromStdString(layout.chambers[part.index].name));
  };
  switch (part.kind) {
    case Kind::kOutline:
      return Words::tr("outline");
    case Kind::kChamber:
      return named(Words::tr("chamber %1"), layout.chambers[part.index].name);
    case Kind::kInsetSpot:
      return inset(Words::tr("inset spot %1 of %2"));
    case Kind::kInsetLine:
      return inset(Words::tr("inset line %1 of %2"));
    case Kind::kChannel:
      return named(Words::tr("channel %1"), layout.channels[part.index].name);
    case Kind::kInlet:
      return named(Words::tr("inlet %1"), layout.inlets[part.index].name);
    case Kind::kStrap:
      break;
  }
  return named(Words::tr("strap %1"), layout.straps[part.index].name);
}

std::vector<PartNumber> part_numbers(const Layout& layout, const LayoutPart& part) {
  switch (part.kind) {
    case Kind::kOutline:
      return box_numbers(layout.outline_m);
    case Kind::kChamber:
      return box_numbers(layout.chambers[part.index].boundary_m);
    case Kind::kInsetSpot: {
      const InsetSpot& spot = layout.chambers[part.index].inset_spots[part.inset];
      return {{Words::tr("x"), "mm", 1e3 * spot.centre_m.x()},
              {Words::tr("y"), "mm", 1e3 * spot.centre_m.y()},
              {Words::tr("Radius"), "mm", spot.radius / mm, 0.1}};
    }
    case Kind::kInsetLine: {
      const InsetLine& line = layout.chambers[part.index].inset_lines[part.inset];
      return line_numbers(line.path_m, line.width);
    }
    case Kind::kChannel:
      return line_numbers(layout.channels[part.index].path_m, layout.channels[part.index].width);
    case Kind::kInlet: {
      const Vec2& point = layout.inlets[part.index].point_m;
      return {{Words::tr("x"), "mm", 1e3 * point.x()}, {Words::tr("y"), "mm", 1e3 * point.y()}};
    }
    case Kind::kStrap:
      break;
  }
  const Strap& strap = layout.straps[part.index];
  std::vector<PartNumber> numbers = box_numbers(strap.boundary_m);
  numbers.push_back({Words::tr("Stiffness"), "N/mm", strap.stiffness / N_per_mm, 0.0});
  numbers.push_back({Words::tr("Thickness"), "mm", strap.thickness / mm, 0.0});
  return numbers;
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
