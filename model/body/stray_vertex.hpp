#pragma once
#include <optional>

#include "model/body/raw_mesh.hpp"
#include "model/core/phrase.hpp"

namespace wrapgauge {

// Vertices of faces that lie far off all the others: slips of a scanner or of whoever drew the file.
struct StrayVertices {
  int count = 0;
  int furthest = 0;     // its number in the file, from 1
  Vec3 at;              // where it is, in units of the file
  double times_as_far;  // from the middle of the body as the furthest of the rest
};

// At most ten vertices, and one in a hundred, more than three times as far from the median of all as every
// other (judgement). None: there are no such. Numbers are finite and faces name vertices that are there.
std::optional<StrayVertices> find_stray_vertices(const RawMesh& raw);

// "Vertex 12, at (1e+05, 0, 0), lies 830 times as far out as the rest of the body: take it out of the file."
Phrase stray_words(const StrayVertices& stray);

}  // namespace wrapgauge
