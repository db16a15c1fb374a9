#include "model/layout/forms/chamber_grid.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/geometry/stroke.hpp"

namespace wrapgauge {
namespace {

constexpr double kSmallestChamber_m = 8e-3;  // a smaller one cannot open (judgement)
constexpr double kChannelReach_m = 6e-3;     // a channel's end lies this far inside its chamber (judgement)
constexpr double kInletShare = 0.75;         // of a chamber's height: the tube leaves towards proximal
constexpr double kInletRoom_m = 5e-3;        // to the chamber's upper wall, where it has so much (judgement)

// Drawn with straight closing lines at the width halfway first, then widened or narrowed about the middle.
class Grid {
 public:
  explicit Grid(const ChamberGrid& grid)
      : grid_(grid),
        width_m_(0.5 * (grid.lower_width_m + grid.upper_width_m) + grid.bulge_m),
        chamber_m_((width_m_ - 2.0 * grid.rim_m - (grid.columns - 1) * grid.seam_m) / grid.columns,
                   (grid.height_m - 2.0 * grid.rim_m - (grid.rows - 1) * grid.seam_m) / grid.rows) {}

  std::optional<Problem> no_room() const {
    if (chamber_m_.minCoeff() >= kSmallestChamber_m) return std::nullopt;
    const Phrase left = millimetres_of(Length(chamber_m_.minCoeff()));
    if (chamber_m_.x() < chamber_m_.y())
      return bad_input(
          Phrase::worded("Rims and seams leave %1 along x for each chamber; at least 8 mm are needed: use "
                         "fewer chambers, or narrower seams and rims.",
                         {left}));
    return bad_input(Phrase::worded(
        "Rims and seams leave %1 along the limb for each chamber; at least 8 mm are needed: use "
        "fewer %2s, or narrower seams and rims.",
        {left, grid_.row_word == "band" ? Phrase::worded("band") : Phrase::worded("row")}));
  }

  Layout draw() const {
    Layout layout;
    layout.outline_m =
        tapered(Polygon{{0, 0}, {width_m_, 0}, {width_m_, grid_.height_m}, {0, grid_.height_m}});
    for (int row = 0; row < grid_.rows; ++row) add_row(layout, row);
    if (grid_.strap_m > 0.0) layout.straps.push_back(strap());
    layout.closure = Closure{0.0, std::nullopt, grid_.stretch,
                             (grid_.upper_width_m - grid_.lower_width_m) / grid_.height_m,
                             2.0 * grid_.bulge_m / grid_.height_m};
    return layout;
  }

 private:
  Vec2 tapered(const Vec2& p) const {
    const double share = p.y() / grid_.height_m;
    const double width = grid_.lower_width_m + share * (grid_.upper_width_m - grid_.lower_width_m) +
                         grid_.bulge_m * (1.0 - std::abs(2.0 * share - 1.0));
    return {0.5 * width_m_ + (p.x() - 0.5 * width_m_) * width / width_m_, p.y()};
  }
  // With a corner where an edge runs past the bend.
  Polygon tapered(const Polygon& loop) const {
    const double bend = 0.5 * grid_.height_m;
    Polygon out;
    for (std::size_t k = 0; k < loop.size(); ++k) {
      const Vec2 &from = loop[k], &to = loop[(k + 1) % loop.size()];
      out.push_back(tapered(from));
      const double low = std::min(from.y(), to.y()), high = std::max(from.y(), to.y());
      if (grid_.bulge_m == 0.0 || low >= bend || high <= bend) continue;
      const double share = (bend - from.y()) / (to.y() - from.y());
      out.push_back(tapered(Vec2(from.x() + share * (to.x() - from.x()), bend)));
    }
    return out;
  }
  Vec2 low_corner(int column, int row) const {
    return {grid_.rim_m + column * (chamber_m_.x() + grid_.seam_m),
            grid_.rim_m + row * (chamber_m_.y() + grid_.seam_m)};
  }

  void add_row(Layout& layout, int row) const {
    const std::string name = grid_.row_word + " " + std::to_string(row + 1);
    const double corner = std::min(grid_.corner_m, 0.5 * chamber_m_.minCoeff());
    for (int column = 0; column < grid_.columns; ++column)
      layout.chambers.push_back(
          {name + " chamber " + std::to_string(column + 1),
           tapered(flattened_rectangle(low_corner(column, row), chamber_m_, corner, kFlattening)),
           {},
           {}});
    const double reach = std::min(kChannelReach_m, 0.4 * chamber_m_.x());
    for (int column = 0; column + 1 < grid_.columns; ++column) {
      const Vec2 end = low_corner(column, row) + Vec2(chamber_m_.x(), 0.5 * chamber_m_.y());
      layout.channels.push_back(
          {name + " channel " + std::to_string(column + 1),
           {tapered(Vec2(end - Vec2(reach, 0))), tapered(Vec2(end + Vec2(grid_.seam_m + reach, 0)))},
           Length(grid_.channel_m)});
    }
    const int middle = grid_.columns / 2;
    const double height = chamber_m_.y();
    const double up = std::max(0.5 * height, std::min(kInletShare * height, height - kInletRoom_m));
    layout.inlets.push_back({name, tapered(Vec2(low_corner(middle, row) + Vec2(0.5 * chamber_m_.x(), up)))});
  }

  // Continues the right edge; narrower than the layout by the rim, so that its corners do not stand out.
  Strap strap() const {
    const double inset = std::min(grid_.rim_m, 0.25 * grid_.height_m);
    const Vec2 low = tapered(Vec2(width_m_, inset)), high = tapered(Vec2(width_m_, grid_.height_m - inset));
    const Vec2 on(grid_.strap_m, 0.0);
    Polygon boundary{low, low + on, high + on, high};
    if (grid_.bulge_m != 0.0) {
      const Vec2 middle(width_m_, 0.5 * grid_.height_m);
      boundary = {low, low + on, middle + on, high + on, high, middle};
    }
    return {"closing strap", std::move(boundary), 20.0 * N_per_mm, 1.0 * mm};
  }

  const ChamberGrid& grid_;
  double width_m_;
  Vec2 chamber_m_;
};

}  // namespace

Result<Layout> draw_chamber_grid(const ChamberGrid& grid) {
  const Grid drawing(grid);
  if (auto problem = drawing.no_room()) return *problem;
  return drawing.draw();
}

Result<Layout> draw_band(const LayoutFormValues& values, double lower_width_m, double upper_width_m,
                         double stretch, const std::string& row_word, double bulge_m) {
  auto drawn = draw_chamber_grid({.lower_width_m = lower_width_m,
                                  .upper_width_m = upper_width_m,
                                  .bulge_m = bulge_m,
                                  .height_m = values.metres("height"),
                                  .columns = values.count("chambers"),
                                  .rows = values.count(row_word + "s"),
                                  .seam_m = values.metres("seam"),
                                  .rim_m = values.metres("rim"),
                                  .corner_m = values.metres("corner"),
                                  .channel_m = values.metres("channel"),
                                  .strap_m = values.metres("overlap"),
                                  .stretch = stretch,
                                  .row_word = row_word});
  if (!drawn) return drawn;
  Layout layout = std::move(drawn).value();
  layout.backing = {values.number("backing") * N_per_mm, 0.5 * values.number("backing") * N_per_mm};
  return layout;
}

}  // namespace wrapgauge
