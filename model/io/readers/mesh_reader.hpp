#pragma once
// Body surfaces from OBJ, STL, PLY, GLB and glTF files.

#include <filesystem>

#include "model/body/raw_mesh.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Reads by the file's ending, in any case of letters. Polygons are cut into triangles; texture, colour and
// normals are left out. Every number is checked as it is read. Problems, one sentence each with the
// vertex, facet or line counted from 1: unreadable, empty, not what its name says, cut short, a count the
// file cannot hold, numbers that are not plain finite numbers, indices out of range, no faces, another
// format.
Result<RawMesh> read_mesh(const std::filesystem::path& file);

}  // namespace wrapgauge
