#pragma once
// The inverse question: which inflation gives each chamber the mean contact pressure that is wanted?

#include <optional>
#include <string>
#include <vector>

#include "model/study/study_case.hpp"

namespace wrapgauge {

struct AimTarget {
  std::string chamber;
  Pressure mean;  // contact force over the chamber's drawn area
};

struct AimChamber {
  std::string chamber;
  std::optional<Pressure> wanted;
  Pressure mean, peak;
};

// Chambers that share one supply.
struct AimInlet {
  std::string inlet;
  std::vector<std::string> chambers;
  Pressure gauge;
  Volume volume;
};

struct AimOutcome {
  bool reached = false;  // every wanted mean met within aim_tolerance
  std::vector<AimInlet> inlets;
  std::vector<AimChamber> chambers;
  Judgement judgement;  // what an estimate at these pressures says
  LimitShare nearest;
  int solves = 0;

  const AimChamber& worst() const;  // the wanted chamber that is missed most; there is one
};

struct Aim {
  AimOutcome as_drawn;  // nearest in the sense of least squares when it is not reached
  // Chambers that share an inlet in the drawing, fed apart: with as few inlets as reach the target, or with
  // one a chamber when none does. None: not needed, or no inlet feeds two wanted chambers.
  std::optional<AimOutcome> split;
  std::vector<std::string> closed_channels;                  // for the split: channels fused shut
  std::string model = "Predicted by an uncalibrated model";  // or by one that is calibrated on what
  std::optional<std::string> limits_override;                // why the limits may be laxer than the program's
  std::optional<std::string> rises;  // the mean rises towards the trunk in what was reached
};

// 2 % of the wanted pressure, at least 0.05 kPa.
Pressure aim_tolerance(Pressure wanted);

// By pressure at every inlet that feeds a wanted chamber, whatever the plan fills it by; other inlets keep
// what the plan gives them. Problems: those of prepare and inflate; kBadInput for a chamber that is not there
// or named twice, and, where the layout closes round the limb, for targets that rise towards the trunk.
Result<Aim> aim(const Plan& plan, const Body& body, const Resources& resources,
                const std::vector<AimTarget>& targets, Progress& progress = silent_progress());

}  // namespace wrapgauge
