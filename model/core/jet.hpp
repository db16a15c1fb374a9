#pragma once
// A value with its first and second derivatives with respect to N variables, carried through arithmetic by
// the chain rule: an energy written once gives gradient and Hessian to the last digit.

#include <Eigen/Core>
#include <cmath>

namespace wrapgauge {

template <int N>
struct Jet {
  using Gradient = Eigen::Matrix<double, N, 1>;
  using Hessian = Eigen::Matrix<double, N, N>;
  double value = 0.0;
  Gradient gradient = Gradient::Zero();
  Hessian hessian = Hessian::Zero();

  Jet() = default;
  Jet(double constant) : value(constant) {}  // NOLINT: a number is a jet that does not change
  static Jet variable(double value, int which) {
    Jet jet(value);
    jet.gradient(which) = 1.0;
    return jet;
  }

  // f(jet) from f and its first two derivatives at the value.
  Jet mapped(double f, double slope, double curvature) const {
    Jet jet(f);
    jet.gradient = slope * gradient;
    jet.hessian = slope * hessian + curvature * gradient * gradient.transpose();
    return jet;
  }

  Jet operator-() const { return mapped(-value, -1.0, 0.0); }
  friend Jet operator+(const Jet& a, const Jet& b) {
    Jet jet(a.value + b.value);
    jet.gradient = a.gradient + b.gradient;
    jet.hessian = a.hessian + b.hessian;
    return jet;
  }
  friend Jet operator-(const Jet& a, const Jet& b) { return a + (-b); }
  friend Jet operator*(const Jet& a, const Jet& b) {
    Jet jet(a.value * b.value);
    jet.gradient = a.value * b.gradient + b.value * a.gradient;
    jet.hessian = a.value * b.hessian + b.value * a.hessian + a.gradient * b.gradient.transpose() +
                  b.gradient * a.gradient.transpose();
    return jet;
  }
  friend Jet operator/(const Jet& a, const Jet& b) { return a * inverse(b); }

  friend Jet inverse(const Jet& a) {
    const double f = 1.0 / a.value;
    return a.mapped(f, -f * f, 2.0 * f * f * f);
  }
  // Of a value above zero.
  friend Jet pow(const Jet& a, double exponent) {
    const double f = std::pow(a.value, exponent), slope = exponent * f / a.value;
    return a.mapped(f, slope, (exponent - 1.0) * slope / a.value);
  }
  friend Jet sqrt(const Jet& a) {
    const double root = std::sqrt(a.value);
    return a.mapped(root, 0.5 / root, -0.25 / (root * a.value));
  }
  friend Jet sin(const Jet& a) { return a.mapped(std::sin(a.value), std::cos(a.value), -std::sin(a.value)); }
};

}  // namespace wrapgauge
