#include "model/body/section_middles.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <bitset>
#include <cmath>
#include <numbers>
#include <span>

namespace wrapgauge {
namespace {

constexpr int kPlanes = 15;
constexpr double kFirst = 0.15, kLast = 0.85;  // shares of the extent: clear of ragged or slanting ends
constexpr int kSectors = 36;
constexpr int kSectorsSeen = 33;  // a gap of 30 degrees is a hole, a wider one an open end (judgement)

// One section as loose pieces of line.
struct Section {
  std::vector<std::array<Vec3, 2>> pieces;

  Vec3 middle() const {
    Vec3 sum = Vec3::Zero();
    double length = 0.0;
    for (const auto& [from, to] : pieces) {
      sum += (to - from).norm() * 0.5 * (from + to);
      length += (to - from).norm();
    }
    return length > 0.0 ? Vec3(sum / length) : Vec3(Vec3::Zero());
  }

  // Whether the pieces are seen in all directions from `middle`.
  bool goes_round(const Vec3& middle, const Vec3& normal) const {
    const Vec3 x = normal.unitOrthogonal(), y = normal.cross(x);
    std::bitset<kSectors> seen;
    const auto turn = [&](const Vec3& point) {
      return std::atan2((point - middle).dot(y), (point - middle).dot(x)) / (2.0 * std::numbers::pi);
    };
    for (const auto& [from, to] : pieces) {
      const double start = turn(from), way = std::remainder(turn(to) - start, 1.0);
      const int steps = 1 + static_cast<int>(std::ceil(std::abs(way) * kSectors));
      for (int i = 0; i <= steps; ++i) {
        const double at = start + way * i / steps;
        seen.set(static_cast<std::size_t>((at - std::floor(at)) * kSectors) % kSectors);
      }
    }
    return seen.count() >= kSectorsSeen;
  }
};

// The piece of line in which the plane `height` = 0 cuts a face; heights of its corners above the plane.
std::array<Vec3, 2> cut_of_face(const std::array<Vec3, 3>& corners, const Vec3& heights) {
  std::array<Vec3, 2> ends;
  std::size_t count = 0;
  for (int side = 0; side < 3 && count < 2; ++side) {
    const int next = (side + 1) % 3;
    if ((heights[side] >= 0.0) == (heights[next] >= 0.0)) continue;
    const double share = heights[side] / (heights[side] - heights[next]);
    const auto from = static_cast<std::size_t>(side), to = static_cast<std::size_t>(next);
    ends[count++] = corners[from] + share * (corners[to] - corners[from]);
  }
  return ends;
}

// All sections in one pass over the faces.
std::array<Section, kPlanes> sections_across(const TriangleMesh& surface, const Vec3& direction) {
  std::array<Section, kPlanes> sections;
  const Eigen::VectorXd along = surface.vertices_m * direction;
  const double low = along.minCoeff(), extent = along.maxCoeff() - low;
  const double first = low + kFirst * extent, step = (kLast - kFirst) * extent / (kPlanes - 1);
  if (step <= 0.0) return sections;
  for (Eigen::Index f = 0; f < surface.faces.rows(); ++f) {
    const Vec3 at(along[surface.faces(f, 0)], along[surface.faces(f, 1)], along[surface.faces(f, 2)]);
    const double below = std::ceil((at.minCoeff() - first) / step);
    const double above = std::floor((at.maxCoeff() - first) / step);
    const int from = static_cast<int>(std::max(below, 0.0));
    const int to = static_cast<int>(std::min(above, kPlanes - 1.0));
    for (int plane = from; plane <= to; ++plane) {
      const Vec3 heights = at.array() - (first + plane * step);
      if ((heights.array() >= 0.0).all() || (heights.array() < 0.0).all()) continue;
      sections[static_cast<std::size_t>(plane)].pieces.push_back(cut_of_face(
          {surface.vertices_m.row(surface.faces(f, 0)), surface.vertices_m.row(surface.faces(f, 1)),
           surface.vertices_m.row(surface.faces(f, 2))},
          heights));
    }
  }
  return sections;
}

// Of the line of least squares through points; any sense.
Vec3 line_direction(std::span<const Vec3> points) {
  Vec3 mean = Vec3::Zero();
  for (const Vec3& point : points) mean += point / static_cast<double>(points.size());
  Mat3 spread = Mat3::Zero();
  for (const Vec3& point : points) spread += (point - mean) * (point - mean).transpose();
  const Eigen::SelfAdjointEigenSolver<Mat3> solver(spread);
  return solver.eigenvectors().col(2).normalized();
}

}  // namespace

SectionMiddles section_middles(const TriangleMesh& surface, const Vec3& direction) {
  SectionMiddles result;
  result.planes = kPlanes;
  if (surface.faces.rows() == 0) return result;
  for (const Section& section : sections_across(surface, direction)) {
    const Vec3 middle = section.middle();
    if (section.goes_round(middle, direction)) result.middles.push_back(middle);
  }
  return result;
}

std::optional<double> bend_deg(const SectionMiddles& sections) {
  const std::size_t count = sections.middles.size();
  if (count < 8) return std::nullopt;
  const std::span<const Vec3> middles = sections.middles;
  const Vec3 low = line_direction(middles.first((count + 1) / 2));
  const Vec3 high = line_direction(middles.last((count + 1) / 2));
  return std::asin(std::min(1.0, low.cross(high).norm())) * 180.0 / std::numbers::pi;
}

}  // namespace wrapgauge
