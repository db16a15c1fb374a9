#include "model/pipeline/solve_forecast.hpp"

#include <cmath>

#include "model/inflation/sheet_mesh.hpp"

namespace wrapgauge {
namespace {

constexpr double kNodes = 2815.0, kSeconds = 0.51, kPower = 1.33, kStates = 7.0;  // docs/speed.md
constexpr double kCoarserTime = 0.3;  // fewer nodes by 1.6 squared, to that power
constexpr double kCoupled = 2.6;      // 2.4 to 2.8 times the factorisations, docs/05-inflation.md
constexpr double kUnheld = 30.0;      // measured 0.9 to 27 at 8 mm, docs/03-wrap.md
constexpr double kWorthSaying_s = 60.0;

double solves_of(const Plan& plan, const ForecastOptions& options) {
  const bool coupled = plan.tissue_model == TissueModel::kCoupled;
  const double here = coupled ? kCoupled : 1.0;
  double solves = here;
  if (options.relief) solves += here;
  if (options.mesh_error) solves += kCoarserTime * here;
  if (coupled) solves += 1.0;  // once more on the foundation
  if (plan.compare_wrinkled) solves += here;
  return solves;
}

// One figure: it is an order of magnitude.
std::string rough_time(Time time) {
  const double minutes = time.si() / 60.0;
  if (minutes < 9.5) return std::to_string(std::lround(minutes)) + " min";
  if (minutes < 57.5) return std::to_string(5 * std::lround(minutes / 5.0)) + " min";
  return std::to_string(std::lround(minutes / 60.0)) + " h";
}

}  // namespace

SolveForecast forecast_solve(const Plan& plan, const Prepared& prepared, const ForecastOptions& options) {
  SolveForecast forecast{.nodes = make_sheet_mesh(prepared.setup.flat).node_count,
                         .solves = solves_of(plan, options),
                         .held = is_held(prepared.setup.layout),
                         .time = {}};
  const double one_s =
      kSeconds * std::pow(forecast.nodes / kNodes, kPower) * (1.0 + plan.solver.steps) / kStates;
  forecast.time = Time((forecast.held ? 1.0 : kUnheld) * forecast.solves * one_s);
  return forecast;
}

std::optional<std::string> long_solve_words(const SolveForecast& forecast) {
  if (forecast.time.si() < kWorthSaying_s) return std::nullopt;
  return std::string("time: solving this ") + (forecast.held ? "takes" : "may take") + " about " +
         rough_time(forecast.time) + " (" + std::to_string(forecast.nodes) + " nodes" +
         (forecast.held ? "" : ", and nothing holds the layout, which can solve slowly") +
         "); a coarser mesh is quicker (--edge-mm), and Ctrl-C stops it.";
}

}  // namespace wrapgauge
