#pragma once
// A closed section of the body measured along its line.

#include <optional>

#include "model/wrap/body_surface.hpp"

namespace wrapgauge {

class SectionLoop {
 public:
  explicit SectionLoop(SectionLine line);

  Length girth() const { return girth_m_ * metre; }
  // Arc length from the line's first point to its point nearest to `point_m`, 0 .. girth.
  double arc_near(const Vec3& point_m) const;
  double distance_m(const Vec3& point_m) const;
  // Point after an arc length, any number of times round, either way.
  Vec3 at(double arc_m) const;
  // Centre of the enclosed area.
  Vec3 centre_m() const;
  // Where a ray from the centre last leaves the loop; `direction` lies in the section's plane.
  std::optional<Vec3> outermost(const Vec3& direction) const;

 private:
  std::vector<Vec3> points_m_;  // first point repeated at the end
  std::vector<double> arc_m_;
  double girth_m_ = 0.0;
};

// The closed line of the section that comes nearest to `wanted_m`; none when no closed line comes closer than
// every open one, because then the section there reaches an open end of the body.
std::optional<SectionLoop> loop_near(const BodySurface& body, const Vec3& wanted_m, const Vec3& plane_normal);
// The longest closed line of the section.
std::optional<SectionLoop> longest_loop(const PlaneSections& sections, const Vec3& plane_point_m,
                                        const Vec3& plane_normal);

}  // namespace wrapgauge
