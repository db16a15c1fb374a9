#include <algorithm>
#include <cmath>

#include "model/geometry/stroke.hpp"
#include "model/layout/forms/layout_form_values.hpp"

namespace wrapgauge {
namespace {

// A grid of spots that keeps half a spacing from the walls.
void add_spots(Chamber& chamber, const Vec2& low_m, const Vec2& size_m, double spacing_m, Length radius) {
  const int columns = std::max(1, static_cast<int>(std::lround(size_m.x() / spacing_m)));
  const int rows = std::max(1, static_cast<int>(std::lround(size_m.y() / spacing_m)));
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column)
      chamber.inset_spots.push_back(
          {low_m + Vec2((column + 0.5) * size_m.x() / columns, (row + 0.5) * size_m.y() / rows), radius});
}

// The middle of a cell between four spots, nearest to the middle of the upper edge.
Vec2 inlet_place(const Vec2& low_m, const Vec2& size_m, double spacing_m) {
  const int columns = std::max(1, static_cast<int>(std::lround(size_m.x() / spacing_m)));
  const int rows = std::max(1, static_cast<int>(std::lround(size_m.y() / spacing_m)));
  const double x = columns > 1 ? std::floor(0.5 * columns) / columns : 0.25;
  const double y = rows > 1 ? (rows - 1.0) / rows : 0.25;
  return low_m + Vec2(x * size_m.x(), y * size_m.y());
}

constexpr double kStrapOverlap_m = 0.04;  // beyond the closing line, as a cuff's (judgement)

// A cloth strap from the right edge round the rest of the girth to the left edge. The edges are straight over
// `straight_m`.
Result<std::monostate> add_strap(Layout& layout, const Vec2& outer_m, double straight_m,
                                 const LayoutFormValues& values) {
  const double width = values.metres("strap-width");
  if (width == 0.0) return std::monostate{};
  if (width > straight_m)
    return bad_input(
        Phrase::worded("The strap is %1 wide, but the pack's edge is straight over %2 only; make the strap "
                       "narrower or the pack higher.",
                       {millimetres_of(Length(width)), millimetres_of(Length(straight_m))}));
  const double closing = values.metres("girth") / (1.0 + values.number("stretch"));
  const double low = 0.5 * (outer_m.y() - width), end = closing + kStrapOverlap_m;
  layout.straps.push_back({"strap",
                           {{outer_m.x(), low}, {end, low}, {end, low + width}, {outer_m.x(), low + width}},
                           20.0 * N_per_mm,
                           1.0 * mm});
  layout.closure = Closure{0.0, std::nullopt, values.number("stretch")};
  return std::monostate{};
}

Result<Layout> draw_quilted_pack(const LayoutFormValues& values) {
  const double rim = values.metres("rim"), spacing = values.metres("spacing");
  const Vec2 outer(values.number("cover") * values.metres("girth"), values.metres("height"));
  const Vec2 low(rim, rim), size = outer - 2.0 * low;
  if (size.minCoeff() < spacing)
    return bad_input(Phrase::worded(
        "The rim leaves %1 for the chamber, less than one spacing of %2; make the pack larger or the spacing "
        "smaller.",
        {millimetres_of(Length(size.minCoeff())), millimetres_of(Length(spacing))}));
  const double corner = std::min(values.metres("corner"), 0.5 * size.minCoeff());
  Layout layout;
  layout.outline_m =
      flattened_rectangle(Vec2::Zero(), outer, std::min(corner + rim, 0.5 * outer.minCoeff()), kFlattening);
  Chamber chamber{"pack", flattened_rectangle(low, size, corner, kFlattening), {}, {}};
  add_spots(chamber, low, size, spacing, Length(values.metres("spot-radius")));
  layout.chambers.push_back(std::move(chamber));
  layout.inlets.push_back({"fill", inlet_place(low, size, spacing)});
  const double straight = outer.y() - 2.0 * std::min(corner + rim, 0.5 * outer.minCoeff());
  if (auto added = add_strap(layout, outer, straight, values); !added) return added.problem();
  return layout;
}

}  // namespace

LayoutFormMaker quilted_pack_layout_form() {
  return {
      {"quilted-pack",
       "A pack that covers part of the girth: one chamber held flat by a grid of inset spots, and a cloth "
       "strap round the rest of the limb.",
       {measured_girth("girth", 390.0, "under the pack's middle", 0.0),
        {"cover", 0.4, 0.05, 0.9, "share of the girth that it covers", "", "judgement", false, {}},
        layout_size("height", 120.0, 20.0, 800.0, "extent along the limb"),
        layout_size("strap-width", 50.0, 0.0, 800.0,
                    "width of the cloth strap; 0: none, and nothing holds it"),
        fitted_stretch("stretch", 0.02, -0.2, 0.5, "closing length = girth / (1 + stretch)",
                       {{"girth"}, 0.0, "cover"}),
        layout_size("spacing", 26.0, 8.0, 200.0, "distance between the spots' middles, nearly"),
        layout_size("spot-radius", 4.0, 0.5, 40.0, "radius of the inset spots"),
        layout_size("rim", 12.0, 2.0, 80.0, "width of the fused rim"),
        layout_size("corner", 12.0, 0.0, 200.0, "radius of the chamber's corners")},
       {"00-30", 2.0 * mm},
       {"00-30", 2.0 * mm}},
      draw_quilted_pack};
}

}  // namespace wrapgauge
