#include "model/limits/pneumatics.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

// Volume a unit of pressure beyond the last point.
double last_slope_m3_per_pa(const VolumeCurve& curve) {
  if (curve.size() < 2) return 0.0;
  const VolumePoint &a = curve[curve.size() - 2], &b = curve.back();
  return (b.volume - a.volume).si() / (b.gauge - a.gauge).si();
}

// Integral over one straight piece V = a + b p from `low` up to `high`, over R / P0.
double vent_piece(const VolumePoint& low, const VolumePoint& high) {
  const double b = (high.volume - low.volume).si() / (high.gauge - low.gauge).si();
  const double a = low.volume.si() - b * low.gauge.si();
  return (a + b * kAtmosphere.si()) * std::log(high.gauge / low.gauge) +
         2.0 * b * (high.gauge - low.gauge).si();
}

}  // namespace

VolumeCurve volume_curve(const LoadPath& path, GroupId group) {
  VolumeCurve curve;
  const auto g = static_cast<Eigen::Index>(index_of(group));
  for (const EquilibriumState& state : path.states) {
    const VolumePoint point{Pressure(std::max(0.0, state.group_pressure_pa[g])),
                            Volume(state.group_volume_m3[g])};
    if (curve.empty() || (point.gauge > curve.back().gauge && point.volume >= curve.back().volume))
      curve.push_back(point);
  }
  return curve;
}

VolumeCurve rigid_volume(Volume volume) {
  return {{Pressure(), volume}};
}

Volume volume_at(const VolumeCurve& curve, Pressure gauge) {
  if (curve.empty()) return Volume();
  if (gauge <= curve.front().gauge) return curve.front().volume;
  for (std::size_t i = 1; i < curve.size(); ++i) {
    const VolumePoint &a = curve[i - 1], &b = curve[i];
    if (gauge <= b.gauge) return a.volume + (b.volume - a.volume) * ((gauge - a.gauge) / (b.gauge - a.gauge));
  }
  return curve.back().volume + Volume(last_slope_m3_per_pa(curve) * (gauge - curve.back().gauge).si());
}

Pressure sealed_gauge(const VolumeCurve& curve, Volume dead, AirAmount amount, Pressure atmosphere) {
  const auto held = [&](double gauge_pa) {
    return (atmosphere.si() + gauge_pa) * (volume_at(curve, Pressure(gauge_pa)) + dead).si();
  };
  double low = -atmosphere.si(), high = atmosphere.si();
  for (int doubling = 0; doubling < 40 && held(high) < amount.si(); ++doubling) high *= 2.0;
  for (int halving = 0; halving < 80; ++halving) {
    const double middle = 0.5 * (low + high);
    (held(middle) < amount.si() ? low : high) = middle;
  }
  return Pressure(0.5 * (low + high));
}

Pressure sealed_gauge_after(const VolumeCurve& curve, Volume dead, Pressure gauge, double from_c, double to_c,
                            Pressure atmosphere) {
  const AirAmount before = (kAtmosphere + gauge) * (volume_at(curve, gauge) + dead);
  return sealed_gauge(curve, dead, before * ((to_c + kZeroCelsius_k) / (from_c + kZeroCelsius_k)),
                      atmosphere);
}

double tube_resistance(const Tubing& tubing) {
  const double d = tubing.bore / metre;
  return 128.0 * kAirViscosity_pa_s * (tubing.length / metre) / (std::numbers::pi * d * d * d * d);
}

VentTime vent_time(const VolumeCurve& curve, const Tubing& tubing, Pressure from, Pressure to) {
  VentTime out;
  const double resistance = tube_resistance(tubing), d = tubing.bore / metre;
  const double flow = from.si() / resistance;
  out.reynolds = 4.0 * kAirDensity_kg_per_m3 * flow / (std::numbers::pi * d * kAirViscosity_pa_s);
  if (from <= to || to <= Pressure()) return out;
  VolumeCurve pieces{{to, volume_at(curve, to)}};
  for (const VolumePoint& point : curve)
    if (point.gauge > to && point.gauge < from) pieces.push_back(point);
  pieces.push_back({from, volume_at(curve, from)});
  double sum = 0.0;
  for (std::size_t i = 1; i < pieces.size(); ++i) sum += vent_piece(pieces[i - 1], pieces[i]);
  out.time = Time(resistance / kAtmosphere.si() * sum);
  return out;
}

Pressure syringe_pressure(const Syringe& syringe) {
  const double d = syringe.bore / metre;
  return Pressure(syringe.thumb.si() / (0.25 * std::numbers::pi * d * d));
}

}  // namespace wrapgauge
