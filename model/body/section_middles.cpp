#include "model/body/section_middles.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <bitset>
#include <cmath>
#include <numbers>
#include <span>

#include "model/body/girth.hpp"

namespace wrapgauge {
namespace {

constexpr int kPlanes = 15;
constexpr double kFirst = 0.15, kLast = 0.85;  // shares of the extent: clear of ragged or slanting ends
constexpr int kSectors = 36;
constexpr int kSectorsSeen = 33;  // a gap of 30 degrees is a hole, a wider one an open end (judgement)

// Calls `use` with both ends of each straight piece of the lines.
template <class Use>
void for_each_piece(const std::vector<SectionLine>& lines, const Use& use) {
  for (const SectionLine& line : lines) {
    for (std::size_t i = 1; i < line.points_m.size(); ++i) use(line.points_m[i - 1], line.points_m[i]);
    if (line.closed && !line.points_m.empty()) use(line.points_m.back(), line.points_m.front());
  }
}

Vec3 middle_of(const std::vector<SectionLine>& lines) {
  Vec3 sum = Vec3::Zero();
  double length = 0.0;
  for_each_piece(lines, [&](const Vec3& from, const Vec3& to) {
    sum += (to - from).norm() * 0.5 * (from + to);
    length += (to - from).norm();
  });
  return length > 0.0 ? Vec3(sum / length) : Vec3(Vec3::Zero());
}

// Whether the lines are seen in all directions from `middle`.
bool go_round(const std::vector<SectionLine>& lines, const Vec3& middle, const Vec3& normal) {
  const Vec3 x = normal.unitOrthogonal(), y = normal.cross(x);
  std::bitset<kSectors> seen;
  const auto turn = [&](const Vec3& point) {
    return std::atan2((point - middle).dot(y), (point - middle).dot(x)) / (2.0 * std::numbers::pi);
  };
  for_each_piece(lines, [&](const Vec3& from, const Vec3& to) {
    const double start = turn(from), way = std::remainder(turn(to) - start, 1.0);
    const int steps = 1 + static_cast<int>(std::ceil(std::abs(way) * kSectors));
    for (int i = 0; i <= steps; ++i) {
      const double at = start + way * i / steps;
      seen.set(static_cast<std::size_t>((at - std::floor(at)) * kSectors) % kSectors);
    }
  });
  return seen.count() >= kSectorsSeen;
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

SectionMiddles section_middles(const Body& body, const PlaneSections& sections) {
  SectionMiddles result;
  result.planes = kPlanes;
  const double length_m = body_length(body).si();
  for (int plane = 0; plane < kPlanes; ++plane) {
    const double share = kFirst + plane * (kLast - kFirst) / (kPlanes - 1);
    const Vec3 at_m = body.axis.origin_m + share * length_m * body.axis.direction;
    const std::vector<SectionLine> lines = sections.at(at_m, body.axis.direction);
    const Vec3 middle_m = middle_of(lines);
    if (go_round(lines, middle_m, body.axis.direction)) result.middles_m.push_back(middle_m);
  }
  return result;
}

std::optional<double> bend_deg(const SectionMiddles& sections) {
  const std::size_t count = sections.middles_m.size();
  if (count < 8) return std::nullopt;
  const std::span<const Vec3> middles = sections.middles_m;
  const Vec3 low = line_direction(middles.first((count + 1) / 2));
  const Vec3 high = line_direction(middles.last((count + 1) / 2));
  return std::asin(std::min(1.0, low.cross(high).norm())) * 180.0 / std::numbers::pi;
}

}  // namespace wrapgauge
