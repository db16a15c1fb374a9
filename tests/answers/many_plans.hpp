#pragma once
// Plans that answers are held against, and their answers: every body and layout form, drawn at random from
// seeds, and scan-like bodies where they are at hand.

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge::answers {

struct AskedPlan {
  std::string words;  // what it is, for a message
  Plan plan;
  Body body;
};

const Resources& shipped_resources();

// Sixty, the same in every run: gentle inflations on coarse meshes, each kind of use, with sessions and
// without.
const std::vector<AskedPlan>& many_plans();

// Bodies from files of ../shared/data with layouts made to measure; empty where it is not at hand.
const std::vector<AskedPlan>& scanned_plans();

// Solved once in a process. A plan that comes to no result has none, which is an answer that misleads nobody.
const std::optional<Estimate>& answer_of(const AskedPlan& asked);

// `relief`: with the settings of the relief valves solved, as the commands do.
std::optional<Estimate> solve(const Plan& plan, const Body& body, bool relief = false);

// The same solved states, judged once more with something else known.
Estimate judged(const Plan& plan, Estimate estimate, const LimitInputs& inputs);

// Of its limit that each flat vertex takes.
Eigen::VectorXd shares(const Estimate& estimate);

}  // namespace wrapgauge::answers
