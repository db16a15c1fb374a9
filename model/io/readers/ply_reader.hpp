#pragma once
#include <string>
#include <string_view>

#include "model/body/raw_mesh.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Reads the bytes of a PLY file, ascii or binary of either byte order; `name` stands in messages. Elements
// and properties beside vertex x, y, z and face vertex_indices are skipped.
Result<RawMesh> read_ply(std::string_view bytes, const std::string& name);

}  // namespace wrapgauge
