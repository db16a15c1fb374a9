#include "bodyforms/limb_surface.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "bodyforms/monotone_cubic.hpp"

namespace wrapgauge {
namespace {

constexpr int kOutlinePoints = 1024;

struct Rings {
  int around = 0;
  std::vector<double> stations_m;
};

// Equal steps between stations with a named girth.
Rings rings_of(const LimbShape& shape) {
  const double length = shape.length().si();
  double mean = 0.0;
  constexpr int kSamples = 64;
  for (int i = 0; i < kSamples; ++i)
    mean += girth_between(shape.girths, Length(length * (i + 0.5) / kSamples)).si() / kSamples;
  Rings rings;
  rings.around = std::max(12, static_cast<int>(std::lround(mean / shape.edge.si())));
  // Rows of equilateral triangles with the sides that fit round.
  const double row = 0.5 * std::numbers::sqrt3 * mean / rings.around;
  rings.stations_m = {0.0};
  for (const GirthAtStation& knot : shape.girths) {
    const double from = rings.stations_m.back(), to = knot.station.si();
    if ((knot.parameter.empty() && knot.station < shape.length()) || to <= from) continue;
    const int steps = std::max(1, static_cast<int>(std::lround((to - from) / row)));
    for (int i = 1; i < steps; ++i) rings.stations_m.push_back(from + (to - from) * i / steps);
    rings.stations_m.push_back(to);
  }
  return rings;
}

// Two triangles a side of each ring; odd rings lie half a step further round.
Triangles ring_faces(int around, int rings) {
  Triangles faces(2 * around * (rings - 1), 3);
  int face = 0;
  for (int r = 0; r + 1 < rings; ++r)
    for (int k = 0; k < around; ++k) {
      const int next = (k + 1) % around;
      const int a = r * around + k, b = r * around + next;
      const int c = (r + 1) * around + k, d = (r + 1) * around + next;
      if (r % 2 == 0) {
        faces.row(face++) << a, b, c;
        faces.row(face++) << b, d, c;
      } else {
        faces.row(face++) << a, d, c;
        faces.row(face++) << a, b, d;
      }
    }
  return faces;
}

double across(const Vec2& a, const Vec2& b) {
  return a.x() * b.y() - a.y() * b.x();
}

// Where a ray from the middle leaves an outline round it.
Vec2 leaves_at(const std::vector<Vec2>& outline, const Vec2& direction) {
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Vec2 &a = outline[i], &b = outline[(i + 1) % outline.size()];
    const double before = across(direction, a), after = across(direction, b);
    if (before > 0.0 || after <= 0.0 || a.dot(direction) <= 0.0) continue;
    return a + before / (before - after) * (b - a);
  }
  return outline[0];
}

std::optional<Problem> too_steep(const std::vector<GirthAtStation>& girths) {
  // A radius that changes by as much as the station does means 45 degrees; girth is 2 pi radii.
  for (std::size_t i = 0; i + 1 < girths.size(); ++i) {
    const Length rise = girths[i + 1].girth - girths[i].girth,
                 step = girths[i + 1].station - girths[i].station;
    if (std::abs(rise / step) > kTurn)
      return bad_input(
          Phrase::worded("Between stations %1 and %2 mm the girth changes so much that the surface is "
                         "steeper than 45 degrees; "
                         "give stations further apart or girths closer together.",
                         {figures_of(std::to_string(std::lround(girths[i].station / mm))),
                          figures_of(std::to_string(std::lround(girths[i + 1].station / mm)))}));
  }
  return std::nullopt;
}

}  // namespace

Length girth_between(const std::vector<GirthAtStation>& girths, Length station) {
  std::vector<Vec2> knots;
  for (const GirthAtStation& knot : girths) knots.emplace_back(knot.station.si(), knot.girth.si());
  return Length(monotone_cubic(knots, station.si()));
}

SectionAtShare section_between(const std::vector<SectionAtShare>& sections, double share) {
  const auto smooth = [&](const auto& value_of) {
    std::vector<Vec2> knots;
    for (const SectionAtShare& knot : sections) knots.emplace_back(knot.share, value_of(knot));
    return monotone_cubic(knots, share);
  };
  SectionAtShare result{share, {}, {}};
  result.section.aspect = smooth([](const SectionAtShare& knot) { return knot.section.aspect; });
  for (std::size_t h = 0; h < result.section.harmonics.size(); ++h)
    result.section.harmonics[h] =
        smooth([h](const SectionAtShare& knot) { return knot.section.harmonics[h]; });
  for (int i = 0; i < 2; ++i)
    result.centre[i] = smooth([i](const SectionAtShare& knot) { return knot.centre[i]; });
  return result;
}

Vec3 skin_point_m(const LimbShape& shape, double share, double angle_deg) {
  const SectionAtShare at = section_between(shape.sections, share);
  const std::vector<Vec2> outline = section_outline(at.section, kOutlinePoints);
  const double angle = angle_deg * kTurn / 360.0, length = shape.length().si();
  const double scale = girth_between(shape.girths, Length(share * length)).si() / perimeter_of(outline);
  const Vec2 point = length * at.centre + scale * leaves_at(outline, {std::cos(angle), std::sin(angle)});
  return {point.x(), point.y(), share * length};
}

Result<TriangleMesh> limb_surface(const LimbShape& shape) {
  if (auto problem = too_steep(shape.girths)) return *problem;
  const Rings rings = rings_of(shape);
  const int count = static_cast<int>(rings.stations_m.size());
  const double length = shape.length().si();
  TriangleMesh mesh;
  mesh.vertices_m.resize(rings.around * count, 3);
  for (int r = 0; r < count; ++r) {
    const double station = rings.stations_m[r];
    const SectionAtShare at = section_between(shape.sections, station / length);
    const std::vector<Vec2> points =
        evenly_spaced(section_outline(at.section, kOutlinePoints), rings.around, 0.5 * (r % 2));
    const double scale = girth_between(shape.girths, Length(station)).si() / perimeter_of(points);
    for (int k = 0; k < rings.around; ++k) {
      const Vec2 point = length * at.centre + scale * points[k];
      mesh.vertices_m.row(r * rings.around + k) << point.x(), point.y(), station;
    }
  }
  mesh.faces = ring_faces(rings.around, count);
  return mesh;
}

}  // namespace wrapgauge
