#include "tests/published/square_membrane.hpp"

#include <Eigen/Dense>
#include <cmath>
#include <vector>

namespace wrapgauge::published {
namespace {

using Vec3 = Eigen::Vector3d;
using Surface = Eigen::Matrix<double, 3, 2>;

// A quarter of the square: the middle at node (0, 0), clamped where a coordinate is 1.
class Quarter {
 public:
  Quarter(double load, int cells) : load_(load), cells_(cells) {
    for (int j = 0; j <= cells; ++j)
      for (int i = 0; i <= cells; ++i) {
        const double x = 1.0 * i / cells, y = 1.0 * j / cells;
        places_.emplace_back(x, y, 0.5 * (1.0 - x * x) * (1.0 - y * y));
      }
  }

  std::vector<Vec3>& places() { return places_; }
  double rise() const { return places_[0].z(); }

  // Moves that symmetry and clamp allow.
  Vec3 allowed(int i, int j) const {
    if (i == cells_ || j == cells_) return Vec3::Zero();
    return {i == 0 ? 0.0 : 1.0, j == 0 ? 0.0 : 1.0, 1.0};
  }

  // Forces at the nodes: minus the derivative of energy less work of the pressure. Returns the volume.
  double forces(std::vector<Vec3>& out) const {
    out.assign(places_.size(), Vec3::Zero());
    double volume = 0.0;
    for (int j = 0; j < cells_; ++j)
      for (int i = 0; i < cells_; ++i) volume += cell_forces(i, j, out);
    for (int j = 0; j <= cells_; ++j)
      for (int i = 0; i <= cells_; ++i) out[node(i, j)] = out[node(i, j)].cwiseProduct(allowed(i, j));
    return volume;
  }

 private:
  std::size_t node(int i, int j) const { return static_cast<std::size_t>(j * (cells_ + 1) + i); }

  double cell_forces(int i, int j, std::vector<Vec3>& out) const {
    const double h = 1.0 / cells_, weight = 0.25 * h * h;
    double volume = 0.0;
    const std::size_t corners[4] = {node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)};
    for (const double u : {0.5 - 0.5 / std::sqrt(3.0), 0.5 + 0.5 / std::sqrt(3.0)})
      for (const double v : {0.5 - 0.5 / std::sqrt(3.0), 0.5 + 0.5 / std::sqrt(3.0)}) {
        const double shape[4] = {(1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v};
        const double by_x[4] = {-(1 - v) / h, (1 - v) / h, v / h, -v / h};
        const double by_y[4] = {-(1 - u) / h, -u / h, u / h, (1 - u) / h};
        Surface f = Surface::Zero();
        double z = 0.0;
        for (int k = 0; k < 4; ++k) {
          f.col(0) += by_x[k] * places_[corners[k]];
          f.col(1) += by_y[k] * places_[corners[k]];
          z += shape[k] * places_[corners[k]].z();
        }
        // W / mu = (tr C + 1 / det C - 3) / 2; the volume is the integral of z over the area below.
        const Eigen::Matrix2d c = f.transpose() * f;
        const Surface stress = f - f * c.inverse() / c.determinant();
        const double below = f(0, 0) * f(1, 1) - f(0, 1) * f(1, 0);
        Surface by_f = Surface::Zero();
        by_f << f(1, 1), -f(1, 0), -f(0, 1), f(0, 0), 0.0, 0.0;
        volume += weight * z * below;
        for (int k = 0; k < 4; ++k) {
          Vec3 push = load_ * z * (by_f.col(0) * by_x[k] + by_f.col(1) * by_y[k]);
          push.z() += load_ * below * shape[k];
          out[corners[k]] += weight * (push - stress.col(0) * by_x[k] - stress.col(1) * by_y[k]);
        }
      }
    return volume;
  }

  double load_;
  int cells_;
  std::vector<Vec3> places_;
};

}  // namespace

SquareMembrane square_membrane(double load, int cells) {
  // Unit masses spread with the area; motion against the force is stopped, and long steps come back with it.
  Quarter quarter(load, cells);
  const double mass = 1.0 / (cells * cells), largest_step = 0.35 / cells;
  std::vector<Vec3> force, speed(quarter.places().size(), Vec3::Zero());
  double step = 0.3 * largest_step, mixing = 0.1, volume = 0.0;
  int forward = 0;
  for (int round = 0; round < 200000; ++round) {
    volume = quarter.forces(force);
    double power = 0.0, force_size = 0.0, speed_size = 0.0;
    for (std::size_t k = 0; k < force.size(); ++k) {
      power += force[k].dot(speed[k]);
      force_size += force[k].squaredNorm();
      speed_size += speed[k].squaredNorm();
    }
    if (std::sqrt(force_size) < 1e-10) break;
    const double along = mixing * std::sqrt(speed_size / force_size);
    for (std::size_t k = 0; k < force.size(); ++k)
      speed[k] = power > 0.0 ? Vec3((1.0 - mixing) * speed[k] + along * force[k]) : Vec3::Zero();
    forward = power > 0.0 ? forward + 1 : 0;
    if (power <= 0.0) {
      step *= 0.5;
      mixing = 0.1;
    } else if (forward > 5) {
      step = std::min(1.1 * step, largest_step);
      mixing *= 0.99;
    }
    for (std::size_t k = 0; k < force.size(); ++k) {
      speed[k] += step / mass * force[k];
      quarter.places()[k] += step * speed[k];
    }
  }
  return {quarter.rise(), 4.0 * volume};
}

ExtrapolatedSquare extrapolated_square_membrane(double load) {
  const SquareMembrane a = square_membrane(load, 10), b = square_membrane(load, 20),
                       c = square_membrane(load, 40);
  const auto limit = [](const SquareMembrane& coarse, const SquareMembrane& fine) {
    return SquareMembrane{fine.rise + (fine.rise - coarse.rise) / 3.0,
                          fine.volume + (fine.volume - coarse.volume) / 3.0};
  };
  return {limit(b, c), limit(a, b)};
}

}  // namespace wrapgauge::published
