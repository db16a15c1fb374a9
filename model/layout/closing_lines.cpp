#include "model/layout/closing_lines.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

constexpr double kStraight_m = 1e-7;  // a vertex of a straight line lies no further off it

ClosingLines::Line line_through(const FlatMesh& mesh, const std::vector<int>& vertices) {
  const Vec2 first = mesh.vertices_m.row(vertices.front()), last = mesh.vertices_m.row(vertices.back());
  const double rise = last.y() - first.y();
  ClosingLines::Line line{first.x(), first.y(), rise > 0.0 ? (last.x() - first.x()) / rise : 0.0};
  std::vector<Vec2> points;
  for (const int vertex : vertices) points.emplace_back(mesh.vertices_m.row(vertex));
  if (std::ranges::any_of(points,
                          [&](const Vec2& p) { return std::abs(p.x() - line.x_m(p.y())) > kStraight_m; }))
    line.bent_m = std::move(points);
  return line;
}

}  // namespace

double ClosingLines::Line::bent_x_m(double y) const {
  const auto above = std::upper_bound(bent_m.begin() + 1, bent_m.end() - 1, y,
                                      [](double height, const Vec2& p) { return height < p.y(); });
  const Vec2 &low = *(above - 1), &high = *above;
  return low.x() + (y - low.y()) * (high.x() - low.x()) / (high.y() - low.y());
}

ClosingLines closing_lines(const FlatMesh& mesh) {
  return {line_through(mesh, mesh.closing_from), line_through(mesh, mesh.closing_to)};
}

}  // namespace wrapgauge
