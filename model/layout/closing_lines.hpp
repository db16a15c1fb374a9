#pragma once
// The two lines of a flat mesh that meet when it is closed.

#include <vector>

#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

struct ClosingLines {
  // x = at_m + slope (y - y_m); straight across the layout: slope 0. One that bends has its points, by
  // height: straight between them, and on beyond the first and the last.
  struct Line {
    double at_m = 0.0, y_m = 0.0, slope = 0.0;
    std::vector<Vec2> bent_m = {};
    double x_m(double y) const {
      if (!bent_m.empty()) return bent_x_m(y);
      return slope == 0.0 ? at_m : at_m + slope * (y - y_m);
    }
    double bent_x_m(double y) const;
  };
  Line from, to;

  Length length_at(double y_m) const { return (to.x_m(y_m) - from.x_m(y_m)) * metre; }
  // 0 on the first line, 1 on the second.
  double share_at(const Vec2& p) const { return (p.x() - from.x_m(p.y())) / length_at(p.y()).si(); }
};

// Through the first and last vertex of each line, and through all of them where it bends. The mesh must have
// both lines.
ClosingLines closing_lines(const FlatMesh& mesh);

}  // namespace wrapgauge
