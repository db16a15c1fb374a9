#pragma once
// Layouts that several layout tests share, in metres.

#include "model/geometry/stroke.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge::test {

inline Polygon rectangle(double x, double y, double width, double height) {
  return {{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}};
}

inline Layout bare_layout(double width, double height) {
  Layout layout;
  layout.name = "test";
  layout.outline_m = rectangle(0, 0, width, height);
  layout.skin_sheet = {"00-30", 1.5 * mm};
  layout.outer_sheet = {"A10", 2.5 * mm};
  return layout;
}

// 260 x 100 mm, four chambers 50 x 70 mm with 8 mm corners and 10 mm seams, joined in two pairs by 4 mm
// channels, and a strap of 40 mm at the right edge.
inline Layout four_chamber_cuff() {
  Layout layout = bare_layout(0.260, 0.100);
  for (int i = 0; i < 4; ++i)
    layout.chambers.push_back({"chamber " + std::to_string(i + 1),
                               flattened_rectangle({0.015 + 0.06 * i, 0.015}, {0.05, 0.07}, 0.008, 5e-5),
                               {},
                               {}});
  layout.channels.push_back({"left", {{0.060, 0.05}, {0.080, 0.05}}, 4.0 * mm});
  layout.channels.push_back({"right", {{0.180, 0.05}, {0.200, 0.05}}, 4.0 * mm});
  layout.inlets = {{"left", {0.04, 0.03}}, {"right", {0.22, 0.03}}};
  layout.straps.push_back({"strap", rectangle(0.260, 0.02, 0.04, 0.06), 20.0 * N_per_mm, 1.0 * mm});
  layout.closure = Closure{0.0, Length(0.290), std::nullopt};
  return layout;
}

// x -> -x, so that left and right change places.
inline Layout mirrored(Layout layout) {
  const auto flip = [](std::vector<Vec2>& points) {
    for (Vec2& p : points) p.x() = -p.x();
  };
  const auto flip_loop = [&](Polygon& loop) {
    flip(loop);
    loop = counter_clockwise(loop);
  };
  flip_loop(layout.outline_m);
  for (Chamber& chamber : layout.chambers) {
    flip_loop(chamber.boundary_m);
    for (InsetSpot& spot : chamber.inset_spots) spot.centre_m.x() = -spot.centre_m.x();
    for (InsetLine& line : chamber.inset_lines) flip(line.path_m);
  }
  for (Channel& channel : layout.channels) flip(channel.path_m);
  for (Inlet& inlet : layout.inlets) inlet.point_m.x() = -inlet.point_m.x();
  for (Strap& strap : layout.straps) flip_loop(strap.boundary_m);
  layout.closure.reset();
  return layout;
}

}  // namespace wrapgauge::test
