#pragma once
// Air in chambers and tubes: what closed air does when it warms or the cabin climbs, how fast it leaves, what
// a thumb can push. Ideal gas; laminar tube flow.

#include <vector>

#include "model/inflation/load_path.hpp"
#include "model/limits/supply.hpp"

namespace wrapgauge {

inline constexpr Pressure kAtmosphere{101325.0};
inline constexpr double kAirViscosity_pa_s = 1.81e-5;  // 20 C, from memory
inline constexpr double kAirDensity_kg_per_m3 = 1.20;  // 20 C, from memory
inline constexpr double kLaminarReynolds = 2000.0;     // common practice
inline constexpr double kZeroCelsius_k = 273.15;

// Enclosed volume over gauge pressure, rising in both; straight between points, beyond the last with its
// slope there, below the first constant.
struct VolumePoint {
  Pressure gauge;
  Volume volume;
};
using VolumeCurve = std::vector<VolumePoint>;

// Of one chamber group on a load path; points that do not rise are left out.
VolumeCurve volume_curve(const LoadPath& path, GroupId group);
VolumeCurve rigid_volume(Volume volume);
Volume volume_at(const VolumeCurve& curve, Pressure gauge);

// Amount of closed air as absolute pressure times volume, Pa m3 = J.
using AirAmount = Quantity<2, 1, -2>;

// Gauge pressure at which `amount` of air fills chamber and dead volume under `atmosphere` (Boyle 1662).
Pressure sealed_gauge(const VolumeCurve& curve, Volume dead, AirAmount amount,
                      Pressure atmosphere = kAtmosphere);

// Closed off at `gauge`, then warmed from `from_c` to `to_c` (Charles) and brought under `atmosphere`.
Pressure sealed_gauge_after(const VolumeCurve& curve, Volume dead, Pressure gauge, double from_c, double to_c,
                            Pressure atmosphere = kAtmosphere);

// Pressure drop over volume flow of a round tube, Hagen-Poiseuille: 128 mu L / (pi d^4), Pa s/m3.
double tube_resistance(const Tubing& tubing);

struct VentTime {
  Time time;
  double reynolds = 0.0;  // at the start; above kLaminarReynolds the tube is slower than this
};

// From `from` down to `to` through the open tube: the integral of R d[(P0 + p) V(p)] / (P0 p).
VentTime vent_time(const VolumeCurve& curve, const Tubing& tubing, Pressure from, Pressure to);

// Force over the plunger's area.
Pressure syringe_pressure(const Syringe& syringe);

}  // namespace wrapgauge
