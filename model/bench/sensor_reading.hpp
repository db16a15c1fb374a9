#pragma once
// What a thin sensor between skin and device reads.

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct SensorPlace {
  Vec2 at_flat_m = Vec2::Zero();  // its middle, on the layout
  Area area;                      // a disc of it
  Length thickness{};
  bool operator==(const SensorPlace&) const = default;
};

// Mean contact pressure over the disc, where the device lies in that state. None where it lies off the mesh.
std::optional<Pressure> sensor_mean(const InflationSetup& setup, const LoadPath& path,
                                    const EquilibriumState& state, const SensorPlace& sensor);

// A flat vertex each: what the sensor takes of the room between skin and device; it fades out over a mesh
// edge at its rim.
Eigen::VectorXd sensor_between_m(const FlatMesh& flat, const SensorPlace& sensor, Length edge);

}  // namespace wrapgauge
