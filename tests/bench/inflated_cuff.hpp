#pragma once
// The demo forearm cuff as the solver meets it.

#include <variant>

#include "bodyforms/form.hpp"
#include "model/pipeline/prepare.hpp"
#include "tests/bench/bench_process.hpp"

namespace wrapgauge {

inline Result<Prepared> prepared_cuff(double edge_mm) {
  Plan plan = read_plan(kResources / "plans/forearm-cuff.json").value();
  plan.mesh_edge = edge_mm * mm;
  const auto& form = std::get<BodyForm>(plan.body);
  const Body body = body_of_plan(plan, make_form(form.form, form.parameters).value()).value();
  return prepare(plan, body, read_resources(kResources).value(), mesh_of_plan(plan));
}

}  // namespace wrapgauge
