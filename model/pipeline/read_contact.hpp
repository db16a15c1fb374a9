#pragma once
// What presses where, read off the last state of a path, and how far the figures can be trusted.

#include "model/core/progress.hpp"
#include "model/pipeline/pipeline.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

// An estimate without limits and summary. As `options` ask, the job is solved once more on a coarser mesh,
// for the mesh error, and once more under each other assumption that the plan calls for. Problem: cancelled.
Result<Estimate> read_contact(const Plan& plan, const Body& body, const Resources& resources,
                              const Prepared& worn, LoadPath path, const EstimateOptions& options,
                              Progress& progress);

}  // namespace wrapgauge
