#pragma once
#include <cstdint>
#include <span>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// All sides of all faces, grouped by the edge they lie on; any number of faces may share an edge. Side k of a
// face runs from its corner k to the next one. Edges come in the order of their lower vertex, then of their
// higher one. O(n) for surfaces, whose vertices have few edges each.
class EdgeTable {
 public:
  explicit EdgeTable(const Triangles& faces);

  struct Use {
    int face;
    int side;
  };
  std::size_t size() const { return start_.size() - 1; }
  std::span<const Use> uses(std::size_t edge) const {
    return {uses_.data() + start_[edge], start_[edge + 1] - start_[edge]};
  }

 private:
  std::vector<Use> uses_;             // faces in order within an edge
  std::vector<std::uint32_t> start_;  // an edge each, and the end
};

}  // namespace wrapgauge
