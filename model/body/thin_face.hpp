#pragma once
#include <vector>

#include "model/core/array.hpp"

namespace wrapgauge {

struct ThinFaceRepair {
  int dropped = 0;
  int flipped = 0;  // went with the neighbour across their longest side into two faces with area
};

// Removes faces that use a vertex twice or have no height. A face without height whose longest side is shared
// with one neighbour cannot be dropped without opening a slit: there the shared side is flipped instead.
ThinFaceRepair remove_thin_faces(const Points3& vertices, Triangles& faces);

// Removes faces on the same three vertices as an earlier one; returns how many.
int remove_doubled_faces(Triangles& faces);

// Keeps the faces marked non-zero.
void keep_faces(Triangles& faces, const std::vector<char>& keep);

}  // namespace wrapgauge
