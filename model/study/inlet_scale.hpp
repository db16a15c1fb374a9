#pragma once
// Inlets scaled together in the plan's proportion.

#include "model/study/study_case.hpp"

namespace wrapgauge {

// Inflation 0 is closed and not inflated, 1 what the plan asks for, beyond 1 more of the same: pressures in
// proportion, volumes from what the closed device holds by itself, air
// pushed in by how much is pushed. Inlets left out stay open, at no pressure.
class InletScale {
 public:
  // `only`: one group; none: all of them.
  InletScale(const StudyCase& study, std::optional<std::size_t> only);

  // Nothing to scale, or an inlet asked for less than the closed device holds.
  std::optional<Problem> problem() const;
  std::vector<InflationTarget> at(double inflation) const;
  // The same as it is set: tenths of a kilopascal or of a millilitre, rounded down.
  std::vector<InflationTarget> settings_at(double inflation) const;
  // The least of the scaled inlets' shares of what the plan asks for; 0 when one is left with nothing.
  double inflation_of(const std::vector<InflationTarget>& targets) const;
  double inflation_at(const LimitPoint& point) const;
  void closed_at(const EquilibriumState& closed);  // what it holds by itself, once that is known
  bool scales(std::size_t group) const;

 private:
  const StudyCase& study_;
  std::optional<std::size_t> only_;
  std::vector<Volume> closed_volume_;
};

}  // namespace wrapgauge
