#include "model/wrap/wrap_quality.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>
#include <utility>

namespace wrapgauge {
namespace {

struct TriangleStretch {
  double area_m2, low, high, shear_deg;
};

TriangleStretch triangle_stretch(const FlatMesh& mesh, const Points3& laid_m, int triangle) {
  const auto corner = mesh.triangles.row(triangle);
  Eigen::Matrix2d flat;
  Eigen::Matrix<double, 3, 2> laid;
  for (int side = 0; side < 2; ++side) {
    flat.col(side) = mesh.vertices_m.row(corner[side + 1]) - mesh.vertices_m.row(corner[0]);
    laid.col(side) = laid_m.row(corner[side + 1]) - laid_m.row(corner[0]);
  }
  const Eigen::Matrix<double, 3, 2> gradient = laid * flat.inverse();
  const double xx = gradient.col(0).squaredNorm(), yy = gradient.col(1).squaredNorm();
  const double xy = gradient.col(0).dot(gradient.col(1));
  const double middle = 0.5 * (xx + yy), spread = std::hypot(0.5 * (xx - yy), xy);
  const double cosine = std::clamp(xy / std::sqrt(std::max(xx * yy, 1e-300)), -1.0, 1.0);
  return {0.5 * std::abs(flat.determinant()), std::sqrt(std::max(0.0, middle - spread)),
          std::sqrt(middle + spread), std::abs(std::asin(cosine)) * 180.0 / std::numbers::pi};
}

struct Weighted {
  double value, area_m2;
  int triangle;
};

// The one with the smallest value that at least `share` of the area does not exceed.
Weighted percentile(std::vector<Weighted> all, double share) {
  std::sort(all.begin(), all.end(), [](const Weighted& a, const Weighted& b) {
    return std::tie(a.value, a.area_m2, a.triangle) < std::tie(b.value, b.area_m2, b.triangle);
  });
  double total = 0.0, sum = 0.0;
  for (const Weighted& one : all) total += one.area_m2;
  for (const Weighted& one : all) {
    sum += one.area_m2;
    if (sum >= share * total) return one;
  }
  return all.back();
}

constexpr double kLowShare = 0.01, kHighShare = 0.99;  // of the area: single slivers say nothing

WrapQuality summary(const std::string& part, const std::vector<TriangleStretch>& triangles) {
  WrapQuality quality{.part = part};
  if (triangles.empty()) return quality;
  std::vector<Weighted> low, high, shear;
  for (const auto& triangle : triangles) {
    low.push_back({triangle.low, triangle.area_m2, 0});
    high.push_back({triangle.high, triangle.area_m2, 0});
    shear.push_back({triangle.shear_deg, triangle.area_m2, 0});
  }
  quality.stretch_min = percentile(std::move(low), kLowShare).value;
  quality.stretch_max = percentile(std::move(high), kHighShare).value;
  quality.shear_max_deg = percentile(std::move(shear), kHighShare).value;
  return quality;
}

}  // namespace

std::vector<WrapQuality> wrap_quality(const Layout& layout, const FlatMesh& mesh, const Points3& laid_m) {
  std::vector<TriangleStretch> whole;
  std::vector<std::vector<TriangleStretch>> chambers(layout.chambers.size());
  for (int triangle = 0; triangle < mesh.triangles.rows(); ++triangle) {
    whole.push_back(triangle_stretch(mesh, laid_m, triangle));
    const FlatRegion& region = mesh.regions[triangle];
    if (region.kind == RegionKind::kChamber) chambers[region.part].push_back(whole.back());
  }
  std::vector<WrapQuality> result;
  for (std::size_t chamber = 0; chamber < chambers.size(); ++chamber)
    result.push_back(summary(layout.chambers[chamber].name, chambers[chamber]));
  result.push_back(summary("whole layout", whole));
  return result;
}

StretchExtremes stretch_extremes(const FlatMesh& mesh, const Points3& laid_m) {
  std::vector<Weighted> low, high;
  for (int t = 0; t < mesh.triangles.rows(); ++t) {
    const TriangleStretch triangle = triangle_stretch(mesh, laid_m, t);
    low.push_back({triangle.low, triangle.area_m2, t});
    high.push_back({triangle.high, triangle.area_m2, t});
  }
  const Weighted least = percentile(std::move(low), kLowShare),
                 most = percentile(std::move(high), kHighShare);
  return {{least.value, least.triangle}, {most.value, most.triangle}};
}

}  // namespace wrapgauge
