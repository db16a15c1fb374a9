#pragma once
// From laid on and closed to inflated: every equilibrium on the way, each one converged.

#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/core/progress.hpp"
#include "model/core/result.hpp"
#include "model/geometry/signed_distance.hpp"
#include "model/inflation/coupled_layer.hpp"
#include "model/inflation/sheet_mesh.hpp"
#include "model/inflation/solver_settings.hpp"
#include "model/layout/layout.hpp"
#include "model/material/silicone.hpp"

namespace wrapgauge {

// A rigid plane without friction that one face of the device meets (rigid_plates.hpp).
enum class PlateFaces { kSkinSheet, kOuterSheet };
struct RigidPlate {
  PlateFaces faces = PlateFaces::kSkinSheet;
  Vec3 point_m = Vec3::Zero();
  Vec3 towards_device = Vec3::UnitZ();  // unit
};

// Everything the mechanics needs to know, in SI, free of files.
struct InflationSetup {
  Layout layout;
  FlatMesh flat;
  HyperelasticLaw skin_law, outer_law;
  // The largest stretch each law is known for; the path stops before a sheet is stretched further.
  double skin_stretch_limit = std::numeric_limits<double>::infinity();
  double outer_stretch_limit = std::numeric_limits<double>::infinity();
  Points3 start_m;                             // a flat vertex each: where the closed layout starts
  Points3 start_outward;                       // unit, away from the body
  std::shared_ptr<const SignedDistance> body;  // null: nothing to press on
  Eigen::VectorXd foundation_pa_per_m;         // a flat vertex each: tissue under it
  // Set: tissue is a layer whose surface sinks round a pressed place too, and the foundation is not used.
  std::optional<TissueLayer> coupled_tissue;  // a flat vertex each
  double friction = 0.0;                      // Coulomb coefficient of skin on silicone
  std::vector<int> held;                      // flat vertices that do not move (bench clamps)
  std::vector<RigidPlate> plates;             // a table, or a plate over the device (bench)
  // Of an area as drawn, of each sheet; no weight counts on a body, where it is small beside what presses.
  Vec3 skin_weight_pa = Vec3::Zero(), outer_weight_pa = Vec3::Zero();
  Eigen::VectorXd between_m;  // a flat vertex each: what lies between skin and device; empty: nothing
  // What is known to be wrong with how it fits, in sentences. Where no equilibrium is found it is said in the
  // place of a finer mesh, which would not help.
  std::optional<Phrase> misfit;
};

// Air at atmospheric pressure, `pushed` into the chambers by a syringe and closed in: Boyle's law from there
// on. `dead` is what tubing, fitting and the syringe's end hold beside the chambers; they do not stretch.
struct TrappedAir {
  Volume pushed, dead;
  bool operator==(const TrappedAir&) const = default;
};

// What one inlet is asked to reach: a gauge pressure, a volume between the sheets, or air pushed in.
using InflationTarget = std::variant<Pressure, Volume, TrappedAir>;
// Where every group is at one recorded state, index = GroupId.
using InflationWaypoint = std::vector<InflationTarget>;

struct InflationOptions {
  int steps = 6;             // recorded states between flat-laid and the target
  bool closed_state = true;  // record the closed, uninflated state first; without bending it has no shape
  bool bending = true;
  bool relaxed_compression = false;  // tension-field: a sheet carries no compression
  bool contact_offset = true;  // tissue meets the sheet's face, half a thickness from its middle surface
  double residual_tolerance = 3e-3;  // largest nodal residual against pressure x nodal area
  int max_iterations = 200;          // a load step
  SolverSettings settings = {};      // the solver's own constants; no plan file changes them
  bool operator==(const InflationOptions&) const = default;
};

// One converged equilibrium.
struct EquilibriumState {
  Points3 positions_m;                  // a SheetMesh node each
  Eigen::VectorXd group_pressure_pa;    // gauge
  Eigen::VectorXd group_volume_m3;      // enclosed between the sheets
  Eigen::VectorXd contact_pressure_pa;  // a flat vertex each, skin side; 0 where it does not touch
  Eigen::VectorXd contact_area_m2;      // a flat vertex each: deformed area that pressure acts on
  Points3 contact_force_n;        // a flat vertex each: force of the body on the sheet, normal and friction
  Eigen::VectorXd indentation_m;  // a flat vertex each, >= 0: how far the skin is lowered from rest
  std::vector<double> plate_force_n;  // a plate each: what presses on it
  double residual_n = 0.0;            // largest nodal force out of balance
  int iterations = 0;
  // A sheet is so compressed that it would rather fold than stay as smooth as it was found. Looked at in the
  // last state of a path that reached its target.
  bool about_to_buckle = false;
};

enum class LimitKind {
  kRunsAway,       // above its pressure the chambers grow by themselves when a regulator holds the pressure
  kOverstretched,  // beyond it a sheet is stretched further than its law is known for
  kFolds,          // a sheet there would rather fold than stay smooth, and no step beyond it converges
};

// Why the path ends before what is asked. A group that runs away goes on at falling pressure when it is
// filled by volume.
struct LimitPoint {
  GroupId group{};
  Pressure pressure;         // the highest it can hold
  Volume volume;             // enclosed there
  Pressure past_pressure{};  // an equilibrium found beyond, by volume; only of one that runs away
  Volume past_volume{};
  LimitKind kind = LimitKind::kRunsAway;
};

struct LoadPath {
  SheetMesh sheet;
  std::vector<EquilibriumState>
      states;  // first: closed, not inflated (if recorded); last: the target or the limit point
  std::optional<LimitPoint> limit_point;  // set: what was asked for was not reached
  int factorisations = 0;                 // work done, for benchmarks
  bool bending = false;                   // whether its sheets bent, as the options said
};

class KeptClosing;

// In `options.steps` equal steps to the targets, one a group (index = GroupId). With `closing`, of this same
// setup and these options, a path starts from the closed shape that an earlier one found, to the same result.
// Problems: kNotConverged with the last converged load in words, kCancelled; kBadInput when sizes do not
// match, or a group has no chamber.
Result<LoadPath> inflate(const InflationSetup& setup, const std::vector<InflationTarget>& targets,
                         const InflationOptions& options = {}, Progress& progress = silent_progress(),
                         KeptClosing* closing = nullptr);

// Each inlet on a programme of its own: through every waypoint in order, a recorded state each, up or down;
// `options.steps` plays no part. A group keeps to one kind of target. Problems: as above.
Result<LoadPath> inflate_through(const InflationSetup& setup, const std::vector<InflationWaypoint>& waypoints,
                                 const InflationOptions& options = {}, Progress& progress = silent_progress(),
                                 KeptClosing* closing = nullptr);

}  // namespace wrapgauge
