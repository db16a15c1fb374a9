#pragma once
// What is known about a plan before anything is solved, each step of the work judged on its own.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/desk/session/body_need.hpp"
#include "app/job/job.hpp"
#include "app/picture/skin_surface.hpp"
#include "model/body/girth.hpp"
#include "model/body/tissue_depths.hpp"
#include "model/casting/casting_check.hpp"
#include "model/core/result.hpp"
#include "model/pipeline/prepare.hpp"
#include "model/wrap/body_surface.hpp"
#include "model/wrap/laid_rim.hpp"

namespace wrapgauge {

// A plan that is being made has neither at first.
bool has_body(const Plan& plan);
bool has_layout(const Plan& plan);

struct CheckedPlan {
  std::shared_ptr<const Plan> plan;            // as it was asked about: a check changes nothing in it
  std::shared_ptr<const ReadBody> body;        // null: none yet, or it cannot be read
  std::shared_ptr<const BodySurface> surface;  // of the body, which it refers to; null without faces
  std::shared_ptr<const SkinSurface> skin;     // likewise, to be drawn; null without a body
  std::vector<Girth> girths;                   // of the body
  std::optional<Problem> body_problem;
  std::optional<BodyNeed> body_need;  // of a body that cannot be read
  bool part_in_doubt = false;         // `body_problem`: the part is not said, contradicted or refused
  // For whose points the plan gives depths of tissue; null: it gives none, or for a body not known here.
  std::shared_ptr<const ReadBody> depth_body;
  std::optional<BroughtDepths> brought_depths;  // what those are on `body`, when that is another one
  std::vector<Problem> layout_problems;
  std::vector<CastingFinding> casting;  // rules of thumb: nothing here keeps the plan from being solved
  std::vector<std::string> unfed;       // inlets without pressure or volume
  std::optional<Problem> limits_problem;
  std::optional<Problem> calibration_problem;  // stale, or not to be read: `job` is then without it
  std::shared_ptr<const Job> job;              // null unless body, layout and limits can be read
  std::optional<Problem> wear_problem;         // met when the layout is laid on the body
  std::shared_ptr<const Prepared> prepared;    // laid on and closed; null when that is not possible
  std::shared_ptr<const LaidRim> rim;          // where its lines would lie, of a layout not laid on
  Length mesh_edge;                            // of the layout's mesh in `prepared`

  bool can_be_read() const { return prepared != nullptr; }  // on the bench
  bool can_be_solved() const { return prepared && unfed.empty() && !calibration_problem; }
};

// What depths that differ from point to point of an earlier body are on this one is calculated for the user
// to judge. `earlier`: what no change since then bears on is taken from it. `mesh_edge`: of the layout's mesh
// in `prepared`. `distances`: kept from check to check.
CheckedPlan check_plan(std::shared_ptr<const Plan> plan, const CheckedPlan* earlier, Length mesh_edge,
                       DistanceBlocks& distances);

// The mesh, and the plan with few recorded states on it, that are quick enough to follow every change.
Length preview_edge(const Plan& plan);
Plan preview_plan(const Plan& plan);

}  // namespace wrapgauge
