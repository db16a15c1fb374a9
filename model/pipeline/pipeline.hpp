#pragma once
// The whole job in order: the program's table of contents.

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "model/contact/audit.hpp"
#include "model/contact/contact_map.hpp"
#include "model/contact/figures_difference.hpp"
#include "model/contact/mesh_error.hpp"
#include "model/core/progress.hpp"
#include "model/inflation/load_path.hpp"
#include "model/limits/comparison.hpp"
#include "model/limits/finding.hpp"
#include "model/limits/hazard.hpp"
#include "model/limits/skin_exposure.hpp"
#include "model/plan/plan.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// Tables the program ships.
struct Resources {
  std::vector<SiliconeGrade> silicones;
  std::vector<TissueSite> tissues;
  LimitSet limits;
  Comparisons comparisons;
};
Result<Resources> read_resources(const std::filesystem::path& folder);

struct Estimate {
  Body body;
  std::optional<Length> closing_length;
  Wrap wrap;
  InflationSetup setup;
  LoadPath path;
  ContactMap map;  // of the last state
  ContactFigures figures;
  Audit audit;
  LimitSet limits;
  LimitInputs limit_inputs;
  std::vector<Finding> findings;
  std::vector<Hazard> hazards;
  Pressure highest_relief;               // setting of a relief valve that the limits allow
  std::optional<SkinExposure> exposure;  // none: the plan gives no session
  std::optional<MeshError> mesh_error;   // none: not asked for, or the coarser mesh found no equilibrium
  // The same job on tissue as a foundation (when it was coupled), or with compression carried the other way
  // (when the plan asks for it).
  std::vector<FiguresDifference> comparisons;
  SiliconeGrade skin_grade, outer_grade;
  TissueSite tissue;
  Eigen::VectorXd tissue_depth_m;  // a flat vertex each: skin to bone under the worn layout
  Severity worst() const;          // of findings and hazards
  bool above_limit() const { return worst() >= Severity::kAboveLimit; }
};

struct Prepared;

struct EstimateOptions {
  bool mesh_error = true;   // solve once more on a coarser mesh
  bool comparisons = true;  // solve once more under the other assumptions that the plan calls for
  // Of this plan on its own mesh (see prepare.hpp); made when there is none.
  std::shared_ptr<const Prepared> prepared = nullptr;
};

// body -> layout -> wrap -> inflation -> contact -> limits
Result<Estimate> estimate(const Plan& plan, Body body, const Resources& resources,
                          const EstimateOptions& options = {}, Progress& progress = silent_progress());

// Every check short of solving; what is ready, in words.
Result<std::vector<std::string>> look(const Plan& plan, const Body& body, const Resources& resources);

}  // namespace wrapgauge
