#pragma once
// One family of readings on one mesh.

#include "model/bench/bench_family.hpp"
#include "model/bench/bench_model.hpp"
#include "model/bench/sensor_reading.hpp"
#include "model/inflation/settle_again.hpp"

namespace wrapgauge {

class FamilySolver {
 public:
  // All must outlive it. Problems: those of the device's mesh, or of putting it on.
  static Result<FamilySolver> make(const BenchJob& job, const std::vector<Reading>& rows, BenchFamily family,
                                   const FlatMeshOptions& mesh);

  const BenchFamily& family() const { return family_; }
  // SI, a reading of the family each, by the whole load path. Problems: kNotConverged, naming the reading.
  Result<std::vector<double>> by_path(const SheetFactors& factors, Progress& progress);
  // The same from the states that are known, where that leads there; else by the path.
  Result<std::vector<double>> from_known(const SheetFactors& factors, Progress& progress);
  // From now on the states of the last answer are those that are known.
  void keep_last() {
    if (!last_.empty()) known_ = last_;
  }
  // Factor of what a sensor's thickness adds, a reading each; 1 where it has none. By solves with the sensors
  // in place, those at once that lie far apart.
  Result<std::vector<double>> sensor_factors(const std::vector<double>& without, Progress& progress) const;

 private:
  FamilySolver(const BenchJob& job, const std::vector<Reading>& rows, BenchFamily family)
      : plan_(&job.plan), rows_(&rows), family_(std::move(family)) {}

  const Reading& reading(std::size_t k) const { return (*rows_)[family_.readings[k]]; }
  std::vector<InflationWaypoint> waypoints();
  std::vector<std::vector<std::size_t>> sensor_rounds() const;
  Result<std::vector<double>> read_path(const InflationSetup& setup, const LoadPath& path);
  double value_at(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
                  const Reading& reading) const;
  Problem beyond(const LoadPath& path, const Reading& reading) const;

  const Plan* plan_;
  const std::vector<Reading>* rows_;
  BenchFamily family_;
  InflationSetup setup_;
  InflationOptions options_;
  Length edge_;
  std::vector<InflationWaypoint> waypoints_;
  std::vector<std::size_t> waypoint_of_;  // a reading each
  LoadPath path_;                         // of the last whole path: its mesh
  std::vector<KnownState> known_, last_;  // a waypoint each
  Eigen::VectorXd empty_volume_m3_;
};

// Where the sensor of a contact reading lies.
SensorPlace sensor_of(const Reading& reading, const Layout& layout);

}  // namespace wrapgauge
