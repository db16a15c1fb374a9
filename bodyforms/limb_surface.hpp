#pragma once
// The surface most forms are made of: closed-form sections along a gently curved axis, with a girth law.
//
// Every section lies across z, so that its girth is what a plane across the axis measures. The middle of the
// sections may wander off the axis by a few hundredths of the length.

#include <string>
#include <vector>

#include "bodyforms/section.hpp"
#include "model/core/quantity.hpp"
#include "model/core/result.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct GirthAtStation {
  Length station;
  Length girth;
  std::string parameter = {};  // the form parameter it was asked for by; empty: a guide for the shape
};

struct SectionAtShare {
  double share = 0.0;  // of the length
  Section section;
  Vec2 centre = Vec2::Zero();  // of the section, in shares of the length
};

struct LimbShape {
  std::vector<GirthAtStation> girths;    // first at station 0, rising; the last one is the proximal end
  std::vector<SectionAtShare> sections;  // at least one, share rising; smooth in between
  Length edge = 3.0 * mm;

  Length length() const { return girths.back().station; }
};

// The girth at a station, see monotone_cubic.
Length girth_between(const std::vector<GirthAtStation>& girths, Length station);

SectionAtShare section_between(const std::vector<SectionAtShare>& sections, double share);

// The skin point at a share of the length, in the direction `angle_deg` from the middle of the section there
// (from +x, right-handed about the axis).
Vec3 skin_point_m(const LimbShape& shape, double share, double angle_deg);

// An open tube of nearly equilateral triangles. There is a ring at every station with a named girth, and the
// section at every ring has exactly the girth of the law. Problem: the girth changes so fast that the surface
// is steeper than 45 degrees.
Result<TriangleMesh> limb_surface(const LimbShape& shape);

}  // namespace wrapgauge
