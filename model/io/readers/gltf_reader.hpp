#pragma once
#include <filesystem>
#include <string>
#include <string_view>

#include "model/body/raw_mesh.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// glTF 2.0 (ISO/IEC 12113), binary (.glb) and text (.gltf): the triangles of the scene that is shown, each
// node's transform applied, in metres as the format defines. Lines, points, materials, skins, morphs and
// animations are left out; what was left out of the shape is noted. `name` is for messages; `folder` holds
// the buffers that a text file names. Every size, count and index is checked before a byte is taken.
// Problems: another version, cut short, sizes that do not fit, nodes in a ring, a compressed, quantised or
// sparse mesh, no triangles, numbers that are not finite, a buffer outside the folder.
Result<RawMesh> read_glb(std::string_view bytes, const std::string& name);
Result<RawMesh> read_gltf(std::string_view bytes, const std::string& name,
                          const std::filesystem::path& folder);

}  // namespace wrapgauge
