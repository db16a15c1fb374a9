#pragma once
// What fills, holds and vents the device on the bench and on the body.

#include <map>
#include <optional>
#include <string>

#include "model/core/quantity.hpp"

namespace wrapgauge {

struct Syringe {
  Volume capacity;
  Length bore;
  Force thumb{50.0};  // judgement: a firm push
  bool operator==(const Syringe&) const = default;
};

struct Tubing {
  Length length, bore;
  bool operator==(const Tubing&) const = default;
};

struct Supply {
  std::optional<Syringe> syringe;
  std::optional<Pressure> pump_stall;  // gauge pressure at which the pump gives up
  std::optional<Tubing> tubing;        // of one inlet, from chamber to open air
  std::optional<Pressure> relief;      // gauge pressure at which the mechanical valve of each inlet opens
  std::map<std::string, Pressure> inlet_relief{};  // of inlets whose valve opens at another
  Volume dead_volume;  // tube, valve and syringe: air that is there before any is pushed in
  bool operator==(const Supply&) const = default;

  std::optional<Pressure> relief_of(const std::string& inlet) const {  // none: no valve
    const auto own = inlet_relief.find(inlet);
    return own == inlet_relief.end() ? relief : std::optional(own->second);
  }
};

enum class Medium { kAir, kWater, kGel };

struct Filling {
  Medium medium = Medium::kAir;
  std::optional<double> celsius;  // at the skin side when put on
  std::optional<Time> contact;    // how long it is worn hot or cold
  bool operator==(const Filling&) const = default;
};

}  // namespace wrapgauge
