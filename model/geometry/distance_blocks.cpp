#include "model/geometry/distance_blocks.hpp"

#include <cmath>

#include "model/core/in_parallel.hpp"

namespace wrapgauge {
namespace {

constexpr int kSide = 8;                    // lattice points along a block
constexpr std::size_t kMostBlocks = 20000;  // 80 MB; a forearm's cuff takes a few hundred
constexpr double kMostCells = 8e6;          // larger boxes are measured without being kept

int block_of(int lattice) {
  return lattice >= 0 ? lattice / kSide : -((kSide - 1 - lattice) / kSide);
}

int within(const std::array<int, 3>& lattice, const std::array<int, 3>& block) {
  return ((lattice[0] - kSide * block[0]) * kSide + lattice[1] - kSide * block[1]) * kSide + lattice[2] -
         kSide * block[2];
}

std::vector<double> measured_block(const MeshDistance& distance, const std::array<int, 3>& block) {
  const double spacing = kDistanceSpacing.si();
  std::vector<double> values;
  values.reserve(kSide * kSide * kSide);
  for (int i = 0; i < kSide; ++i)
    for (int j = 0; j < kSide; ++j) {
      std::optional<int> face;  // of the last point: the next one's is near
      for (int k = 0; k < kSide; ++k) {
        const Vec3 lattice(kSide * block[0] + i, kSide * block[1] + j, kSide * block[2] + k);
        const auto sample = distance.at(spacing * lattice, face);
        values.push_back(sample.distance_m);
        face = sample.face;
      }
    }
  return values;
}

}  // namespace

bool DistanceBlocks::knows(const TriangleMesh& surface) const {
  return distance_ && surface_.vertices_m.rows() == surface.vertices_m.rows() &&
         surface_.faces.rows() == surface.faces.rows() && surface_.vertices_m == surface.vertices_m &&
         surface_.faces == surface.faces;
}

void DistanceBlocks::measure(const std::vector<Place>& places) {
  std::vector<std::pair<const Place*, std::vector<double>*>> missing;
  for (const Place& place : places) {
    const auto [at, is_new] = blocks_.try_emplace(place);
    if (is_new) missing.emplace_back(&at->first, &at->second);
  }
  each_in_parallel(missing.size(), [&](std::size_t i) {
    *missing[i].second = measured_block(*distance_, *missing[i].first);
  });
}

Result<std::shared_ptr<const SignedDistance>> DistanceBlocks::over(const TriangleMesh& surface,
                                                                   const Vec3& box_min_m,
                                                                   const Vec3& box_max_m) {
  const double spacing = kDistanceSpacing.si();
  const double cells = ((box_max_m - box_min_m) / spacing).array().max(1.0).prod();
  const bool far = !((box_min_m.array().abs() < 1e3).all() && (box_max_m.array().abs() < 1e3).all());
  if (far || !(box_min_m.array() < box_max_m.array()).all() || !(cells < kMostCells))
    return make_grid_distance(surface, box_min_m, box_max_m);
  if (!knows(surface)) {
    auto distance = make_mesh_distance(surface);
    if (!distance) return distance.problem();
    blocks_.clear();
    last_.reset();
    surface_ = surface;
    distance_.emplace(std::move(distance).value());
  }
  if (blocks_.size() > kMostBlocks) blocks_.clear();

  Place low, high, first, count;  // in lattice points, in blocks, of blocks
  Vec3 grown_low, grown_high;
  for (int axis = 0; axis < 3; ++axis) {
    low[axis] = static_cast<int>(std::floor(box_min_m[axis] / spacing));
    high[axis] = static_cast<int>(std::ceil(box_max_m[axis] / spacing));
    first[axis] = block_of(low[axis]);
    count[axis] = block_of(high[axis]) - first[axis] + 1;
    grown_low[axis] = spacing * low[axis];
    grown_high[axis] = spacing * high[axis];
  }
  if (last_ && low == last_low_ && high == last_high_) return last_;
  std::vector<Place> places;
  for (int i = 0; i < count[0]; ++i)
    for (int j = 0; j < count[1]; ++j)
      for (int k = 0; k < count[2]; ++k) places.push_back({first[0] + i, first[1] + j, first[2] + k});
  measure(places);
  std::vector<const double*> values;
  for (const Place& place : places) values.push_back(blocks_.at(place).data());

  auto made = make_grid_distance(
      [&](const Vec3& point_m) {
        Place lattice, block;
        for (int axis = 0; axis < 3; ++axis) {
          lattice[axis] = static_cast<int>(std::lround(point_m[axis] / spacing));
          block[axis] = block_of(lattice[axis]);
        }
        const int at =
            ((block[0] - first[0]) * count[1] + block[1] - first[1]) * count[2] + block[2] - first[2];
        return values[static_cast<std::size_t>(at)][within(lattice, block)];
      },
      grown_low, grown_high);
  if (!made) return made.problem();
  last_low_ = low, last_high_ = high, last_ = *made;
  return last_;
}

}  // namespace wrapgauge
