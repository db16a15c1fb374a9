#pragma once
// Body surfaces as OBJ, STL, PLY and VTK XML (.vtp) files, in millimetres, with the unit written in the file.

#include <filesystem>
#include <string>
#include <string_view>
#include <variant>

#include "model/core/result.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

enum class MeshFormat { kObj, kStl, kPly, kVtp };

// By the ending, in any case of letters. Problem: another ending (the four are named).
Result<MeshFormat> mesh_format_of(const std::filesystem::path& file);

// The file's bytes, the same for the same surface. OBJ carries a ten-millionth of a millimetre, STL and PLY
// (binary) 4-byte numbers, good for 0.00002 mm on a limb. `name` goes into the header where there is one.
// Problem: no faces, or a coordinate that is not finite.
Result<std::string> mesh_bytes(const TriangleMesh& mesh, MeshFormat format, std::string_view name);

// Both of the above, of the name of a file; and written atomically.
Result<std::string> mesh_bytes(const TriangleMesh& mesh, const std::filesystem::path& file);
Result<std::monostate> write_mesh(const TriangleMesh& mesh, const std::filesystem::path& file);

}  // namespace wrapgauge
