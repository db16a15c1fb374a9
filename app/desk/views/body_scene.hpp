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
  Points3 points_m, normals;  // of about unit length
  Triangles triangles;
  Eigen::VectorXd pressure_pa;  // a point each; empty: no estimate, only the layout
  double top_pa = 1e3;          // pressure of the darkest colour
  bool dimmed = false;          // the pressures no longer answer the plan
  Points3 rim_m = {};           // of the layout, from point to point: rows 2k and 2k + 1
  double lift_m = 0.0;          // towards the eye: it may lie below the skin at rest, which it presses in
};

// The outer sheet as it was solved, seen through; its points and normals a flat vertex each.
inline constexpr double kOuterOpacity = 0.3;
struct OuterSheet {
  Points3 points_m, normals;
  Triangles triangles;
  double lift_m = 0.0;
};

// How the device is shown: as it was solved, or unrolled on the skin at rest in the colours of the legend.
enum class BodyLook { kDevice, kSkin };

// Pieces from point to point: rows 2k and 2k + 1. They lie on the surface they are about and are drawn nearer
// to the eye by `lift_m`: so they stand off it nowhere, not even where it is seen from the side.
struct SceneLines {
  Points3 ends_m;
  double width = 1.0;  // pixels
  QColor colour;
  double lift_m = 0.0;
};

struct SceneLabel {
  Vec3 point_m, normal;
  QString words;
  SkinPoints area = {};  // all over what it names; may be empty
};

// What changes together; kept as long as it is shown again and again.
struct ScenePart {
  std::optional<WornSurface> surface;
  std::optional<OuterSheet> outer;
  std::vector<SceneLines> lines;
  std::vector<SceneLabel> labels;
  SkinPoints hatched;                // all over the hatching
  std::optional<SkinPoint> hottest;  // where it presses most; none: nowhere
  std::optional<Length> air_line;    // a line of equal height of air each; none: no such lines
};

struct BodyScene {
  std::shared_ptr<const SkinSurface> skin;
  std::vector<std::shared_ptr<const ScenePart>> parts;

  const WornSurface* worn() const {
    for (const auto& part : parts)
      if (part->surface) return &*part->surface;
    return nullptr;
  }
};

// Bony sites and no-go regions.
ScenePart sites_part(const ShownPlan& shown);

// Whether the estimate is shown at a state, or else the layout alone as it is worn now: an estimate that is
// stale gives way to it when that lies differently, and is dimmed otherwise.
bool shows_contact(const ShownPlan& shown, int state);
// `filling`: see Moment. Contacts of the states on both sides of it are read.
ScenePart contact_part(const ShownPlan& shown, double filling, BodyLook look = BodyLook::kSkin);
ScenePart layout_part(const ShownPlan& shown);  // empty: not laid on

// The chosen chamber, the picked place, and faces that a problem is about.
ScenePart picked_part(const ShownPlan& shown, const Selection& selection, BodyLook look = BodyLook::kSkin);

}  // namespace wrapgauge
