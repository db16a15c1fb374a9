#pragma once
// Signed distance to a surface for one box after another, what was measured once being kept.

#include <array>
#include <map>
#include <optional>

#include "model/geometry/grid_distance.hpp"
#include "model/geometry/mesh_distance.hpp"

namespace wrapgauge {

// As make_grid_distance at kDistanceSpacing, but on a lattice that is fixed in space: the box grows to whole
// cells of it (by less than one spacing on every side), and distances at lattice points are kept in blocks.
// A block's values depend on the surface and the block's place alone, so a result is the same bits whatever
// was asked before; the same box once more is the same object. For one thread at a time.
class DistanceBlocks {
 public:
  // A surface other than the last one, compared coordinate by coordinate, starts afresh. Problems: as
  // make_grid_distance.
  Result<std::shared_ptr<const SignedDistance>> over(const TriangleMesh& surface, const Vec3& box_min_m,
                                                     const Vec3& box_max_m);
  std::size_t measured() const { return blocks_.size(); }

 private:
  using Place = std::array<int, 3>;  // in blocks from the origin

  bool knows(const TriangleMesh& surface) const;
  void measure(const std::vector<Place>& places);

  TriangleMesh surface_;
  std::optional<MeshDistance> distance_;
  std::map<Place, std::vector<double>> blocks_;
  Place last_low_{}, last_high_{};  // in lattice points, of the last box asked for
  std::shared_ptr<const SignedDistance> last_;
};

}  // namespace wrapgauge
