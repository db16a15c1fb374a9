#pragma once
// Worn shapes made by hand, so that contact figures can be checked against closed forms without a solver.

#include <cmath>
#include <numbers>

#include "model/contact/contact_map.hpp"
#include "model/contact/skin_side.hpp"

namespace wrapgauge::hand_made {

// A grid of columns x rows cells over width x height, lower left corner at the origin, all of one region.
inline FlatMesh grid(int columns, int rows, double width_m, double height_m, FlatRegion region) {
  FlatMesh flat;
  flat.vertices_m.resize((columns + 1) * (rows + 1), 2);
  for (int r = 0; r <= rows; ++r)
    for (int c = 0; c <= columns; ++c)
      flat.vertices_m.row(r * (columns + 1) + c) << width_m * c / columns, height_m * r / rows;
  flat.triangles.resize(2 * columns * rows, 3);
  int t = 0;
  for (int r = 0; r < rows; ++r)
    for (int c = 0; c < columns; ++c) {
      const int a = r * (columns + 1) + c, b = a + 1, d = a + columns + 1, e = d + 1;
      flat.triangles.row(t++) << a, b, e;
      flat.triangles.row(t++) << a, e, d;
    }
  flat.regions.assign(static_cast<std::size_t>(t), region);
  return flat;
}

inline Polygon rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

inline EquilibriumState untouched(const FlatMesh& flat, const SheetMesh& sheet) {
  EquilibriumState state;
  const Eigen::Index n = flat.vertices_m.rows();
  state.positions_m = Points3::Zero(sheet.node_count, 3);
  for (int node = 0; node < sheet.node_count; ++node)
    state.positions_m.row(node) << flat.vertices_m.row(sheet.flat_vertex[node]), 0.0;
  state.group_pressure_pa = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(flat.group_inlet.size()));
  state.group_volume_m3 = state.group_pressure_pa;
  state.contact_pressure_pa = state.contact_area_m2 = state.indentation_m = Eigen::VectorXd::Zero(n);
  state.contact_force_n = Points3::Zero(n, 3);
  return state;
}

struct Worn {
  Body body;
  InflationSetup setup;
  LoadPath path;
};

// A square pad, its single chamber as large as the pad, lying on the plane z = 0 of a large square body.
inline Worn flat_pad(int cells, double side_m) {
  Worn worn;
  worn.setup.flat = grid(cells, cells, side_m, side_m, {RegionKind::kChamber, 0});
  worn.setup.flat.chamber_group = {GroupId(0)};
  worn.setup.flat.group_inlet = {InletId(0)};
  worn.setup.layout.outline_m = rectangle(0, 0, side_m, side_m);
  worn.setup.layout.chambers = {{"middle", worn.setup.layout.outline_m, {}, {}}};
  worn.setup.layout.skin_sheet.thickness = worn.setup.layout.outer_sheet.thickness = 1.5 * mm;
  worn.setup.skin_law = worn.setup.outer_law = NeoHookean{30.0 * kPa};
  worn.path.sheet = make_sheet_mesh(worn.setup.flat);
  worn.path.states = {untouched(worn.setup.flat, worn.path.sheet)};
  worn.body.surface.vertices_m.resize(4, 3);
  worn.body.surface.vertices_m << -side_m, -side_m, 0, 2 * side_m, -side_m, 0, 2 * side_m, 2 * side_m, 0,
      -side_m, 2 * side_m, 0;
  worn.body.surface.faces.resize(2, 3);
  worn.body.surface.faces << 0, 1, 2, 0, 2, 3;
  return worn;
}

// An open tube round the z axis.
inline TriangleMesh tube(double radius_m, double z0, double z1, int around, int along) {
  FlatMesh flat = grid(around, along, 2.0 * std::numbers::pi, z1 - z0, {});
  TriangleMesh mesh{Points3(around * (along + 1), 3), flat.triangles};
  for (int r = 0; r <= along; ++r)
    for (int c = 0; c < around; ++c) {
      const double angle = 2.0 * std::numbers::pi * c / around;
      mesh.vertices_m.row(r * around + c) << radius_m * std::cos(angle), radius_m * std::sin(angle),
          z0 + (z1 - z0) * r / along;
    }
  for (Eigen::Index i = 0; i < mesh.faces.size(); ++i) {
    const int v = mesh.faces.data()[i];
    mesh.faces.data()[i] = v / (around + 1) * around + v % (around + 1) % around;
  }
  return mesh;
}

// A fused strip of rest length 2 pi R / stretch closed round a cylinder of radius R about z.
inline Worn ring(double radius_m, double width_m, double stretch, int around, int along) {
  Worn worn;
  const double length = 2.0 * std::numbers::pi * radius_m / stretch;
  worn.setup.flat = grid(around, along, length, width_m, {RegionKind::kWeld, 0});
  worn.setup.layout.outline_m = rectangle(0, 0, length, width_m);
  worn.setup.layout.skin_sheet.thickness = worn.setup.layout.outer_sheet.thickness = 1.5 * mm;
  worn.setup.layout.closure = Closure{0.0, Length(length), std::nullopt};
  worn.setup.skin_law = worn.setup.outer_law = NeoHookean{30.0 * kPa};
  for (int r = 0; r <= along; ++r) {
    worn.setup.flat.closing_from.push_back(r * (around + 1));
    worn.setup.flat.closing_to.push_back(r * (around + 1) + around);
  }
  worn.path.sheet = make_sheet_mesh(worn.setup.flat);
  EquilibriumState state = untouched(worn.setup.flat, worn.path.sheet);
  for (int node = 0; node < worn.path.sheet.node_count; ++node) {
    const Vec2 flat = worn.setup.flat.vertices_m.row(worn.path.sheet.flat_vertex[node]);
    const double angle = 2.0 * std::numbers::pi * flat.x() / length;
    state.positions_m.row(node) << radius_m * std::cos(angle), radius_m * std::sin(angle), flat.y();
  }
  worn.path.states = {state};
  worn.body.surface = tube(radius_m, -width_m, 2.0 * width_m, around, 12);
  return worn;
}

// Evenly pressed: pressure and the matching outward nodal forces on a ring about z.
inline void press_ring(Worn& worn, double pressure_pa) {
  EquilibriumState& state = worn.path.states.back();
  const TriangleMesh side = skin_side(worn.setup, worn.path.sheet, state.positions_m);
  state.contact_area_m2 = vertex_areas_m2(side);
  state.contact_pressure_pa.setConstant(pressure_pa);
  for (Eigen::Index v = 0; v < state.contact_area_m2.size(); ++v) {
    const Vec3 point = side.vertices_m.row(v);
    state.contact_force_n.row(v) =
        pressure_pa * state.contact_area_m2[v] * Vec3(point.x(), point.y(), 0.0).normalized();
  }
}

}  // namespace wrapgauge::hand_made
