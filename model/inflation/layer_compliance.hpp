#pragma once
// Surface response of an elastic layer (Young's modulus E, Poisson's ratio nu, depth h) bonded to a rigid
// base and pressed without friction, as a multiple of that of a half-space, E* = E / (1 - nu^2).
//
// A pressure wave of wave number k lowers the surface by C(k) a unit of pressure:
//   C(k) = 2 / (E* k) s(k h),
//   s(x) = (2 m sinh 2x - 4x) / (2 m cosh 2x + m^2 + 1 + 4x^2),  m = 3 - 4 nu.
// A force f lowers the surface at distance r by f / (pi E*) (1/r - Phi(r/h) / h),
//   Phi(q) = integral of (1 - s(x)) J0(q x) over x from 0.
// Johnson 1985, "Contact Mechanics", chapters 3 (half-space) and 5.8 (layers); s from memory, checked in
// tests against the half-space and against C(0) = 1/K, the confined foundation.

#include <vector>

namespace wrapgauge {

class LayerCompliance {
 public:
  // 0 <= poisson <= 0.5.
  explicit LayerCompliance(double poisson);

  // s(x), x = k h.
  double half_space_share(double x) const;
  // Phi(q), q = r / h; tabulated to 1e-5.
  double depth_correction(double q) const;
  // -(Laplacian of Phi)(q) = integral of (1 - s(x)) x^2 J0(q x): for means over a small place.
  double depth_correction_bend(double q) const;
  // Integral of Phi(t) t dt from 0 to q: for means over a disc.
  double depth_correction_moment(double q) const;
  // Largest of s(x)/x: the softest pressure wave has C = 2 h / E* times this.
  double softest() const { return softest_; }
  // Beyond this r / h a force is not felt (1/q - Phi(q) is below 1e-4 of its value at q = 1).
  static constexpr double kReach = 14.0;

 private:
  double poisson_factor_;  // m
  double softest_ = 0.0;
  std::vector<double> correction_, bend_, moment_;
};

}  // namespace wrapgauge
