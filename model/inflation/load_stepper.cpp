#include "model/inflation/load_stepper.hpp"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <sstream>

#include "model/inflation/coupled_equilibrium.hpp"

namespace wrapgauge {
namespace {

constexpr int kHalvings = 6;
constexpr int kVolumeSteps = 80;
constexpr int kVolumeFailures = 8;

constexpr double kLiquidStiffness = 3000.0;  // relative rise of pressure a relative rise of volume

double level_of(const InflationTarget& target) {
  if (const auto* air = std::get_if<TrappedAir>(&target)) return air->pushed.si();
  if (const auto* volume = std::get_if<Volume>(&target)) return volume->si();
  return std::get<Pressure>(target).si();
}

Eigen::VectorXd level_of(const InflationWaypoint& waypoint) {
  Eigen::VectorXd level(static_cast<Eigen::Index>(waypoint.size()));
  for (std::size_t g = 0; g < waypoint.size(); ++g)
    level(static_cast<Eigen::Index>(g)) = level_of(waypoint[g]);
  return level;
}

// Vertex of the parabola through three points, x increasing.
std::pair<double, double> parabola_top(const double (&x)[3], const double (&y)[3]) {
  const double d1 = (y[1] - y[0]) / (x[1] - x[0]), d2 = (y[2] - y[1]) / (x[2] - x[1]);
  const double curvature = (d2 - d1) / (x[2] - x[0]);
  const double top = 0.5 * (x[0] + x[1]) - d1 / (2.0 * curvature);
  return {top, y[0] + d1 * (top - x[0]) + curvature * (top - x[0]) * (top - x[1])};
}

}  // namespace

LoadStepper::LoadStepper(const InflationSetup& setup, const std::vector<InflationWaypoint>& waypoints,
                         const InflationOptions& options, Progress& progress)
    : setup_(setup),
      waypoints_(waypoints),
      options_(options),
      progress_(progress),
      system_(setup, options),
      factorisation_(system_.tangent()) {
  newton_.residual_tolerance = options.residual_tolerance;
  newton_.max_iterations = options.max_iterations;
  newton_.volume_cap_m3 = volume_cap();
}

// A group larger than this many times the drawn size of its sheets has run away.
double LoadStepper::volume_cap() const {
  double open_area = 0.0;
  for (std::size_t t = 0; t < setup_.flat.regions.size(); ++t) {
    if (setup_.flat.regions[t].kind != RegionKind::kChamber) continue;
    const auto row = setup_.flat.triangles.row(static_cast<Eigen::Index>(t));
    const Eigen::RowVector2d a = setup_.flat.vertices_m.row(row(0)),
                             p = setup_.flat.vertices_m.row(row(1)) - a,
                             q = setup_.flat.vertices_m.row(row(2)) - a;
    open_area += 0.5 * std::abs(p.x() * q.y() - p.y() * q.x());
  }
  double asked = 0.0;
  for (const InflationWaypoint& waypoint : waypoints_)
    for (const InflationTarget& target : waypoint)
      if (!std::holds_alternative<Pressure>(target)) asked = std::max(asked, level_of(target));
  return std::max(3.0 * std::pow(open_area, 1.5), 2.0 * asked) + 1e-9;
}

// Stiff, so that the first solve all but meets the volume and few corrections follow.
CavityLoad LoadStepper::liquid_at(Eigen::Index group, double volume_m3) const {
  const double pressure = last_.pressure_pa(group);
  return CavityLoad::liquid(
      volume_m3, pressure,
      kLiquidStiffness * std::max(1000.0, std::abs(pressure)) / std::max(std::abs(volume_m3), 1e-6));
}

std::vector<CavityLoad> LoadStepper::loads_at(const Eigen::VectorXd& level) const {
  std::vector<CavityLoad> loads;
  for (Eigen::Index g = 0; g < level.size(); ++g) {
    const InflationTarget& target = waypoints_.front()[static_cast<std::size_t>(g)];
    if (std::holds_alternative<Pressure>(target))
      loads.push_back(CavityLoad::pressure(level(g)));
    else if (std::holds_alternative<Volume>(target))
      loads.push_back(liquid_at(g, level(g)));
    else
      loads.push_back(air_at(g, level(g)));
  }
  return loads;
}

// What was in the chamber and the dead volume before anything was pushed in is there as well.
CavityLoad LoadStepper::air_at(Eigen::Index group, double pushed_m3) const {
  const auto& air = std::get<TrappedAir>(waypoints_.front()[static_cast<std::size_t>(group)]);
  return CavityLoad::trapped_air(start_volume_m3_(group) + air.dead.si() + pushed_m3, air.dead.si());
}

NewtonResult LoadStepper::settle(const std::vector<CavityLoad>& loads, const Points3& start_m) {
  const TissueContact kept = system_.tissue();
  NewtonResult result = find_coupled_equilibrium(system_, factorisation_, loads, start_m, newton_, progress_);
  if (!result.converged()) system_.tissue() = kept;
  return result;
}

void LoadStepper::accept(const Eigen::VectorXd& level, const NewtonResult& result) {
  system_.tissue().drag_grips(result.positions_m);
  before_last_ = last_;
  last_ = {level, result.positions_m, result.group_volume_m3, result.group_pressure_pa};
  last_residual_n_ = result.residual_n;
  last_iterations_ = result.iterations;
  any_converged_ = true;
}

bool LoadStepper::step_to(const Eigen::VectorXd& level) {
  const Eigen::VectorXd from = last_.level;
  share_to_next_ = 0.0;
  double reach = 1.0;
  for (int halving = 0; halving <= kHalvings;) {
    const Eigen::VectorXd at = from + reach * (level - from);
    const NewtonResult result = settle(loads_at(at), last_.positions_m);
    last_end_ = result.end;
    if (result.end == NewtonEnd::kCancelled) return false;
    if (result.converged()) {
      accept(at, result);
      share_to_next_ = reach;
      if (reach >= 1.0) return true;
      reach = 1.0;
    } else {
      reach = share_to_next_ + 0.5 * (reach - share_to_next_);
      ++halving;
    }
  }
  return false;
}

std::optional<GroupId> LoadStepper::fastest_growing_group() const {
  std::optional<GroupId> fastest;
  double most = -1.0;
  for (Eigen::Index g = 0; g < last_.level.size(); ++g) {
    const double growth =
        last_.volume_m3(g) - (before_last_.volume_m3.size() ? before_last_.volume_m3(g) : 0.0);
    const auto group = static_cast<std::size_t>(g);
    if (!std::holds_alternative<Pressure>(waypoints_.front()[group]) || growth <= most) continue;
    most = growth;
    fastest = static_cast<GroupId>(group);
  }
  return fastest;
}

bool LoadStepper::walk_by_volume(GroupId group) {
  const auto g = static_cast<Eigen::Index>(index_of(group));
  double step = std::max(0.05 * last_.volume_m3(g), 1e-8);
  std::vector<double> volumes{last_.volume_m3(g)}, pressures{last_.pressure_pa(g)};
  int failures = 0;
  for (int k = 0; k < kVolumeSteps && failures < kVolumeFailures; ++k) {
    std::vector<CavityLoad> loads = loads_at(last_.level);
    loads[index_of(group)] = liquid_at(g, last_.volume_m3(g) + step);
    const NewtonResult result = settle(loads, last_.positions_m);
    last_end_ = result.end;
    if (result.end == NewtonEnd::kCancelled) return false;
    if (!result.converged()) {
      step *= 0.5;
      ++failures;
      continue;
    }
    const bool falling = result.group_pressure_pa(g) < pressures.back();
    if (!falling) accept(last_.level, result);
    volumes.push_back(result.group_volume_m3(g));
    pressures.push_back(result.group_pressure_pa(g));
    if (!falling) continue;
    const std::size_t n = volumes.size();
    if (n < 3) return false;
    const auto [volume, pressure] = parabola_top({volumes[n - 3], volumes[n - 2], volumes[n - 1]},
                                                 {pressures[n - 3], pressures[n - 2], pressures[n - 1]});
    path_.limit_point = LimitPoint{group, Pressure(pressure), Volume(volume), Pressure(pressures.back()),
                                   Volume(volumes.back())};
    return true;
  }
  return false;
}

EquilibriumState LoadStepper::state_of(const Waypoint& at, double residual_n, int iterations) const {
  EquilibriumState state;
  state.positions_m = at.positions_m;
  state.group_pressure_pa = at.pressure_pa;
  state.group_volume_m3 = at.volume_m3;
  state.residual_n = residual_n;
  state.iterations = iterations;
  const Eigen::Index vertices = setup_.flat.vertices_m.rows();
  state.contact_pressure_pa = state.contact_area_m2 = state.indentation_m = Eigen::VectorXd::Zero(vertices);
  state.contact_force_n = Points3::Zero(vertices, 3);
  const TissueContact& tissue = system_.tissue();
  for (const ContactNode& contact : tissue.nodes()) {
    const Vec3 position = at.positions_m.row(contact.node).transpose();
    state.indentation_m(contact.flat_vertex) = tissue.indentation_m(contact, position);
    state.contact_pressure_pa(contact.flat_vertex) =
        contact.foundation_pa_per_m * tissue.compression_m(contact, position);
    state.contact_area_m2(contact.flat_vertex) = contact.area_m2;
    state.contact_force_n.row(contact.flat_vertex) = tissue.force_on_sheet(contact, position).transpose();
  }
  return state;
}

Problem LoadStepper::failure() const {
  if (last_end_ == NewtonEnd::kCancelled)
    return {ProblemKind::kCancelled, "Cancelled before the target.", {}};
  std::ostringstream words;
  if (last_end_ == NewtonEnd::kTissueUnsettled)
    words << "The coupled tissue and the sheet did not fit together within " << 100.0 * kTissueFit
          << " % of the deepest place in " << kTissuePasses
          << " passes; take a finer mesh, or the foundation model. ";
  if (!any_converged_) {
    words << "No equilibrium was found for the layout closed round the body and not inflated: check that the "
             "closing length fits the girth.";
    return {ProblemKind::kNotConverged, words.str(), {}};
  }
  const double share =
      (static_cast<double>(reached_) + share_to_next_) / static_cast<double>(waypoints_.size());
  words << std::fixed << "No equilibrium was found beyond " << std::setprecision(0) << 100.0 * share
        << " % of the asked inflation; the last one that converged has";
  for (std::size_t g = 0; g < setup_.flat.group_inlet.size(); ++g) {
    const auto index = static_cast<Eigen::Index>(g);
    words << (g ? ", " : " ") << "inlet '" << setup_.layout.inlets[index_of(setup_.flat.group_inlet[g])].name
          << "' at " << std::setprecision(2) << last_.pressure_pa(index) / 1000.0 << " kPa, "
          << std::setprecision(1) << last_.volume_m3(index) * 1e6 << " mL";
  }
  words << ": ask for less, or use a finer mesh.";
  return {ProblemKind::kNotConverged, words.str(), {}};
}

// Closed round the body with empty chambers.
bool LoadStepper::close() {
  const auto groups = static_cast<Eigen::Index>(waypoints_.front().size());
  last_.level = last_.pressure_pa = last_.volume_m3 = start_volume_m3_ = Eigen::VectorXd::Zero(groups);
  last_.positions_m = system_.start_m();
  if (!options_.closed_state) return true;
  progress_.report("closing", 0.0);
  const std::vector<CavityLoad> empty(static_cast<std::size_t>(groups));
  const NewtonResult closed = settle(empty, system_.start_m());
  last_end_ = closed.end;
  if (!closed.converged()) return false;
  accept(last_.level, closed);
  before_last_ = {};
  start_volume_m3_ = closed.group_volume_m3;
  for (Eigen::Index g = 0; g < groups; ++g)
    if (std::holds_alternative<Volume>(waypoints_.front()[static_cast<std::size_t>(g)]))
      last_.level(g) = start_volume_m3_(g);
  record();
  return true;
}

void LoadStepper::record() {
  path_.states.push_back(state_of(last_, last_residual_n_, last_iterations_));
}

// No equilibrium at the asked pressure, or none found? Only the first has a limit point.
bool LoadStepper::find_limit_point() {
  if (!any_converged_ || last_end_ == NewtonEnd::kCancelled) return false;
  const std::optional<GroupId> group = fastest_growing_group();
  return group && walk_by_volume(*group);
}

Result<LoadPath> LoadStepper::run() {
  if (!close()) return failure();
  for (reached_ = 0; reached_ < waypoints_.size() && !path_.limit_point; ++reached_) {
    progress_.report("inflating", static_cast<double>(reached_) / static_cast<double>(waypoints_.size()));
    if (!step_to(level_of(waypoints_[reached_])) && !find_limit_point()) return failure();
    record();
  }
  progress_.report("inflating", 1.0);
  path_.sheet = system_.sheet();
  path_.factorisations = factorisation_.count();
  return std::move(path_);
}

}  // namespace wrapgauge
