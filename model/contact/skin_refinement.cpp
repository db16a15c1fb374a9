#include "model/contact/skin_refinement.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>
#include <vector>

namespace wrapgauge {
namespace {

using Edge = std::pair<int, int>;

Edge edge_of(int a, int b) {
  return std::minmax(a, b);
}

// One round: which edges are halved, and the vertex put at each of their middles.
class Round {
 public:
  explicit Round(const TriangleMesh& mesh) : mesh_(mesh) {}

  void mark(int face, double edge_m) {
    for (int side = 0; side < 3; ++side) {
      const int a = mesh_.faces(face, side), b = mesh_.faces(face, (side + 1) % 3);
      if ((mesh_.vertices_m.row(a) - mesh_.vertices_m.row(b)).norm() > edge_m)
        middle_.emplace(edge_of(a, b), 0);
    }
  }
  bool nothing_to_do() const { return middle_.empty(); }

  TriangleMesh split() {
    TriangleMesh result;
    const Eigen::Index old = mesh_.vertices_m.rows();
    result.vertices_m.resize(old + static_cast<Eigen::Index>(middle_.size()), 3);
    result.vertices_m.topRows(old) = mesh_.vertices_m;
    Eigen::Index next = old;
    for (auto& [edge, vertex] : middle_) {
      result.vertices_m.row(next) =
          0.5 * (mesh_.vertices_m.row(edge.first) + mesh_.vertices_m.row(edge.second));
      vertex = static_cast<int>(next++);
    }
    std::vector<std::array<int, 3>> faces;
    faces.reserve(static_cast<std::size_t>(mesh_.faces.rows()) + 3 * middle_.size());
    for (int f = 0; f < mesh_.faces.rows(); ++f) split_face(f, faces);
    result.faces.resize(static_cast<Eigen::Index>(faces.size()), 3);
    for (std::size_t f = 0; f < faces.size(); ++f)
      for (int k = 0; k < 3; ++k) result.faces(static_cast<Eigen::Index>(f), k) = faces[f][k];
    return result;
  }

 private:
  int middle(int a, int b) const {
    const auto found = middle_.find(edge_of(a, b));
    return found == middle_.end() ? -1 : found->second;
  }

  // Turned so that the halved edges come first, a face has one of four patterns.
  void split_face(int f, std::vector<std::array<int, 3>>& faces) const {
    std::array<int, 3> v{mesh_.faces(f, 0), mesh_.faces(f, 1), mesh_.faces(f, 2)};
    std::array<int, 3> m{middle(v[0], v[1]), middle(v[1], v[2]), middle(v[2], v[0])};
    const long halved = std::count_if(m.begin(), m.end(), [](int vertex) { return vertex >= 0; });
    const auto turned = [&] {
      std::rotate(v.begin(), v.begin() + 1, v.end());
      std::rotate(m.begin(), m.begin() + 1, m.end());
    };
    if (halved == 1)
      while (m[0] < 0) turned();
    if (halved == 2)
      while (m[2] >= 0) turned();
    switch (halved) {
      case 0:
        faces.push_back(v);
        break;
      case 1:
        faces.insert(faces.end(), {{v[0], m[0], v[2]}, {m[0], v[1], v[2]}});
        break;
      case 2:
        faces.insert(faces.end(), {{m[0], v[1], m[1]}, {v[0], m[0], m[1]}, {v[0], m[1], v[2]}});
        break;
      default:
        faces.insert(faces.end(),
                     {{v[0], m[0], m[2]}, {m[0], v[1], m[1]}, {m[2], m[1], v[2]}, {m[0], m[1], m[2]}});
    }
  }

  const TriangleMesh& mesh_;
  std::map<Edge, int> middle_;
};

}  // namespace

TriangleMesh refined_where(const TriangleMesh& body, const std::function<bool(const Vec3&, double)>& near,
                           double edge_m) {
  constexpr int kMostRounds = 16;  // halving a 1 m edge to 2 mm takes 9
  TriangleMesh mesh = body;
  for (int round = 0; round < kMostRounds; ++round) {
    Round halving(mesh);
    for (int f = 0; f < mesh.faces.rows(); ++f) {
      const Vec3 a = mesh.vertices_m.row(mesh.faces(f, 0)), b = mesh.vertices_m.row(mesh.faces(f, 1));
      const Vec3 c = mesh.vertices_m.row(mesh.faces(f, 2)), centre = (a + b + c) / 3.0;
      if (std::max({(b - a).norm(), (c - b).norm(), (a - c).norm()}) <= edge_m) continue;
      const double radius = std::max({(a - centre).norm(), (b - centre).norm(), (c - centre).norm()});
      if (near(centre, radius)) halving.mark(f, edge_m);
    }
    if (halving.nothing_to_do()) break;
    mesh = halving.split();
  }
  return mesh;
}

}  // namespace wrapgauge
