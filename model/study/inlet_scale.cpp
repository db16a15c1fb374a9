#include "model/study/inlet_scale.hpp"

#include <algorithm>
#include <limits>

#include "model/core/number_text.hpp"
#include "model/core/rounded_down.hpp"
#include "model/inflation/cavity_load.hpp"

namespace wrapgauge {
namespace {

double asked_si(const InflationTarget& target) {
  if (const auto* air = std::get_if<TrappedAir>(&target)) return air->pushed.si();
  if (const auto* volume = std::get_if<Volume>(&target)) return volume->si();
  return std::get<Pressure>(target).si();
}

}  // namespace

InletScale::InletScale(const StudyCase& study, std::optional<std::size_t> only)
    : study_(study), only_(only), closed_volume_(study.groups()) {}

bool InletScale::scales(std::size_t group) const {
  return (!only_ || *only_ == group) && asked_si(study_.targets()[group]) > 0.0;
}

std::optional<Problem> InletScale::problem() const {
  bool any = false;
  for (std::size_t g = 0; g < study_.groups(); ++g) {
    if (!scales(g)) continue;
    any = true;
    const auto* volume = std::get_if<Volume>(&study_.targets()[g]);
    if (volume && *volume <= closed_volume_[g] * 1.01)
      return bad_input(
          Phrase::worded("inlet '%1' is asked for %2 mL, but closed and not inflated its chambers hold %3 mL "
                         "already: ask for more, so that there is something to scale.",
                         {name_of(study_.inlet_of(g)), figures_of(fixed_text(*volume / mL, 1)),
                          figures_of(fixed_text(closed_volume_[g] / mL, 1))}));
  }
  if (any) return std::nullopt;
  if (only_)
    return bad_input(Phrase::worded(
        "inlet '%1' is asked for nothing in the plan: give a pressure or volume above 0, which is "
        "then scaled.",
        {name_of(study_.inlet_of(*only_))}));
  return bad_input(Phrase::worded(
      "every inlet is asked for nothing in the plan: give a pressure or volume above 0, which is "
      "then scaled."));
}

std::vector<InflationTarget> InletScale::at(double inflation) const {
  std::vector<InflationTarget> targets(study_.groups(), Pressure());
  for (std::size_t g = 0; g < targets.size(); ++g) {
    if (!scales(g)) continue;
    if (const auto* pressure = std::get_if<Pressure>(&study_.targets()[g])) {
      targets[g] = *pressure * inflation;
    } else if (const auto* air = std::get_if<TrappedAir>(&study_.targets()[g])) {
      targets[g] = TrappedAir{air->pushed * inflation, air->dead};
    } else {
      const Volume asked = std::get<Volume>(study_.targets()[g]);
      targets[g] = closed_volume_[g] + (asked - closed_volume_[g]) * inflation;
    }
  }
  return targets;
}

std::vector<InflationTarget> InletScale::settings_at(double inflation) const {
  std::vector<InflationTarget> targets = at(inflation);
  for (InflationTarget& target : targets) {
    if (auto* pressure = std::get_if<Pressure>(&target)) *pressure = setting_of(*pressure);
    if (auto* volume = std::get_if<Volume>(&target)) *volume = rounded_down(*volume / mL, 0.1) * mL;
    if (auto* air = std::get_if<TrappedAir>(&target)) air->pushed = rounded_down(air->pushed / mL, 0.1) * mL;
  }
  return targets;
}

double InletScale::inflation_of(const std::vector<InflationTarget>& targets) const {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t g = 0; g < targets.size(); ++g) {
    if (!scales(g)) continue;
    const Volume closed = std::holds_alternative<Volume>(targets[g]) ? closed_volume_[g] : Volume();
    least =
        std::min(least, (asked_si(targets[g]) - closed.si()) / (asked_si(study_.targets()[g]) - closed.si()));
  }
  return std::max(0.0, least);
}

double InletScale::inflation_at(const LimitPoint& point) const {
  const std::size_t g = index_of(point.group);
  const InflationTarget& target = study_.targets()[g];
  if (!scales(g)) return 0.0;
  if (const auto* pressure = std::get_if<Pressure>(&target)) return point.pressure / *pressure;
  if (const auto* volume = std::get_if<Volume>(&target))
    return (point.volume - closed_volume_[g]) / (*volume - closed_volume_[g]);
  const auto& air = std::get<TrappedAir>(target);
  const double squeezed = 1.0 + point.pressure.si() / kAtmospherePa;
  return ((point.volume + air.dead) * squeezed - closed_volume_[g] - air.dead) / air.pushed;
}

void InletScale::closed_at(const EquilibriumState& closed) {
  for (std::size_t g = 0; g < study_.groups(); ++g)
    closed_volume_[g] = Volume(closed.group_volume_m3[static_cast<Eigen::Index>(g)]);
}

}  // namespace wrapgauge
