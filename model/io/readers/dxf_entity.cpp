#include "model/io/readers/dxf_entity.hpp"

#include <dl_creationadapter.h>
#include <dl_dxf.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <sstream>

#include "model/core/number_text.hpp"
#include "model/io/readers/dxf_fit_spline.hpp"
#include "model/io/readers/dxf_insert.hpp"
#include "model/io/readers/dxf_spline.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/path_trace.hpp"
#include "model/layout/drawn_shape_forms.hpp"

namespace wrapgauge {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr std::size_t kLongestText = 1000;  // bytes; dxflib's lines hold 1024

struct Bulged {
  Vec2 point;    // in the drawing's units
  double bulge;  // tangent of a quarter of the angle of the arc to the next point; positive: to the left
};

// The longer half axis of the ellipse that u and v are conjugate half diameters of: the larger singular
// value.
double largest_radius(const Vec2& u, const Vec2& v) {
  const double a = u.squaredNorm(), b = v.squaredNorm(), c = u.dot(v);
  return std::sqrt(0.5 * (a + b + std::hypot(a - b, 2.0 * c)));
}

// Traces what dxflib reports.
class EntityTrace final : public DL_CreationAdapter {
 public:
  EntityTrace(const Eigen::Affine2d& to_m, bool turned_over)
      : to_m_(to_m), mirror_(turned_over ? -1.0 : 1.0) {}

  void addPoint(const DL_PointData& d) override { shape.paths.push_back({{in_m(d.x, d.y)}}); }

  void addLine(const DL_LineData& d) override {
    PathTrace trace(in_m(d.x1, d.y1));
    trace.line_to(in_m(d.x2, d.y2));
    add(trace, false);
  }

  void addCircle(const DL_CircleData& d) override {
    const Vec2 centre = in_object(d.cx, d.cy);
    const double radius = std::abs(d.radius);
    if (radius > 0.0 && keeps_angles())
      shape.circle = DrawnCircle{centre, radius * to_m_.linear().col(0).norm()};
    arc(centre, {radius * mirror_, 0.0}, {0.0, radius}, 0.0, 2.0 * kPi);
  }

  void addArc(const DL_ArcData& d) override {
    const double radius = std::abs(d.radius), start = d.angle1 * kPi / 180.0;
    double angle = std::fmod(d.angle2 - d.angle1, 360.0) * kPi / 180.0;
    if (angle <= 0.0) angle += 2.0 * kPi;
    arc(in_object(d.cx, d.cy), {radius * mirror_, 0.0}, {0.0, radius}, start, angle);
  }

  void addEllipse(const DL_EllipseData& d) override {
    const Vec2 major(d.mx, d.my);
    const Vec2 minor = mirror_ * d.ratio * Vec2(-major.y(), major.x());
    double angle = std::fmod(d.angle2 - d.angle1, 2.0 * kPi);
    if (angle <= 1e-9) angle += 2.0 * kPi;
    arc(in_m(d.cx, d.cy), major, minor, d.angle1, angle);
  }

  void addPolyline(const DL_PolylineData& d) override { closed_ = (d.flags & 1) != 0; }
  void addVertex(const DL_VertexData& d) override {
    vertices_.push_back({Vec2(mirror_ * d.x, d.y), mirror_ * d.bulge});
  }

  void addSpline(const DL_SplineData& d) override { spline_.degree = static_cast<int>(d.degree); }
  void addKnot(const DL_KnotData& d) override { spline_.knots.push_back(d.k); }
  void addControlPoint(const DL_ControlPointData& d) override {
    spline_.control_m.push_back(in_m(d.x, d.y));
    spline_.weights.push_back(d.w);
  }

  void addFitPoint(const DL_FitPointData& d) override { fit_.points.emplace_back(d.x, d.y); }

  void finish(const DxfEntity& entity) {
    if (!vertices_.empty()) polyline();
    if (is_dxf_fit_spline(entity)) {
      fit_spline(entity);
    } else if (spline_.degree > 0) {
      if (auto path = trace_spline(spline_, shape.fault)) shape.paths.push_back(std::move(*path));
    }
  }

  DrawnShape shape;

 private:
  Vec2 in_m(double x, double y) const { return to_m_ * Vec2(x, y); }
  // Coordinates of flat entities are those of their own plane, which may be seen from behind.
  Vec2 in_object(double x, double y) const { return in_m(mirror_ * x, y); }

  // A circle is one in metres too.
  bool keeps_angles() const {
    const Vec2 across = to_m_.linear().col(0), up = to_m_.linear().col(1);
    return std::abs(across.dot(up)) <= 1e-9 * across.squaredNorm() &&
           std::abs(across.norm() - up.norm()) <= 1e-9 * across.norm();
  }

  void add(PathTrace& trace, bool closed) { shape.paths.push_back(trace.finish(closed)); }

  // Round `centre` in metres; u and v are conjugate half diameters in the drawing's units.
  void arc(const Vec2& centre, const Vec2& drawn_u, const Vec2& drawn_v, double start, double angle) {
    const Vec2 u = to_m_.linear() * drawn_u, v = to_m_.linear() * drawn_v;
    const auto point = [&](double t) {
      const double a = start + t * angle;
      return Vec2(centre + std::cos(a) * u + std::sin(a) * v);
    };
    PathTrace trace(point(0.0));
    trace.arc_to(point, largest_radius(u, v), angle);
    add(trace, angle >= 2.0 * kPi - 1e-9);
  }

  void polyline() {
    PathTrace trace(to_m_ * vertices_.front().point);
    const std::size_t pieces = vertices_.size() - (closed_ ? 0 : 1);
    for (std::size_t i = 0; i < pieces && trace.size() < kMostShapePoints; ++i)
      bulge_to(trace, vertices_[i], vertices_[(i + 1) % vertices_.size()].point);
    add(trace, closed_);
  }

  void bulge_to(PathTrace& trace, const Bulged& from, const Vec2& drawn_to) const {
    const Vec2 chord = drawn_to - from.point, to = to_m_ * drawn_to;
    const double b = from.bulge;
    if (std::abs(b) < 1e-9 || (to_m_.linear() * chord).norm() < 1e-12) return trace.line_to(to);
    const Vec2 left(-chord.y(), chord.x());
    const Vec2 drawn_centre = from.point + 0.5 * chord + (1.0 - b * b) / (4.0 * b) * left;
    const Vec2 drawn_u = from.point - drawn_centre, drawn_v(-drawn_u.y(), drawn_u.x());
    const Vec2 centre = to_m_ * drawn_centre, u = to_m_.linear() * drawn_u, v = to_m_.linear() * drawn_v;
    const double angle = 4.0 * std::atan(b);
    const auto point = [&](double t) {
      return t >= 1.0 ? to : Vec2(centre + std::cos(t * angle) * u + std::sin(t * angle) * v);
    };
    trace.arc_to(point, largest_radius(u, v), angle);
  }

  void fit_spline(const DxfEntity& entity) {
    fit_.closed = (entity.whole_number(70, 0) & 1) != 0;
    const auto direction = [&](int code) {
      const Vec2 said(entity.real(code, 0.0), entity.real(code + 10, 0.0));
      return said.norm() > 1e-12 ? std::optional<Vec2>(said) : std::nullopt;
    };
    fit_.start_direction = direction(12);
    fit_.end_direction = direction(13);
    const std::vector<CubicPiece> pieces = spline_through(fit_);
    if (pieces.empty()) {
      shape.fault = "is given by too few points on it to make a curve";
      return;
    }
    PathTrace trace(to_m_ * pieces.front().front());
    for (std::size_t i = 0; i < pieces.size() && trace.size() < kMostShapePoints; ++i)
      bezier_to(trace, pieces[i]);
    add(trace, fit_.closed);
  }

  void bezier_to(PathTrace& trace, const CubicPiece& piece) const {
    std::vector<Vec2> c;
    for (const Vec2& p : piece) c.push_back(to_m_ * p);
    const auto point = [&](double t) {
      const double s = 1.0 - t;
      return Vec2(s * s * s * c[0] + 3.0 * s * s * t * c[1] + 3.0 * s * t * t * c[2] + t * t * t * c[3]);
    };
    trace.bezier_to(point, c);
  }

  Eigen::Affine2d to_m_;
  double mirror_;
  bool closed_ = false;
  std::vector<Bulged> vertices_;
  Spline spline_;
  FitPoints fit_;
};

// dxflib makes room for as many points as the file says, before it has seen one.
struct Counted {
  std::string_view type;
  int code, of;
};
constexpr Counted kCounted[] = {
    {"LWPOLYLINE", 90, 10}, {"SPLINE", 72, 40}, {"SPLINE", 73, 10}, {"SPLINE", 74, 11}};

// The entity alone, written anew for dxflib, with the counts that it leaves out.
std::string as_text(const DxfEntity& entity) {
  std::string text = "  0\n" + std::string(entity.type) + "\n";
  for (const Counted& counted : kCounted)
    if (counted.type == entity.type && entity.count(counted.code) == 0)
      text += std::to_string(counted.code) + "\n" + std::to_string(entity.count(counted.of)) + "\n";
  for (const DxfGroup& group : entity.groups)
    if (group.code < 1000 && group.value.size() <= kLongestText)
      text += std::to_string(group.code) + "\n" + std::string(group.value) + "\n";
  return text;
}

std::optional<std::string> count_fault(const DxfEntity& entity) {
  for (const Counted& counted : kCounted) {
    if (counted.type != entity.type) continue;
    const auto there = entity.count(counted.of);
    const int said =
        entity.whole_number(counted.code, static_cast<int>(std::min<std::size_t>(there, 1u << 20)));
    if (static_cast<long long>(there) != said || entity.count(counted.code) > 1)
      return "says it has " + std::to_string(said) + " points or knots (group code " +
             std::to_string(counted.code) + ") and has " + std::to_string(there);
    if (there > kMostShapePoints) return "has more than 10 000 points";
  }
  return std::nullopt;
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
  if (!dxf_turned_over(entity)) return "does not lie in the plane of the drawing";
  constexpr int kMesh = 16, kFaces = 64;
  if (entity.type == "POLYLINE" && (entity.whole_number(70, 0) & (kMesh | kFaces)) != 0)
    return "is a mesh, not a line";
  return std::nullopt;
}

}  // namespace

namespace {

// The width a polyline is drawn with, in the drawing's units; `changes`: it is not the same everywhere.
double polyline_width(const DxfEntity& entity, const std::vector<DxfEntity>& vertices, bool& changes) {
  double least = entity.real(43, 0.0), most = least;
  const auto take = [&](double width) {
    least = std::min(least, width);
    most = std::max(most, width);
  };
  if (entity.type == "POLYLINE") {
    const double start = entity.real(40, 0.0), end = entity.real(41, 0.0);
    least = most = start;
    take(end);
    for (const DxfEntity& vertex : vertices) {
      take(vertex.real(40, start));
      take(vertex.real(41, end));
    }
  } else if (entity.count(43) == 0) {
    bool first = true;
    for (const DxfGroup& group : entity.groups) {
      if (group.code != 40 && group.code != 41) continue;
      const double width = parse_number(group.value).value_or(0.0);
      if (first) least = most = width;
      first = false;
      take(width);
    }
  }
  changes = most - least > 1e-9 * std::max(1.0, most);
  return most;
}

// A closed polyline of two half circles, as wide as it is across, shows as a filled disc.
bool is_disc(const DrawnShape& shape, double width_m, double& radius_m, Vec2& centre) {
  if (shape.paths.size() != 1 || !shape.paths[0].closed) return false;
  const auto round = as_circle(shape.paths[0]);
  if (!round || std::abs(width_m - 2.0 * round->radius_m) > 0.02 * width_m) return false;
  radius_m = round->radius_m;
  centre = round->centre_m;
  return true;
}

void take_width(const DxfEntity& entity, const std::vector<DxfEntity>& vertices, const Eigen::Affine2d& to_m,
                DrawnShape& shape) {
  if (entity.type != "LWPOLYLINE" && entity.type != "POLYLINE") return;
  bool changes = false;
  const double drawn = polyline_width(entity, vertices, changes);
  const double scale = std::sqrt(std::abs(to_m.linear().determinant())), width = drawn * scale;
  if (!(drawn > 0.0) || shape.paths.empty()) return;
  const bool even = std::abs(to_m.linear().col(0).norm() - to_m.linear().col(1).norm()) <= 1e-9 * scale;
  double radius = 0.0;
  Vec2 centre = Vec2::Zero();
  if (changes || !even) {
    shape.remark = "is drawn with a width that changes, so no width is taken from it";
  } else if (is_disc(shape, width, radius, centre)) {
    DrawnPath& path = shape.paths[0];
    for (Vec2& p : path.points_m) p = centre + 2.0 * (p - centre);  // the rim lies half a width farther out
    path.swept_m2 *= 4.0;
    path.length_m *= 2.0;
    shape.circle = DrawnCircle{centre, 2.0 * radius};
  } else {
    shape.stroke_width = Length(width);
    if (shape.paths[0].closed)
      shape.remark = "is drawn " + number_text(width / 1e-3) +
                     " mm wide; its middle line is read, half of that inside the outer edge";
  }
}

}  // namespace

bool is_dxf_text(std::string_view type) {
  return type == "TEXT" || type == "MTEXT" || type == "ATTRIB";
}

DrawnWords dxf_words(const DxfEntity& entity, const Eigen::Affine2d& to_m) {
  // A TEXT that is aligned lies at its second point.
  const bool aligned =
      entity.type != "MTEXT" && entity.count(11) > 0 &&
      (entity.whole_number(72, 0) != 0 || entity.whole_number(73, 0) != 0 || entity.whole_number(74, 0) != 0);
  const double mirror = dxf_turned_over(entity).value_or(false) && entity.type != "MTEXT" ? -1.0 : 1.0;
  std::string text;
  for (const DxfGroup& group : entity.groups)  // a long MTEXT comes in pieces, the last one in 1
    if (group.code == 1 || (group.code == 3 && entity.type == "MTEXT")) text += group.value;
  const Vec2 place(mirror * entity.real(aligned ? 11 : 10, 0.0), entity.real(aligned ? 21 : 20, 0.0));
  return {entity.line, to_m * place, std::string(entity.type),
          entity.type == "MTEXT" ? dxf_plain_text(text) : dxf_text(text)};
}

bool is_dxf_shape(std::string_view type) {
  constexpr std::string_view kShapes[] = {"LINE",   "LWPOLYLINE", "POLYLINE", "ARC",
                                          "CIRCLE", "ELLIPSE",    "SPLINE",   "POINT"};
  return std::find(std::begin(kShapes), std::end(kShapes), type) != std::end(kShapes);
}

bool is_dxf_fit_spline(const DxfEntity& entity) {
  return entity.type == "SPLINE" && entity.count(10) == 0 && entity.count(11) > 0;
}

std::size_t trace_dxf_entity(const DxfEntity& entity, const std::vector<DxfEntity>& vertices,
                             const Eigen::Affine2d& to_m, DrawnShape& shape) {
  if (auto fault = fault_of(entity, vertices)) {
    shape.fault = std::move(*fault);
    return 0;
  }
  EntityTrace trace(to_m, *dxf_turned_over(entity));
  std::istringstream text(text_for_library(entity, vertices));
  DL_Dxf().in(text, &trace);
  trace.finish(entity);
  shape.paths = std::move(trace.shape.paths);
  shape.circle = trace.shape.circle;
  take_width(entity, vertices, to_m, shape);
  if (shape.fault.empty()) shape.fault = trace.shape.fault;
  if (shape.fault.empty() && shape.paths.empty()) shape.fault = "has no points";
  if (!shape.paths.empty() && shape.paths.front().points_m.size() > kMostShapePoints)
    shape.fault = "has more than 10 000 points";
  std::size_t points = 0;
  for (const DrawnPath& path : shape.paths) points += path.points_m.size();
  use_exact_circle(shape);
  if (!std::all_of(shape.paths.begin(), shape.paths.end(), usable)) shape.fault = kUnusableNumbers;
  if (!shape.fault.empty()) shape.paths.clear(), shape.circle.reset();
  return points;
}

}  // namespace wrapgauge
