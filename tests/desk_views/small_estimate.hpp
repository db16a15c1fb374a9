#pragma once
// A plan that is solved in a fraction of a second, as the views show it: two chambers on a cylinder.

#include <gtest/gtest.h>

#include <memory>

#include "app/desk/views/shown_plan.hpp"
#include "app/job/job.hpp"
#include "tests/desk_views/at_rest.hpp"

namespace wrapgauge {

inline Polygon box_m(double left, double low, double right, double high) {
  return {{left, low}, {right, low}, {right, high}, {left, high}};
}

inline Plan two_chamber_plan() {
  Plan plan;
  plan.name = "two pads";
  plan.body = BodyForm{"cylinder", {}, {}};
  plan.part = BodyPart::kForearm;
  plan.tissue_site = "forearm relaxed";
  plan.layout.name = "two pads";
  plan.layout.rim_bonded = true;  // what is not held to the skin does not press on it
  plan.layout.outline_m = box_m(-0.035, -0.03, 0.035, 0.03);
  plan.layout.chambers = {{"left", box_m(-0.03, -0.02, -0.003, 0.02), {{{-0.016, 0.0}, 2.0 * mm}}, {}},
                          {"right", box_m(0.003, -0.02, 0.03, 0.02), {}, {}}};
  plan.layout.channels = {{"join", {{-0.006, 0.01}, {0.006, 0.01}}, 5.0 * mm}};
  plan.layout.inlets = {{"tube", {0.015, 0.0}}};
  plan.layout.skin_sheet = plan.layout.outer_sheet = {"00-30", 2.0 * mm, 1.0};
  plan.placement.anchor = AnchorAtStation{100.0 * mm, 0.0};
  plan.inflation = {{"tube", 2.0 * kPa, {}}};
  plan.mesh_edge = 7.0 * mm;
  plan.solver.steps = 3;
  return plan;
}

inline std::shared_ptr<const Estimate> two_chamber_estimate() {
  static const std::shared_ptr<const Estimate> solved = [] {
    const auto job = complete_job(two_chamber_plan());
    if (!job) throw std::runtime_error(job.problem().message);
    auto found = estimate(job->plan, job->body, job->resources, {false, false});
    if (!found) throw std::runtime_error(found.problem().message);
    return std::make_shared<const Estimate>(std::move(found).value());
  }();
  return solved;
}

// The estimate as the views see it, every state read.
struct WithShown {
  Selection selection;
  ShownPlan shown{selection};

  bool show_all_states(std::shared_ptr<const Estimate> estimate) {
    shown.show_estimate(std::move(estimate));
    return wait_until([&] {
      for (int state = 0; state < shown.state_count(); ++state)
        if (!shown.contact(state)) return false;
      return true;
    });
  }
};

}  // namespace wrapgauge
