#pragma once
// What one recorded state of the load path does to the skin: the same readings that an estimate holds for its
// last state.

#include "app/picture/skin_surface.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

struct StateContact {
  ContactMap map;
  ContactFigures figures;
  std::vector<Finding> findings;          // worst first; of the last state also those over a session
  Eigen::VectorXd share_of_limit;         // a flat vertex each, of the mean over 1 cm2: above 1 is hatched
  Eigen::VectorXd threshold_pa;           // a flat vertex each: predicted pressure at which its limit is met
  SkinPoints on_skin;                     // a flat vertex each: the worn layout brought to the skin at rest
  std::optional<NearestPoint> worn_tree;  // of the flat triangles there; none: there are none
  Pressure inside;                        // the highest gauge pressure of all inlets
};

// `state`: an index into estimate.path.states. `skin`: of the estimate's body.
StateContact state_contact(const Estimate& estimate, const SkinSurface& skin, int state);

// What is said of a chamber, and how much of its limit it takes; null: nothing was.
const Finding* finding_of(const StateContact& contact, const std::string& chamber);

}  // namespace wrapgauge
