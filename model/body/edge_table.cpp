#include "model/body/edge_table.hpp"

#include <algorithm>

namespace wrapgauge {

EdgeTable::EdgeTable(const Triangles& faces) {
  std::vector<std::pair<std::uint64_t, int>> sides;  // edge key, 3 * face + side
  sides.reserve(faces.size());
  for (int f = 0; f < faces.rows(); ++f)
    for (int k = 0; k < 3; ++k) {
      const auto [low, high] = std::minmax(faces(f, k), faces(f, (k + 1) % 3));
      sides.emplace_back((static_cast<std::uint64_t>(low) << 32) | static_cast<std::uint32_t>(high),
                         3 * f + k);
    }
  std::sort(sides.begin(), sides.end());
  uses_.reserve(sides.size());
  for (std::size_t i = 0; i < sides.size(); ++i) {
    if (i == 0 || sides[i].first != sides[i - 1].first) start_.push_back(i);
    uses_.push_back({sides[i].second / 3, sides[i].second % 3});
  }
  start_.push_back(sides.size());
}

}  // namespace wrapgauge
