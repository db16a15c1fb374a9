#include "model/contact/girth_share.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

constexpr double kSectionSpacing_m = 4e-3;
constexpr int kSectors = 72;
constexpr double kTouchShare = 0.05;

double mean_of_touching_pa(const std::vector<PressureSample>& samples) {
  double force = 0.0, area = 0.0;
  for (const PressureSample& sample : samples)
    if (sample.pressure_pa > 0.0) {
      force += sample.pressure_pa * sample.area_m2;
      area += sample.area_m2;
    }
  return area > 0.0 ? force / area : 0.0;
}

double station_m(const Body& body, const Vec3& point) {
  return (point - body.axis.origin_m).dot(body.axis.direction);
}

struct SectionCentres {
  double first_station_m = 0.0;
  std::vector<Vec3> weighted;  // sum of length x middle of the outline's segments
  std::vector<double> length_m;
};

void add_face(const Body& body, int face, SectionCentres& sections) {
  std::array<Vec3, 3> corner;
  std::array<double, 3> height;
  for (int k = 0; k < 3; ++k) {
    corner[k] = body.surface.vertices_m.row(body.surface.faces(face, k));
    height[k] = (station_m(body, corner[k]) - sections.first_station_m) / kSectionSpacing_m;
  }
  const auto [low, high] = std::minmax_element(height.begin(), height.end());
  const double last = static_cast<double>(sections.weighted.size()) - 1.0;
  for (double s = std::max(0.0, std::ceil(*low)); s <= std::min(last, *high); s += 1.0) {
    Vec3 sum = Vec3::Zero();
    std::vector<Vec3> ends;
    for (int k = 0; k < 3; ++k) {
      const int n = (k + 1) % 3;
      if ((height[k] < s) == (height[n] < s)) continue;
      ends.push_back(corner[k] + (s - height[k]) / (height[n] - height[k]) * (corner[n] - corner[k]));
      sum += ends.back();
    }
    if (ends.size() != 2) continue;
    const double length = (ends[1] - ends[0]).norm();
    sections.weighted[static_cast<std::size_t>(s)] += 0.5 * length * sum;
    sections.length_m[static_cast<std::size_t>(s)] += length;
  }
}

SectionCentres section_centres(const Body& body, const std::vector<PressureSample>& samples) {
  double low = station_m(body, samples.front().point_m), high = low;
  for (const PressureSample& sample : samples) {
    low = std::min(low, station_m(body, sample.point_m));
    high = std::max(high, station_m(body, sample.point_m));
  }
  SectionCentres sections;
  sections.first_station_m = low;
  const auto count = static_cast<std::size_t>(std::clamp((high - low) / kSectionSpacing_m, 0.0, 1e4)) + 1;
  sections.weighted.assign(count, Vec3::Zero());
  sections.length_m.assign(count, 0.0);
  for (int f = 0; f < body.surface.faces.rows(); ++f) add_face(body, f, sections);
  return sections;
}

}  // namespace

double pressed_share_of_girth(const Body& body, const std::vector<PressureSample>& samples) {
  const double threshold = kTouchShare * mean_of_touching_pa(samples);
  if (threshold <= 0.0) return 0.0;
  const SectionCentres sections = section_centres(body, samples);
  const Vec3 u = body.axis.direction.unitOrthogonal(), v = body.axis.direction.cross(u);
  std::vector<std::array<bool, kSectors>> pressed(sections.weighted.size());
  for (const PressureSample& sample : samples) {
    if (sample.pressure_pa <= threshold) continue;
    const double height = (station_m(body, sample.point_m) - sections.first_station_m) / kSectionSpacing_m;
    const auto s = static_cast<std::size_t>(
        std::clamp(std::round(height), 0.0, static_cast<double>(pressed.size()) - 1.0));
    if (sections.length_m[s] <= 0.0) continue;
    const Vec3 arm = sample.point_m - sections.weighted[s] / sections.length_m[s];
    const double turn = std::atan2(arm.dot(v), arm.dot(u)) / (2.0 * std::numbers::pi) + 0.5;
    pressed[s][static_cast<std::size_t>(std::clamp(turn * kSectors, 0.0, kSectors - 1.0))] = true;
  }
  long most = 0;
  for (const auto& section : pressed) most = std::max(most, std::count(section.begin(), section.end(), true));
  return static_cast<double>(most) / kSectors;
}

}  // namespace wrapgauge
