#pragma once
// A plan laid on and fastened, ready to be solved at any inflation, and what is read from a solved state.

#include <string>
#include <vector>

#include "model/pipeline/judgement.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

// How near a state comes to the limits: the finding or hazard that comes nearest.
struct LimitShare {
  double share = 0.0;    // of the limit, after the model factor; 0 where what stops it has no share
  std::string where;     // chamber, part, bony site or hazard
  std::string sentence;  // what is said of it
  Severity severity = Severity::kNote;  // the worst of all findings and hazards
  bool of_time = false;                 // it is broken by how long and how often, not by how much
  bool above() const { return share > 1.0 || severity >= Severity::kAboveLimit; }
};

struct StateReading {
  std::vector<Pressure> gauge;  // a group each
  std::vector<Volume> volume;   // a group each
  ContactMap map;
  ContactFigures figures;
  Judgement judgement;  // as an estimate of the plan at this inflation comes to
  LimitShare nearest;
  std::optional<double>
      relief_share;  // of its limit, with every inlet at its relief setting; none: not solved
};

// Of a judgement without the setting of the relief valves, which is no matter of how far it is inflated.
LimitShare nearest_limit(const Judgement& judgement);

// What presses where in one state, not judged yet.
struct MappedContact {
  ContactMap map;
  ContactFigures figures;
};

class StudyCase {
 public:
  // `body` as body_of_plan gives it. Problems: those of prepare.
  static Result<StudyCase> make(const Plan& plan, const Body& body, const Resources& resources,
                                const FlatMeshOptions& mesh, const KnownBefore& known = {});

  // The same for a plan that differs in inflation, session and relief valves alone. Problems: those of
  // set_targets.
  Result<StudyCase> with_inflation_of(const Plan& plan) const;

  Result<LoadPath> inflate_to(const std::vector<InflationTarget>& targets, Progress& progress) const;
  // The last state, judged as an estimate judges it: pressure, strain, stretch, the session, the part and
  // every hazard.
  StateReading read(const LoadPath& path) const;
  // The same with the settings of the relief valves solved, as an estimate does. Problems: cancelled.
  Result<StateReading> read_with_relief(const LoadPath& path, Progress& progress) const;
  // The same with relief settings that were solved before, and another supply.
  StateReading read_with_supply(const LoadPath& path, std::vector<InletRelief> settings,
                                const Supply& supply) const;
  // One state, judged as if no more than that had been asked for.
  StateReading read(const LoadPath& path, std::size_t state) const;
  MappedContact contact(const LoadPath& path, const EquilibriumState& state) const;
  std::vector<ChamberFigures> brief_figures(const LoadPath& path, const EquilibriumState& state) const;
  // A flat vertex each, of the last state: what share of its limit each place takes (limit_share.hpp), and
  // the limit of the row that holds there, Pa.
  Eigen::VectorXd share_on_layout(const LoadPath& path, const MappedContact& contact) const;
  Eigen::VectorXd limit_on_layout(const LoadPath& path, const MappedContact& contact) const;

  const std::vector<InflationTarget>& targets() const { return prepared_.targets; }  // the plan's
  const InflationSetup& setup() const { return prepared_.setup; }
  const LimitSet& limits() const { return limits_; }
  const Supply& supply() const { return supply_; }
  int steps() const { return solver_.steps; }  // recorded states after the deflated one
  std::size_t groups() const { return prepared_.targets.size(); }
  std::string inlet_of(std::size_t group) const;

 private:
  FigureInputs figure_inputs() const;
  StateReading read(const LoadPath& path, const Supply& supply,
                    std::optional<std::vector<InletRelief>> relief) const;

  Body body_;
  Prepared prepared_;
  LimitSet limits_;
  Comparisons comparisons_;
  LimitInputs limit_inputs_;
  Supply supply_;
  Filling filling_;
  InflationOptions solver_;
};

}  // namespace wrapgauge
