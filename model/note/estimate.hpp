#pragma once
// What one plan came to: every stage's value from the body to the limits, and the summary the note is made
// of.

#include <optional>
#include <vector>

#include "model/body/body.hpp"
#include "model/contact/audit.hpp"
#include "model/contact/contact_map.hpp"
#include "model/contact/figures_difference.hpp"
#include "model/contact/mesh_error.hpp"
#include "model/inflation/load_path.hpp"
#include "model/limits/finding.hpp"
#include "model/limits/hazard.hpp"
#include "model/limits/skin_exposure.hpp"
#include "model/material/silicone.hpp"
#include "model/material/tissue.hpp"
#include "model/note/summary.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

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
  std::vector<InletRelief> relief;       // highest settings of the relief valves
  std::optional<SkinExposure> exposure;  // none: the plan gives no session
  std::optional<MeshError> mesh_error;   // none: not asked for, or the coarser mesh found no equilibrium
  // The same job on tissue as a foundation (when it was coupled), or with compression carried the other way
  // (when the plan asks for it).
  std::vector<FiguresDifference> comparisons;
  SiliconeGrade skin_grade, outer_grade;
  TissueSite tissue;
  Eigen::VectorXd tissue_depth_m;  // a flat vertex each: skin to bone under the worn layout
  Summary summary;                 // the last stage's: all of the above in words and figures

  Severity worst() const;  // of findings and hazards
  bool above_limit() const { return worst() >= Severity::kAboveLimit; }
};

}  // namespace wrapgauge
