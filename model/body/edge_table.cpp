#include "model/body/edge_table.hpp"

#include <algorithm>
#include <tuple>

#include "model/geometry/keyed_runs.hpp"

namespace wrapgauge {
namespace {

struct SideEnd {
  int high;   // the side's higher vertex
  int place;  // 3 * face + side
};

// Sides by their lower vertex.
KeyedRuns<SideEnd> sides_by_low_vertex(const Triangles& faces) {
  const std::size_t vertices = faces.size() > 0 ? static_cast<std::size_t>(faces.maxCoeff()) + 1 : 0;
  return {vertices, [&](const auto& put) {
            for (int f = 0; f < faces.rows(); ++f)
              for (int k = 0; k < 3; ++k) {
                const auto [low, high] = std::minmax(faces(f, k), faces(f, (k + 1) % 3));
                put(low, SideEnd{high, 3 * f + k});
              }
          }};
}

}  // namespace

EdgeTable::EdgeTable(const Triangles& faces) {
  KeyedRuns<SideEnd> sides = sides_by_low_vertex(faces);
  uses_.reserve(sides.items().size());
  start_.reserve(sides.items().size() / 2 + 1);  // most edges have two
  for (std::size_t low = 0; low < sides.keys(); ++low) {
    const auto run = sides.run(low);
    std::sort(run.begin(), run.end(), [](const SideEnd& a, const SideEnd& b) {
      return std::tie(a.high, a.place) < std::tie(b.high, b.place);
    });
    for (std::size_t i = 0; i < run.size(); ++i) {
      if (i == 0 || run[i].high != run[i - 1].high)
        start_.push_back(static_cast<std::uint32_t>(uses_.size()));
      uses_.push_back({run[i].place / 3, run[i].place % 3});
    }
  }
  start_.push_back(static_cast<std::uint32_t>(uses_.size()));
}

}  // namespace wrapgauge
