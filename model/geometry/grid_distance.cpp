#include "model/geometry/grid_distance.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

#include "model/core/in_parallel.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/mesh_distance.hpp"

namespace wrapgauge {
namespace {

constexpr double kMostGridPoints = 50e6;  // 400 MB of doubles

// Regular grid of samples; coefficients carry one more layer on every side.
struct Grid {
  Vec3 low_m, high_m;
  double spacing_m = 0.0;
  std::array<int, 3> count{};  // samples along each axis, >= 2

  int padded(int axis) const { return count[axis] + 2; }
  std::size_t stride(int axis) const {
    return axis == 2 ? 1 : axis == 1 ? padded(2) : static_cast<std::size_t>(padded(1)) * padded(2);
  }
  // Place of sample (i, j, k), each from -1 to count.
  std::size_t place(int i, int j, int k) const { return (i + 1) * stride(0) + (j + 1) * stride(1) + (k + 1); }
  std::size_t size() const { return stride(0) * padded(0); }
};

Problem too_many_points(double points, Length spacing) {
  return bad_input(Phrase::worded(
      "The distance grid would have %1 million points at a spacing of %2 mm, and %3 million is "
      "the most; take a wider spacing or a smaller box.",
      {figures_of(std::to_string(std::llround(points / 1e6))), figures_of(number_text(spacing / mm)),
       figures_of(number_text(kMostGridPoints / 1e6))}));
}

Result<Grid> make_grid(const Vec3& low_m, const Vec3& high_m, Length spacing) {
  if (!(spacing.si() > 0.0) || !std::isfinite(spacing.si()))
    return bad_input(Phrase::worded("The distance grid's spacing is %1 mm; give a finite number above 0.",
                                    {figures_of(std::to_string(spacing / mm))}));
  if (!low_m.allFinite() || !high_m.allFinite() || !(low_m.array() < high_m.array()).all())
    return bad_input(Phrase::worded(
        "The box for the distance grid is empty or not finite; give a box around the layout."));
  const Vec3 cells = ((high_m - low_m) / spacing.si() - Vec3::Constant(1e-9)).array().ceil().max(1.0);
  const double points = (cells.array() + 1.0).prod();
  if (!(points <= kMostGridPoints)) return too_many_points(std::min(points, 1e15), spacing);
  Grid grid{.low_m = low_m, .high_m = low_m + cells * spacing.si(), .spacing_m = spacing.si()};
  for (int axis = 0; axis < 3; ++axis) grid.count[axis] = static_cast<int>(cells[axis]) + 1;
  return grid;
}

// Coefficients of the interpolating cubic B-spline along one grid line, in place. The samples are
// (c[i-1] + 4 c[i] + c[i+1]) / 6; a zero second derivative at an end means c[end] = sample[end] there and
// makes the layer beyond it 2 c[end] - c[end-1].
void prefilter_line(double* first, std::size_t stride, int count, std::vector<double>& scratch) {
  scratch.resize(count);
  scratch[0] = 0.0;
  for (int i = 1; i < count - 1; ++i) {
    const double pivot = 1.0 / (4.0 - scratch[i - 1]);
    scratch[i] = pivot;
    first[i * stride] = (6.0 * first[i * stride] - first[(i - 1) * stride]) * pivot;
  }
  for (int i = count - 2; i > 0; --i) first[i * stride] -= scratch[i] * first[(i + 1) * stride];
  double* last = first + (count - 1) * stride;
  first[-static_cast<std::ptrdiff_t>(stride)] = 2.0 * first[0] - first[stride];
  last[stride] = 2.0 * last[0] - *(last - stride);
}

void prefilter(const Grid& grid, int axis, std::vector<double>& values) {
  const int outer = axis == 0 ? 1 : 0, inner = axis == 2 ? 1 : 2;
  // Lines through layers that an earlier pass already added are filtered too.
  const std::size_t outer_stride = grid.stride(outer), inner_stride = grid.stride(inner);
  in_parallel(tbb::blocked_range<int>(0, grid.padded(outer)), [&](const tbb::blocked_range<int>& range) {
    std::vector<double> scratch;
    for (int a = range.begin(); a < range.end(); ++a) {
      for (int b = 0; b < grid.padded(inner); ++b) {
        double* line = values.data() + a * outer_stride + b * inner_stride + grid.stride(axis);
        prefilter_line(line, grid.stride(axis), grid.count[axis], scratch);
      }
    }
  });
}

// Weights of the four coefficients around a point of a cell, and their derivatives by the grid coordinate.
struct Weights {
  std::array<double, 4> value, first, second;
};

Weights weights_at(double t) {
  const double s = 1.0 - t;
  return {{s * s * s / 6.0, (4.0 - 6.0 * t * t + 3.0 * t * t * t) / 6.0,
           (4.0 - 6.0 * s * s + 3.0 * s * s * s) / 6.0, t * t * t / 6.0},
          {-0.5 * s * s, t * (1.5 * t - 2.0), -s * (1.5 * s - 2.0), 0.5 * t * t},
          {s, 3.0 * t - 2.0, 3.0 * s - 2.0, t}};
}

class GridDistance final : public SignedDistance {
 public:
  GridDistance(Grid grid, std::vector<double> coefficients)
      : grid_(grid), coefficients_(std::move(coefficients)) {}

  DistanceSample at(const Vec3& point_m) const override {
    Vec3 inside = grid_.low_m;  // written so that a NaN ends up inside too
    for (int axis = 0; axis < 3; ++axis)
      if (point_m[axis] > grid_.low_m[axis]) inside[axis] = std::min(point_m[axis], grid_.high_m[axis]);
    DistanceSample sample = spline_at(inside);
    if ((inside.array() == point_m.array()).all()) return sample;
    const Vec3 beyond = point_m - inside;
    sample.distance_m += sample.gradient.dot(beyond);
    const Vec3 turning = sample.hessian_per_m * beyond;
    for (int axis = 0; axis < 3; ++axis)
      if (beyond[axis] == 0.0) sample.gradient[axis] += turning[axis];
    for (int i = 0; i < 3; ++i)
      for (int j = 0; j < 3; ++j)
        if (beyond[i] != 0.0 && beyond[j] != 0.0) sample.hessian_per_m(i, j) = 0.0;
    return sample;
  }

 private:
  DistanceSample spline_at(const Vec3& point_m) const {
    std::array<int, 3> cell;
    std::array<Weights, 3> w;
    for (int axis = 0; axis < 3; ++axis) {
      const double u = (point_m[axis] - grid_.low_m[axis]) / grid_.spacing_m;
      cell[axis] = std::clamp(static_cast<int>(u), 0, grid_.count[axis] - 2);
      w[axis] = weights_at(u - cell[axis]);
    }
    const auto& [wx, wy, wz] = w;
    double v = 0, x = 0, y = 0, z = 0, xx = 0, xy = 0, xz = 0, yy = 0, yz = 0, zz = 0;
    for (int i = 0; i < 4; ++i) {
      double pv = 0, py = 0, pz = 0, pyy = 0, pyz = 0, pzz = 0;
      for (int j = 0; j < 4; ++j) {
        const double* c = coefficients_.data() + grid_.place(cell[0] + i - 1, cell[1] + j - 1, cell[2] - 1);
        double lv = 0, lz = 0, lzz = 0;
        for (int k = 0; k < 4; ++k) {
          lv += wz.value[k] * c[k];
          lz += wz.first[k] * c[k];
          lzz += wz.second[k] * c[k];
        }
        pv += wy.value[j] * lv, pz += wy.value[j] * lz, pzz += wy.value[j] * lzz;
        py += wy.first[j] * lv, pyz += wy.first[j] * lz, pyy += wy.second[j] * lv;
      }
      v += wx.value[i] * pv, y += wx.value[i] * py, z += wx.value[i] * pz;
      yy += wx.value[i] * pyy, yz += wx.value[i] * pyz, zz += wx.value[i] * pzz;
      x += wx.first[i] * pv, xy += wx.first[i] * py, xz += wx.first[i] * pz, xx += wx.second[i] * pv;
    }
    const double h = 1.0 / grid_.spacing_m;
    Mat3 hessian;
    hessian << xx, xy, xz, xy, yy, yz, xz, yz, zz;
    return {v, h * Vec3(x, y, z), h * h * hessian};
  }

  Grid grid_;
  std::vector<double> coefficients_;
};

// `row(i, j, out)` writes the samples of one line along z.
template <class Row>
std::shared_ptr<const SignedDistance> sample_and_filter(const Grid& grid, const Row& row) {
  std::vector<double> values(grid.size(), 0.0);
  in_parallel(tbb::blocked_range<int>(0, grid.count[0]), [&](const tbb::blocked_range<int>& range) {
    for (int i = range.begin(); i < range.end(); ++i)
      for (int j = 0; j < grid.count[1]; ++j)
        row(Vec3(grid.low_m + grid.spacing_m * Vec3(i, j, 0)), values.data() + grid.place(i, j, 0));
  });
  for (int axis = 0; axis < 3; ++axis) prefilter(grid, axis, values);
  return std::make_shared<GridDistance>(grid, std::move(values));
}

}  // namespace

Result<std::shared_ptr<const SignedDistance>> make_grid_distance(const TriangleMesh& mesh,
                                                                 const Vec3& box_min_m, const Vec3& box_max_m,
                                                                 Length spacing) {
  auto grid = make_grid(box_min_m, box_max_m, spacing);
  if (!grid) return grid.problem();
  auto distance = make_mesh_distance(mesh);
  if (!distance) return distance.problem();
  return sample_and_filter(*grid, [&](const Vec3& start_m, double* out) {
    std::optional<int> face;
    for (int k = 0; k < grid->count[2]; ++k) {
      const auto sample = distance->at(start_m + Vec3(0, 0, k * grid->spacing_m), face);
      out[k] = sample.distance_m;
      face = sample.face;
    }
  });
}

Result<std::shared_ptr<const SignedDistance>> make_grid_distance(
    const std::function<double(const Vec3&)>& distance_m, const Vec3& box_min_m, const Vec3& box_max_m,
    Length spacing) {
  auto grid = make_grid(box_min_m, box_max_m, spacing);
  if (!grid) return grid.problem();
  return sample_and_filter(*grid, [&](const Vec3& start_m, double* out) {
    for (int k = 0; k < grid->count[2]; ++k) out[k] = distance_m(start_m + Vec3(0, 0, k * grid->spacing_m));
  });
}

}  // namespace wrapgauge
