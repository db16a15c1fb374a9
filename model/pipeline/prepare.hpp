#pragma once
// Everything that has to be known before anything is inflated: laid on, closed, tissue under it, targets set.

#include "model/geometry/distance_blocks.hpp"
#include "model/pipeline/pipeline.hpp"
#include "model/pipeline/tissue_bed.hpp"

namespace wrapgauge {

struct Prepared {
  std::optional<Length> closing_length;
  SiliconeGrade skin_grade, outer_grade;
  TissueSite tissue;
  Wrap wrap;
  TissueBed bed;
  InflationSetup setup;
  std::vector<InflationTarget> targets;  // a group each
  std::vector<BonySite> bony_sites;      // the body's and the plan's
  std::vector<SkinRegion> regions;       // the plan's, each in its place
  std::shared_ptr<KeptClosing> closing;  // shared by copies that differ in their targets alone
};

// Makes it quick to put one plan after another on the same body.
struct KnownBefore {
  DistanceBlocks* distances = nullptr;   // the distance is read on their lattice, what they lack is measured
  const BodySurface* surface = nullptr;  // of a body of the same shape and axis
  bool layout_is_sound = false;          // check_layout() found nothing in it
};

// Body with the plan's own tissue depth map and tissue site taken over.
Result<Body> body_of_plan(const Plan& plan, Body body);

// The mesh the plan asks for, every length times `factor`; the band beside seams stays.
FlatMeshOptions mesh_of_plan(const Plan& plan, double factor = 1.0);

// With the layout meshed as `mesh` says. Problems: those of the layout, the materials, the wrap, and an inlet
// that the plan gives no pressure or volume.
Result<Prepared> prepare(const Plan& plan, const Body& body, const Resources& resources,
                         const FlatMeshOptions& mesh, const KnownBefore& known = {});

// What the plan asks of each group's inlet: all that `prepared` takes from the inflation. Problem: an inlet
// that is given no pressure or volume.
std::optional<Problem> set_targets(const Plan& plan, Prepared& prepared);

}  // namespace wrapgauge
