#pragma once
// Every constant of the solver, each with why it is there; what a maker may choose is in InflationOptions.
// Values are judgement, and those of FollowingSettings were tried on random plans. They change how an
// equilibrium is found, within its tolerances; only SheetSettings, slip and bond change the model.

#include <array>

namespace wrapgauge {

// When a shape is an equilibrium, beside the residual that the plan asks for.
struct BalanceSettings {
  double sum_tolerance = 5e-4;       // all forces against what touches the body: small ones may add up
  double pressure_floor_pa = 300.0;  // residuals are measured against a pressure, and an empty cuff has none
  double hardly_touches = 0.1;       // share of the sheets that bears the floor, for a cuff that hangs loose
  double volume_tolerance = 1e-4;    // of an asked volume: a stand-in liquid gives way a little
  int volume_corrections = 8;        // its pressure is handed on so often until the volume is met
  int sum_steps = 8;                 // steps for the sum's sake, once all else is in balance
  bool operator==(const BalanceSettings&) const = default;
};

// Proximal shift on the tangent's diagonal, in N/m: it cures modes that nothing holds, such as a frictionless
// cuff turning on a limb, and carries steps across a buckling sheet. It does not change the answer.
struct ShiftSettings {
  double floor = 1e-3;                   // always there: free modes have no stiffness of their own
  double node_area_m2 = 14e-6;           // of a node in a 4 mm mesh, for which the others were found
  double first_raise = 3.0;              // where the exact tangent is not definite
  double raise = 4.0;                    // from there on, times what it was
  double for_exact = 20.0;               // above it the projected tangent makes the better steps
  double ceiling = 1e7;                  // above it no step is left worth trying
  double after_failed_direction = 10.0;  // times, when no step along it lowers the potential
  double after_short_step = 4.0;         // times, when the line search took less than `short_step`
  double short_step = 0.5;               // of the whole step
  double ease = 0.2;                     // after a good step
  double ease_raised = 0.5;  // the same where it had to be raised: it is likely to be needed again
  bool operator==(const ShiftSettings&) const = default;
};

// Newton's steps.
struct StepSettings {
  double cap_m = 6e-3;          // longest way of a node in one step: beyond it the tangent says nothing
  double careful_cap_m = 2e-3;  // where the usual steps ended in circles
  double sliding_share = 0.2;   // along a node's way against across it: 0.1 to 0.3 took the fewest steps
  double careful_sliding_share = 0.6;  // beside the careful cap
  double far_share = 30.0;     // out of balance by this many pressures the exact tangent is hardly definite
  double beyond_single = 1e6;  // crushed sheets: single digits do not hold such a tangent
  double hopeless = 0.3;       // of all iterations without better balance: it is given up
  double descent = 1e-4;       // Armijo's share of the slope that a step has to bring
  double rounding = 1e-13;     // of the energy: near its minimum rounding hides the descent
  int halvings = 12;           // of a step, until its direction is given up
  bool operator==(const StepSettings&) const = default;
};

// Steps near balance, on the equations with areas, normals and friction limits that follow the shape.
struct FullStepSettings {
  double near_share = 0.3;       // of the pressure: out of balance by less, these steps are tried
  int first = 3;                 // not before this many usual steps: a start is not near by its shape
  double close_share = 0.05;     // unless it is this close: the next of many small loads
  int chords = 20;               // steps with the factors of one tangent: a solve each, no factorisation
  int chord_patience = 8;        // so many without one that takes off its share end them
  double chord_share = 0.7;      // what a chord has to bring the imbalance to, to count as a gain
  double chord_tolerance = 0.3;  // of the asked residual: well below it they stop
  double chord_worse = 4.0;      // times the best: mixing overshoots at times, more is lost
  double chords_share = 0.9;     // all of them have to bring the imbalance below this share
  double share = 0.7;            // what one linearised step has to bring the imbalance below
  double mixed_enough = 0.02;    // its unsymmetric part changes by less than this share of the step
  int mixing_depth = 8;          // earlier steps that Anderson's mixing combines
  int mixing_passes = 12;        // for the unsymmetric part
  bool operator==(const FullStepSettings&) const = default;
};

// How areas, normals and limits follow where steps go round in circles.
struct FollowingSettings {
  double better = 0.8;    // of the best balance so far: what counts as better
  int patience = 15;      // iterations without it until they follow by less
  double slow = 0.3;      // of the way, at first
  double slower = 0.5;    // times, each time that does not help
  double slowest = 0.03;  // no less: they have to arrive
  bool operator==(const FollowingSettings&) const = default;
};

// Factors of the tangent.
struct FactorSettings {
  double left_over = 1e-3;   // of its side, by a solution in single digits: enough for a step
  int most_corrections = 4;  // after them it is solved in double digits
  double even_share = 0.53;  // of the work: the larger half for two threads, split no further
  int most_splits = 24;      // of the tree, for a matrix that has no even halves
  bool operator==(const FactorSettings&) const = default;
};

// Where sheet and skin touch.
struct TissueSettings {
  double elastic_slip_m = 0.2e-3;  // friction sets in over this way, so that it has a potential
  double bond_pa = 10e3;  // a glued or taped rim holds so much, pulled or sheared: judgement, 1 N/cm2
  double first_pressure_pa = 1000.0;  // bears friction until the first solve knows better: a light cuff
  double coupled_fit = 5e-3;          // of the deepest lowering: sheet and coupled skin fit together
  int coupled_passes = 60;            // solves for that
  int coupled_mixed = 8;              // guesses that are combined
  bool operator==(const TissueSettings&) const = default;
};

// The way from closed to the asked load.
struct LoadSettings {
  double least_stride = 1.0 / 64.0;    // of the way between two waypoints: below it another way is taken
  double stride_growth = 1.5;          // after a step that was taken
  double stride_after_failure = 0.25;  // the next waypoint is not tried at once
  double jump = 3.0;            // times its volume: no step of pressure makes a group grow so along a path
  double same_way = 1e-6;       // of a step: two are along one line, so that a start ahead is a guess
  double farthest_ahead = 4.0;  // last steps: further than that it is none
  std::array<double, 4> props_pa = {500.0, 200.0, 50.0, 0.0};  // for a cuff that does not close empty
  int patience_to_close = 3;  // times the iterations of a load step: closing moves the sheet the most
  int work_to_start = 1000;   // factorisations that a path may take at first
  int work_to_step = 300;     // and for each waypoint
  double cap_sizes = 3.0;     // drawn sizes or last volumes: a larger group has run away
  double cap_asked = 2.0;     // times an asked volume, the same
  bool operator==(const LoadSettings&) const = default;
};

// Walks by volume, past a maximum of the pressure.
struct VolumeWalkSettings {
  int walks = 3;                     // a waypoint: each may end where pressure alone goes on
  int steps = 80;                    // of one walk
  double step = 0.05;                // of the volume, at first and at most: a maximum is met within it
  double growth = 1.5;               // after a step that was taken
  double least = 1.0 / 256.0;        // of the first step
  double least_m3 = 1e-8;            // an empty group has to start with something
  double pressure_noise = 1e-3;      // a fall by less may be the tolerance of two equilibria
  double liquid_stiffness = 3000.0;  // relative rise of pressure for one of volume: almost held
  double liquid_floor_pa = 1000.0;   // least pressure that the stiffness is taken of
  double liquid_floor_m3 = 1e-6;     // least volume, the same
  bool operator==(const VolumeWalkSettings&) const = default;
};

// Of the model itself.
struct SheetSettings {
  double film_share = 0.02;    // of the thinner sheet: two that lie on each other press from so far apart
  double film_pressure = 3.0;  // shear moduli: they press with so much when nothing is left between them
  double stitch_pa = 1e7;      // N/m of opening a metre of closing line: opens by micrometres
  double strap_ground_share = 0.005;  // of a strap's stiffness: a weak ground keeps its shape
  bool operator==(const SheetSettings&) const = default;
};

struct SolverSettings {
  BalanceSettings balance;
  ShiftSettings shift;
  StepSettings step;
  FullStepSettings full_step;
  FollowingSettings following;
  FactorSettings factors;
  TissueSettings tissue;
  LoadSettings load;
  VolumeWalkSettings volume_walk;
  SheetSettings sheets;
  bool operator==(const SolverSettings&) const = default;
};

}  // namespace wrapgauge
