#pragma once
// A raw scan and a list of steps -> a checked body.

#include "model/body/check_body.hpp"
#include "model/body/mend_step.hpp"

namespace wrapgauge {

struct MendedBody {
  CheckedBody checked;
  std::vector<MendReport> reports;  // a step each, in order; kRepair where the surface was made a manifold
};

// Scales the mesh to metres, takes the steps in the order given, and checks what comes out as any body. Once
// before the first step that needs it the surface is repaired (repair_surface), which is reported too.
// Without steps this is check_body. After "pose" points named in a plan are meant in the posed frame.
// Problems: those of check_body and of each step, the latter with the step's index as their place
// (kMendStep); a parameter out of its range.
Result<MendedBody> mend_body(RawMesh raw, const BodyOptions& options, const std::vector<MendStep>& steps);

// A problem of a step as the terminal says it, the step's number and name first: "Step 2 (cut): ...". Any
// other problem stays what it is.
Problem with_step_named(Problem problem, const std::vector<MendStep>& steps);

// The step that a problem is about; none: it is about the body as it came out.
std::optional<std::size_t> failed_step(const Problem& problem);

// The usual list: drop table, drop crumbs, fill holes, smooth, pose, decimate.
std::vector<MendStep> usual_steps();

}  // namespace wrapgauge
