#include "model/body/rim_trim.hpp"

#include <algorithm>
#include <vector>

#include "model/body/edge_table.hpp"
#include "model/body/manifold_repair.hpp"
#include "model/body/thin_face.hpp"

namespace wrapgauge {
namespace {

constexpr int kMostRounds = 100;  // a round takes one row of faces off a tongue

// Sides without a face beyond, 3 * face + side.
std::vector<char> open_sides(const Triangles& faces, const EdgeTable& edges) {
  std::vector<char> open(static_cast<std::size_t>(faces.size()), 0);
  for (std::size_t edge = 0; edge < edges.size(); ++edge)
    if (const auto uses = edges.uses(edge); uses.size() == 1) open[3 * uses[0].face + uses[0].side] = 1;
  return open;
}

void drop_hanging(const std::vector<char>& open, std::vector<char>& keep) {
  for (std::size_t f = 0; f < keep.size(); ++f)
    if (open[3 * f] + open[3 * f + 1] + open[3 * f + 2] >= 2) keep[f] = 0;
}

// Open fans of a vertex but its largest one; closed ones stay.
void drop_touching(const Triangles& faces, const EdgeTable& edges, const std::vector<char>& open,
                   std::vector<char>& keep) {
  UnionFind fans = vertex_fans(faces, edges);
  const int corners = static_cast<int>(faces.size());
  std::vector<int> size(corners, 0), largest(faces.maxCoeff() + 1, -1);  // by fan root; by vertex
  std::vector<char> is_open(corners, 0);
  for (int corner = 0; corner < corners; ++corner) {
    const int root = fans.root(corner), face = corner / 3, before = 3 * face + (corner + 2) % 3;
    ++size[root];
    is_open[root] = static_cast<char>(is_open[root] | open[corner] | open[before]);
  }
  for (int corner = 0; corner < corners; ++corner) {
    if (fans.root(corner) != corner || !is_open[corner]) continue;
    int& best = largest[faces.data()[corner]];
    if (best < 0 || size[corner] > size[best]) best = corner;
  }
  for (int corner = 0; corner < corners; ++corner) {
    const int root = fans.root(corner);
    if (is_open[root] && root != largest[faces.data()[corner]]) keep[corner / 3] = 0;
  }
}

}  // namespace

int trim_rims(Triangles& faces) {
  const Eigen::Index before = faces.rows();
  for (int round = 0; round < kMostRounds && faces.rows() > 0; ++round) {
    const EdgeTable edges(faces);
    const std::vector<char> open = open_sides(faces, edges);
    std::vector<char> keep(static_cast<std::size_t>(faces.rows()), 1);
    drop_hanging(open, keep);
    drop_touching(faces, edges, open, keep);
    if (std::find(keep.begin(), keep.end(), 0) == keep.end()) break;
    keep_faces(faces, keep);
  }
  return static_cast<int>(before - faces.rows());
}

}  // namespace wrapgauge
