#include "model/body/used_vertices.hpp"

namespace wrapgauge {

std::vector<int> used_vertices(const Triangles& faces, Eigen::Index vertex_count) {
  std::vector<char> used(static_cast<std::size_t>(vertex_count), 0);
  for (Eigen::Index i = 0; i < faces.size(); ++i) used[static_cast<std::size_t>(faces.data()[i])] = 1;
  std::vector<int> vertices;
  for (int v = 0; v < vertex_count; ++v)
    if (used[static_cast<std::size_t>(v)]) vertices.push_back(v);
  return vertices;
}

}  // namespace wrapgauge
