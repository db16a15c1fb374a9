#pragma once
// Array types shared by all stages: one row an element, SI units, the unit in the variable's name.

#include <Eigen/Core>

namespace wrapgauge {

using Vec2 = Eigen::Vector2d;
using Vec3 = Eigen::Vector3d;
using Mat3 = Eigen::Matrix3d;
using Points2 = Eigen::Matrix<double, Eigen::Dynamic, 2, Eigen::RowMajor>;
using Points3 = Eigen::Matrix<double, Eigen::Dynamic, 3, Eigen::RowMajor>;
using Triangles = Eigen::Matrix<int, Eigen::Dynamic, 3, Eigen::RowMajor>;  // indices into a point array

}  // namespace wrapgauge
