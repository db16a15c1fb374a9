#pragma once
// The numbers of a glTF file: buffers, views and accessors, each bound checked.

#include <filesystem>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "model/core/array.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// A whole number >= 0 under `key`; `fallback` when the key is missing, none when it is something else.
std::optional<std::size_t> gltf_whole(const nlohmann::json& object, const char* key, std::size_t fallback);
// Item `index` of the list under `key`; null when there is none.
const nlohmann::json* gltf_item(const nlohmann::json& root, const char* key, std::size_t index);

// Of an extension that compresses meshes: a sentence that names it and says what to switch off.
std::optional<Problem> gltf_compression_fault(const std::string& extension);
// The same of the extensions that a part or a buffer view has.
std::optional<Problem> gltf_compression_of(const nlohmann::json& item);

class GltfBuffers {
 public:
  // `binary`: the binary part of a .glb, for the buffer that names no other place; it outlives this.
  static Result<GltfBuffers> read(const nlohmann::json& root, std::string_view binary,
                                  const std::filesystem::path& folder);

  Result<Points3> positions(const nlohmann::json& root, std::size_t accessor) const;
  // Each below `vertex_count`.
  Result<std::vector<int>> indices(const nlohmann::json& root, std::size_t accessor,
                                   std::size_t vertex_count) const;

 private:
  struct Run {
    const char* first = nullptr;
    std::size_t count = 0, stride = 0, component = 0;  // component: the format's code of the number type
  };
  Result<Run> run_of(const nlohmann::json& root, std::size_t accessor, std::size_t parts) const;

  // A buffer each: its own bytes, or those of the binary part.
  std::vector<std::variant<std::string, std::string_view>> buffers_;
  std::string_view bytes(std::size_t buffer) const;
};

}  // namespace wrapgauge
