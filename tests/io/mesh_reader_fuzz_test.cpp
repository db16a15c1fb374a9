#include <gtest/gtest.h>

#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "model/body/check_body.hpp"
#include "model/io/readers/gltf_reader.hpp"
#include "model/io/readers/obj_reader.hpp"
#include "model/io/readers/ply_reader.hpp"
#include "model/io/readers/stl_reader.hpp"
#include "tests/io/gltf_sample.hpp"
#include "tests/io/hexagon_tube.hpp"

namespace wrapgauge {
namespace {

// A small limb so that what is still readable goes on through the body checks.
RawMesh small_limb() {
  return hexagon_tube(40.0, 50.0);
}

std::string as_obj(const RawMesh& mesh) {
  std::string text;
  for (int v = 0; v < mesh.vertices.rows(); ++v) {
    text += "v";
    for (int k = 0; k < 3; ++k) text.append(" ").append(std::to_string(mesh.vertices(v, k)));
    text += "\n";
  }
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    text += "f";
    for (int k = 0; k < 3; ++k) text.append(" ").append(std::to_string(mesh.faces(f, k) + 1));
    // Every fifth face is a (folded) quadrilateral.
    if (f % 5 == 0) text.append(" ").append(std::to_string(1 + (mesh.faces(f, 1) + 3) % 30));
    text += "\n";
  }
  return text;
}

std::string as_stl(const RawMesh& mesh, bool ascii) {
  std::string bytes = ascii ? "solid x\n" : std::string(80, ' ');
  const auto count = static_cast<std::uint32_t>(mesh.faces.rows());
  if (!ascii) bytes.append(reinterpret_cast<const char*>(&count), 4);
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    bytes += ascii ? "facet normal 0 0 0\nouter loop\n" : std::string(12, '\0');
    for (int k = 0; k < 3; ++k) {
      if (ascii) bytes += "vertex";
      for (int i = 0; i < 3; ++i) {
        const auto value = static_cast<float>(mesh.vertices(mesh.faces(f, k), i));
        if (ascii)
          bytes.append(" ").append(std::to_string(value));
        else
          bytes.append(reinterpret_cast<const char*>(&value), 4);
      }
      if (ascii) bytes += "\n";
    }
    bytes += ascii ? "endloop\nendfacet\n" : std::string(2, '\0');
  }
  return ascii ? bytes + "endsolid x\n" : bytes;
}

std::string as_ply(const RawMesh& mesh, bool ascii) {
  std::string bytes = std::string("ply\nformat ") + (ascii ? "ascii" : "binary_little_endian") +
                      " 1.0\nelement vertex " + std::to_string(mesh.vertices.rows()) +
                      "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
                      std::to_string(mesh.faces.rows()) +
                      "\nproperty list uchar int vertex_indices\nend_header\n";
  for (int i = 0; i < mesh.vertices.size(); ++i) {
    const auto value = static_cast<float>(mesh.vertices.data()[i]);
    if (ascii)
      bytes += std::to_string(value) + (i % 3 == 2 ? "\n" : " ");
    else
      bytes.append(reinterpret_cast<const char*>(&value), 4);
  }
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    bytes += ascii ? "3" : "\3";
    for (int k = 0; k < 3; ++k) {
      const int value = mesh.faces(f, k);
      if (ascii)
        bytes.append(" ").append(std::to_string(value));
      else
        bytes.append(reinterpret_cast<const char*>(&value), 4);
    }
    if (ascii) bytes += "\n";
  }
  return bytes;
}

std::string as_glb(RawMesh mesh) {
  mesh.vertices *= 1e-3;
  return glb_of(gltf_text(mesh, R"("translation":[0.1,0,0],)"), gltf_buffer(mesh));
}

// Changes a few bytes, cuts, doubles or drops a stretch.
std::string mutated(std::string bytes, std::mt19937& random) {
  const auto any = [&](std::size_t below) { return below == 0 ? 0 : random() % below; };
  const std::size_t changes = 1 + any(4);
  for (std::size_t i = 0; i < changes; ++i) {
    if (bytes.empty()) break;
    const std::size_t at = any(bytes.size()), run = 1 + any(16);
    switch (any(6)) {
      case 0:
        bytes[at] = static_cast<char>(any(256));
        break;
      case 1:
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << any(8)));
        break;
      case 2:
        bytes.resize(at);
        break;
      case 3:
        bytes.insert(at, bytes.substr(at, run));
        break;
      case 4:
        bytes.erase(at, run);
        break;
      default:
        bytes[at] = "-.,e0/9 \n\xFF"[any(10)];
        break;
    }
  }
  return bytes;
}

using Reader = Result<RawMesh> (*)(std::string_view, const std::string&);

// Whatever the bytes: a mesh whose indices are in range and whose numbers are finite, or a sentence.
void expect_mesh_or_sentence(Reader read, const std::string& bytes, int& read_well) {
  const Result<RawMesh> mesh = read(bytes, "fuzz");
  if (!mesh) {
    EXPECT_TRUE(mesh.problem().message.ends_with('.')) << mesh.problem().message;
    return;
  }
  ++read_well;
  ASSERT_GT(mesh->faces.rows(), 0);
  EXPECT_GE(mesh->faces.minCoeff(), 0);
  EXPECT_LT(mesh->faces.maxCoeff(), mesh->vertices.rows());
  EXPECT_TRUE(mesh->vertices.allFinite());
  const auto body = check_body(*mesh, {});
  EXPECT_TRUE(body.ok() || body.problem().message.ends_with('.'));
}

TEST(MeshReader, SurvivesAnyChangeOfItsBytes) {
  const RawMesh limb = small_limb();
  const std::vector<std::pair<Reader, std::string>> seeds = {
      {read_obj, as_obj(limb)},       {read_stl, as_stl(limb, true)},  {read_stl, as_stl(limb, false)},
      {read_ply, as_ply(limb, true)}, {read_ply, as_ply(limb, false)}, {read_glb, as_glb(limb)}};
  std::mt19937 random(20240229);
  for (const auto& [read, seed] : seeds) {
    int read_well = 0;
    expect_mesh_or_sentence(read, seed, read_well);
    ASSERT_EQ(read_well, 1);
    for (int i = 0; i < 400; ++i) expect_mesh_or_sentence(read, mutated(seed, random), read_well);
    EXPECT_GT(read_well, 10);  // mutations that reach the body checks
    EXPECT_LT(read_well, 395);
  }
}

}  // namespace
}  // namespace wrapgauge
