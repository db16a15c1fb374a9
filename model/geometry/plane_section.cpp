#include "model/geometry/plane_section.hpp"

#include <optional>
#include <utility>

namespace wrapgauge {

Length SectionLine::length() const {
  double length_m = 0.0;
  for (std::size_t i = 1; i < points_m.size(); ++i) length_m += (points_m[i] - points_m[i - 1]).norm();
  if (closed && !points_m.empty()) length_m += (points_m.front() - points_m.back()).norm();
  return length_m * metre;
}

namespace {

// Walks along one plane from face to face. In a face the line runs from the side where the face's rim comes
// down through the plane to the side where it goes up, so that what is above stays on the left seen from
// outside.
struct Cut {
  const TriangleMesh& mesh;
  const MeshTopology& topology;
  Eigen::VectorXd height_m;
  std::vector<char> done;  // a face each

  bool above(int face, int corner) const { return height_m[mesh.faces(face, corner % 3)] >= 0.0; }
  std::optional<int> side_where(int face, bool goes_up) const {
    for (int side = 0; side < 3; ++side)
      if (above(face, side) != goes_up && above(face, side + 1) == goes_up) return side;
    return std::nullopt;
  }
  Vec3 crossing(int face, int side) const {
    int from = mesh.faces(face, side), to = mesh.faces(face, (side + 1) % 3);
    if (from > to) std::swap(from, to);  // the same bits from both faces of an edge
    if (height_m[to] == 0.0) return mesh.vertices_m.row(to);
    const double share = height_m[from] / (height_m[from] - height_m[to]);
    return mesh.vertices_m.row(from) + share * (mesh.vertices_m.row(to) - mesh.vertices_m.row(from));
  }

  SectionLine follow(int face) {
    SectionLine line;
    const int start = face;
    const auto add = [&](const Vec3& point) {
      if (line.points_m.empty() || line.points_m.back() != point) line.points_m.push_back(point);
    };
    add(crossing(face, *side_where(face, false)));
    while (true) {
      done[face] = 1;
      const int up = *side_where(face, true);
      add(crossing(face, up));
      const auto next = topology.across(face, up);
      if (!next) return line;
      face = next->face;
      if (face == start) break;
      if (done[face]) return line;
    }
    line.closed = true;
    while (line.points_m.size() > 1 && line.points_m.back() == line.points_m.front())
      line.points_m.pop_back();
    return line;
  }
};

}  // namespace

std::vector<SectionLine> PlaneSections::at(const Vec3& point_m, const Vec3& normal) const {
  Cut cut{mesh_, topology_, (mesh_.vertices_m.rowwise() - point_m.transpose()) * normal,
          std::vector<char>(mesh_.faces.rows(), 0)};
  std::vector<int> crossed;
  for (int face = 0; face < mesh_.faces.rows(); ++face)
    if (cut.side_where(face, false)) crossed.push_back(face);
  std::vector<SectionLine> lines;
  for (int face : crossed)
    if (!topology_.across(face, *cut.side_where(face, false))) lines.push_back(cut.follow(face));
  for (int face : crossed)
    if (!cut.done[face]) lines.push_back(cut.follow(face));
  return lines;
}

std::vector<SectionLine> plane_section(const TriangleMesh& mesh, const Vec3& point_m, const Vec3& normal) {
  return PlaneSections(mesh).at(point_m, normal);
}

}  // namespace wrapgauge
