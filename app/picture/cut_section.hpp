#pragma once
// A cut across the body where the device is worn: the skin as it lies and as it is pressed in, the tissue
// under it down to the bone, the sheets in their thickness, the air between them, and how hard they press.

#include <vector>

#include "app/picture/skin_surface.hpp"
#include "model/geometry/plane_section.hpp"
#include "model/note/estimate.hpp"

namespace wrapgauge {

// In the plane of the cut, m, seen from its distal side; the origin is the body's axis, and the side of the
// limb that the layout's anchor lies on is up.
using CutLine = std::vector<Vec2>;

// A straight piece of a sheet, along the middle of its thickness.
struct CutSheet {
  SheetLayer layer = SheetLayer::kFused;
  Vec2 from_m, to_m;
  double thickness_m = 0.0;  // as stretched: what was cast keeps its volume
};

// A straight piece of skin under the device.
struct CutSkin {
  Vec2 from_m, to_m;            // pressed in
  Vec2 bone_from_m, bone_to_m;  // as deep below the skin at rest as the tissue is taken to be
  Vec2 inward;                  // unit
  double pressure_pa = 0.0;     // at its middle, predicted, without the model factor
  double share_of_limit = 0.0;  // there, of the mean over 1 cm2
};

struct CutSection {
  double station_m = 0.0;        // along the body's axis
  std::vector<CutLine> skin_m;   // at rest, closed where the surface is
  std::vector<CutSheet> sheets;  // both of a chamber or channel, one where they are fused
  std::vector<CutLine> air_m;    // closed, between the two sheets of a chamber or channel
  std::vector<CutSkin> pressed;  // all skin under the device
};

// The device at one moment of the filling, a flat vertex each where not said otherwise.
struct CutDevice {
  const Points3& positions_m;  // a node of path.sheet each
  const SkinPoints& on_skin;   // the worn layout brought to the skin at rest
  const Eigen::VectorXd &indentation_m, &pressure_pa, &share_of_limit;
};

// `sections`: of estimate.body. Where the plane misses the device there is skin alone.
CutSection cut_section(const Estimate& estimate, const PlaneSections& sections, const CutDevice& device,
                       double station_m);

// The stations between which the device lies, first < second.
std::pair<double, double> device_stations_m(const Estimate& estimate, const SkinPoints& on_skin);

}  // namespace wrapgauge
