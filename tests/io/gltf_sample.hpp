#pragma once
// Small glTF files built byte by byte for the tests.

#include <cstdint>
#include <cstring>
#include <string>

#include "model/body/raw_mesh.hpp"

namespace wrapgauge {

template <class Number>
void append_number(std::string& bytes, Number number) {
  char raw[sizeof number];
  std::memcpy(raw, &number, sizeof number);
  bytes.append(raw, sizeof number);
}

// Positions as 4-byte numbers, then corners as 2-byte ones.
inline std::string gltf_buffer(const RawMesh& mesh) {
  std::string bytes;
  for (const double x : mesh.vertices.reshaped<Eigen::RowMajor>())
    append_number(bytes, static_cast<float>(x));
  for (const int corner : mesh.faces.reshaped<Eigen::RowMajor>())
    append_number(bytes, static_cast<std::uint16_t>(corner));
  return bytes;
}

// `node` goes into the only node, e.g. "\"scale\":[2,2,2],"; `buffer` into the buffer, e.g. its place.
inline std::string gltf_text(const RawMesh& mesh, const std::string& node, const std::string& buffer = "") {
  const std::size_t points = 12 * static_cast<std::size_t>(mesh.vertices.rows()),
                    corners = 6 * static_cast<std::size_t>(mesh.faces.rows());
  const auto text = [](std::size_t value) { return std::to_string(value); };
  return R"({"asset":{"version":"2.0"},"scene":0,"scenes":[{"nodes":[0]}],"nodes":[{)" + node +
         R"("mesh":0}],"meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1}]}],"accessors":[)" +
         R"({"bufferView":0,"componentType":5126,"type":"VEC3","count":)" + text(points / 12) +
         R"(},{"bufferView":1,"componentType":5123,"type":"SCALAR","count":)" + text(corners / 2) +
         R"(}],"bufferViews":[{"buffer":0,"byteLength":)" + text(points) + R"(},{"buffer":0,"byteOffset":)" +
         text(points) + R"(,"byteLength":)" + text(corners) + R"(}],"buffers":[{)" + buffer +
         R"("byteLength":)" + text(points + corners) + "}]}";
}

inline std::string glb_of(std::string text, std::string binary) {
  while (text.size() % 4 != 0) text += ' ';
  while (binary.size() % 4 != 0) binary += '\0';
  std::string bytes = "glTF";
  append_number(bytes, std::uint32_t{2});
  append_number(bytes, static_cast<std::uint32_t>(28 + text.size() + binary.size()));
  append_number(bytes, static_cast<std::uint32_t>(text.size()));
  append_number(bytes, std::uint32_t{0x4E4F534A});
  bytes += text;
  append_number(bytes, static_cast<std::uint32_t>(binary.size()));
  append_number(bytes, std::uint32_t{0x004E4942});
  return bytes + binary;
}

}  // namespace wrapgauge
