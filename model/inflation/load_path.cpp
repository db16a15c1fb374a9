#include "model/inflation/load_path.hpp"

#include <cmath>

#include "model/inflation/load_stepper.hpp"

namespace wrapgauge {
namespace {

std::optional<Problem> size_problem(const InflationSetup& setup,
                                    const std::vector<InflationTarget>& targets) {
  const Eigen::Index vertices = setup.flat.vertices_m.rows();
  if (setup.start_m.rows() != vertices || setup.start_outward.rows() != vertices)
    return bad_input("The start shape has " + std::to_string(setup.start_m.rows()) +
                     " points for a flat mesh of " + std::to_string(vertices) +
                     ": wrap this same mesh before inflating it.");
  if (setup.body && setup.foundation_pa_per_m.size() != vertices)
    return bad_input("Tissue stiffness is given for " + std::to_string(setup.foundation_pa_per_m.size()) +
                     " of " + std::to_string(vertices) + " points: give one for each.");
  if (setup.body && setup.coupled_tissue && setup.coupled_tissue->depth_m.size() != vertices)
    return bad_input("The tissue's depth is given for " +
                     std::to_string(setup.coupled_tissue->depth_m.size()) + " of " +
                     std::to_string(vertices) + " points: give one for each.");
  if (targets.size() != setup.flat.group_inlet.size())
    return bad_input("There are " + std::to_string(setup.flat.group_inlet.size()) + " chamber groups but " +
                     std::to_string(targets.size()) + " inflation targets: give each inlet one.");
  return std::nullopt;
}

std::optional<Problem> target_problem(const std::vector<InflationTarget>& targets) {
  for (const InflationTarget& target : targets) {
    const double value = std::visit([](auto quantity) { return quantity.si(); }, target);
    if (!std::isfinite(value) || value < 0.0)
      return bad_input(
          "An inflation target is negative or not a number: give a pressure or volume of 0 or more.");
  }
  return std::nullopt;
}

}  // namespace

Result<LoadPath> inflate(const InflationSetup& setup, const std::vector<InflationTarget>& targets,
                         const InflationOptions& options, Progress& progress) {
  if (auto problem = size_problem(setup, targets)) return *problem;
  if (auto problem = target_problem(targets)) return *problem;
  if (setup.body && setup.coupled_tissue)
    if (auto problem = tissue_layer_problem(*setup.coupled_tissue)) return *problem;
  LoadStepper stepper(setup, targets, options, progress);
  return stepper.run();
}

}  // namespace wrapgauge
