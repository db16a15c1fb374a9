#include "model/layout/closing_lines.hpp"

namespace wrapgauge {
namespace {

ClosingLines::Line line_through(const FlatMesh& mesh, const std::vector<int>& vertices) {
  const Vec2 first = mesh.vertices_m.row(vertices.front()), last = mesh.vertices_m.row(vertices.back());
  const double rise = last.y() - first.y();
  return {first.x(), first.y(), rise > 0.0 ? (last.x() - first.x()) / rise : 0.0};
}

}  // namespace

ClosingLines closing_lines(const FlatMesh& mesh) {
  return {line_through(mesh, mesh.closing_from), line_through(mesh, mesh.closing_to)};
}

}  // namespace wrapgauge
