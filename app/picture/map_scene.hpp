#pragma once
// What both pictures draw: surfaces with pressure and load, the lines on them, one scale.

#include <string>
#include <vector>

#include "app/picture/raster.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// Pressures that the colour bar marks: predicted pressure at which a limit row is met.
struct LimitMark {
  double pressure_pa = 0.0;
  double limit_pa = 0.0;
};

struct MapScene {
  double top_pa = 1e3;  // top of the colour bar, a round number
  double model_factor = 1.5;
  std::vector<LimitMark> limits;        // lowest first
  Eigen::VectorXd layout_threshold_pa;  // a flat vertex each: predicted pressure at which its limit is met
};

MapScene map_scene(const Estimate& estimate);

// Edges between parts of the layout, and the layout's own rim.
struct LayoutEdge {
  int from = 0, to = 0;  // flat vertices
  bool rim = false;
};
std::vector<LayoutEdge> layout_edges(const FlatMesh& flat);

// Where the load crosses 1: the limit's contour line, gathered triangle by triangle and drawn as a whole.
class LimitContour {
 public:
  void add(const std::array<RasterVertex, 3>& corner);
  void draw(Raster& raster, double lift) const;
  std::vector<RasterPoint> middles() const;  // of its pieces

 private:
  std::vector<std::array<RasterPoint, 2>> pieces_;
};

}  // namespace wrapgauge
