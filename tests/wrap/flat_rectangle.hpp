#pragma once
// A rectangular layout and its mesh, with two chambers side by side, made without the triangulator.

#include <cmath>

#include "model/layout/flat_mesh.hpp"

namespace wrapgauge::flat {

struct Rectangle {
  Layout layout;
  FlatMesh mesh;
};

// Lower left corner at the origin. `closes`: the left and right edges are the closing lines.
inline Rectangle rectangle(double width_m, double height_m, double edge_m, bool closes) {
  Rectangle result;
  const int columns = static_cast<int>(std::ceil(width_m / edge_m)),
            rows = static_cast<int>(std::ceil(height_m / edge_m));
  result.layout.name = "rectangle";
  result.layout.outline_m = {{0, 0}, {width_m, 0}, {width_m, height_m}, {0, height_m}};
  result.layout.chambers.resize(2);
  result.layout.chambers[0].name = "left";
  result.layout.chambers[1].name = "right";
  if (closes)
    result.layout.closure = Closure{.from_x_m = 0.0, .closing_length = width_m * metre, .stretch = {}};
  FlatMesh& mesh = result.mesh;
  mesh.vertices_m.resize((columns + 1) * (rows + 1), 2);
  for (int j = 0; j <= rows; ++j)
    for (int i = 0; i <= columns; ++i)
      mesh.vertices_m.row(j * (columns + 1) + i) << width_m * i / columns, height_m * j / rows;
  mesh.triangles.resize(2 * columns * rows, 3);
  int triangle = 0;
  for (int j = 0; j < rows; ++j) {
    for (int i = 0; i < columns; ++i) {
      const int a = j * (columns + 1) + i, b = a + 1, c = a + columns + 1, d = c + 1;
      mesh.triangles.row(triangle++) << a, b, d;
      mesh.triangles.row(triangle++) << a, d, c;
      const bool rim = j == 0 || j == rows - 1;
      mesh.regions.insert(mesh.regions.end(), 2,
                          {rim ? RegionKind::kWeld : RegionKind::kChamber, 2 * i < columns ? 0 : 1});
    }
  }
  for (int j = 0; closes && j <= rows; ++j) {
    mesh.closing_from.push_back(j * (columns + 1));
    mesh.closing_to.push_back(j * (columns + 1) + columns);
  }
  return result;
}

}  // namespace wrapgauge::flat
