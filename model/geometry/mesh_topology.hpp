#pragma once
// Which face lies across which edge, which faces meet at a vertex, and normals made from that.
//
// Side k of a face is the edge from its corner k to corner k+1 (mod 3); the corner opposite to it is k+2.

#include <optional>
#include <span>
#include <vector>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct FaceSide {
  int face;
  int side;
};

class MeshTopology {
 public:
  // Indices in range. Edges of more than two faces, or of two faces that run along them the same way, count
  // as boundary: nothing lies across them.
  explicit MeshTopology(const TriangleMesh& mesh);

  std::optional<FaceSide> across(int face, int side) const;
  bool on_boundary(int vertex) const { return boundary_vertex_[vertex] != 0; }
  // Faces around a vertex in index order.
  std::span<const int> faces_at(int vertex) const;

 private:
  std::vector<int> across_;  // 3 * face + side of the partner, a (face, side) each; own index: none
  std::vector<char> boundary_vertex_;
  std::vector<int> vertex_start_, vertex_faces_;
};

// Unit normal of each face; zero for a face without area.
Points3 face_normals(const TriangleMesh& mesh);

// Unit normal of each vertex: face normals weighted by the angle at the vertex. With them the sign of
// (point - nearest point) . normal tells inside from outside (J. A. Baerentzen and H. Aanaes, "Signed
// distance computation using the angle weighted pseudonormal", IEEE TVCG 11, 2005; from memory).
Points3 vertex_normals(const TriangleMesh& mesh);

}  // namespace wrapgauge
