#include "model/inflation/load_stepper.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "model/inflation/coupled_equilibrium.hpp"

namespace wrapgauge {
namespace {

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

// Another way to the same equilibrium may do better.
bool unsettled(NewtonEnd end) {
  return end == NewtonEnd::kTooManyIterations || end == NewtonEnd::kStalled || end == NewtonEnd::kRanAway;
}

bool may_try_carefully(NewtonEnd end) {
  return end != NewtonEnd::kConverged && end != NewtonEnd::kCancelled && end != NewtonEnd::kLibraryFailed;
}

}  // namespace

LoadStepper::LoadStepper(const InflationSetup& setup, const std::vector<InflationWaypoint>& waypoints,
                         const InflationOptions& options, Progress& progress, KeptClosing* closing)
    : setup_(setup),
      waypoints_(waypoints),
      options_(options),
      load_(options_.settings.load),
      walk_(options_.settings.volume_walk),
      progress_(progress),
      closing_(closing),
      system_(setup, options),
      last_tissue_(system_.tissue()) {
  newton_.residual_tolerance = options.residual_tolerance;
  newton_.max_iterations = options.max_iterations;
  newton_.last_factorisation = load_.work_to_start + load_.work_to_step * static_cast<int>(waypoints.size());
  drawn_size_m3_ = drawn_size();
}

// The drawn size of each group's chambers as a volume, area^1.5. At its pressure maximum a round chamber of a
// neo-Hookean sheet holds half of it (from the table of the clamped disc in tests/published).
Eigen::VectorXd LoadStepper::drawn_size() const {
  Eigen::VectorXd area = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(setup_.flat.group_inlet.size()));
  for (std::size_t t = 0; t < setup_.flat.regions.size(); ++t) {
    if (setup_.flat.regions[t].kind != RegionKind::kChamber) continue;
    const auto row = setup_.flat.triangles.row(static_cast<Eigen::Index>(t));
    const Eigen::RowVector2d a = setup_.flat.vertices_m.row(row(0)),
                             p = setup_.flat.vertices_m.row(row(1)) - a,
                             q = setup_.flat.vertices_m.row(row(2)) - a;
    const GroupId group = setup_.flat.chamber_group[static_cast<std::size_t>(setup_.flat.regions[t].part)];
    area(static_cast<Eigen::Index>(index_of(group))) += 0.5 * std::abs(p.x() * q.y() - p.y() * q.x());
  }
  return area.array().pow(1.5);
}

// A group larger than this while a step is solved for has run away.
double LoadStepper::volume_cap() const {
  if (drawn_size_m3_.size() == 0) return 0.0;  // nothing to fill
  double cap = load_.cap_sizes * drawn_size_m3_.maxCoeff();
  for (const InflationWaypoint& waypoint : waypoints_)
    for (const InflationTarget& target : waypoint)
      if (!std::holds_alternative<Pressure>(target)) cap = std::max(cap, load_.cap_asked * level_of(target));
  if (last_.volume_m3.size() > 0) cap = std::max(cap, load_.cap_sizes * last_.volume_m3.maxCoeff());
  return cap + 1e-9;
}

// From one equilibrium to another far away, past a pressure maximum in between? A continuous path has steps
// small enough not to look like it.
bool LoadStepper::jumped(const NewtonResult& result) const {
  for (Eigen::Index g = 0; g < result.group_volume_m3.size(); ++g)
    if (result.group_volume_m3(g) > std::max(drawn_size_m3_(g), load_.jump * last_.volume_m3(g)) &&
        std::holds_alternative<Pressure>(waypoints_.front()[static_cast<std::size_t>(g)]))
      return true;
  return false;
}

// Stiff, so that the first solve all but meets the volume and few corrections follow.
CavityLoad LoadStepper::liquid_at(Eigen::Index group, double volume_m3) const {
  const double pressure = last_.pressure_pa(group);
  const double of_pa = std::max(walk_.liquid_floor_pa, std::abs(pressure));
  const double of_m3 = std::max(std::abs(volume_m3), walk_.liquid_floor_m3);
  return CavityLoad::liquid(volume_m3, pressure, walk_.liquid_stiffness * of_pa / of_m3);
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
  system_.tissue() = last_tissue_;
  newton_.volume_cap_m3 = volume_cap();
  NewtonResult result =
      find_coupled_equilibrium(system_, *factorisation_, loads, start_m, newton_, progress_);
  if (result.converged()) {
    const MostStretched most = system_.most_stretched(result.positions_m);
    if (most.share > 1.0) {
      result.end = NewtonEnd::kOverstretched;
      stretched_group_ = most.group;
    }
  }
  return result;
}

void LoadStepper::accept(const Eigen::VectorXd& level, const NewtonResult& result) {
  system_.tissue().drag_grips(result.positions_m);
  last_tissue_ = system_.tissue();
  before_last_ = last_;
  last_ = {level, result.positions_m, result.group_volume_m3, result.group_pressure_pa};
  last_residual_n_ = result.residual_n;
  last_iterations_ = result.iterations;
  any_converged_ = true;
}

double LoadStepper::share_of_last_step(const Eigen::VectorXd& level) const {
  if (before_last_.level.size() == 0) return 0.0;
  const Eigen::VectorXd step = last_.level - before_last_.level, next = level - last_.level;
  const double share = step.dot(next) / step.squaredNorm();
  return (next - share * step).norm() <= load_.same_way * next.norm() ? share : 0.0;
}

Points3 LoadStepper::start_for(const std::vector<CavityLoad>& loads, double share) {
  if (!(share > 0.0) || share > load_.farthest_ahead) return last_.positions_m;
  const auto energy_j = [&](const Points3& x) {
    system_.tissue() = last_tissue_;
    return system_.evaluate(x, loads, TangentKind::kNone, TangentKind::kExact).energy_j;
  };
  const Points3 ahead = last_.positions_m + share * (last_.positions_m - before_last_.positions_m);
  const double last_j = energy_j(last_.positions_m);  // first: the terms of the other are kept
  return energy_j(ahead) < last_j ? ahead : last_.positions_m;
}

bool LoadStepper::step_to(const Eigen::VectorXd& level) {
  const Eigen::VectorXd from = last_.level;
  share_to_next_ = 0.0;
  while (stride_ >= load_.least_stride) {
    const double reach = std::min(1.0, share_to_next_ + stride_);
    const Eigen::VectorXd at = from + reach * (level - from);
    const std::vector<CavityLoad> loads = loads_at(at);
    NewtonResult result = settle(loads, start_for(loads, share_of_last_step(at)));
    if (result.converged() && jumped(result)) result.end = NewtonEnd::kRanAway;
    last_end_ = result.end;
    if (must_stop()) return false;
    if (!result.converged()) {
      stride_ *= 0.5;
      continue;
    }
    accept(at, result);
    share_to_next_ = reach;
    stride_ = std::min(1.0, load_.stride_growth * stride_);
    if (reach >= 1.0) return true;
  }
  stride_ = load_.stride_after_failure;
  return false;
}

Eigen::VectorXd LoadStepper::last_growth_m3() const {
  return before_last_.volume_m3.size() ? last_.volume_m3 - before_last_.volume_m3 : last_.volume_m3;
}

std::vector<GroupId> LoadStepper::groups_by_growth(const Eigen::VectorXd& level) const {
  std::vector<GroupId> groups;
  for (std::size_t g = 0; g < waypoints_.front().size(); ++g)
    if (const auto i = static_cast<Eigen::Index>(g);
        std::holds_alternative<Pressure>(waypoints_.front()[g]) && level(i) > last_.level(i))
      groups.push_back(static_cast<GroupId>(g));
  const Eigen::VectorXd growth = last_growth_m3();
  const auto grown = [&](GroupId group) { return growth(static_cast<Eigen::Index>(index_of(group))); };
  std::stable_sort(groups.begin(), groups.end(), [&](GroupId a, GroupId b) { return grown(a) > grown(b); });
  return groups;
}

LoadStepper::WalkEnd LoadStepper::walk_by_volume(GroupId group, double asked_pa) {
  const auto g = static_cast<Eigen::Index>(index_of(group));
  double step = std::max(walk_.step * last_.volume_m3(g), walk_.least_m3);
  const double least_step = walk_.least * step;
  for (int k = 0; k < walk_.steps; ++k) {
    std::vector<CavityLoad> loads = loads_at(last_.level);
    loads[index_of(group)] = liquid_at(g, last_.volume_m3(g) + step);
    const NewtonResult result = settle(loads, last_.positions_m);
    last_end_ = result.end;
    if (must_stop()) return WalkEnd::kFailed;
    if (!result.converged()) {
      step *= 0.5;
      if (step > least_step) continue;
      if (result.end != NewtonEnd::kOverstretched) return WalkEnd::kFailed;
      name_overstretch();
      return WalkEnd::kLimitPoint;
    }
    const double pressure = result.group_pressure_pa(g);
    if (pressure < (1.0 - walk_.pressure_noise) * last_.pressure_pa(g)) {
      name_maximum(group, result);
      return WalkEnd::kLimitPoint;
    }
    Eigen::VectorXd level = last_.level;
    level(g) = std::min(pressure, asked_pa);
    accept(level, result);
    if (pressure >= asked_pa) return WalkEnd::kMet;
    step = std::min(walk_.growth * step, std::max(walk_.step * last_.volume_m3(g), walk_.least_m3));
  }
  return WalkEnd::kFailed;
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
  const TissueContact& tissue = last_tissue_;
  for (const ContactNode& contact : tissue.nodes()) {
    const Vec3 position = at.positions_m.row(contact.node).transpose();
    state.indentation_m(contact.flat_vertex) = tissue.indentation_m(contact, position);
    state.contact_pressure_pa(contact.flat_vertex) =
        contact.foundation_pa_per_m * tissue.compression_m(contact, position);
    state.contact_area_m2(contact.flat_vertex) = contact.area_m2;
    state.contact_force_n.row(contact.flat_vertex) = tissue.force_on_sheet(contact, position).transpose();
  }
  state.plate_force_n = plate_forces_n(setup_.plates, system_.plate_nodes(), at.positions_m);
  return state;
}

bool LoadStepper::must_stop() const {
  return last_end_ == NewtonEnd::kCancelled || last_end_ == NewtonEnd::kOutOfWork ||
         last_end_ == NewtonEnd::kLibraryFailed;
}

NewtonResult LoadStepper::closed_shape() {
  const auto with = [&](double pressure_pa) {
    return std::vector<CavityLoad>(waypoints_.front().size(), CavityLoad::pressure(pressure_pa));
  };
  NewtonResult closed = settle(with(0.0), system_.start_m());
  const int patience = newton_.max_iterations;
  newton_.max_iterations = load_.patience_to_close * patience;
  Points3 from_m = closed.positions_m;
  for (double prop_pa : load_.props_pa)
    if (unsettled(closed.end) || (closed.converged() && closed.group_pressure_pa.maxCoeff() > prop_pa)) {
      if (closed.converged()) last_tissue_ = system_.tissue();
      if (closed.end != NewtonEnd::kRanAway) from_m = closed.positions_m;
      closed = settle(with(prop_pa), from_m);
    }
  newton_.max_iterations = patience;
  return closed;
}

NewtonResult LoadStepper::kept_or_closed_shape() {
  const std::shared_ptr<const ClosedShape> kept = closing_ ? closing_->get() : nullptr;
  if (kept) {
    system_.tissue() = kept->tissue;
    return kept->equilibrium;
  }
  NewtonResult closed = closed_shape();
  if (closing_ && closed.converged()) closing_->keep({closed, system_.tissue()});
  return closed;
}

// Closed round the body with empty chambers.
bool LoadStepper::close() {
  const auto groups = static_cast<Eigen::Index>(waypoints_.front().size());
  last_.level = last_.pressure_pa = last_.volume_m3 = start_volume_m3_ = Eigen::VectorXd::Zero(groups);
  last_.positions_m = system_.start_m();
  if (!options_.closed_state) return true;
  progress_.report("closing", 0.0);
  NewtonResult closed = kept_or_closed_shape();
  if (may_try_carefully(closed.end)) {
    newton_.careful = true;
    closed = kept_or_closed_shape();
    newton_.careful = false;
  }
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

// Air closed in with each group at the last level, if any.
std::vector<std::optional<ClosedAir>> LoadStepper::closed_air() const {
  std::vector<std::optional<ClosedAir>> all(waypoints_.front().size());
  for (std::size_t g = 0; g < all.size(); ++g)
    if (const auto* air = std::get_if<TrappedAir>(&waypoints_.front()[g])) {
      const auto i = static_cast<Eigen::Index>(g);
      all[g] = {start_volume_m3_(i) + air->dead.si() + last_.level(i), air->dead.si()};
    }
  return all;
}

void LoadStepper::record() {
  path_.states.push_back(state_of(last_, last_residual_n_, last_iterations_));
  if (!impossible_)
    impossible_ = why_impossible(setup_, system_.sheet(), system_.cells(), path_.states.back(), closed_air());
}

bool LoadStepper::walk_to(const Eigen::VectorXd& level) {
  for (int walk = 0; walk < walk_.walks; ++walk) {
    if (step_to(level)) return true;
    if (!any_converged_ || must_stop()) return false;
    bool met = false;
    for (GroupId group : groups_by_growth(level)) {
      if (met || must_stop()) break;
      const WalkEnd end = walk_by_volume(group, level(static_cast<Eigen::Index>(index_of(group))));
      if (end == WalkEnd::kLimitPoint) return true;
      met = end == WalkEnd::kMet;
    }
    if (met) continue;
    if (last_end_ != NewtonEnd::kOverstretched) return false;
    name_overstretch();
    return true;
  }
  return false;
}

bool LoadStepper::go_to(const Eigen::VectorXd& level) {
  if (walk_to(level)) return true;
  if (!any_converged_ || must_stop()) return false;
  newton_.careful = true;
  const bool met = walk_to(level);
  newton_.careful = false;
  return met;
}

// What nothing leads on from: a shape that would rather fold, which is named, or a failure.
std::optional<Problem> LoadStepper::name_end() {
  const bool may_fold = any_converged_ && last_.level.size() > 0 && last_end_ != NewtonEnd::kCancelled &&
                        last_end_ != NewtonEnd::kLibraryFailed;
  if (!may_fold) return failure();
  const Result<bool> folds = about_to_fold();
  if (!folds) return folds.problem();
  if (!*folds) return failure();
  name_fold();
  return std::nullopt;
}

Result<LoadPath> LoadStepper::run() {
  Result<Factorisation> made = make_factorisation(system_.tangent(), options_.settings.factors);
  if (!made) return made.problem();
  factorisation_.emplace(std::move(made).value());
  if (!close()) return failure();
  for (reached_ = 0; reached_ < waypoints_.size() && !path_.limit_point && !impossible_; ++reached_) {
    progress_.report("inflating", static_cast<double>(reached_) / static_cast<double>(waypoints_.size()));
    if (!go_to(level_of(waypoints_[reached_])))
      if (auto problem = name_end()) return *problem;
    record();
  }
  if (impossible_) return *impossible_;
  progress_.report("inflating", 1.0);
  const Result<bool> folds =
      path_.limit_point ? path_.limit_point->kind == LimitKind::kFolds : about_to_fold();
  if (!folds) return folds.problem();
  path_.states.back().about_to_buckle = *folds;
  path_.sheet = system_.sheet();
  path_.factorisations = factorisation_->count();
  path_.bending = options_.bending;
  return std::move(path_);
}

}  // namespace wrapgauge
