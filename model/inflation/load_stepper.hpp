#pragma once
// Steps the load from closed to the target, halves steps that fail, and when no equilibrium exists at a
// pressure walks on by volume until the pressure has passed its maximum.

#include "model/inflation/load_path.hpp"
#include "model/inflation/newton.hpp"

namespace wrapgauge {

class LoadStepper {
 public:
  LoadStepper(const InflationSetup& setup, const std::vector<InflationTarget>& targets,
              const InflationOptions& options, Progress& progress);
  Result<LoadPath> run();

 private:
  // A converged shape on the way, recorded or not.
  struct Waypoint {
    double fraction = 0.0;  // of the targets
    Points3 positions_m;
    Eigen::VectorXd volume_m3, pressure_pa;
  };

  // Newton plus the passes that bring lagged areas and friction up to date. Leaves the tissue as it was on
  // failure.
  NewtonResult settle(std::vector<CavityLoad> loads, const Points3& start_m);
  std::vector<CavityLoad> loads_at(double fraction) const;
  bool close();
  void record();
  bool find_limit_point();
  // From `last_` to `fraction`, halving as needed; false when no equilibrium was reached there.
  bool step_to(double fraction);
  void accept(double fraction, const NewtonResult& result);
  // Walks group `group` by volume past its pressure maximum. True: limit point found and set.
  bool walk_by_volume(GroupId group);
  GroupId fastest_growing_group() const;
  EquilibriumState state_of(const Waypoint& at, double residual_n, int iterations) const;
  Problem failure() const;
  double volume_cap() const;

  const InflationSetup& setup_;
  std::vector<InflationTarget> targets_;
  InflationOptions options_;
  Progress& progress_;
  EquilibriumSystem system_;
  Factorisation factorisation_;
  NewtonOptions newton_;
  Waypoint before_last_, last_;
  bool any_converged_ = false;
  double last_residual_n_ = 0.0;
  int last_iterations_ = 0;
  NewtonEnd last_end_ = NewtonEnd::kConverged;
  Eigen::VectorXd start_volume_m3_;
  LoadPath path_;
};

}  // namespace wrapgauge
