#pragma once
// One search for a ceiling: solves at inflations and remembers what was read where it was solved to.

#include <map>
#include <set>

#include "model/study/ceiling.hpp"
#include "model/study/inlet_scale.hpp"

namespace wrapgauge {

class CeilingFinder {
 public:
  // `only`: one group, the others open; none: all of them. `to_plan`: the path of all of them to what the
  // plan asks for, where it is known. All references outlive it.
  CeilingFinder(const StudyCase& study, std::optional<std::size_t> only, const CeilingOptions& options,
                Progress& progress, const LoadPath* to_plan = nullptr);

  Result<InletCeiling> find();
  // What an estimate of the plan itself reads, relief valves included; none: no equilibrium was found on the
  // way to it, or only one inlet is searched.
  const std::optional<StateReading>& plan_reading() const { return plan_reading_; }

 private:
  Result<LoadPath> path_to(double inflation);
  Result<SharePath> solve(double inflation, double known_within);
  Result<StateReading> judged(const LoadPath& path);
  SharePath shares_of(const LoadPath& path, double inflation, double known_within);
  std::optional<Problem> set_down(InletCeiling& ceiling, double inflation);
  Result<CeilingCheck> solved_check(double inflation);
  CeilingCheck check_of(double inflation, const StateReading& reading) const;
  CeilingCheck check_at(double inflation) const;
  double search_share(const LimitShare& nearest) const;
  void name_limit_point(const LoadPath& path, SharePath& shares);
  std::vector<CeilingInlet> inlets_of(const std::vector<InflationTarget>& settings,
                                      const StateReading& reading) const;

  const StudyCase& study_;
  std::optional<std::size_t> only_;
  const CeilingOptions& options_;
  Progress& progress_;
  const LoadPath* to_plan_;
  InletScale scale_;
  std::map<double, StateReading> read_;
  std::set<double> gone_;  // no equilibrium there
  std::optional<StateReading> plan_reading_;
  LimitKind limit_kind_ = LimitKind::kRunsAway;
  std::string limit_chambers_;
};

}  // namespace wrapgauge
