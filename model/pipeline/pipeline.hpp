#pragma once
// The whole job in order: the program's table of contents.

#include <memory>
#include <string>
#include <vector>

#include "model/core/progress.hpp"
#include "model/note/estimate.hpp"
#include "model/pipeline/resources.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

struct Prepared;

struct EstimateOptions {
  bool mesh_error = true;   // solve once more on a coarser mesh
  bool relief = true;       // solve once more with every inlet at the setting of its relief valve
  bool comparisons = true;  // solve once more under the other assumptions that the plan calls for
  // Of this plan on its own mesh (see prepare.hpp); made when there is none.
  std::shared_ptr<const Prepared> prepared = nullptr;
  std::vector<InputFile> inputs = {};  // the files it comes from, as the summary names them
};

// body -> layout -> wrap -> inflation -> contact -> limits -> note
Result<Estimate> estimate(const Plan& plan, Body body, const Resources& resources,
                          const EstimateOptions& options = {}, Progress& progress = silent_progress());

// Every check short of solving; what is ready, in words.
Result<std::vector<std::string>> look(const Plan& plan, const Body& body, const Resources& resources);

}  // namespace wrapgauge
