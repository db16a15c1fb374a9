#pragma once
// The two sheets as one mesh: nodes are shared where the sheets are fused and doubled where a chamber or
// channel is open between them. The rest shape is the flat layout.

#include <vector>

#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

enum class SheetLayer : unsigned char {
  kFused,  // both sheets, one on the other
  kSkin,   // the sheet towards the body, over an open region
  kOuter,
  kStrap,
};

struct SheetMesh {
  int node_count = 0;
  std::vector<int> skin_node;    // a flat vertex each: its node on the skin side (fused and strap nodes too)
  std::vector<int> outer_node;   // the same node where fused
  std::vector<int> flat_vertex;  // a node each: the flat vertex it came from
  Triangles triangles;           // counter-clockwise in the layout frame, so normals point away from the body
  std::vector<SheetLayer> layer;   // one a triangle
  std::vector<int> flat_triangle;  // one a triangle: the flat triangle it came from
  // Triangles of the two sides of each group's cavity.
  struct Cavity {
    std::vector<int> skin_triangles, outer_triangles;
  };
  std::vector<Cavity> cavities;  // a GroupId each
};

SheetMesh make_sheet_mesh(const FlatMesh& flat);

// A flat vertex each: an end of an edge that one triangle has to itself.
std::vector<bool> vertices_on_edge(const FlatMesh& flat);

}  // namespace wrapgauge
