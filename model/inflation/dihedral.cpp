#include "model/inflation/dihedral.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "model/inflation/cross_matrix.hpp"

namespace wrapgauge {
namespace {

// A triangle crushed to nothing still needs a size: it is refused elsewhere.
constexpr double kLeastM = 1e-9;

// Corners of the two triangles, counter-clockwise about their normals.
constexpr int kCorners[2][3] = {{0, 1, 2}, {0, 3, 1}};

constexpr int slot(int i, int j) {
  return i * (i + 1) / 2 + j;
}

}  // namespace

Dihedral::Dihedral(const std::array<int, 4>& nodes, const Points3& positions_m)
    : Dihedral({positions_m.row(nodes[0]), positions_m.row(nodes[1]), positions_m.row(nodes[2]),
                positions_m.row(nodes[3])}) {}

Dihedral::Dihedral(const std::array<Vec3, 4>& nodes) : nodes_(nodes) {
  edge_ = nodes[1] - nodes[0];
  const double length = std::max(edge_.norm(), kLeastM);
  measures(kLength) = length;
  for (auto& gradient : gradients) gradient.setZero();
  gradients[1].col(kLength) = edge_ / length;
  gradients[0].col(kLength) = -edge_ / length;
  for (int side = 0; side < 2; ++side) {
    const int corner = 2 + side;
    const int* c = kCorners[side];
    const Vec3 twice = (nodes[c[1]] - nodes[c[0]]).cross(nodes[c[2]] - nodes[c[0]]);
    const double size = std::max(twice.norm(), kLeastM * kLeastM);
    normals_[side] = twice / size;
    measures(kArea1 + side) = 0.5 * size;
    for (int k = 0; k < 3; ++k)
      gradients[c[k]].col(kArea1 + side) =
          0.5 * normals_[side].cross(nodes[c[(k + 2) % 3]] - nodes[c[(k + 1) % 3]]);
    const Vec3 turn = length / size * normals_[side];  // one over its altitude
    const double foot = (nodes[corner] - nodes[0]).dot(edge_) / (length * length);
    gradients[corner].col(kAngle) = turn;
    gradients[0].col(kAngle) -= (1.0 - foot) * turn;
    gradients[1].col(kAngle) -= foot * turn;
  }
  measures(kAngle) =
      std::atan2(normals_[1].cross(normals_[0]).dot(edge_) / length, normals_[0].dot(normals_[1]));
}

// Between the edge's end and the two corners; what the start takes part in follows from them.
struct DihedralHessian {
  const Dihedral& at;
  std::array<Mat3, 10> blocks;

  // By the chain rule through the gradients of the measures.
  void add_curvature(const Eigen::Matrix4d& curvature) {
    for (int j = 1; j < 4; ++j) {
      const Eigen::Matrix<double, 3, 4> column = at.gradients[j] * curvature;
      for (int i = j; i < 4; ++i) blocks[slot(i, j)] = at.gradients[i] * column.transpose();
    }
  }

  void add_length(double slope) {
    const Vec3 along = at.gradients[1].col(Dihedral::kLength);
    blocks[slot(1, 1)] +=
        slope / at.measures(Dihedral::kLength) * (Mat3::Identity() - along * along.transpose());
  }

  void add_area(int side, double slope) {
    const int corner = 2 + side;
    const Vec3& normal = at.normals_[side];
    const Mat3 outward = slope / (4.0 * at.measures(Dihedral::kArea1 + side)) * normal * normal.transpose();
    const Mat3 turn = 0.5 * slope * cross_matrix(normal);
    const Vec3 way = at.nodes_[corner] - at.nodes_[0];
    blocks[slot(1, 1)] += way.squaredNorm() * outward;
    blocks[slot(corner, corner)] += at.edge_.squaredNorm() * outward;
    blocks[slot(corner, 1)] += (side == 0 ? turn : -turn) - way.dot(at.edge_) * outward;
  }

  // Derivative of an opposite corner's gradient of the angle, n l / 2a, with respect to a node.
  Mat3 corner_block(int side, int node) const {
    const double length = at.measures(Dihedral::kLength), area = at.measures(Dihedral::kArea1 + side);
    const Vec3& normal = at.normals_[side];
    const Vec3 grows = at.gradients[node].col(Dihedral::kArea1 + side);
    const Mat3 outer = normal * grows.transpose();
    return normal * at.gradients[node].col(Dihedral::kLength).transpose() / (2.0 * area) -
           length / (2.0 * area * area) * (outer + outer.transpose());
  }

  void add_angle(double slope) {
    const double squared = at.edge_.squaredNorm() + kLeastM * kLeastM;
    for (int side = 0; side < 2; ++side) {
      const int corner = 2 + side;
      const Mat3 to_end = slope * corner_block(side, 1);
      blocks[slot(corner, corner)] += slope * corner_block(side, corner);
      blocks[slot(corner, 1)] += to_end;
      const Vec3 way = at.nodes_[corner] - at.nodes_[0];
      const double foot = way.dot(at.edge_) / squared;
      const Vec3 foot_by_end = (way - 2.0 * foot * at.edge_) / squared;
      const Vec3 turn = at.gradients[corner].col(Dihedral::kAngle);
      blocks[slot(1, 1)] -= foot * to_end + slope * turn * foot_by_end.transpose();
    }
  }

  // Moved as a whole, the pair meets no resistance.
  void add_start() {
    blocks[slot(1, 0)] =
        -(blocks[slot(1, 1)] + blocks[slot(2, 1)].transpose() + blocks[slot(3, 1)].transpose());
    blocks[slot(2, 0)] = -(blocks[slot(2, 1)] + blocks[slot(2, 2)] + blocks[slot(3, 2)].transpose());
    blocks[slot(3, 0)] = -(blocks[slot(3, 1)] + blocks[slot(3, 2)] + blocks[slot(3, 3)]);
    blocks[slot(0, 0)] = -(blocks[slot(1, 0)] + blocks[slot(2, 0)] + blocks[slot(3, 0)]);
  }
};

std::array<Mat3, 10> node_hessian(const Dihedral& at, const DihedralEnergy& energy) {
  DihedralHessian hessian{at, {}};
  hessian.add_curvature(energy.curvature);
  hessian.add_angle(energy.slope(Dihedral::kAngle));
  hessian.add_length(energy.slope(Dihedral::kLength));
  for (int side = 0; side < 2; ++side) hessian.add_area(side, energy.slope(Dihedral::kArea1 + side));
  hessian.add_start();
  return hessian.blocks;
}

std::array<Mat3, 10> positive_node_hessian(const Dihedral& at, const DihedralEnergy& energy) {
  DihedralHessian hessian{at, {}};
  Eigen::Matrix4d kept = Eigen::Matrix4d::Zero();
  kept(0, 0) = std::max(0.0, energy.curvature(Dihedral::kAngle, Dihedral::kAngle));
  hessian.add_curvature(kept);
  hessian.add_start();
  return hessian.blocks;
}

}  // namespace wrapgauge
