#include "model/bench/family_solver.hpp"

#include <algorithm>
#include <cmath>

#include "model/contact/closing_pull.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"
#include "model/geometry/innermost_point.hpp"
#include "model/inflation/chamber_names.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {
namespace {

constexpr double kBenchTolerance = 3e-4;  // differences of two solves are taken

Result<InflationSetup> limb_setup(const BenchJob& job, const FlatMeshOptions& mesh,
                                  std::optional<Length> fastened) {
  Plan plan = job.plan;
  if (fastened) {
    if (!plan.layout.closure)
      return bad_input(Phrase::worded("closure was read, but the layout has none: delete those rows."));
    plan.layout.closure->closing_length = *fastened;
    plan.layout.closure->stretch.reset();
  }
  auto prepared = prepare(plan, job.body, job.resources, mesh);
  if (!prepared) return prepared.problem();
  return std::move(prepared).value().setup;
}

// "line 7, reading 'fill 2': what it says".
Problem at_reading(const Reading& reading, const Problem& problem) {
  return reworded(problem,
                  Phrase::worded("line %1, reading '%2': %3",
                                 {figures_of(reading.line), name_of(reading.id), phrase_of(problem)}));
}

}  // namespace

SensorPlace sensor_of(const Reading& reading, const Layout& layout) {
  SensorPlace sensor{{reading.value(ReadingField::kX), reading.value(ReadingField::kY)},
                     Area(reading.value(ReadingField::kSensorArea)),
                     Length(reading.value(ReadingField::kSensorThickness))};
  if (reading.where.empty()) return sensor;
  if (const auto chamber = chamber_of_reading(reading, layout);
      chamber && !(reading.has(ReadingField::kX) && reading.has(ReadingField::kY)))
    sensor.at_flat_m = innermost_point_m(layout.chambers[index_of(*chamber)].boundary_m);
  return sensor;
}

Result<FamilySolver> FamilySolver::make(const BenchJob& job, const std::vector<Reading>& rows,
                                        BenchFamily family, const FlatMeshOptions& mesh) {
  FamilySolver solver(job, rows, std::move(family));
  const BenchFamily& of = solver.family_;
  const bool fastened = of.kind == BenchFamily::Kind::kFastened;
  auto setup = of.kind == BenchFamily::Kind::kOffBody
                   ? bench_setup(job.plan, job.resources, mesh, of.bedding, of.gap)
                   : limb_setup(job, mesh, fastened ? std::optional(of.fastened) : std::nullopt);
  if (!setup) {
    // What keeps the plan's own device from its limb is no reading's fault.
    return of.kind == BenchFamily::Kind::kLimb ? setup.problem()
                                               : at_reading(solver.reading(0), setup.problem());
  }
  solver.setup_ = std::move(setup).value();
  solver.options_ = job.plan.solver;
  solver.options_.residual_tolerance = std::min(solver.options_.residual_tolerance, kBenchTolerance);
  solver.edge_ = mesh.edge;
  solver.waypoints_ = solver.waypoints();
  return solver;
}

std::vector<InflationWaypoint> FamilySolver::waypoints() {
  std::vector<InflationWaypoint> all;
  for (std::size_t k = 0; k < family_.readings.size(); ++k) {
    InflationWaypoint one = waypoint_of(family_, reading(k), setup_.flat, *plan_);
    if (all.empty() || !(all.back() == one)) all.push_back(std::move(one));
    waypoint_of_.push_back(all.size() - 1);
  }
  return all;
}

double FamilySolver::value_at(const InflationSetup& setup, const LoadPath& path,
                              const EquilibriumState& state, const Reading& of) const {
  switch (of.kind) {
    case ReadingKind::kFill:
      return state.group_pressure_pa(static_cast<Eigen::Index>(index_of(family_.group.value_or(GroupId{}))));
    case ReadingKind::kBulge: {
      const auto chamber = chamber_of_reading(of, setup.layout).value_or(ChamberId{});
      return bulge_height(setup, path, state, middle_vertex(setup, chamber), family_.bedding).si();
    }
    case ReadingKind::kPlate:
      return state.plate_force_n.back();
    case ReadingKind::kContact:
      return sensor_mean(setup, path, state, sensor_of(of, setup.layout)).value_or(Pressure()).si();
    case ReadingKind::kClosure:
      return closing_pull(setup, path.sheet, state).si();
    default:
      return 0.0;
  }
}

Problem FamilySolver::beyond(const LoadPath& path, const Reading& of) const {
  const LimitPoint& limit = *path.limit_point;
  const std::string asked = of.kind == ReadingKind::kFill
                                ? field_text(ReadingField::kFilled, of.value(ReadingField::kFilled))
                                : field_text(ReadingField::kGauge, of.value(ReadingField::kGauge));
  return at_reading(
      of, not_converged(Phrase::worded(
              "%1 lies beyond the limit point of chamber %2, predicted at %3 and %4: read below it, or "
              "correct the row.",
              {figures_of(asked), name_of(chambers_of(setup_, limit.group)), figures_of(limit.pressure),
               figures_of(fixed_text(limit.volume / mL, 0) + " mL")})));
}

Result<std::vector<double>> FamilySolver::read_path(const InflationSetup& setup, const LoadPath& path) {
  std::vector<double> values;
  for (std::size_t k = 0; k < family_.readings.size(); ++k) {
    const std::size_t state = waypoint_of_[k] + 1;  // the first one is empty
    const bool reached = state < path.states.size() && !(path.limit_point && state + 1 == path.states.size());
    if (!reached) return beyond(path, reading(k));
    values.push_back(value_at(setup, path, path.states[state], reading(k)));
    if (!(values.back() > 0.0))
      return at_reading(reading(k),
                        not_converged(Phrase::worded(
                            "the prediction there is 0: the device does not press, rise or pull under these "
                            "conditions; correct the row or delete it.")));
  }
  return values;
}

Result<std::vector<double>> FamilySolver::by_path(const SheetFactors& factors, Progress& progress) {
  const InflationSetup setup = with_factors(setup_, factors);
  auto path = inflate_through(setup, waypoints_, options_, progress);
  if (!path) {
    return is_no_answer(path.problem().kind) ? path.problem() : at_reading(reading(0), path.problem());
  }
  auto values = read_path(setup, *path);
  if (!values) return values.problem();
  path_ = std::move(path).value();
  empty_volume_m3_ = path_.states.front().group_volume_m3;
  last_.clear();
  for (std::size_t w = 0; w < waypoints_.size(); ++w) last_.push_back({path_.states[w + 1], waypoints_[w]});
  if (known_.empty()) known_ = last_;
  return values;
}

Result<std::vector<double>> FamilySolver::from_known(const SheetFactors& factors, Progress& progress) {
  if (family_.kind != BenchFamily::Kind::kOffBody || known_.empty()) return by_path(factors, progress);
  const InflationSetup setup = with_factors(setup_, factors);
  auto states = settle_again(setup, known_, empty_volume_m3_, options_, progress);
  if (!states && is_no_answer(states.problem().kind)) return states.problem();
  if (!states) return by_path(factors, progress);
  std::vector<double> values;
  last_.clear();
  for (std::size_t w = 0; w < waypoints_.size(); ++w)
    last_.push_back({std::move(states).value()[w], waypoints_[w]});
  for (std::size_t k = 0; k < family_.readings.size(); ++k)
    values.push_back(value_at(setup, path_, last_[waypoint_of_[k]].state, reading(k)));
  if (std::any_of(values.begin(), values.end(), [](double value) { return !(value > 0.0); }))
    return by_path(factors, progress);
  return values;
}

// Sensors that are laid in at once: a far one hardly feels another.
std::vector<std::vector<std::size_t>> FamilySolver::sensor_rounds() const {
  constexpr double kApart_m = 0.03;
  std::vector<std::vector<std::size_t>> rounds;
  for (std::size_t k = 0; k < family_.readings.size(); ++k) {
    const SensorPlace own = sensor_of(reading(k), setup_.layout);
    if (!(own.thickness.si() > 0.0)) continue;
    const auto fits = [&](const std::vector<std::size_t>& round) {
      return std::all_of(round.begin(), round.end(), [&](std::size_t other) {
        const SensorPlace its = sensor_of(reading(other), setup_.layout);
        return its == own || (its.at_flat_m - own.at_flat_m).norm() > kApart_m;
      });
    };
    auto round = std::find_if(rounds.begin(), rounds.end(), fits);
    if (round == rounds.end()) round = rounds.insert(rounds.end(), std::vector<std::size_t>());
    round->push_back(k);
  }
  return rounds;
}

Result<std::vector<double>> FamilySolver::sensor_factors(const std::vector<double>& without,
                                                         Progress& progress) const {
  std::vector<double> factors(without.size(), 1.0);
  if (family_.kind != BenchFamily::Kind::kLimb) return factors;
  for (const std::vector<std::size_t>& round : sensor_rounds()) {
    InflationSetup setup = setup_;
    setup.between_m = Eigen::VectorXd::Zero(setup.flat.vertices_m.rows());
    for (const std::size_t k : round)
      setup.between_m =
          setup.between_m.cwiseMax(sensor_between_m(setup.flat, sensor_of(reading(k), setup.layout), edge_));
    const auto path = inflate_through(setup, waypoints_, options_, progress);
    if (!path) return path.problem();
    for (const std::size_t k : round) {
      const std::size_t state = waypoint_of_[k] + 1;
      if (path->limit_point && state + 1 >= path->states.size()) return beyond(*path, reading(k));
      factors[k] = value_at(setup, *path, path->states[state], reading(k)) / without[k];
    }
  }
  return factors;
}

}  // namespace wrapgauge
