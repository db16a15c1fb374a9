#include "model/inflation/friction.hpp"

namespace wrapgauge {

FrictionTerm friction_term(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                           double elastic_slip_m) {
  const Mat3 tangential = Mat3::Identity() - normal * normal.transpose();
  const Vec3 way = tangential * (position_m - grip_m);
  const double length = way.norm(), slip = elastic_slip_m;
  FrictionTerm term;
  // f'(y)/y, without dividing by a way of nothing.
  const double slope_over_way = length < slip ? 2.0 / slip - length / (slip * slip) : 1.0 / length;
  term.energy =
      limit_n * (length < slip ? length * length / slip - length * length * length / (3.0 * slip * slip)
                               : length - slip / 3.0);
  term.gradient = limit_n * slope_over_way * way;
  term.hessian = limit_n * slope_over_way * tangential;
  if (length > 1e-12) {
    const Vec3 along = way / length;
    const double curvature = length < slip ? 2.0 / slip - 2.0 * length / (slip * slip) : 0.0;
    term.hessian += limit_n * (curvature - slope_over_way) * along * along.transpose();
  }
  return term;
}

Vec3 dragged_grip(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double elastic_slip_m) {
  const Vec3 way = position_m - grip_m;
  const Vec3 tangential = way - way.dot(normal) * normal;
  const double length = tangential.norm();
  if (length <= elastic_slip_m) return grip_m;
  return grip_m + (1.0 - elastic_slip_m / length) * tangential;
}

}  // namespace wrapgauge
