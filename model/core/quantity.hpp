#pragma once
// Physical scalars as types. A quantity stores SI; other units exist only at the doors:
//   const Pressure p = 4.2 * kPa;     double shown = p / mmHg;
// Dimensions are exponents of length, mass and time, so products and quotients check themselves.

#include <cmath>
#include <compare>

namespace wrapgauge {

template <int L, int M, int T>
class Quantity {
 public:
  constexpr Quantity() = default;
  constexpr explicit Quantity(double si) : si_(si) {}
  constexpr double si() const { return si_; }

  constexpr auto operator<=>(const Quantity&) const = default;
  constexpr Quantity operator-() const { return Quantity(-si_); }
  constexpr Quantity operator+(Quantity o) const { return Quantity(si_ + o.si_); }
  constexpr Quantity operator-(Quantity o) const { return Quantity(si_ - o.si_); }
  constexpr Quantity operator*(double s) const { return Quantity(si_ * s); }
  constexpr Quantity operator/(double s) const { return Quantity(si_ / s); }
  friend constexpr Quantity operator*(double s, Quantity q) { return Quantity(s * q.si_); }
  // Same dimension: a plain number, so `p / kPa` reads "p in kPa".
  constexpr double operator/(Quantity o) const { return si_ / o.si_; }

 private:
  double si_ = 0.0;
};

template <int L1, int M1, int T1, int L2, int M2, int T2>
constexpr auto operator*(Quantity<L1, M1, T1> a, Quantity<L2, M2, T2> b) {
  return Quantity<L1 + L2, M1 + M2, T1 + T2>(a.si() * b.si());
}
template <int L1, int M1, int T1, int L2, int M2, int T2>
requires(L1 != L2 || M1 != M2 || T1 != T2) constexpr auto operator/(Quantity<L1, M1, T1> a,
                                                                    Quantity<L2, M2, T2> b) {
  return Quantity<L1 - L2, M1 - M2, T1 - T2>(a.si() / b.si());
}

using Length = Quantity<1, 0, 0>;
using Area = Quantity<2, 0, 0>;
using Volume = Quantity<3, 0, 0>;
using Time = Quantity<0, 0, 1>;
using Force = Quantity<1, 1, -2>;
using Pressure = Quantity<-1, 1, -2>;           // also elastic moduli
using LineTension = Quantity<0, 1, -2>;         // N/m: membrane tension, cloth stiffness
using FoundationModulus = Quantity<-2, 1, -2>;  // Pa/m: pressure a unit of indentation
using Density = Quantity<-3, 1, 0>;

inline constexpr Length metre{1.0}, mm{1e-3}, cm{1e-2}, inch{0.0254};
inline constexpr Area mm2{1e-6}, cm2{1e-4};
inline constexpr Volume mL{1e-6};
inline constexpr Time second{1.0}, minute{60.0};
inline constexpr Force newton{1.0};
inline constexpr Pressure Pa{1.0}, kPa{1e3}, MPa{1e6}, mmHg{133.322};
inline constexpr LineTension N_per_mm{1e3}, N_per_m{1.0};
inline constexpr FoundationModulus kPa_per_mm{1e6};
inline constexpr Density kg_per_m3{1.0};

}  // namespace wrapgauge
