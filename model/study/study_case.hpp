#pragma once
// A plan laid on and closed, ready to be solved at any inflation, and what is read from a solved state.

#include <string>
#include <vector>

#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

// How near a state comes to the limits: the place that comes nearest.
struct LimitShare {
  double share = 0.0;    // of the limit, after the model factor; above 1: above the limit
  std::string where;     // chamber, part or bony site
  std::string sentence;  // the finding it belongs to
};

struct StateReading {
  std::vector<Pressure> gauge;  // a group each
  std::vector<Volume> volume;   // a group each
  ContactFigures figures;
  LimitShare nearest;
};

class StudyCase {
 public:
  // `body` as body_of_plan gives it. Problems: those of prepare.
  static Result<StudyCase> make(const Plan& plan, const Body& body, const Resources& resources,
                                const FlatMeshOptions& mesh);

  Result<LoadPath> inflate_to(const std::vector<InflationTarget>& targets, Progress& progress) const;
  // Pressure, tissue strain and sheet stretch against their limits.
  StateReading read(const LoadPath& path, const EquilibriumState& state) const;

  const std::vector<InflationTarget>& targets() const { return prepared_.targets; }  // the plan's
  const InflationSetup& setup() const { return prepared_.setup; }
  const LimitSet& limits() const { return limits_; }
  int steps() const { return solver_.steps; }  // recorded states after the closed one
  std::size_t groups() const { return prepared_.targets.size(); }
  std::string inlet_of(std::size_t group) const;
  bool goes_round(const StateReading& reading) const;  // the rows for a cuff hold

 private:
  Body body_;
  Prepared prepared_;
  LimitSet limits_;
  LimitInputs limit_inputs_;
  InflationOptions solver_;
};

}  // namespace wrapgauge
