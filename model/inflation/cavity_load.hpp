#pragma once
// What fills a chamber group, as a potential U(V) of the volume V between its sheets; its gauge pressure is
// -dU/dV.

#include <cmath>
#include <limits>

namespace wrapgauge {

inline constexpr double kAtmospherePa = 101325.0;  // standard atmosphere, ISO 2533 (from memory)

class CavityLoad {
 public:
  CavityLoad() = default;

  // A regulator holds the gauge pressure whatever the volume.
  static CavityLoad pressure(double pressure_pa) {
    CavityLoad load;
    load.pressure_pa_ = pressure_pa;
    return load;
  }
  // A liquid: `pressure_pa` at `volume_m3`, so stiff (Pa/m3) that the volume is all but given.
  static CavityLoad liquid(double volume_m3, double pressure_pa, double bulk_pa_per_m3) {
    CavityLoad load;
    load.pressure_pa_ = pressure_pa;
    load.volume_m3_ = volume_m3;
    load.bulk_pa_per_m3_ = bulk_pa_per_m3;
    return load;
  }
  // Air that takes `air_m3` at atmospheric pressure, in the chamber and `dead_m3` of tubing and syringe that
  // do not stretch; temperature does not change (Boyle).
  static CavityLoad trapped_air(double air_m3, double dead_m3) {
    CavityLoad load;
    load.air_m3_ = air_m3;
    load.dead_m3_ = dead_m3;
    return load;
  }

  bool is_air() const { return air_m3_ > 0.0; }
  bool is_liquid() const { return bulk_pa_per_m3_ > 0.0; }
  bool follows_volume() const { return is_air() || is_liquid(); }
  double volume_m3() const { return volume_m3_; }

  double pressure_at(double v_m3) const {
    if (is_air()) return kAtmospherePa * (air_m3_ / (v_m3 + dead_m3_) - 1.0);
    return pressure_pa_ - bulk_pa_per_m3_ * (v_m3 - volume_m3_);
  }
  // -dp/dV, Pa/m3, >= 0.
  double stiffness_at(double v_m3) const {
    if (is_air()) return kAtmospherePa * air_m3_ / ((v_m3 + dead_m3_) * (v_m3 + dead_m3_));
    return bulk_pa_per_m3_;
  }
  // J; infinite where air would be squeezed to nothing.
  double energy_at(double v_m3) const {
    if (is_air())
      return v_m3 + dead_m3_ > 0.0 ? kAtmospherePa * (v_m3 - air_m3_ * std::log((v_m3 + dead_m3_) / air_m3_))
                                   : std::numeric_limits<double>::infinity();
    const double excess = v_m3 - volume_m3_;
    return -pressure_pa_ * excess + 0.5 * bulk_pa_per_m3_ * excess * excess;
  }

 private:
  double pressure_pa_ = 0.0, volume_m3_ = 0.0, bulk_pa_per_m3_ = 0.0;
  double air_m3_ = 0.0, dead_m3_ = 0.0;
};

}  // namespace wrapgauge
