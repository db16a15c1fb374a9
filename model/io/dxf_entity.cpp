#include "model/io/dxf_entity.hpp"

#include <dl_creationadapter.h>
#include <dl_dxf.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <sstream>

#include "model/io/dxf_spline.hpp"
#include "model/io/path_trace.hpp"

namespace wrapgauge {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr std::size_t kLongestText = 1000;  // bytes; dxflib's lines hold 1024

struct Bulged {
  Vec2 point_m;
  double bulge;  // tangent of a quarter of the angle of the arc to the next point; positive: to the left
};

// Traces what dxflib reports.
class EntityTrace final : public DL_CreationAdapter {
 public:
  EntityTrace(double unit_m, bool turned_over) : unit_(unit_m), mirror_(turned_over ? -1.0 : 1.0) {}

  void addPoint(const DL_PointData& d) override { shape.paths.push_back({{in_m(d.x, d.y)}}); }

  void addLine(const DL_LineData& d) override {
    PathTrace trace(in_m(d.x1, d.y1));
    trace.line_to(in_m(d.x2, d.y2));
    add(trace, false);
  }

  void addCircle(const DL_CircleData& d) override {
    const Vec2 centre = in_object(d.cx, d.cy);
    const double radius = std::abs(d.radius) * unit_;
    if (radius > 0.0) shape.circle = DrawnCircle{centre, radius};
    arc(centre, {radius * mirror_, 0.0}, {0.0, radius}, 0.0, 2.0 * kPi);
  }

  void addArc(const DL_ArcData& d) override {
    const double radius = std::abs(d.radius) * unit_, start = d.angle1 * kPi / 180.0;
    double angle = std::fmod(d.angle2 - d.angle1, 360.0) * kPi / 180.0;
    if (angle <= 0.0) angle += 2.0 * kPi;
    arc(in_object(d.cx, d.cy), {radius * mirror_, 0.0}, {0.0, radius}, start, angle);
  }

  void addEllipse(const DL_EllipseData& d) override {
    const Vec2 major = in_m(d.mx, d.my);
    const Vec2 minor = mirror_ * d.ratio * Vec2(-major.y(), major.x());
    double angle = std::fmod(d.angle2 - d.angle1, 2.0 * kPi);
    if (angle <= 1e-9) angle += 2.0 * kPi;
    arc(in_m(d.cx, d.cy), major, minor, d.angle1, angle);
  }

  void addPolyline(const DL_PolylineData& d) override { closed_ = (d.flags & 1) != 0; }
  void addVertex(const DL_VertexData& d) override {
    vertices_.push_back({in_object(d.x, d.y), mirror_ * d.bulge});
  }

  void addSpline(const DL_SplineData& d) override { spline_.degree = static_cast<int>(d.degree); }
  void addKnot(const DL_KnotData& d) override { spline_.knots.push_back(d.k); }
  void addControlPoint(const DL_ControlPointData& d) override {
    spline_.control_m.push_back(in_m(d.x, d.y));
    spline_.weights.push_back(d.w);
  }

  void finish() {
    if (!vertices_.empty()) polyline();
    if (spline_.degree > 0) {
      if (auto path = trace_spline(spline_, shape.fault)) shape.paths.push_back(std::move(*path));
    }
  }

  DrawnShape shape;

 private:
  Vec2 in_m(double x, double y) const { return unit_ * Vec2(x, y); }
  // Coordinates of flat entities are those of their own plane, which may be seen from behind.
  Vec2 in_object(double x, double y) const { return unit_ * Vec2(mirror_ * x, y); }

  void add(PathTrace& trace, bool closed) { shape.paths.push_back(trace.finish(closed)); }

  void arc(const Vec2& centre, const Vec2& u, const Vec2& v, double start, double angle) {
    const auto point = [&](double t) {
      const double a = start + t * angle;
      return Vec2(centre + std::cos(a) * u + std::sin(a) * v);
    };
    PathTrace trace(point(0.0));
    trace.arc_to(point, std::max(u.norm(), v.norm()), angle);
    add(trace, angle >= 2.0 * kPi - 1e-9);
  }

  void polyline() {
    PathTrace trace(vertices_.front().point_m);
    const std::size_t pieces = vertices_.size() - (closed_ ? 0 : 1);
    for (std::size_t i = 0; i < pieces && trace.size() < kMostShapePoints; ++i)
      bulge_to(trace, vertices_[i], vertices_[(i + 1) % vertices_.size()].point_m);
    add(trace, closed_);
  }

  static void bulge_to(PathTrace& trace, const Bulged& from, const Vec2& to) {
    const Vec2 chord = to - from.point_m;
    const double b = from.bulge;
    if (std::abs(b) < 1e-9 || chord.norm() < 1e-12) return trace.line_to(to);
    const Vec2 left(-chord.y(), chord.x());
    const Vec2 centre = from.point_m + 0.5 * chord + (1.0 - b * b) / (4.0 * b) * left;
    const double radius = (from.point_m - centre).norm(), angle = 4.0 * std::atan(b);
    const Vec2 u = from.point_m - centre, v(-u.y(), u.x());
    const auto point = [&](double t) {
      return t >= 1.0 ? to : Vec2(centre + std::cos(t * angle) * u + std::sin(t * angle) * v);
    };
    trace.arc_to(point, radius, angle);
  }

  double unit_, mirror_;
  bool closed_ = false;
  std::vector<Bulged> vertices_;
  Spline spline_;
};

// The entity alone, written anew for dxflib.
std::string as_text(const DxfEntity& entity) {
  std::string text = "  0\n" + std::string(entity.type) + "\n";
  for (const DxfGroup& group : entity.groups)
    if (group.code < 1000 && group.value.size() <= kLongestText)
      text += std::to_string(group.code) + "\n" + std::string(group.value) + "\n";
  return text;
}

// dxflib makes room for as many points as the file says, before it has seen one.
std::optional<std::string> count_fault(const DxfEntity& entity) {
  struct Counted {
    std::string_view type;
    int code, of;
  };
  constexpr Counted kCounted[] = {
      {"LWPOLYLINE", 90, 10}, {"SPLINE", 72, 40}, {"SPLINE", 73, 10}, {"SPLINE", 74, 11}};
  for (const Counted& counted : kCounted) {
    if (counted.type != entity.type) continue;
    const auto there = entity.count(counted.of);
    const int said = entity.whole_number(counted.code, 0);
    if (static_cast<long long>(there) != said || entity.count(counted.code) > 1)
      return "says it has " + std::to_string(said) + " points or knots (group code " +
             std::to_string(counted.code) + ") and has " + std::to_string(there);
    if (there > kMostShapePoints) return "has more than 10 000 points";
  }
  return std::nullopt;
}

// 0 for the drawing's own plane, 1 when that is seen from behind; none for a plane that stands up.
std::optional<bool> turned_over(const DxfEntity& entity) {
  const double x = entity.real(210, 0.0), y = entity.real(220, 0.0), z = entity.real(230, 1.0);
  if (std::hypot(x, y) > 1e-6 * std::abs(z)) return std::nullopt;
  return z < 0.0;
}

std::string text_for_library(const DxfEntity& entity, const std::vector<DxfEntity>& vertices) {
  std::string text = as_text(entity);
  constexpr int kFramePoint = 16;  // of a spline that was made into a polyline: not on it
  for (const DxfEntity& vertex : vertices)
    if ((vertex.whole_number(70, 0) & kFramePoint) == 0) text += as_text(vertex);
  if (entity.type == "POLYLINE") text += "  0\nSEQEND\n";
  return text + "  0\nENDSEC\n  0\nEOF\n";
}

std::optional<std::string> fault_of(const DxfEntity& entity, const std::vector<DxfEntity>& vertices) {
  if (auto fault = dxf_number_fault(entity)) return fault;
  for (const DxfEntity& vertex : vertices)
    if (auto fault = dxf_number_fault(vertex)) return fault;
  if (auto fault = count_fault(entity)) return fault;
  if (!turned_over(entity)) return "does not lie in the plane of the drawing";
  constexpr int kMesh = 16, kFaces = 64;
  if (entity.type == "POLYLINE" && (entity.whole_number(70, 0) & (kMesh | kFaces)) != 0)
    return "is a mesh, not a line";
  return std::nullopt;
}

}  // namespace

bool is_dxf_shape(std::string_view type) {
  constexpr std::string_view kShapes[] = {"LINE",   "LWPOLYLINE", "POLYLINE", "ARC",
                                          "CIRCLE", "ELLIPSE",    "SPLINE",   "POINT"};
  return std::find(std::begin(kShapes), std::end(kShapes), type) != std::end(kShapes);
}

void trace_dxf_entity(const DxfEntity& entity, const std::vector<DxfEntity>& vertices, Length unit,
                      DrawnShape& shape) {
  if (auto fault = fault_of(entity, vertices)) {
    shape.fault = std::move(*fault);
    return;
  }
  EntityTrace trace(unit.si(), *turned_over(entity));
  std::istringstream text(text_for_library(entity, vertices));
  DL_Dxf().in(text, &trace);
  trace.finish();
  shape.paths = std::move(trace.shape.paths);
  shape.circle = trace.shape.circle;
  shape.fault = trace.shape.fault;
  if (shape.fault.empty() && shape.paths.empty()) shape.fault = "has no points";
  if (!shape.paths.empty() && shape.paths.front().points_m.size() > kMostShapePoints)
    shape.fault = "has more than 10 000 points";
  use_exact_circle(shape);
  if (!std::all_of(shape.paths.begin(), shape.paths.end(), usable)) shape.fault = kUnusableNumbers;
  if (!shape.fault.empty()) shape.paths.clear(), shape.circle.reset();
}

}  // namespace wrapgauge
