#pragma once
#include <cmath>

#include "model/body/raw_mesh.hpp"

namespace wrapgauge {

// A small limb: an open tube of six sides and four rings of faces, `step` apart.
inline RawMesh hexagon_tube(double radius, double step) {
  RawMesh mesh;
  const int around = 6, along = 4;
  mesh.vertices.resize(around * (along + 1), 3);
  mesh.faces.resize(2 * around * along, 3);
  int face = 0;
  for (int j = 0; j <= along; ++j)
    for (int i = 0; i < around; ++i) {
      const int a = j * around + i, b = j * around + (i + 1) % around;
      mesh.vertices.row(a) << radius * std::cos(i * 1.0471975512), radius * std::sin(i * 1.0471975512),
          step * j;
      if (j == along) continue;
      mesh.faces.row(face++) << a, b, b + around;
      mesh.faces.row(face++) << a, b + around, a + around;
    }
  return mesh;
}

}  // namespace wrapgauge
