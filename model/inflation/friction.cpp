#include "model/inflation/friction.hpp"

namespace wrapgauge {

namespace {

// f'(y)/y and f''(y) at the way y, without dividing by a way of nothing.
struct FrictionSlopes {
  double over_way, curvature;
};

FrictionSlopes friction_slopes(double way, double slip) {
  if (way >= slip) return {1.0 / way, 0.0};
  return {2.0 / slip - way / (slip * slip), 2.0 / slip - 2.0 * way / (slip * slip)};
}

// d(f'(y) way/y) for a change of the way that may leave the tangent plane.
Vec3 pull_change(const FrictionSlopes& slopes, const Vec3& way, const Vec3& change) {
  Vec3 pull = slopes.over_way * change;
  if (const double length = way.norm(); length > 1e-12)
    pull += (slopes.curvature - slopes.over_way) / (length * length) * way.dot(change) * way;
  return pull;
}

// The part of a way that lies in the skin.
Vec3 along_skin(const Vec3& way, const Vec3& normal) {
  return way - way.dot(normal) * normal;
}

}  // namespace

FrictionTerm friction_term(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                           double elastic_slip_m) {
  const Mat3 tangential = Mat3::Identity() - normal * normal.transpose();
  const Vec3 way = tangential * (position_m - grip_m);
  const double length = way.norm(), slip = elastic_slip_m;
  const FrictionSlopes slopes = friction_slopes(length, slip);
  FrictionTerm term;
  term.energy =
      limit_n * (length < slip ? length * length / slip - length * length * length / (3.0 * slip * slip)
                               : length - slip / 3.0);
  term.gradient = limit_n * slopes.over_way * way;
  for (int k = 0; k < 3; ++k) term.hessian.col(k) = limit_n * pull_change(slopes, way, tangential.col(k));
  return term;
}

Vec3 friction_turned(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                     double elastic_slip_m, const Vec3& normal_change) {
  const Vec3 from_grip = position_m - grip_m;
  const Vec3 way = along_skin(from_grip, normal);
  const Vec3 change = -from_grip.dot(normal) * normal_change - from_grip.dot(normal_change) * normal;
  return limit_n * pull_change(friction_slopes(way.norm(), elastic_slip_m), way, change);
}

Mat3 sliding_resistance(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                        double elastic_slip_m, double share) {
  const Vec3 way = along_skin(position_m - grip_m, normal);
  const FrictionSlopes slopes = friction_slopes(way.norm(), elastic_slip_m);
  const double lacking = share * slopes.over_way - slopes.curvature;
  if (lacking <= 0.0) return Mat3::Zero();
  const Vec3 along = way.normalized();
  return limit_n * lacking * along * along.transpose();
}

Vec3 dragged_grip(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double elastic_slip_m) {
  const Vec3 tangential = along_skin(position_m - grip_m, normal);
  const double length = tangential.norm();
  if (length <= elastic_slip_m) return grip_m;
  return grip_m + (1.0 - elastic_slip_m / length) * tangential;
}

}  // namespace wrapgauge
