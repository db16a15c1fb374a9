#pragma once
// Pointing at the body: which place of the skin a line of sight meets, and what is known there.

#include <optional>

#include "app/desk/views/shown_plan.hpp"
#include "app/picture/limb_view.hpp"
#include "app/picture/skin_surface.hpp"

namespace wrapgauge {

// The skin seen at a pixel of `view`; none beside the body.
std::optional<Vec3> place_at(const SkinSurface& skin, const LimbView& view, double x, double y);
// Whether the skin does not hide a point that lies on it.
bool is_seen(const SkinSurface& skin, const LimbView& view, const Vec3& point_m);

// What is known of a place. Only what the shown state says: nothing is worked out between states.
struct PlaceReading {
  Vec3 point_m = Vec3::Zero();
  double station_m = 0.0;
  std::optional<double> angle_deg;    // as of an anchor; none: no closed section there
  std::optional<Pressure> pressure;   // contact there; none: no estimate
  std::optional<Pressure> mean_1cm2;  // over the layout only
  std::optional<Pressure> limit;      // of the strictest row that holds there, before the model factor
  std::optional<double> share;        // of that limit, as hatched: the mean after the model factor
  std::optional<Length> tissue_depth;
  std::optional<Length> indentation;
  std::optional<ChamberId> chamber;
  std::string part;  // chamber, channel, strap or "seam"; empty: bare skin
  std::string site;  // bony site it lies on; empty: none
};
// `place_m` is brought to the skin at rest first: a place of the deformed device may lie millimetres below
// it. None: no body.
std::optional<PlaceReading> read_place(const ShownPlan& shown, int state, const Vec3& place_m);

}  // namespace wrapgauge
