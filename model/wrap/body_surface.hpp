#pragma once
// What laying a layout asks of a body, prepared once: nearest points, straight paths, sections, smooth
// normals.

#include "model/body/body.hpp"
#include "model/geometry/geodesic.hpp"
#include "model/geometry/nearest_point.hpp"
#include "model/geometry/plane_section.hpp"

namespace wrapgauge {

// Normals are averaged over about this radius: wider than the facets of a scan, narrower than a wrist.
inline constexpr Length kNormalSmoothing = 4.0 * mm;  // judgement

class BodySurface {
 public:
  // `body` must outlive this and have at least one face.
  explicit BodySurface(const Body& body);

  const NearestPoint& nearest() const { return nearest_; }
  const GeodesicTracer& geodesics() const { return geodesics_; }
  const PlaneSections& sections() const { return sections_; }
  const Axis& axis() const { return axis_; }

  // Unit outward normal, smoothed.
  Vec3 outward(const SurfacePoint& place) const;
  Vec3 project(const Vec3& point_m) const { return nearest_.at(point_m).point_m; }
  double station_m(const Vec3& point_m) const { return (point_m - axis_.origin_m).dot(axis_.direction); }
  double last_station_m() const { return last_station_m_; }
  // Points of open edges of the surface.
  const std::vector<Vec3>& open_rim_m() const { return open_rim_m_; }

 private:
  const TriangleMesh& mesh_;
  Axis axis_;
  NearestPoint nearest_;
  GeodesicTracer geodesics_;
  PlaneSections sections_;
  Points3 normals_;
  double last_station_m_ = 0.0;
  std::vector<Vec3> open_rim_m_;
};

}  // namespace wrapgauge
