#include "model/inflation/load_path.hpp"

#include <algorithm>
#include <cmath>

#include "model/inflation/load_stepper.hpp"

namespace wrapgauge {
namespace {

Phrase count_of(std::ptrdiff_t count) {
  return figures_of(std::to_string(count));
}

// A group of channels alone has no drawn size that its volume could be held against.
std::optional<Problem> empty_group_problem(const InflationSetup& setup) {
  const std::vector<GroupId>& chambers = setup.flat.chamber_group;
  for (int g = 0; g < static_cast<int>(setup.flat.group_inlet.size()); ++g)
    if (std::ranges::find(chambers, GroupId{g}) == chambers.end())
      return bad_input(Phrase::worded(
          "Inlet '%1' feeds no chamber, so nothing can be inflated there: give it a chamber, or take it out.",
          {name_of(
              setup.layout.inlets[index_of(setup.flat.group_inlet[static_cast<std::size_t>(g)])].name)}));
  return std::nullopt;
}

std::optional<Problem> size_problem(const InflationSetup& setup, const InflationWaypoint& targets) {
  const Eigen::Index vertices = setup.flat.vertices_m.rows();
  if (setup.start_m.rows() != vertices || setup.start_outward.rows() != vertices)
    return bad_input(Phrase::worded(
        "The start shape has %1 points for a flat mesh of %2: wrap this same mesh before inflating it.",
        {count_of(setup.start_m.rows()), count_of(vertices)}));
  if (setup.body && setup.foundation_pa_per_m.size() != vertices)
    return bad_input(Phrase::worded("Tissue stiffness is given for %1 of %2 points: give one for each.",
                                    {count_of(setup.foundation_pa_per_m.size()), count_of(vertices)}));
  if (setup.body && setup.coupled_tissue && setup.coupled_tissue->depth_m.size() != vertices)
    return bad_input(Phrase::worded("The tissue's depth is given for %1 of %2 points: give one for each.",
                                    {count_of(setup.coupled_tissue->depth_m.size()), count_of(vertices)}));
  if (setup.between_m.size() > 0 && setup.between_m.size() != vertices)
    return bad_input(Phrase::worded(
        "What lies between skin and device is given for %1 of %2 points: give it for each, or for none.",
        {count_of(setup.between_m.size()), count_of(vertices)}));
  if (targets.size() != setup.flat.group_inlet.size())
    return bad_input(
        Phrase::worded("There are %1 chamber groups but %2 inflation targets: give each inlet one.",
                       {count_of(std::ssize(setup.flat.group_inlet)), count_of(std::ssize(targets))}));
  return empty_group_problem(setup);
}

bool usable(double value) {
  return std::isfinite(value) && value >= 0.0;
}

std::optional<Problem> target_problem(const InflationTarget& target) {
  if (const auto* air = std::get_if<TrappedAir>(&target)) {
    if (!usable(air->pushed.si()) || !(air->dead.si() > 0.0) || !std::isfinite(air->dead.si()))
      return bad_input(Phrase::worded(
          "The air pushed in is negative or not a number, or there is no dead volume: give the "
          "volume pushed (0 or more) and what the tubing holds (above 0)."));
    return std::nullopt;
  }
  const double value = std::holds_alternative<Pressure>(target) ? std::get<Pressure>(target).si()
                                                                : std::get<Volume>(target).si();
  if (!usable(value))
    return bad_input(Phrase::worded(
        "An inflation target is negative or not a number: give a pressure or volume of 0 or more."));
  return std::nullopt;
}

std::optional<Problem> waypoints_problem(const InflationSetup& setup,
                                         const std::vector<InflationWaypoint>& waypoints) {
  if (waypoints.empty())
    return bad_input(Phrase::worded("The inflation has no waypoint: give at least one."));
  for (const InflationWaypoint& waypoint : waypoints) {
    if (auto problem = size_problem(setup, waypoint)) return problem;
    for (std::size_t g = 0; g < waypoint.size(); ++g) {
      if (auto problem = target_problem(waypoint[g])) return problem;
      if (waypoint[g].index() != waypoints[0][g].index())
        return bad_input(Phrase::worded(
            "Inlet '%1' changes between pressure, volume and pushed air on its way: keep to one.",
            {name_of(setup.layout.inlets[index_of(setup.flat.group_inlet[g])].name)}));
    }
  }
  if (setup.body && setup.coupled_tissue) return tissue_layer_problem(*setup.coupled_tissue);
  return std::nullopt;
}

// The share `fraction` of what is asked.
InflationTarget scaled(const InflationTarget& target, double fraction) {
  if (const auto* air = std::get_if<TrappedAir>(&target))
    return TrappedAir{fraction * air->pushed, air->dead};
  if (const auto* volume = std::get_if<Volume>(&target)) return fraction * *volume;
  return fraction * std::get<Pressure>(target);
}

}  // namespace

Result<LoadPath> inflate(const InflationSetup& setup, const std::vector<InflationTarget>& targets,
                         const InflationOptions& options, Progress& progress, KeptClosing* closing) {
  std::vector<InflationWaypoint> waypoints;
  for (int step = 1; step <= options.steps; ++step) {
    InflationWaypoint waypoint;
    for (const InflationTarget& target : targets)
      waypoint.push_back(step == options.steps ? target
                                               : scaled(target, static_cast<double>(step) / options.steps));
    waypoints.push_back(std::move(waypoint));
  }
  return inflate_through(setup, waypoints, options, progress, closing);
}

Result<LoadPath> inflate_through(const InflationSetup& setup, const std::vector<InflationWaypoint>& waypoints,
                                 const InflationOptions& options, Progress& progress, KeptClosing* closing) {
  if (auto problem = waypoints_problem(setup, waypoints)) return *problem;
  LoadStepper stepper(setup, waypoints, options, progress, closing);
  return stepper.run();
}

}  // namespace wrapgauge
