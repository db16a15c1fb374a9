#pragma once
// Coulomb friction with a small elastic slip, as a convex potential for a given normal force N: mu N f(|u|),
// u the tangential way from where the skin grips, f quadratic-cubic below the slip and linear beyond, so that
// the force never exceeds mu N. Smoothed as in Li et al. 2020, "Incremental Potential Contact".

#include "model/core/array.hpp"

namespace wrapgauge {

struct FrictionTerm {
  double energy = 0.0;
  Vec3 gradient = Vec3::Zero();
  Mat3 hessian = Mat3::Zero();
};

// `limit_n` = mu N; `normal` unit. The Hessian is positive semi-definite.
FrictionTerm friction_term(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                           double elastic_slip_m);

// Change of that gradient as the skin's normal turns by `normal_change`.
Vec3 friction_turned(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                     double elastic_slip_m, const Vec3& normal_change);

// What the Hessian lacks along the way for sliding to meet `share` of the resistance that a turn of the way
// meets. A point that slides meets none.
Mat3 sliding_resistance(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double limit_n,
                        double elastic_slip_m, double share);

// Where a sliding point grips next: pulled along so that it lags by the elastic slip.
Vec3 dragged_grip(const Vec3& position_m, const Vec3& grip_m, const Vec3& normal, double elastic_slip_m);

}  // namespace wrapgauge
