#pragma once
// What a flat cut through a worn device carries: sheet tension, bending and cavity pressure across the plane,
// and contact force on the half it cuts off. Forces act on the half on the side the normal points to.

#include "model/geometry/triangle_mesh.hpp"
#include "model/inflation/membrane_stress.hpp"

namespace wrapgauge {

struct Plane {
  Vec3 point_m = Vec3::Zero();
  Vec3 normal = Vec3::UnitX();  // unit
  double height_m(const Vec3& point) const { return (point - point_m).dot(normal); }
};

// Traction is linear over each triangle (a row a vertex, Pa); triangles that cross the plane are clipped by
// it.
Vec3 traction_on_half_n(const TriangleMesh& surface, const Points3& traction_pa, const Plane& plane);

// Nominal tension of every triangle crossed, times the rest normal and rest length of the cut.
Vec3 tension_across_n(const FlatMesh& flat, const SheetMesh& sheet, const SheetStress& stress,
                      const Points3& positions_m, const Plane& plane);

// Force of bending on the half, from what it puts on every node (bending_forces_n): edges that lie on one
// side balance themselves.
Vec3 bending_across_n(const Points3& forces_n, const Points3& positions_m, const Plane& plane);

// Gauge pressure of each cavity times its cross-section by the plane; pushes the halves apart.
Vec3 cavity_push_n(const SheetMesh& sheet, const EquilibriumState& state, const Plane& plane);

}  // namespace wrapgauge
