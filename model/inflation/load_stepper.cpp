#include "model/inflation/load_stepper.hpp"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <sstream>

#include "model/inflation/coupled_equilibrium.hpp"

namespace wrapgauge {
namespace {

constexpr int kLagPasses = 3;  // times areas and friction are brought up to date a step
constexpr double kLagSettled = 0.005;
constexpr int kHalvings = 6;
constexpr int kVolumeSteps = 80;

bool is_pressure(const InflationTarget& target) {
  return std::holds_alternative<Pressure>(target);
}

// Vertex of the parabola through three points, x increasing.
std::pair<double, double> parabola_top(const double (&x)[3], const double (&y)[3]) {
  const double d1 = (y[1] - y[0]) / (x[1] - x[0]), d2 = (y[2] - y[1]) / (x[2] - x[1]);
  const double curvature = (d2 - d1) / (x[2] - x[0]);
  const double top = 0.5 * (x[0] + x[1]) - d1 / (2.0 * curvature);
  return {top, y[0] + d1 * (top - x[0]) + curvature * (top - x[0]) * (top - x[1])};
}

}  // namespace

LoadStepper::LoadStepper(const InflationSetup& setup, const std::vector<InflationTarget>& targets,
                         const InflationOptions& options, Progress& progress)
    : setup_(setup),
      targets_(targets),
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
  for (const InflationTarget& target : targets_)
    if (!is_pressure(target)) asked = std::max(asked, std::get<Volume>(target).si());
  return std::max(3.0 * std::pow(open_area, 1.5), 2.0 * asked) + 1e-9;
}

std::vector<CavityLoad> LoadStepper::loads_at(double fraction) const {
  std::vector<CavityLoad> loads(targets_.size());
  for (std::size_t g = 0; g < targets_.size(); ++g) {
    const auto index = static_cast<Eigen::Index>(g);
    if (is_pressure(targets_[g])) {
      loads[g].pressure_pa = fraction * std::get<Pressure>(targets_[g]).si();
    } else if (fraction > 0.0) {
      const double target = std::get<Volume>(targets_[g]).si();
      loads[g].volume_m3 = start_volume_m3_(index) + fraction * (target - start_volume_m3_(index));
      loads[g].pressure_pa = last_.pressure_pa(index);
      loads[g].bulk_pa_per_m3 =
          100.0 * std::max(1000.0, std::abs(loads[g].pressure_pa)) / std::max(target, 1e-6);
    }
  }
  return loads;
}

NewtonResult LoadStepper::settle(std::vector<CavityLoad> loads, const Points3& start_m) {
  const TissueContact kept = system_.tissue();
  NewtonResult result;
  result.positions_m = start_m;
  for (int pass = 0; pass < kLagPasses; ++pass) {
    const int before = result.iterations;
    result = find_coupled_equilibrium(system_, factorisation_, loads, std::move(result.positions_m), newton_,
                                      progress_);
    result.iterations += before;
    if (!result.converged()) {
      system_.tissue() = kept;
      break;
    }
    for (std::size_t g = 0; g < loads.size(); ++g)  // liquid: hand its pressure on, so that the volume is met
      if (loads[g].bulk_pa_per_m3 > 0.0)
        loads[g].pressure_pa = result.group_pressure_pa(static_cast<Eigen::Index>(g));
    if (pass + 1 == kLagPasses) break;
    const double change = system_.refresh(result.positions_m);
    if (change < kLagSettled) break;
  }
  return result;
}

void LoadStepper::accept(double fraction, const NewtonResult& result) {
  system_.tissue().drag_grips(result.positions_m);
  before_last_ = last_;
  last_ = {fraction, result.positions_m, result.group_volume_m3, result.group_pressure_pa};
  last_residual_n_ = result.residual_n;
  last_iterations_ = result.iterations;
  any_converged_ = true;
}

bool LoadStepper::step_to(double fraction) {
  double reach = fraction;
  for (int halving = 0; halving <= kHalvings;) {
    const NewtonResult result = settle(loads_at(reach), last_.positions_m);
    last_end_ = result.end;
    if (result.end == NewtonEnd::kCancelled) return false;
    if (result.converged()) {
      accept(reach, result);
      if (reach >= fraction) return true;
      reach = fraction;
    } else {
      reach = last_.fraction + 0.5 * (reach - last_.fraction);
      ++halving;
    }
  }
  return false;
}

GroupId LoadStepper::fastest_growing_group() const {
  std::size_t fastest = 0;
  double most = -1.0;
  for (std::size_t g = 0; g < targets_.size(); ++g) {
    const auto index = static_cast<Eigen::Index>(g);
    const double growth = before_last_.volume_m3.size()
                              ? last_.volume_m3(index) - before_last_.volume_m3(index)
                              : last_.volume_m3(index);
    if (is_pressure(targets_[g]) && growth > most) {
      most = growth;
      fastest = g;
    }
  }
  return static_cast<GroupId>(fastest);
}

bool LoadStepper::walk_by_volume(GroupId group) {
  const auto g = static_cast<Eigen::Index>(index_of(group));
  double step = std::max(0.05 * last_.volume_m3(g), 1e-8);
  std::vector<double> volumes{last_.volume_m3(g)}, pressures{last_.pressure_pa(g)};
  int failures = 0;
  for (int k = 0; k < kVolumeSteps && failures < 8; ++k) {
    std::vector<CavityLoad> loads = loads_at(last_.fraction);
    CavityLoad& load = loads[index_of(group)];
    load = {last_.pressure_pa(g), last_.volume_m3(g) + step, 0.0};
    load.bulk_pa_per_m3 = 100.0 * std::max(1000.0, last_.pressure_pa(g)) / load.volume_m3;
    const NewtonResult result = settle(loads, last_.positions_m);
    last_end_ = result.end;
    if (result.end == NewtonEnd::kCancelled) return false;
    if (!result.converged()) {
      step *= 0.5;
      ++failures;
      continue;
    }
    const bool falling = result.group_pressure_pa(g) < pressures.back();
    if (!falling) accept(last_.fraction, result);
    volumes.push_back(result.group_volume_m3(g));
    pressures.push_back(result.group_pressure_pa(g));
    if (!falling) continue;
    const std::size_t n = volumes.size();
    if (n < 3) return false;
    const auto [volume, pressure] = parabola_top({volumes[n - 3], volumes[n - 2], volumes[n - 1]},
                                                 {pressures[n - 3], pressures[n - 2], pressures[n - 1]});
    path_.limit_point = LimitPoint{group, Pressure(pressure), Volume(volume)};
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
  if (!any_converged_)
    return {ProblemKind::kNotConverged,
            "No equilibrium was found for the layout closed round the body and not inflated: check that the "
            "closing "
            "length fits the girth.",
            {}};
  std::ostringstream words;
  if (last_end_ == NewtonEnd::kTissueUnsettled)
    words << "The coupled tissue and the sheet did not fit together within " << 100.0 * kTissueFit
          << " % of the deepest place in " << kTissuePasses
          << " passes; take a finer mesh, or the foundation model. ";
  words << std::fixed << "No equilibrium was found beyond " << std::setprecision(0) << 100.0 * last_.fraction
        << " % of the asked inflation; the last one that converged has";
  for (std::size_t g = 0; g < targets_.size(); ++g) {
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
  start_volume_m3_ = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(targets_.size()));
  last_.pressure_pa = last_.volume_m3 = start_volume_m3_;
  last_.positions_m = system_.start_m();
  if (!options_.closed_state) return true;
  progress_.report("closing", 0.0);
  const NewtonResult closed = settle(loads_at(0.0), system_.start_m());
  last_end_ = closed.end;
  if (!closed.converged()) return false;
  accept(0.0, closed);
  before_last_ = {};
  start_volume_m3_ = closed.group_volume_m3;
  any_converged_ = true;
  record();
  return true;
}

void LoadStepper::record() {
  path_.states.push_back(state_of(last_, last_residual_n_, last_iterations_));
}

// No equilibrium at the asked pressure, or none found? Only the first has a limit point.
bool LoadStepper::find_limit_point() {
  const bool by_pressure = std::any_of(targets_.begin(), targets_.end(), is_pressure);
  return by_pressure && any_converged_ && last_end_ != NewtonEnd::kCancelled &&
         walk_by_volume(fastest_growing_group());
}

Result<LoadPath> LoadStepper::run() {
  if (!close()) return failure();
  for (int step = 1; step <= options_.steps && !path_.limit_point; ++step) {
    progress_.report("inflating", static_cast<double>(step - 1) / options_.steps);
    if (!step_to(static_cast<double>(step) / options_.steps) && !find_limit_point()) return failure();
    record();
  }
  progress_.report("inflating", 1.0);
  path_.sheet = system_.sheet();
  path_.factorisations = factorisation_.count();
  return std::move(path_);
}

}  // namespace wrapgauge
