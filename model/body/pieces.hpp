#pragma once
// A mesh file with more than one thing in it, told apart.

#include <vector>

#include "model/body/raw_mesh.hpp"

namespace wrapgauge {

struct Piece {
  RawMesh mesh;                // the vertices of this piece alone, in the file's unit and frame
  double share_of_area = 0.0;  // of the whole mesh
};

// Connected pieces, the largest area first; those below `least_share` of the largest are left out.
std::vector<Piece> pieces_of(const RawMesh& mesh, double least_share = 0.01);

}  // namespace wrapgauge
