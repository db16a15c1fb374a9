#include "model/io/readers/svg_sink.hpp"

#include <2geom/bezier-curve.h>
#include <2geom/elliptical-arc.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <stdexcept>

namespace wrapgauge {
namespace {

// The larger singular value: how much the map enlarges at most.
double largest_stretch(const Geom::Affine& map) {
  const double squares = map[0] * map[0] + map[1] * map[1] + map[2] * map[2] + map[3] * map[3];
  const double det = map.det();
  return std::sqrt(0.5 * (squares + std::sqrt(std::max(0.0, squares * squares - 4.0 * det * det))));
}

}  // namespace

Vec2 SvgSink::in_m(const Geom::Point& p) const {
  const Geom::Point q = p * to_m_;
  return {q.x(), q.y()};
}

PathTrace& SvgSink::trace() {
  if (!trace_) {
    trace_.emplace(in_m(start_));
    current_ = start_;
  }
  if (points_ + trace_->size() > kMostPoints) throw std::length_error("too many points");
  return *trace_;
}

void SvgSink::end(bool closed) {
  if (!trace_) return;
  DrawnPath path = trace_->finish(closed);
  points_ += path.points_m.size();
  if (path.points_m.size() > 1) paths_.push_back(std::move(path));
  trace_.reset();
}

void SvgSink::moveTo(const Geom::Point& p) {
  end(false);
  start_ = current_ = p;
}

void SvgSink::lineTo(const Geom::Point& p) {
  trace().line_to(in_m(p));
  current_ = p;
}

void SvgSink::bezier(const std::vector<Geom::Point>& control) {
  std::vector<Vec2> control_m;
  for (const Geom::Point& p : control) control_m.push_back(in_m(p));
  const std::unique_ptr<const Geom::BezierCurve> curve(Geom::BezierCurve::create(control));
  trace().bezier_to([&](double t) { return in_m(curve->pointAt(t)); }, control_m);
  current_ = control.back();
}

void SvgSink::curveTo(const Geom::Point& a, const Geom::Point& b, const Geom::Point& p) {
  trace();
  bezier({current_, a, b, p});
}

void SvgSink::quadTo(const Geom::Point& a, const Geom::Point& p) {
  trace();
  bezier({current_, a, p});
}

void SvgSink::arcTo(Geom::Coord rx, Geom::Coord ry, Geom::Coord angle, bool large_arc, bool sweep,
                    const Geom::Point& p) {
  trace();
  if (p == current_) return;                     // SVG 1.1, F.6.2: left out
  if (rx == 0.0 || ry == 0.0) return lineTo(p);  // F.6.2: a straight line
  const Geom::EllipticalArc arc(current_, std::abs(rx), std::abs(ry), angle, large_arc, sweep, p);
  const double largest = largest_stretch(to_m_) * std::max(arc.ray(Geom::X), arc.ray(Geom::Y));
  trace().arc_to([&](double t) { return in_m(t >= 1.0 ? p : arc.pointAt(t)); }, largest, arc.angularExtent());
  current_ = p;
}

void SvgSink::closePath() {
  end(true);
  current_ = start_;
}

void SvgSink::flush() {
  end(false);
}

std::vector<DrawnPath> SvgSink::take() {
  end(false);
  return std::move(paths_);
}

}  // namespace wrapgauge
