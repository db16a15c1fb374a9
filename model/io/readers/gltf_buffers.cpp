#include "model/io/readers/gltf_buffers.hpp"

#include <vtkBase64Utilities.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>

#include "model/core/file.hpp"
#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

static_assert(std::endian::native == std::endian::little, "numbers are copied as they lie");

// Number types, as the format numbers them.
constexpr std::size_t kByte = 5121, kShort = 5123, kInt = 5125, kFloat = 5126;

std::size_t size_of(std::size_t component) {
  return component == kByte ? 1 : component == kShort ? 2 : 4;
}

Problem fault(const Phrase& what, std::size_t number, const Phrase& why) {
  return bad_input(Phrase::worded("%1 %2 %3; export the scan again.", {what, count_of(number + 1), why}));
}
Problem buffer_fault(std::size_t number, const Phrase& why) {
  return fault(Phrase::worded("buffer"), number, why);
}
Problem accessor_fault(std::size_t number, const Phrase& why) {
  return fault(Phrase::worded("accessor"), number, why);
}

Result<std::string> decoded(std::string_view text, std::size_t length, std::size_t number) {
  std::string bytes(text.size() / 4 * 3 + 3, '\0');
  const std::size_t count =
      vtkBase64Utilities::DecodeSafely(reinterpret_cast<const unsigned char*>(text.data()), text.size(),
                                       reinterpret_cast<unsigned char*>(bytes.data()), bytes.size());
  if (count < length) return buffer_fault(number, Phrase::worded("is cut short or not base64 text"));
  bytes.resize(count);
  return bytes;
}

// A name beside the file: no folder above, no absolute path, nothing coded.
bool is_plain_name(const std::string& uri) {
  const std::filesystem::path path(uri);
  if (uri.empty() || uri.find_first_of("%:\\") != uri.npos || path.is_absolute()) return false;
  for (const auto& part : path)
    if (part == "..") return false;
  return true;
}

Result<std::string> buffer_bytes(const json& buffer, std::size_t number, const std::filesystem::path& folder,
                                 std::size_t length) {
  if (!buffer["uri"].is_string()) return buffer_fault(number, Phrase::worded("has a place that is no text"));
  const std::string uri = buffer["uri"].get<std::string>();
  if (uri.starts_with("data:")) {
    const std::size_t comma = uri.find(',');
    if (comma == uri.npos || !std::string_view(uri).substr(0, comma).ends_with(";base64"))
      return buffer_fault(number, Phrase::worded("is not base64 text"));
    return decoded(std::string_view(uri).substr(comma + 1), length, number);
  }
  if (!is_plain_name(uri))
    return buffer_fault(
        number, Phrase::worded("lies at %1, not in the folder of the scan", {name_of(in_quotes(uri))}));
  return read_file(folder / uri);
}

}  // namespace

std::optional<Problem> gltf_compression_fault(const std::string& extension) {
  if (extension.find("compression") == extension.npos) return std::nullopt;
  return bad_input(Phrase::worded(
      "The mesh is compressed (%1), which is not read; switch mesh compression off in the export.",
      {name_of(in_quotes(extension, 60))}));
}

std::optional<Problem> gltf_compression_of(const json& item) {
  const auto extensions = item.find("extensions");
  if (extensions == item.end() || !extensions->is_object()) return std::nullopt;
  for (const auto& [name, extension] : extensions->items())
    if (auto fault = gltf_compression_fault(name)) return fault;
  return std::nullopt;
}

std::optional<std::size_t> gltf_whole(const json& object, const char* key, std::size_t fallback) {
  if (!object.is_object()) return std::nullopt;
  const auto found = object.find(key);
  if (found == object.end()) return fallback;
  if (!found->is_number()) return std::nullopt;
  const double value = found->get<double>();
  if (!(value >= 0.0 && value <= 4294967295.0) || value != std::floor(value)) return std::nullopt;
  return static_cast<std::size_t>(value);
}

const json* gltf_item(const json& root, const char* key, std::size_t index) {
  if (!root.is_object()) return nullptr;
  const auto list = root.find(key);
  if (list == root.end() || !list->is_array() || index >= list->size()) return nullptr;
  const json& item = (*list)[index];
  return item.is_object() ? &item : nullptr;
}

Result<GltfBuffers> GltfBuffers::read(const json& root, std::string_view binary,
                                      const std::filesystem::path& folder) {
  GltfBuffers buffers;
  for (std::size_t i = 0; const json* buffer = gltf_item(root, "buffers", i); ++i) {
    const auto length = gltf_whole(*buffer, "byteLength", 0);
    if (!length || *length == 0) return buffer_fault(i, Phrase::worded("has no length"));
    if (buffer->contains("uri")) {
      auto bytes = buffer_bytes(*buffer, i, folder, *length);
      if (!bytes) return bytes.problem();
      buffers.buffers_.emplace_back(std::move(bytes).value());
    } else {
      buffers.buffers_.emplace_back(binary);
    }
    if (const std::size_t size = buffers.bytes(i).size(); size < *length)
      return buffer_fault(
          i, Phrase::worded("is to hold %1 bytes but there are %2", {count_of(*length), count_of(size)}));
  }
  return buffers;
}

std::string_view GltfBuffers::bytes(std::size_t buffer) const {
  return std::visit([](const auto& held) { return std::string_view(held); }, buffers_[buffer]);
}

Result<GltfBuffers::Run> GltfBuffers::run_of(const json& root, std::size_t accessor,
                                             std::size_t parts) const {
  const json* item = gltf_item(root, "accessors", accessor);
  if (!item) return accessor_fault(accessor, Phrase::worded("is not there"));
  if (item->contains("sparse"))
    return accessor_fault(
        accessor, Phrase::worded("is sparse, which is not read; switch sparse accessors off in the export"));
  const auto component = gltf_whole(*item, "componentType", 0), count = gltf_whole(*item, "count", 0),
             offset = gltf_whole(*item, "byteOffset", 0), view = gltf_whole(*item, "bufferView", ~0u);
  const json* place = view ? gltf_item(root, "bufferViews", *view) : nullptr;
  if (!component || !count || !offset || !place)
    return accessor_fault(accessor,
                          Phrase::worded("has a type, count or place that is not there or no whole number"));
  if (*component != kByte && *component != kShort && *component != kInt && *component != kFloat)
    return accessor_fault(
        accessor, Phrase::worded("has numbers of a type (%1) that is not read", {count_of(*component)}));
  if (*count == 0 || *count > kMostElements)
    return accessor_fault(accessor, Phrase::worded("has %1 elements", {count_of(*count)}));
  const auto buffer = gltf_whole(*place, "buffer", ~0u), start = gltf_whole(*place, "byteOffset", 0),
             length = gltf_whole(*place, "byteLength", 0);
  if (const auto compressed = gltf_compression_of(*place)) return *compressed;
  const std::size_t element = parts * size_of(*component);
  const auto stride = gltf_whole(*place, "byteStride", element);
  if (!buffer || !start || !length || !stride || *buffer >= buffers_.size() || *stride < element ||
      *stride > 252)
    return fault(Phrase::worded("buffer view"), *view,
                 Phrase::worded("has a buffer, place or step that does not fit"));
  // All terms are below 2^32 and 10^7 * 252: no overflow in 64 bits.
  const std::size_t end = *offset + (*count - 1) * *stride + element;
  if (*start + *length > bytes(*buffer).size() || end > *length)
    return accessor_fault(accessor,
                          Phrase::worded("reaches beyond its buffer, %1 of %2 bytes",
                                         {count_of(*start + end), count_of(bytes(*buffer).size())}));
  return Run{bytes(*buffer).data() + *start + *offset, *count, *stride, *component};
}

Result<Points3> GltfBuffers::positions(const json& root, std::size_t accessor) const {
  const auto run = run_of(root, accessor, 3);
  if (!run) return run.problem();
  const json& item = *gltf_item(root, "accessors", accessor);
  if (run->component != kFloat || !item.contains("type") || item["type"] != "VEC3")
    return accessor_fault(
        accessor,
        Phrase::worded("does not hold points of three 4-byte numbers; quantised meshes are not read"));
  Points3 points(static_cast<Eigen::Index>(run->count), 3);
  for (std::size_t i = 0; i < run->count; ++i) {
    float xyz[3];
    std::memcpy(xyz, run->first + i * run->stride, sizeof xyz);
    points.row(static_cast<Eigen::Index>(i)) << xyz[0], xyz[1], xyz[2];
  }
  return points;
}

Result<std::vector<int>> GltfBuffers::indices(const json& root, std::size_t accessor,
                                              std::size_t vertex_count) const {
  const auto run = run_of(root, accessor, 1);
  if (!run) return run.problem();
  if (run->component == kFloat)
    return accessor_fault(accessor, Phrase::worded("holds fractions where corners are counted"));
  std::vector<int> indices(run->count);
  for (std::size_t i = 0; i < run->count; ++i) {
    std::uint32_t index = 0;
    std::memcpy(&index, run->first + i * run->stride, size_of(run->component));
    if (index >= vertex_count)
      return accessor_fault(
          accessor, Phrase::worded("names vertex %1 of %2", {count_of(index), count_of(vertex_count)}));
    indices[i] = static_cast<int>(index);
  }
  return indices;
}

}  // namespace wrapgauge
