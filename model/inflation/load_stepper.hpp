#pragma once
// Steps the load from closed through the waypoints and halves steps that fail. Where steps of pressure come
// to an end it walks on by volume, until the pressure has passed its maximum, a sheet is stretched too far,
// or the asked pressure is met after all. Where nothing leads on from a sheet that is about to fold, that is
// named.

#include <optional>

#include "model/inflation/kept_closing.hpp"
#include "model/inflation/load_path.hpp"
#include "model/inflation/newton.hpp"
#include "model/inflation/possible_state.hpp"

namespace wrapgauge {

class LoadStepper {
 public:
  LoadStepper(const InflationSetup& setup, const std::vector<InflationWaypoint>& waypoints,
              const InflationOptions& options, Progress& progress, KeptClosing* closing);
  Result<LoadPath> run();

 private:
  // A converged shape on the way, recorded or not.
  struct Waypoint {
    Eigen::VectorXd level;  // a group each: Pa, m3 between the sheets or m3 of air pushed in, as its target
    Points3 positions_m;
    Eigen::VectorXd volume_m3, pressure_pa;
  };

  // One equilibrium, from the tissue of the last one that was accepted.
  NewtonResult settle(const std::vector<CavityLoad>& loads, const Points3& start_m);
  CavityLoad air_at(Eigen::Index group, double pushed_m3) const;
  CavityLoad liquid_at(Eigen::Index group, double volume_m3) const;
  std::vector<CavityLoad> loads_at(const Eigen::VectorXd& level) const;
  // The way from the last level on to this one, against the last step; 0 where it leads another way.
  double share_of_last_step(const Eigen::VectorXd& level) const;
  // The last shape, or one that goes on by `share` of the last step, whichever lies lower in the potential.
  Points3 start_for(const std::vector<CavityLoad>& loads, double share);
  bool close();
  // Closed with empty chambers; if need be by way of slightly filled ones, which are smoother.
  NewtonResult closed_shape();
  NewtonResult kept_or_closed_shape();
  bool must_stop() const;
  std::vector<std::optional<ClosedAir>> closed_air() const;
  void record();
  // From `last_` to `level`, in smaller steps as needed; false when no equilibrium was reached there.
  bool step_to(const Eigen::VectorXd& level);
  // The same with walks by volume in between; true as well when a limit point was found on the way.
  bool walk_to(const Eigen::VectorXd& level);
  // The same, and where it fails once more with careful steps.
  bool go_to(const Eigen::VectorXd& level);
  void accept(const Eigen::VectorXd& level, const NewtonResult& result);
  enum class WalkEnd { kFailed, kLimitPoint, kMet };
  // Fills `group` by volume from `last_` on.
  WalkEnd walk_by_volume(GroupId group, double asked_pa);
  void name_maximum(GroupId group, const NewtonResult& beyond);
  void name_overstretch();
  // Whether the last shape is one that would rather fold.
  Result<bool> about_to_fold();
  void name_fold();
  std::optional<Problem> name_end();
  Eigen::VectorXd last_growth_m3() const;  // of each group, on the last step
  // Those whose regulator is asked for more, the fastest growing first.
  std::vector<GroupId> groups_by_growth(const Eigen::VectorXd& level) const;
  EquilibriumState state_of(const Waypoint& at, double residual_n, int iterations) const;
  Problem failure() const;
  Eigen::VectorXd drawn_size() const;
  double volume_cap() const;
  bool jumped(const NewtonResult& result) const;

  const InflationSetup& setup_;
  const std::vector<InflationWaypoint>& waypoints_;
  InflationOptions options_;
  const LoadSettings& load_;        // of options_
  const VolumeWalkSettings& walk_;  // of options_
  Progress& progress_;
  KeptClosing* closing_;
  EquilibriumSystem system_;
  std::optional<Factorisation> factorisation_;  // from the start of run()
  NewtonOptions newton_;
  Waypoint before_last_, last_;
  TissueContact last_tissue_;   // where it grips, and areas, in the last accepted shape
  int stretched_group_ = 0;     // of the last shape that was stretched too far
  std::size_t reached_ = 0;     // waypoints
  double share_to_next_ = 0.0;  // of the way from there to the next one
  double stride_ = 1.0;         // of that way, that is tried at once: halved when it fails, then grows again
  bool any_converged_ = false;
  double last_residual_n_ = 0.0;
  int last_iterations_ = 0;
  NewtonEnd last_end_ = NewtonEnd::kConverged;
  Eigen::VectorXd start_volume_m3_, drawn_size_m3_;
  LoadPath path_;
  std::optional<Problem> impossible_;  // of the first recorded state that cannot be
};

}  // namespace wrapgauge
