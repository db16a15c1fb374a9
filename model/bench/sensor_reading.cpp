#include "model/bench/sensor_reading.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"

namespace wrapgauge {
namespace {

double radius_m(const SensorPlace& sensor) {
  return std::sqrt(sensor.area.si() / std::numbers::pi);
}

// Where a point of the layout lies on the skin side.
std::optional<Vec3> on_skin_side(const FlatMesh& flat, const TriangleMesh& side, const Vec2& point_m) {
  constexpr double kOutside = -1e-9;
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const auto corner = [&](int c) -> Vec2 { return flat.vertices_m.row(flat.triangles(t, c)).transpose(); };
    const Vec2 p = corner(1) - corner(0), q = corner(2) - corner(0), r = point_m - corner(0);
    const double twice = p.x() * q.y() - p.y() * q.x();
    const double u = (r.x() * q.y() - r.y() * q.x()) / twice, v = (p.x() * r.y() - p.y() * r.x()) / twice;
    if (u < kOutside || v < kOutside || u + v > 1.0 - kOutside) continue;
    const auto at = [&](int c) -> Vec3 { return side.vertices_m.row(flat.triangles(t, c)).transpose(); };
    return (1.0 - u - v) * at(0) + u * at(1) + v * at(2);
  }
  return std::nullopt;
}

}  // namespace

std::optional<Pressure> sensor_mean(const InflationSetup& setup, const LoadPath& path,
                                    const EquilibriumState& state, const SensorPlace& sensor) {
  const TriangleMesh side = skin_side(setup, path.sheet, state.positions_m);
  const auto middle = on_skin_side(setup.flat, side, sensor.at_flat_m);
  if (!middle) return std::nullopt;
  const double radius = radius_m(sensor);
  double force_n = 0.0, area_m2 = 0.0;
  for (const PressureSample& sample :
       pressure_samples(side, state.contact_pressure_pa, std::min(1e-3, 0.2 * radius))) {
    if ((sample.point_m - *middle).norm() > radius) continue;
    force_n += sample.pressure_pa * sample.area_m2;
    area_m2 += sample.area_m2;
  }
  if (!(area_m2 > 0.0)) return std::nullopt;
  return Pressure(force_n / area_m2);
}

Eigen::VectorXd sensor_between_m(const FlatMesh& flat, const SensorPlace& sensor, Length edge) {
  Eigen::VectorXd between(flat.vertices_m.rows());
  for (Eigen::Index v = 0; v < between.size(); ++v) {
    const double inside = radius_m(sensor) - (flat.vertices_m.row(v).transpose() - sensor.at_flat_m).norm();
    between(v) = sensor.thickness.si() * std::clamp(0.5 + inside / edge.si(), 0.0, 1.0);
  }
  return between;
}

}  // namespace wrapgauge
