#pragma once
// What is drawn of a body: geometry alone, so that a graphics card and the software picture draw the same.

#include <QColor>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/desk/views/shown_plan.hpp"

namespace wrapgauge {

// The layout on the skin, lifted off it a little.
struct WornSurface {
  Points3 points_m, normals;
  Triangles triangles;
  Eigen::VectorXd pressure_pa;  // a point each; empty: no estimate, only the layout
};

// Pieces from point to point: rows 2k and 2k + 1.
struct SceneLines {
  Points3 ends_m;
  double width = 1.0;  // pixels
  QColor colour;
};

struct SceneLabel {
  Vec3 point_m, normal;
  QString words;
};

struct BodyScene {
  std::shared_ptr<const SkinSurface> skin;
  std::optional<WornSurface> worn;
  std::vector<SceneLines> lines;
  std::vector<SceneLabel> labels;
  double top_pa = 1e3;  // pressure of the darkest colour
  bool dimmed = false;  // the pressures no longer answer the plan
};

// The selected state of the estimate. An estimate that is stale gives way to the layout as it is worn now
// when that lies differently, and is dimmed otherwise.
BodyScene body_scene(const ShownPlan& shown, const Selection& selection);

}  // namespace wrapgauge
