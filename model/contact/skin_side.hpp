#pragma once
// The face of the worn device that lies towards the body: one 3D point a flat vertex and one triangle a flat
// triangle, whether it is a skin sheet, a weld or a strap.

#include "model/geometry/triangle_mesh.hpp"
#include "model/inflation/load_path.hpp"

namespace wrapgauge {

TriangleMesh skin_side(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m);

Eigen::VectorXd triangle_areas_m2(const TriangleMesh& mesh);
// A third of every triangle around it.
Eigen::VectorXd vertex_areas_m2(const TriangleMesh& mesh);

// What a flat triangle counts for in chamber figures: its chamber, welds inside the chamber's drawn boundary
// (inset seams) included; none for channels, straps and welds between chambers.
std::vector<std::optional<ChamberId>> chamber_of_triangles(const Layout& layout, const FlatMesh& flat);

}  // namespace wrapgauge
