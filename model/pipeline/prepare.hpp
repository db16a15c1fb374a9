#pragma once
// Everything that has to be known before anything is inflated, in the order of the flow: the body taken, the
// layout laid out flat, the layout put on.

#include "model/geometry/distance_blocks.hpp"
#include "model/inflation/load_path.hpp"
#include "model/limits/finding.hpp"
#include "model/pipeline/resources.hpp"
#include "model/plan/plan.hpp"
#include "model/wrap/body_surface.hpp"
#include "model/wrap/tissue_bed.hpp"

namespace wrapgauge {

struct Prepared {
  std::optional<Length> closing_length;
  SiliconeGrade skin_grade, outer_grade;   // with a calibration's factors
  Length skin_thickness, outer_thickness;  // the same
  TissueSite tissue;
  Wrap wrap;
  TissueBed bed;
  InflationSetup setup;
  std::vector<InflationTarget> targets;  // a group each
  std::vector<BonySite> bony_sites;      // the body's and the plan's
  std::vector<SkinRegion> regions;       // the plan's, each in its place
  std::optional<BodyPart> part;          // of the body
  std::optional<Length> bone_anywhere;   // skin to bone where nobody has said where bones lie
  std::shared_ptr<KeptClosing> closing;  // shared by copies that differ in their targets alone
};

// Makes it quick to put one plan after another on the same body.
struct KnownBefore {
  DistanceBlocks* distances = nullptr;   // the distance is read on their lattice, what they lack is measured
  const BodySurface* surface = nullptr;  // of a body of the same shape and axis
  bool layout_is_sound = false;          // check_layout() found nothing in it
  const Prepared* prepared = nullptr;    // of this plan, body and mesh: nothing is left to do
};

// Body with the plan's own tissue depth map, tissue site, part, side and front taken over. Problems: depths
// of another body; a part, side or front that contradicts the body's own; a part that nothing may press on.
Result<Body> body_of_plan(const Plan& plan, Body body);

// body: what the plan says of it taken over, its places known, ready to lay something on.
struct TakenBody {
  std::shared_ptr<const Body> body;
  std::shared_ptr<const BodySurface> surface;  // of that body; null when all is known before
  std::vector<BonySite> bony_sites;            // the body's and the plan's
  std::vector<SkinRegion> regions;             // the plan's, each in its place
  TissueSite tissue;                           // the row that is calculated with
};
// Problems: those of body_of_plan and placed_regions, a part that nobody said, an unknown tissue site, a body
// without faces, a site or landmark more than 20 mm off the skin.
Result<TakenBody> take_body(const Plan& plan, Body body, const Resources& resources,
                            const KnownBefore& known = {});

// layout: its silicones known, its length round the body known, meshed flat.
struct LaidOut {
  SiliconeGrade skin_grade, outer_grade;
  Length skin_thickness, outer_thickness;
  std::optional<Length> closing_length;
  FlatMesh flat;
};
// Problems: those of the layout and of its mesh, an unknown silicone, a closing length that cannot be.
Result<LaidOut> lay_out(const Plan& plan, const TakenBody& body, const Resources& resources,
                        const FlatMeshOptions& mesh, const KnownBefore& known = {});

// wrap: on the body, fastened, tissue under it, targets set. Problems: those of the wrap, a layout that laps
// itself, a no-go place under the layout, tissue that cannot be calculated with, an inlet that the plan gives
// no pressure or volume.
Result<Prepared> put_on(const Plan& plan, const TakenBody& body, LaidOut laid_out,
                        const KnownBefore& known = {});

// The three in a row.
Result<Prepared> prepare(const Plan& plan, const Body& body, const Resources& resources,
                         const FlatMeshOptions& mesh, const KnownBefore& known = {});

// What the plan asks of each group's inlet: all that `prepared` takes from the inflation. Problem: an inlet
// that is given no pressure or volume.
std::optional<Problem> set_targets(const Plan& plan, Prepared& prepared);

// What limits are held against beside the solved states; the one place where it is gathered.
LimitInputs limit_inputs(const Plan& plan, const Prepared& prepared);

}  // namespace wrapgauge
