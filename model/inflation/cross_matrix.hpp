#pragma once
#include "model/core/array.hpp"

namespace wrapgauge {

// cross_matrix(a) b = a x b.
inline Mat3 cross_matrix(const Vec3& a) {
  Mat3 matrix;
  matrix << 0.0, -a.z(), a.y(), a.z(), 0.0, -a.x(), -a.y(), a.x(), 0.0;
  return matrix;
}

}  // namespace wrapgauge
