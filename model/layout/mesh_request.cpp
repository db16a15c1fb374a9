#include "model/layout/mesh_request.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/geometry/stroke.hpp"

namespace wrapgauge {
namespace {

constexpr double kMostVertices = 5e5;
constexpr double kClosingSnap = 1e-4;  // m: less than a closure can be set to (judgement)
constexpr double kFarAway = 1e9;       // m

bool all_finite(const std::vector<Vec2>& points) {
  return std::all_of(points.begin(), points.end(), [](const Vec2& p) { return p.allFinite(); });
}

std::optional<Problem> unusable_loop(const std::string& what, const Polygon& loop) {
  if (!all_finite(loop)) return bad_input(what + " has a coordinate that is not a finite number.");
  if (loop.size() < 3)
    return bad_input(what + " has " + std::to_string(loop.size()) +
                     " points; a closed shape needs at least 3.");
  const Bounds2 box = bounds(loop);
  if ((box.high - box.low).minCoeff() < kDrawingTolerance)
    return bad_input(what + " is thinner than 0.01 mm; draw it with an area.");
  return std::nullopt;
}

std::optional<Problem> unusable_stroke(const std::string& what, const Polyline& path, Length width) {
  if (!all_finite(path) || !std::isfinite(width.si()))
    return bad_input(what + " has a coordinate or width that is not a finite number.");
  if (!(width.si() > kDrawingTolerance))
    return bad_input(what + " has a width of " + in_millimetres(width.si()) + "; it has to be above zero.");
  if (stroke(path, width.si()).empty())
    return bad_input(what + " needs a path of at least two different points.");
  return std::nullopt;
}

std::optional<Problem> unusable_chamber(const Chamber& chamber) {
  const std::string what = "Chamber '" + chamber.name + "'";
  if (auto problem = unusable_loop(what, chamber.boundary_m)) return problem;
  for (const InsetSpot& spot : chamber.inset_spots)
    if (!spot.centre_m.allFinite() || !std::isfinite(spot.radius.si()) ||
        !(spot.radius.si() > kDrawingTolerance))
      return bad_input(what + " has an inset spot whose place or radius is not a usable number.");
  for (const InsetLine& line : chamber.inset_lines)
    if (auto problem = unusable_stroke(what + ": its inset line", line.path_m, line.width)) return problem;
  return std::nullopt;
}

// A closing line a hair from an edge drawn along it would leave a strip of thousands of tiny triangles: how
// far to move the line so that it lies on that edge. `distance_m` tells how far a point lies from the line.
template <class Distance>
double shift_to_drawn_edge_m(const Layout& layout, const Distance& distance_m) {
  constexpr double kParallel_m = 2e-9;  // layout files round coordinates to 1e-9 m
  double shift = 0.0, best = kClosingSnap;
  const auto consider = [&](const Polygon& loop) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const double a = distance_m(loop[i]), b = distance_m(loop[(i + 1) % loop.size()]);
      if (std::abs(a - b) > kParallel_m || std::abs(a) > best) continue;
      best = std::abs(a);
      shift = a;
    }
  };
  consider(layout.outline_m);
  for (const Strap& strap : layout.straps) consider(strap.boundary_m);
  return shift;
}

// Lines that would meet within the layout's height cannot close.
std::optional<Problem> crossing_lines(const ClosingWindow& window, const Bounds2& box) {
  for (const double y : {box.low.y(), box.high.y()}) {
    const double length = window.to_at_m(y) - window.from_at_m(y);
    if (length > 0.0) continue;
    return bad_input("With its taper of " + number_text(2.0 * window.slope) +
                     " the closing length shrinks to " + in_millimetres(length) +
                     " at y = " + in_millimetres(y) + "; use a smaller taper.");
  }
  return std::nullopt;
}

ClosingWindow window_of(const Layout& layout, Length closing_length) {
  const Bounds2 box = bounds(layout.outline_m);
  const Closure& closure = *layout.closure;
  return {closure.from_x_m, closure.from_x_m + closing_length.si(), 0.5 * closure.taper,
          0.5 * (box.low.y() + box.high.y())};
}

std::optional<Problem> unusable_options(const Layout& layout, const FlatMeshOptions& options) {
  const double edge = options.edge.si(), seam_edge = options.seam_edge.si(), band = options.seam_band.si();
  if (!std::isfinite(edge) || !std::isfinite(seam_edge) || !std::isfinite(band) || edge <= 0.0 ||
      seam_edge <= 0.0 || band < 0.0)
    return bad_input("The mesh edge lengths have to be finite and above zero.");
  // An equilateral mesh has one vertex an edge^2 x 0.866; seams are fine on both sides.
  const Bounds2 box = bounds(layout.outline_m);
  double seams = 0.0;
  for (const Chamber& chamber : layout.chambers) seams += perimeter_m(chamber.boundary_m);
  const double vertices = (box.high - box.low).prod() / (0.866 * edge * edge) +
                          2.0 * band * seams / (0.866 * std::pow(std::min(edge, seam_edge), 2));
  if (vertices > kMostVertices)
    return bad_input("A mesh edge of " + in_millimetres(edge) + " (" + in_millimetres(seam_edge) +
                     " beside seams) would need about " + std::to_string(std::llround(vertices)) +
                     " vertices, above the 500000 allowed; ask for longer edges.");
  return std::nullopt;
}

}  // namespace

std::string in_millimetres(double length_m) {
  return fixed_text(length_m / 1e-3, 1) + " mm";
}

std::optional<Problem> unusable_shapes(const Layout& layout) {
  if (auto problem = unusable_loop("The outline", layout.outline_m)) return problem;
  for (const Chamber& chamber : layout.chambers)
    if (auto problem = unusable_chamber(chamber)) return problem;
  for (const Channel& channel : layout.channels)
    if (auto problem = unusable_stroke("Channel '" + channel.name + "'", channel.path_m, channel.width))
      return problem;
  for (const Strap& strap : layout.straps)
    if (auto problem = unusable_loop("Strap '" + strap.name + "'", strap.boundary_m)) return problem;
  for (const Inlet& inlet : layout.inlets)
    if (!inlet.point_m.allFinite())
      return bad_input("Inlet '" + inlet.name + "' has a coordinate that is not a finite number.");
  return std::nullopt;
}

std::optional<Problem> unusable_request(const Layout& layout, const FlatMeshOptions& options) {
  const auto problem = unusable_shapes(layout);
  return problem ? problem : unusable_options(layout, options);
}

Result<std::optional<ClosingWindow>> closing_window(const Layout& layout,
                                                    const std::optional<Length>& closing_length) {
  using Window = std::optional<ClosingWindow>;
  if (!layout.closure || !closing_length) return Window{};
  ClosingWindow window = window_of(layout, *closing_length);
  if (!std::isfinite(window.to_x_m) || !std::isfinite(window.slope) || !(closing_length->si() > 0.0))
    return bad_input("The closing length is " + in_millimetres(closing_length->si()) +
                     "; it has to be above zero.");
  std::vector<Vec2> all = layout.outline_m;
  for (const Strap& strap : layout.straps)
    all.insert(all.end(), strap.boundary_m.begin(), strap.boundary_m.end());
  if (auto problem = crossing_lines(window, bounds(all))) return *problem;
  // The largest distance of any point before the first line, and beyond the second.
  double before = -kFarAway, beyond = -kFarAway;
  for (const Vec2& p : all) {
    before = std::max(before, window.before_m(p));
    beyond = std::max(beyond, window.beyond_m(p));
  }
  if (before < -kDrawingTolerance)
    return bad_input("The closing line at x = " + in_millimetres(window.from_x_m) + " lies " +
                     in_millimetres(-before) +
                     " before the layout begins; move it to the layout's left edge.");
  const double missing = -beyond;
  if (missing > kDrawingTolerance)
    return bad_input("The layout is " + in_millimetres(missing) +
                     " too short to close at x = " + in_millimetres(window.to_x_m) +
                     "; make it or its strap longer, or the closing length shorter.");
  window.to_x_m += shift_to_drawn_edge_m(layout, [&](const Vec2& p) { return window.beyond_m(p); });
  if (std::abs(before) <= kDrawingTolerance) window.from_x_m -= before;
  return Window(window);
}

std::optional<Problem> cut_open_region(const Layout& layout, const LayoutShapes& shapes,
                                       const ClosingWindow& window) {
  const auto cut = [&](const Polygon& loop, const std::string& what,
                       ProblemPlace place) -> std::optional<Problem> {
    double before = -kFarAway, beyond = -kFarAway;
    for (const Vec2& p : loop) {
      before = std::max(before, window.before_m(p));
      beyond = std::max(beyond, window.beyond_m(p));
    }
    if (std::max(beyond, before) <= kDrawingTolerance) return std::nullopt;
    const bool right = beyond > before;
    return bad_input(
        what + " reaches " + in_millimetres(std::max(beyond, before)) + (right ? " beyond" : " before") +
            " the closing line at x = " + in_millimetres(right ? window.to_x_m : window.from_x_m) +
            "; move it, or change the closing length.",
        {place});
  };
  for (std::size_t i = 0; i < layout.chambers.size(); ++i)
    if (auto problem = cut(shapes.chambers[i].boundary_m, "Chamber '" + layout.chambers[i].name + "'",
                           {ProblemPlace::Kind::kChamber, static_cast<int>(i)}))
      return problem;
  for (std::size_t i = 0; i < layout.channels.size(); ++i)
    if (auto problem = cut(shapes.channels_m[i], "Channel '" + layout.channels[i].name + "'",
                           {ProblemPlace::Kind::kChannel, static_cast<int>(i)}))
      return problem;
  return std::nullopt;
}

}  // namespace wrapgauge
