#include "app/desk/session/anchor_place.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/body/girth.hpp"

namespace wrapgauge {
namespace {

// Centroid of what a closed line goes round.
Vec3 centroid_m(const std::vector<Vec3>& points) {
  Vec3 area = Vec3::Zero();
  for (std::size_t i = 0; i + 1 < points.size(); ++i)
    area += (points[i] - points[0]).cross(points[i + 1] - points[0]);
  Vec3 moment = Vec3::Zero();
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const Vec3 a = points[i] - points[0], b = points[i + 1] - points[0];
    moment += a.cross(b).dot(area.normalized()) * (a + b) / 3.0;
  }
  return area.norm() > 0.0 ? Vec3(points[0] + moment / area.norm()) : points[0];
}

// Of the longest closed line of the section; the axis where there is none.
Vec3 middle_of_section(const Body& body, Length station) {
  const std::vector<SectionLine> lines = section_at(body, station);
  const SectionLine* longest = nullptr;
  for (const SectionLine& line : lines)
    if (line.closed && (!longest || line.length() > longest->length())) longest = &line;
  return longest ? centroid_m(longest->points_m)
                 : Vec3(body.axis.origin_m + station.si() * body.axis.direction);
}

}  // namespace

AnchorAtStation station_and_angle(const Body& body, const Vec3& point_m) {
  const Vec3 axis = body.axis.direction;
  const Length station = (point_m - body.axis.origin_m).dot(axis) * metre;
  const Vec3 start = std::abs(axis.x()) < 0.99 ? Vec3::UnitX() : Vec3::UnitY();
  const Vec3 zero = (start - start.dot(axis) * axis).normalized();
  const Vec3 out = point_m - middle_of_section(body, station);
  const double angle = std::atan2(out.dot(axis.cross(zero)), out.dot(zero)) * 180.0 / std::numbers::pi;
  return {station, angle < 0.0 ? angle + 360.0 : angle};
}

}  // namespace wrapgauge
