#pragma once
// Two triangles across an edge as the four measures their bending depends on, and the derivatives of any
// function of these with respect to the four nodes. The Hessian of the angle follows Tamstorf and Grinspun
// 2013, "Discrete bending forces and their Jacobians".

#include <array>

#include "model/core/array.hpp"

namespace wrapgauge {

// Nodes: edge start, edge end, opposite corner of triangle 1, of triangle 2.
struct Dihedral {
  static constexpr int kAngle = 0, kLength = 1, kArea1 = 2, kArea2 = 3;
  using Measures = Eigen::Vector4d;  // rad, m, m2, m2
  Measures measures;                 // the angle is > 0 where corners lie on the side of triangle 1's normal
                                     // (edge x way to its corner), in (-pi, pi]
  std::array<Eigen::Matrix<double, 3, 4>, 4> gradients;  // a node each; a column a measure

  explicit Dihedral(const std::array<Vec3, 4>& nodes);
  Dihedral(const std::array<int, 4>& nodes, const Points3& positions_m);

 private:
  friend struct DihedralHessian;
  std::array<Vec3, 4> nodes_;
  std::array<Vec3, 2> normals_;  // unit
  Vec3 edge_;
};

// A function of the four measures, with two derivatives.
struct DihedralEnergy {
  double value = 0.0;
  Dihedral::Measures slope = Dihedral::Measures::Zero();
  Eigen::Matrix4d curvature = Eigen::Matrix4d::Zero();
};

// Its second derivatives with respect to the nodes, blocks (0,0) (1,0) (1,1) (2,0) ... (3,3).
std::array<Mat3, 10> node_hessian(const Dihedral& at, const DihedralEnergy& energy);

// What of them cannot be negative: the curvature in the angle alone.
std::array<Mat3, 10> positive_node_hessian(const Dihedral& at, const DihedralEnergy& energy);

}  // namespace wrapgauge
