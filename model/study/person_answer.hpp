#pragma once
#include "model/pipeline/resources.hpp"
#include "model/study/people.hpp"

namespace wrapgauge {

struct PersonSolve {
  bool ceiling = true;
  double mesh_factor = 1.0;  // shares of limits count so many times in the ceiling
  FlatMeshOptions mesh;
};

// What this plan comes to on this body, as an estimate judges it. No equilibrium, a bulge that runs away or a
// device that does not close is an answer with its reason. Problems: cancelled, out of memory.
Result<PersonAnswer> person_answer(const Plan& plan, const Body& body, const Resources& resources,
                                   const PersonSolve& how, Progress& progress);

}  // namespace wrapgauge
