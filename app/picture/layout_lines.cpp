#include "app/picture/layout_lines.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wrapgauge {
namespace {

// The piece of the line value = level within one triangle.
std::optional<LayoutLine> piece_of(const std::array<int, 3>& corner, const Vec3& value, double level) {
  LayoutLine line;
  int ends = 0;
  for (int k = 0; k < 3; ++k) {
    const int next = (k + 1) % 3;
    if ((value[k] > level) == (value[next] > level)) continue;
    const double t = (level - value[k]) / (value[next] - value[k]);
    LayoutPoint point{corner, Vec3::Zero()};
    point.weight[k] = 1.0 - t;
    point.weight[next] = t;
    if (ends < 2) line[static_cast<std::size_t>(ends)] = point;
    ++ends;
  }
  if (ends != 2) return std::nullopt;
  return line;
}

std::array<int, 3> corners_of(const Triangles& triangles, Eigen::Index t) {
  return {triangles(t, 0), triangles(t, 1), triangles(t, 2)};
}

Vec3 at_corners(const std::array<int, 3>& corner, const Eigen::VectorXd& value) {
  return {value[corner[0]], value[corner[1]], value[corner[2]]};
}

// The part of a line where the load, linear along it, is above 1.
std::optional<LayoutLine> loaded_part(LayoutLine line, const Vec3& load) {
  const double from = line[0].weight.dot(load), to = line[1].weight.dot(load);
  if (from <= 1.0 && to <= 1.0) return std::nullopt;
  if (from > 1.0 && to > 1.0) return line;
  const double t = (1.0 - from) / (to - from);
  const Vec3 crossing = (1.0 - t) * line[0].weight + t * line[1].weight;
  (from > 1.0 ? line[1] : line[0]).weight = crossing;
  return line;
}

}  // namespace

std::vector<LayoutLine> level_lines(const Triangles& triangles, const Eigen::VectorXd& value, double level) {
  std::vector<LayoutLine> lines;
  for (Eigen::Index t = 0; t < triangles.rows(); ++t) {
    const auto corner = corners_of(triangles, t);
    if (const auto piece = piece_of(corner, at_corners(corner, value), level)) lines.push_back(*piece);
  }
  return lines;
}

std::vector<LayoutLine> hatch_lines(const Triangles& triangles, const Points2& flat_m,
                                    const Eigen::VectorXd& load, double spacing_m) {
  std::vector<LayoutLine> lines;
  const Eigen::VectorXd slant = (flat_m.col(0) + flat_m.col(1)) / (std::sqrt(2.0) * spacing_m);
  for (Eigen::Index t = 0; t < triangles.rows(); ++t) {
    const auto corner = corners_of(triangles, t);
    const Vec3 at = at_corners(corner, load), across = at_corners(corner, slant);
    if (at.maxCoeff() <= 1.0) continue;
    for (double level = std::ceil(across.minCoeff()); level <= across.maxCoeff(); level += 1.0)
      if (const auto piece = piece_of(corner, across, level))
        if (const auto part = loaded_part(*piece, at)) lines.push_back(*part);
  }
  return lines;
}

}  // namespace wrapgauge
