#include "model/wrap/fit_of.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/wrap/closure_report.hpp"
#include "model/wrap/wrap_quality.hpp"

namespace wrapgauge {
namespace {

constexpr double kSlitShare = 0.25;     // of the way round, judgement: a wider gap is a pad's
constexpr double kFastenedShare = 0.5;  // of the height, judgement: straps narrower than the cuff are usual

// How far the drawn layout goes on beyond the second closing line.
Length tail_of(const Layout& layout, const ClosingLines& lines) {
  double beyond_m = 0.0;
  const auto consider = [&](const Polygon& loop) {
    for (const Vec2& p : loop) beyond_m = std::max(beyond_m, p.x() - lines.to.x_m(p.y()));
  };
  consider(layout.outline_m);
  for (const Strap& strap : layout.straps) consider(strap.boundary_m);
  return beyond_m * metre;
}

std::optional<Slit> slit_beside(const FlatMesh& mesh, const GirthSection& at_anchor) {
  const auto y = mesh.vertices_m.col(1);
  const double height_m = y.maxCoeff() - y.minCoeff();
  const double fastened_m = std::min(y(mesh.closing_from.back()), y(mesh.closing_to.back())) -
                            std::max(y(mesh.closing_from.front()), y(mesh.closing_to.front()));
  if (fastened_m >= kFastenedShare * height_m) return std::nullopt;
  return Slit{.station = at_anchor.station,
              .girth = at_anchor.girth,
              .width = {},
              .fastened = std::max(0.0, fastened_m) * metre,
              .height = height_m * metre};
}

// Where the centre line begins and how long it is, from the layout point.
struct Across {
  double from_m = 0.0, length_m = 0.0;
};

// Of the mesh at the height of the layout point: of the triangles that reach across it.
std::optional<Across> across_centre_line(const FlatMesh& mesh, const Vec2& layout_point_m) {
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (Eigen::Index t = 0; t < mesh.triangles.rows(); ++t)
    for (int side = 0; side < 3; ++side) {
      const Vec2 a = mesh.vertices_m.row(mesh.triangles(t, side)),
                 b = mesh.vertices_m.row(mesh.triangles(t, (side + 1) % 3));
      const double up = layout_point_m.y() - a.y(), rise = b.y() - a.y();
      if (rise == 0.0 || up / rise < 0.0 || up / rise > 1.0) continue;
      const double x = a.x() + up / rise * (b.x() - a.x());
      low = std::min(low, x);
      high = std::max(high, x);
    }
  if (!(low < high)) return std::nullopt;
  return Across{low - layout_point_m.x(), high - low};
}

// A strip that winds past itself has no edges that face each other.
bool faces_itself(const AnchorFrame& anchor, const BodySurface& body, const FlatMesh& mesh, double round_m) {
  const double height_m = mesh.vertices_m.col(1).maxCoeff() - mesh.vertices_m.col(1).minCoeff();
  return std::abs(anchor.wrap.dot(body.axis().direction)) * round_m < height_m;
}

std::optional<Slit> slit_behind(const BodySurface& body, const AnchorFrame& anchor,
                                const SectionLoop& section, const FlatMesh& mesh,
                                const Vec2& layout_point_m) {
  const auto across = across_centre_line(mesh, layout_point_m);
  if (!across || across->length_m < (1.0 - 2.0 * kSlitShare) * section.girth().si()) return std::nullopt;
  const auto round_m = length_once_round_m(body, anchor, section, across->from_m);
  if (!round_m || !faces_itself(anchor, body, mesh, *round_m)) return std::nullopt;
  const double width_m = *round_m - across->length_m;
  if (!(width_m > 0.0) || width_m > kSlitShare * *round_m) return std::nullopt;
  return Slit{.station = Length(body.station_m(anchor.place.point_m)),
              .girth = section.girth(),
              .width = width_m * metre,
              .fastened = {},
              .height = {}};
}

}  // namespace

Fit closing_fit(const Layout& layout, const FlatMesh& mesh, const ClosingLines& lines,
                std::vector<GirthSection> sections, const GirthSection& at_anchor, bool across_is_proximal) {
  Fit fit;
  const auto y = mesh.vertices_m.col(1);
  const Length growth = sections.back().girth - sections.front().girth;
  fit.even_taper = (across_is_proximal ? 1.0 : -1.0) * growth.si() / (1.0 + at_anchor.stretch()) /
                   (y.maxCoeff() - y.minCoeff());
  fit.sections = std::move(sections);
  fit.anchor = at_anchor;
  fit.tail = tail_of(layout, lines);
  fit.slit = slit_beside(mesh, at_anchor);
  return fit;
}

Fit open_fit(const BodySurface& body, const AnchorFrame& anchor, const FlatMesh& mesh, const Points3& laid_m,
             const Vec2& layout_point_m) {
  Fit fit;
  const auto place = [&](const StretchedTriangle& found) {
    const auto corner = mesh.triangles.row(found.triangle);
    const Vec2 flat_m =
        (mesh.vertices_m.row(corner[0]) + mesh.vertices_m.row(corner[1]) + mesh.vertices_m.row(corner[2])) /
        3.0;
    return StretchedPlace{flat_m, Length(body.station_m(laid_m.row(corner[0]))), found.stretch - 1.0};
  };
  const auto [least, most] = stretch_extremes(mesh, laid_m);
  fit.least = place(least);
  fit.most = place(most);
  const auto section = closed_section(body, anchor.place.point_m, anchor.section_normal);
  if (!section) return fit;
  fit.lap = self_lap(mesh, laid_m, section->girth());
  if (fit.lap) fit.lap->station = Length(body.station_m(anchor.place.point_m));
  if (!fit.lap) fit.slit = slit_behind(body, anchor, *section, mesh, layout_point_m);
  return fit;
}

}  // namespace wrapgauge
