#pragma once
#include <string>
#include <string_view>

#include "model/body/raw_mesh.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Reads the text of an OBJ file; `name` stands in messages. Only vertices and faces are used.
Result<RawMesh> read_obj(std::string_view text, const std::string& name);

}  // namespace wrapgauge
