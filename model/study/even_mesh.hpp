#pragma once
#include "model/plan/plan.hpp"

namespace wrapgauge {

// The plan on a mesh of one edge length everywhere.
inline Plan on_even_mesh(Plan plan, Length edge) {
  plan.mesh_edge = edge;
  plan.mesh_seam_edge.reset();
  plan.mesh_seam_band.reset();
  return plan;
}

// The same unless the plan's own mesh is that coarse already.
inline Plan no_finer_than(Plan plan, Length edge) {
  return plan.mesh_edge < edge ? on_even_mesh(std::move(plan), edge) : plan;
}

}  // namespace wrapgauge
