#pragma once
// Receives the pieces of an SVG path from lib2geom and traces them.

#include <2geom/affine.h>
#include <2geom/path-sink.h>

#include <optional>
#include <vector>

#include "model/io/readers/path_trace.hpp"

namespace wrapgauge {

class SvgSink final : public Geom::PathSink {
 public:
  using Geom::PathSink::feed;
  explicit SvgSink(const Geom::Affine& to_m) : to_m_(to_m) {}

  void moveTo(const Geom::Point& p) override;
  void lineTo(const Geom::Point& p) override;
  void curveTo(const Geom::Point& a, const Geom::Point& b, const Geom::Point& p) override;
  void quadTo(const Geom::Point& a, const Geom::Point& p) override;
  void arcTo(Geom::Coord rx, Geom::Coord ry, Geom::Coord angle, bool large_arc, bool sweep,
             const Geom::Point& p) override;
  void closePath() override;
  void flush() override;

  // Ends the last path. Paths of a single point are left out.
  std::vector<DrawnPath> take();
  bool full() const { return points_ > kMostPoints; }

  static constexpr std::size_t kMostPoints = kMostShapePoints;

 private:
  Vec2 in_m(const Geom::Point& p) const;
  PathTrace& trace();  // a path goes on from the last start when none was begun
  void bezier(const std::vector<Geom::Point>& control);
  void end(bool closed);

  Geom::Affine to_m_;
  Geom::Point start_, current_;
  std::optional<PathTrace> trace_;
  std::vector<DrawnPath> paths_;
  std::size_t points_ = 0;
};

}  // namespace wrapgauge
