#include "model/body/boundary_loop.hpp"

#include <algorithm>
#include <utility>

#include "model/body/edge_table.hpp"

namespace wrapgauge {

std::vector<std::vector<int>> boundary_loops(const Triangles& faces) {
  const EdgeTable edges(faces);
  std::vector<std::pair<int, int>> next;  // from, to
  for (std::size_t edge = 0; edge < edges.size(); ++edge) {
    const auto uses = edges.uses(edge);
    if (uses.size() == 1)
      next.emplace_back(faces(uses[0].face, uses[0].side), faces(uses[0].face, (uses[0].side + 1) % 3));
  }
  std::sort(next.begin(), next.end());
  std::vector<char> taken(next.size(), 0);
  std::vector<std::vector<int>> loops;
  for (std::size_t first = 0; first < next.size(); ++first) {
    std::vector<int> loop;
    std::size_t i = first;
    while (i < next.size() && !taken[i]) {
      taken[i] = 1;
      loop.push_back(next[i].first);
      const auto found = std::lower_bound(next.begin(), next.end(), std::pair(next[i].second, -1));
      i = static_cast<std::size_t>(found - next.begin());
    }
    if (!loop.empty()) loops.push_back(std::move(loop));
  }
  return loops;
}

}  // namespace wrapgauge
