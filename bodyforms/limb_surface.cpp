#include "bodyforms/limb_surface.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace wrapgauge {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;

double slope_between(const GirthAtStation& a, const GirthAtStation& b) {
  return (b.girth - a.girth) / (b.station - a.station);
}

// Zero at a turning point; else a weighted harmonic mean of the slopes on both sides. At an end the neighbour
// slope, so that two knots give a straight line.
double knot_slope(const std::vector<GirthAtStation>& girths, std::size_t i) {
  const std::size_t last = girths.size() - 1;
  if (i == 0) return slope_between(girths[0], girths[1]);
  if (i == last) return slope_between(girths[last - 1], girths[last]);
  const double before = slope_between(girths[i - 1], girths[i]),
               after = slope_between(girths[i], girths[i + 1]);
  if (before * after <= 0.0) return 0.0;
  const double h0 = (girths[i].station - girths[i - 1].station).si(),
               h1 = (girths[i + 1].station - girths[i].station).si();
  return 3.0 * (h0 + h1) / ((2.0 * h1 + h0) / before + (h1 + 2.0 * h0) / after);
}

// Points at equal arc length round an ellipse of depth 2 and width 2 aspect, the first one `shift` steps from
// +x.
std::vector<Vec2> ellipse_points(double aspect, int count, double shift) {
  constexpr int kSamples = 2048;
  std::vector<double> arc(kSamples + 1, 0.0);
  for (int i = 0; i < kSamples; ++i) {
    const double angle = kTurn * (i + 0.5) / kSamples;
    arc[i + 1] = arc[i] + std::hypot(aspect * std::sin(angle), std::cos(angle));
  }
  std::vector<Vec2> points;
  int sample = 0;
  for (int k = 0; k < count; ++k) {
    const double wanted = arc.back() * (k + shift) / count;
    while (arc[sample + 1] < wanted) ++sample;
    const double angle =
        kTurn * (sample + (wanted - arc[sample]) / (arc[sample + 1] - arc[sample])) / kSamples;
    points.emplace_back(aspect * std::cos(angle), std::sin(angle));
  }
  return points;
}

double perimeter(const std::vector<Vec2>& points) {
  double sum = 0.0;
  for (std::size_t i = 0; i < points.size(); ++i) sum += (points[(i + 1) % points.size()] - points[i]).norm();
  return sum;
}

struct Grid {
  int around, rings;
};

Grid grid_of(const LimbShape& shape) {
  const double length = shape.girths.back().station.si(), edge = shape.edge.si();
  double mean = 0.0;
  constexpr int kSamples = 64;
  for (int i = 0; i < kSamples; ++i)
    mean += girth_between(shape.girths, Length(length * (i + 0.5) / kSamples)).si() / kSamples;
  const int around = std::max(12, static_cast<int>(std::lround(mean / edge)));
  // Rows of equilateral triangles with the sides that fit round.
  const double row = 0.5 * std::numbers::sqrt3 * mean / around;
  return {around, std::max(2, static_cast<int>(std::lround(length / row)) + 1)};
}

// Two triangles a side of each ring; odd rings lie half a step further round.
Triangles ring_faces(const Grid& grid) {
  Triangles faces(2 * grid.around * (grid.rings - 1), 3);
  int face = 0;
  for (int r = 0; r + 1 < grid.rings; ++r)
    for (int k = 0; k < grid.around; ++k) {
      const int next = (k + 1) % grid.around;
      const int a = r * grid.around + k, b = r * grid.around + next;
      const int c = (r + 1) * grid.around + k, d = (r + 1) * grid.around + next;
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

}  // namespace

Length girth_between(const std::vector<GirthAtStation>& girths, Length station) {
  std::size_t i = 0;
  while (i + 2 < girths.size() && station > girths[i + 1].station) ++i;
  const Length step = girths[i + 1].station - girths[i].station;
  const double t = std::clamp((station - girths[i].station) / step, 0.0, 1.0), u = 1.0 - t;
  const double s0 = knot_slope(girths, i), s1 = knot_slope(girths, i + 1);
  return girths[i].girth * (u * u * (1.0 + 2.0 * t)) + girths[i + 1].girth * (t * t * (3.0 - 2.0 * t)) +
         step * (s0 * t * u * u - s1 * t * t * u);
}

Result<TriangleMesh> limb_surface(const LimbShape& shape) {
  // A radius that changes by as much as the station does means 45 degrees; girth is 2 pi radii.
  for (std::size_t i = 0; i + 1 < shape.girths.size(); ++i)
    if (std::abs(slope_between(shape.girths[i], shape.girths[i + 1])) > kTurn)
      return bad_input(
          "Between stations " + std::to_string(std::lround(shape.girths[i].station / mm)) + " and " +
          std::to_string(std::lround(shape.girths[i + 1].station / mm)) +
          " mm the girth changes so much that the surface is steeper than 45 degrees; give stations "
          "further apart or girths closer together.");
  const Grid grid = grid_of(shape);
  TriangleMesh mesh;
  mesh.vertices_m.resize(grid.around * grid.rings, 3);
  for (int r = 0; r < grid.rings; ++r) {
    const double share = static_cast<double>(r) / (grid.rings - 1);
    const Length station = shape.girths.back().station * share;
    const double aspect = shape.aspect_distal + share * (shape.aspect_proximal - shape.aspect_distal);
    const std::vector<Vec2> points = ellipse_points(aspect, grid.around, 0.5 * (r % 2));
    const double scale = girth_between(shape.girths, station).si() / perimeter(points);
    for (int k = 0; k < grid.around; ++k)
      mesh.vertices_m.row(r * grid.around + k) << scale * points[k].x(), scale * points[k].y(), station.si();
  }
  mesh.faces = ring_faces(grid);
  return mesh;
}

}  // namespace wrapgauge
