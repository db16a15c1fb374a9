#pragma once
// A plane problem solved with our sheets: a piece of the long device, held at both ends on the shape that its
// own middle had in the round before. When that no longer changes, the ends have no influence: plane strain.

#include "tests/published/device_fixture.hpp"

namespace wrapgauge::published {

// Where the skin sheet's line at height `y` of the layout has gone.
class MiddleLine {
 public:
  MiddleLine(const FlatMesh& flat, const LoadPath& path, const EquilibriumState& state, double y_m)
      : flat_(flat), path_(path), state_(state), y_m_(y_m) {}

  Vec3 at(double x_m) const {
    Vec3 best = Vec3::Zero();
    double best_share = -1e9;
    for (Eigen::Index t = 0; t < flat_.triangles.rows(); ++t) {
      const auto corners = flat_.triangles.row(t);
      const Vec2 a = flat_.vertices_m.row(corners(0)), p = flat_.vertices_m.row(corners(1)).transpose() - a,
                 q = flat_.vertices_m.row(corners(2)).transpose() - a, d = Vec2(x_m, y_m_) - a;
      const double area = p.x() * q.y() - p.y() * q.x();
      const double u = (d.x() * q.y() - d.y() * q.x()) / area, v = (p.x() * d.y() - p.y() * d.x()) / area;
      const double least = std::min({u, v, 1.0 - u - v});
      if (least <= best_share) continue;
      best_share = least;
      best = (1.0 - u - v) * node(corners(0)) + u * node(corners(1)) + v * node(corners(2));
    }
    return best;
  }

 private:
  Vec3 node(int vertex) const { return state_.positions_m.row(path_.sheet.skin_node[vertex]).transpose(); }

  const FlatMesh& flat_;
  const LoadPath& path_;
  const EquilibriumState& state_;
  double y_m_;
};

struct PlaneSolution {
  LoadPath path;
  double end_change_m = 0.0;  // how far the ends were still moved before the last round
};

// `ends`: flat vertices to be held; the world's direction `axis` keeps its start. A round for each of
// `pressures`; the first ones may be lower, as a short piece with flat ends bursts sooner than a long one.
inline Result<PlaneSolution> inflate_plane(InflationSetup setup, const std::vector<int>& ends, int axis,
                                           double middle_y_m, const std::vector<Pressure>& pressures,
                                           const InflationOptions& options) {
  PlaneSolution solution;
  for (std::size_t round = 0; round < pressures.size(); ++round) {
    auto path = inflate(setup, {pressures[round]}, options);
    if (!path) return path.problem();
    solution.path = std::move(path).value();
    if (solution.path.limit_point) return bad_input("The piece met a limit point.");
    if (round + 1 == pressures.size()) break;
    const MiddleLine line(setup.flat, solution.path, solution.path.states.back(), middle_y_m);
    solution.end_change_m = 0.0;
    for (int v : ends) {
      Vec3 target = line.at(setup.flat.vertices_m(v, 0));
      target(axis) = setup.start_m(v, axis);
      solution.end_change_m =
          std::max(solution.end_change_m, (target.transpose() - setup.start_m.row(v)).norm());
      setup.start_m.row(v) = target.transpose();
    }
  }
  return solution;
}

}  // namespace wrapgauge::published
