#include "app/picture/seen_surface.hpp"

#include "app/picture/colour_map.hpp"
#include "app/picture/layout_lines.hpp"

namespace wrapgauge {
namespace {

RasterPoint point_of(const Vec3& at) {
  return {at.x(), at.y(), at.z()};
}

}  // namespace

SeenSurface seen_surface(const Points3& points_m, const Points3& normals, const LimbView& view, double lift) {
  const Eigen::Index count = points_m.rows();
  SeenSurface seen{Points3(count, 3), Eigen::VectorXd(count), Eigen::VectorXd::Zero(count),
                   Eigen::VectorXd::Zero(count)};
  for (Eigen::Index v = 0; v < count; ++v) {
    const Vec3 normal = view.rows * normals.row(v).transpose();
    const RasterPoint at = view.project(points_m.row(v));
    seen.at.row(v) << at.x, at.y, at.z + (normal.z() > 0.0 ? lift : 0.0);
    seen.shade[v] = shade_of(normal);
  }
  return seen;
}

void draw_surface(const Triangles& triangles, const SeenSurface& seen, Raster& raster) {
  const auto vertex = [&](int v) {
    return RasterVertex{point_of(seen.at.row(v)), seen.shade[v], seen.pressure_pa[v], seen.load[v]};
  };
  for (Eigen::Index t = 0; t < triangles.rows(); ++t)
    raster.triangle(vertex(triangles(t, 0)), vertex(triangles(t, 1)), vertex(triangles(t, 2)));
}

void draw_skin(const TriangleMesh& skin, const Points3& normals, const LimbView& view, Raster& raster) {
  draw_surface(skin.faces, seen_surface(skin.vertices_m, normals, view), raster);
}

LimitContour::LimitContour(const Triangles& triangles, const SeenSurface& seen) {
  for (const LayoutLine& line : level_lines(triangles, seen.load, 1.0))
    pieces_.push_back({point_of(line[0].on(seen.at)), point_of(line[1].on(seen.at))});
}

void LimitContour::draw(Raster& raster, double lift) const {
  const double halo = 4.6 * raster.pixel_ratio(), line = 2.2 * raster.pixel_ratio();
  for (const auto& [from, to] : pieces_) raster.line(from, to, halo, kLimitHalo, lift);
  for (const auto& [from, to] : pieces_) raster.line(from, to, line, kLimitLine, lift);
}

std::vector<RasterPoint> LimitContour::middles() const {
  std::vector<RasterPoint> points;
  for (const auto& [a, b] : pieces_)
    points.push_back({0.5 * (a.x + b.x), 0.5 * (a.y + b.y), 0.5 * (a.z + b.z)});
  return points;
}

}  // namespace wrapgauge
