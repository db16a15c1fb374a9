#pragma once
// Makes a triangle soup one manifold surface with outward normals. Works in any unit: all tolerances are
// relative.

#include <vector>

#include "model/core/array.hpp"
#include "model/core/phrase.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

enum class RepairKind {
  kWelded,         // vertices that lay on another one
  kNoArea,         // faces without area
  kDoubled,        // faces that were there twice
  kFin,            // faces hanging on an edge that had two others
  kOtherPieces,    // faces of smaller separate pieces
  kTurned,         // faces turned outward
  kSplitVertices,  // vertices where the surface touched itself at a point
};

struct Repair {
  RepairKind what = RepairKind::kWelded;
  int count = 0;
  Phrase sentence;
};

struct RepairedSurface {
  Points3 vertices;  // file units
  Triangles faces;
  std::vector<Repair> repairs;  // only those that changed something, in the order they were made
};

// `vertices` in any unit; a caller that needs the mesh no more moves it in. Problems: no face left; edges of
// more than two faces that cutting fins does not mend (edge named); a second piece of at least a quarter of
// the largest one's area, which may be another limb; a surface that has only one side.
Result<RepairedSurface> repair_surface(Points3 vertices, Triangles faces);

}  // namespace wrapgauge
