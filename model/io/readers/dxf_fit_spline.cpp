#include "model/io/readers/dxf_fit_spline.hpp"

#include <Eigen/SparseLU>

namespace wrapgauge {
namespace {

using Slopes = Eigen::Matrix<double, Eigen::Dynamic, 2>;

std::vector<Vec2> without_repeats(const FitPoints& fit) {
  std::vector<Vec2> out;
  for (const Vec2& p : fit.points)
    if (out.empty() || p != out.back()) out.push_back(p);
  while (fit.closed && out.size() > 1 && out.front() == out.back()) out.pop_back();
  return out;
}

// The linear equations for the slopes at the points.
struct SlopeEquations {
  std::vector<Eigen::Triplet<double>> left;
  Slopes right;

  explicit SlopeEquations(int count) : right(Slopes::Zero(count, 2)) {}

  void put(int row, int column, double value) { left.emplace_back(row, column, value); }

  // Curvature goes on at b, between chords of lengths h (from a) and k (to c).
  void smooth(int row, int a, int c, double h, double k, const Vec2& from_a, const Vec2& to_c) {
    put(row, a, k);
    put(row, row, 2.0 * (h + k));
    put(row, c, h);
    right.row(row) = 3.0 * (k / h * from_a + h / k * to_c).transpose();
  }

  // No curvature at an end, or the slope of the given direction.
  void end(int row, int next, const std::optional<Vec2>& direction, const Vec2& chord_slope) {
    put(row, row, direction ? 1.0 : 2.0);
    if (!direction) put(row, next, 1.0);
    right.row(row) = (direction ? direction->normalized() : Vec2(3.0 * chord_slope)).transpose();
  }

  Slopes solved() const {
    Eigen::SparseMatrix<double> matrix(right.rows(), right.rows());
    matrix.setFromTriplets(left.begin(), left.end());
    return Eigen::SparseLU<Eigen::SparseMatrix<double>>(matrix).solve(right);
  }
};

Slopes slopes_of(const FitPoints& fit, const std::vector<Vec2>& points) {
  const int n = static_cast<int>(points.size());
  const auto chord = [&](int i) { return Vec2(points[(i + 1) % n] - points[i]); };
  SlopeEquations equations(n);
  for (int i = 0; i < n; ++i) {
    const int before = (i + n - 1) % n, after = (i + 1) % n;
    if (!fit.closed && i == 0)
      equations.end(0, 1, fit.start_direction, chord(0) / chord(0).norm());
    else if (!fit.closed && i == n - 1)
      equations.end(i, before, fit.end_direction, chord(before) / chord(before).norm());
    else
      equations.smooth(i, before, after, chord(before).norm(), chord(i).norm(), chord(before), chord(i));
  }
  return equations.solved();
}

}  // namespace

std::vector<CubicPiece> spline_through(const FitPoints& fit) {
  const std::vector<Vec2> points = without_repeats(fit);
  const int n = static_cast<int>(points.size());
  if (n < (fit.closed ? 3 : 2)) return {};
  const Slopes slopes = slopes_of(fit, points);
  std::vector<CubicPiece> pieces;
  for (int i = 0; i < (fit.closed ? n : n - 1); ++i) {
    const int next = (i + 1) % n;
    const double third = (points[next] - points[i]).norm() / 3.0;
    pieces.push_back({points[i], Vec2(points[i] + third * slopes.row(i).transpose()),
                      Vec2(points[next] - third * slopes.row(next).transpose()), points[next]});
  }
  return pieces;
}

}  // namespace wrapgauge
