#pragma once
// Lines on a triangulated layout, whether it is drawn flat or worn: the limit's contour and the hatch over
// what exceeds it.

#include <array>
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

// A point of a triangle by its corners' weights.
struct LayoutPoint {
  std::array<int, 3> corner{};  // vertices
  Vec3 weight = Vec3::Zero();

  template <class Points>
  auto on(const Points& points) const {
    return (weight[0] * points.row(corner[0]) + weight[1] * points.row(corner[1]) +
            weight[2] * points.row(corner[2]))
        .transpose()
        .eval();
  }
};
using LayoutLine = std::array<LayoutPoint, 2>;

// Where `value` (a vertex each) crosses `level`, triangle by triangle.
std::vector<LayoutLine> level_lines(const Triangles& triangles, const Eigen::VectorXd& value, double level);

// Slanting lines `spacing_m` apart in the flat layout, where `load` is above 1.
std::vector<LayoutLine> hatch_lines(const Triangles& triangles, const Points2& flat_m,
                                    const Eigen::VectorXd& load, double spacing_m);

}  // namespace wrapgauge
