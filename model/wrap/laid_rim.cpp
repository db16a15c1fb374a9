#include "model/wrap/laid_rim.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "model/layout/closing_window.hpp"
#include "model/wrap/laid_map.hpp"
#include "model/wrap/section_loop.hpp"

namespace wrapgauge {
namespace {

constexpr double kPiece_m = 4e-3;    // of a drawn line
constexpr double kLevel_m = 6e-3;    // between sections
constexpr double kGapSeen_m = 1e-4;  // narrower ones are rounding

// Ends of pieces short enough to bend with the skin.
class Pieces {
 public:
  void add(const Polygon& loop) {
    for (std::size_t k = 0; k < loop.size(); ++k) {
      const Vec2 &from = loop[k], &to = loop[(k + 1) % loop.size()];
      const int count = std::max(1, static_cast<int>(std::ceil((to - from).norm() / kPiece_m)));
      for (int i = 0; i < count; ++i)
        for (const int at : {i, i + 1}) flat_.push_back(from + static_cast<double>(at) / count * (to - from));
    }
  }
  Points2 rows() const {
    Points2 out(static_cast<Eigen::Index>(flat_.size()), 2);
    for (std::size_t k = 0; k < flat_.size(); ++k) out.row(static_cast<Eigen::Index>(k)) = flat_[k];
    return out;
  }

 private:
  std::vector<Vec2> flat_;
};

Points2 pieces_of(const Layout& layout) {
  Pieces pieces;
  pieces.add(layout.outline_m);
  for (const Chamber& chamber : layout.chambers) pieces.add(chamber.boundary_m);
  for (const Strap& strap : layout.straps) pieces.add(strap.boundary_m);
  return pieces.rows();
}

// Sections of the body at even heights of the layout; none where the body has ended.
class Levels {
 public:
  Levels(const BodySurface& body, const AnchorFrame& anchor, double low_m, double high_m)
      : body_(body), low_m_(low_m) {
    const double height = std::max(high_m - low_m, 1e-6);
    const int count = 1 + static_cast<int>(std::clamp(std::ceil(height / kLevel_m), 1.0, 400.0));
    spacing_m_ = height / (count - 1);
    const TwoWayPath meridian =
        two_way_path(body, anchor.place, anchor.across, std::max(0.0, -low_m), std::max(0.0, high_m));
    for (int i = 0; i < count; ++i) {
      const double arc_m = low_m + i * spacing_m_;
      auto& level = levels_.emplace_back();
      if (meridian.missing_m(arc_m) > 1e-9) continue;
      const Vec3 at_m = meridian.at(arc_m);
      if (auto loop = loop_near(body, at_m, anchor.section_normal))
        level = Level{*loop, loop->arc_near(at_m)};
    }
  }

  // At a height over the anchor, a share of the girth from the meridian.
  std::optional<Vec3> at(double height_m, double share_of_girth) const {
    const double place = (height_m - low_m_) / spacing_m_;
    const auto below = static_cast<std::size_t>(
        std::clamp(static_cast<int>(place), 0, static_cast<int>(levels_.size()) - 2));
    const auto &low = levels_[below], &high = levels_[below + 1];
    if (!low || !high) return std::nullopt;
    const double share = place - static_cast<double>(below);
    return body_.project((1.0 - share) * low->at(share_of_girth) + share * high->at(share_of_girth));
  }

 private:
  struct Level {
    SectionLoop loop;
    double meridian_arc_m;
    Vec3 at(double share) const { return loop.at(meridian_arc_m + share * loop.girth().si()); }
  };
  const BodySurface& body_;
  double low_m_, spacing_m_ = 1.0;
  std::vector<std::optional<Level>> levels_;
};

// How far the layout goes at a height: outline and straps.
double reach_m(const Layout& layout, double y) {
  double reach = -std::numeric_limits<double>::infinity();
  const auto take = [&](const Polygon& loop) {
    for (std::size_t k = 0; k < loop.size(); ++k) {
      const Vec2 &a = loop[k], &b = loop[(k + 1) % loop.size()];
      if ((a.y() > y) != (b.y() > y))
        reach = std::max(reach, a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    }
  };
  take(layout.outline_m);
  for (const Strap& strap : layout.straps) take(strap.boundary_m);
  return reach;
}

class Closing {
 public:
  Closing(const BodySurface& body, const AnchorFrame& anchor, const Layout& layout, Length length,
          const Vec2& point_m, const Points2& flat_m)
      : layout_(layout),
        window_(window_of(layout, length)),
        point_m_(point_m),
        levels_(body, anchor, flat_m.col(1).minCoeff() - point_m.y(),
                flat_m.col(1).maxCoeff() - point_m.y()) {}

  std::optional<Vec3> at(const Vec2& p) const {
    return levels_.at(p.y() - point_m_.y(), share(p) - share(point_m_));
  }

  // It closes where it reaches round at one height: straps are narrower than what they close.
  std::optional<RimGap> gap() const {
    const Bounds2 box = bounds(layout_.outline_m);
    std::optional<RimGap> narrowest;
    for (const double up : {0.5, 0.25, 0.75}) {
      const double y = box.low.y() + up * (box.high.y() - box.low.y());
      const double from = reach_m(layout_, y), to = window_.to_at_m(y);
      if (to - from <= kGapSeen_m) return std::nullopt;
      if (narrowest && to - from >= narrowest->missing.si() - kGapSeen_m) continue;
      if (const auto along = along_m(from, to, y)) narrowest = RimGap{*along, (to - from) * metre};
    }
    return narrowest;
  }

 private:
  double share(const Vec2& p) const {
    const double from = window_.from_at_m(p.y());
    return (p.x() - from) / std::max(1e-6, window_.to_at_m(p.y()) - from);
  }
  std::optional<Points3> along_m(double from, double to, double y) const {
    const int count = 1 + std::max(1, static_cast<int>(std::ceil((to - from) / kPiece_m)));
    Points3 along(count, 3);
    for (int i = 0; i < count; ++i) {
      const auto point = at({from + (to - from) * i / (count - 1), y});
      if (!point) return std::nullopt;
      along.row(i) = *point;
    }
    return along;
  }

  const Layout& layout_;
  ClosingWindow window_;
  Vec2 point_m_;
  Levels levels_;
};

// Whole pieces alone.
void keep(const std::vector<std::optional<Vec3>>& points, LaidRim& rim) {
  std::vector<Vec3> kept;
  for (std::size_t k = 0; k + 1 < points.size(); k += 2) {
    if (points[k] && points[k + 1])
      kept.insert(kept.end(), {*points[k], *points[k + 1]});
    else
      rim.cut = true;
  }
  rim.ends_m.resize(static_cast<Eigen::Index>(kept.size()), 3);
  for (std::size_t k = 0; k < kept.size(); ++k) rim.ends_m.row(static_cast<Eigen::Index>(k)) = kept[k];
}

}  // namespace

Result<LaidRim> laid_rim(const BodySurface& body, const Layout& layout, const Placement& placement) {
  const auto anchor = find_anchor(body, placement);
  if (!anchor) return anchor.problem();
  LaidRim rim;
  if (layout.outline_m.size() < 3) return rim;
  const Bounds2 box = bounds(layout.outline_m);
  const Vec2 point_m = placement.layout_point_m.value_or(Vec2(0.5 * (box.low + box.high)));
  const Points2 flat_m = pieces_of(layout);
  const auto length = resolve_closing_length(body, layout, placement);
  if (!length || !*length || !((*length)->si() > 0.0)) {
    keep(lay_out_in_part(body, *anchor, flat_m, point_m), rim);
    return rim;
  }
  const Closing closing(body, *anchor, layout, **length, point_m, flat_m);
  std::vector<std::optional<Vec3>> points;
  for (Eigen::Index row = 0; row < flat_m.rows(); ++row) points.push_back(closing.at(flat_m.row(row)));
  keep(points, rim);
  rim.gap = closing.gap();
  return rim;
}

}  // namespace wrapgauge
