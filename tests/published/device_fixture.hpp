#pragma once
// Small devices with known answers, built through the same layout and inflation calls that a plan uses.

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

#include "model/inflation/load_path.hpp"
#include "tests/inflation/round_limb.hpp"

namespace wrapgauge::published {

inline Polygon circle(double radius_m, int sides) {
  Polygon polygon;
  for (int k = 0; k < sides; ++k) {
    const double angle = 2.0 * M_PI * k / sides;
    polygon.emplace_back(radius_m * std::cos(angle), radius_m * std::sin(angle));
  }
  return polygon;
}

using small::rectangle;
using small::RoundLimb;

// A flat plate below the layout: the half space z < height.
class PlateBelow : public SignedDistance {
 public:
  explicit PlateBelow(double height_m) : height_m_(height_m) {}
  DistanceSample at(const Vec3& point_m) const override {
    return {point_m.z() - height_m_, Vec3::UnitZ(), Mat3::Zero()};
  }

 private:
  double height_m_;
};

// Prints the measured difference and fails beyond the tolerance.
inline void expect_within(const std::string& what, double ours, double reference, double tolerance) {
  const double difference = ours / reference - 1.0;
  std::cout << "  " << what << ": ours " << ours << ", reference " << reference << ", difference "
            << 100.0 * difference << " %, accepted " << 100.0 * tolerance << " %\n";
  EXPECT_LE(std::abs(difference), tolerance) << what;
}

}  // namespace wrapgauge::published
