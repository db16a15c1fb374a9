#include "model/layout/mesh_request.hpp"

#include <algorithm>
#include <cmath>

#include "model/geometry/stroke.hpp"

namespace wrapgauge {
namespace {

constexpr double kMostVertices = 5e5;

bool all_finite(const std::vector<Vec2>& points) {
  return std::all_of(points.begin(), points.end(), [](const Vec2& p) { return p.allFinite(); });
}

std::optional<Problem> unusable_loop(const Phrase& what, const Polygon& loop) {
  if (!all_finite(loop))
    return bad_input(Phrase::worded("%1 has a coordinate that is not a finite number.", {what}));
  if (loop.size() < 3)
    return bad_input(Phrase::worded("%1 has %2 points; a closed shape needs at least 3.",
                                    {what, figures_of(static_cast<int>(loop.size()))}));
  const Bounds2 box = bounds(loop);
  if ((box.high - box.low).minCoeff() < kDrawingTolerance)
    return bad_input(Phrase::worded("%1 is thinner than 0.01 mm; draw it with an area.", {what}));
  return std::nullopt;
}

std::optional<Problem> unusable_stroke(const Phrase& what, const Polyline& path, Length width) {
  if (!all_finite(path) || !std::isfinite(width.si()))
    return bad_input(Phrase::worded("%1 has a coordinate or width that is not a finite number.", {what}));
  if (!(width.si() > kDrawingTolerance))
    return bad_input(
        Phrase::worded("%1 has a width of %2; it has to be above zero.", {what, millimetres_of(width)}));
  if (stroke(path, width.si()).empty())
    return bad_input(Phrase::worded("%1 needs a path of at least two different points.", {what}));
  return std::nullopt;
}

std::optional<Problem> unusable_chamber(const Chamber& chamber) {
  const Phrase what = Phrase::worded("Chamber '%1'", {name_of(chamber.name)});
  if (auto problem = unusable_loop(what, chamber.boundary_m)) return problem;
  for (const InsetSpot& spot : chamber.inset_spots)
    if (!spot.centre_m.allFinite() || !std::isfinite(spot.radius.si()) ||
        !(spot.radius.si() > kDrawingTolerance))
      return bad_input(
          Phrase::worded("%1 has an inset spot whose place or radius is not a usable number.", {what}));
  for (const InsetLine& line : chamber.inset_lines)
    if (auto problem = unusable_stroke(Phrase::worded("%1: its inset line", {what}), line.path_m, line.width))
      return problem;
  return std::nullopt;
}

std::optional<Problem> unusable_options(const Layout& layout, const FlatMeshOptions& options) {
  const double edge = options.edge.si(), seam_edge = options.seam_edge.si(), band = options.seam_band.si();
  if (!std::isfinite(edge) || !std::isfinite(seam_edge) || !std::isfinite(band) || edge <= 0.0 ||
      seam_edge <= 0.0 || band < 0.0)
    return bad_input(Phrase::worded("The mesh edge lengths have to be finite and above zero."));
  // An equilateral mesh has one vertex an edge^2 x 0.866; seams are fine on both sides.
  const Bounds2 box = bounds(layout.outline_m);
  double seams = 0.0;
  for (const Chamber& chamber : layout.chambers) seams += perimeter_m(chamber.boundary_m);
  const double vertices = (box.high - box.low).prod() / (0.866 * edge * edge) +
                          2.0 * band * seams / (0.866 * std::pow(std::min(edge, seam_edge), 2));
  if (vertices > kMostVertices)
    return bad_input(
        Phrase::worded("A mesh edge of %1 (%2 beside seams) would need about %3 vertices, above the 500000 "
                       "allowed; ask for longer edges.",
                       {millimetres_of(options.edge), millimetres_of(options.seam_edge),
                        figures_of(std::to_string(std::llround(vertices)))}));
  return std::nullopt;
}

}  // namespace

std::optional<Problem> unusable_shapes(const Layout& layout) {
  if (auto problem = unusable_loop(Phrase::worded("The outline"), layout.outline_m)) return problem;
  for (const Chamber& chamber : layout.chambers)
    if (auto problem = unusable_chamber(chamber)) return problem;
  for (const Channel& channel : layout.channels)
    if (auto problem = unusable_stroke(Phrase::worded("Channel '%1'", {name_of(channel.name)}),
                                       channel.path_m, channel.width))
      return problem;
  for (const Strap& strap : layout.straps)
    if (auto problem = unusable_loop(Phrase::worded("Strap '%1'", {name_of(strap.name)}), strap.boundary_m))
      return problem;
  for (const Inlet& inlet : layout.inlets)
    if (!inlet.point_m.allFinite())
      return bad_input(
          Phrase::worded("Inlet '%1' has a coordinate that is not a finite number.", {name_of(inlet.name)}));
  return std::nullopt;
}

std::optional<Problem> unusable_request(const Layout& layout, const FlatMeshOptions& options) {
  const auto problem = unusable_shapes(layout);
  return problem ? problem : unusable_options(layout, options);
}

}  // namespace wrapgauge
