// From a mesh file to a checked body (what `wrapgauge body check` does), by format and thousands of
// triangles.
#include <benchmark/benchmark.h>

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <numbers>
#include <string>
#include <utility>

#include "model/body/check_body.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "tests/bench/bench_process.hpp"

namespace wrapgauge {
namespace {

static_assert(std::endian::native == std::endian::little, "numbers are written as they lie");

// A limb of 260 mm with bulges, twice as many triangles as corners.
RawMesh limb(std::int64_t thousands) {
  const int around = static_cast<int>(std::lround(std::sqrt(400.0 * static_cast<double>(thousands))));
  const int along = static_cast<int>(500 * thousands / around);
  RawMesh mesh;
  mesh.vertices.resize(around * (along + 1), 3);
  mesh.faces.resize(2 * around * along, 3);
  int face = 0;
  for (int j = 0; j <= along; ++j)
    for (int i = 0; i < around; ++i) {
      const double turn = 2.0 * std::numbers::pi * i / around, share = static_cast<double>(j) / along;
      const double radius = 38.0 + 8.0 * std::sin(2.5 * share) + 4.0 * share + 1.5 * std::cos(2.0 * turn) +
                            0.8 * std::sin(5.0 * turn + 7.0 * share);
      const int a = j * around + i, b = j * around + (i + 1) % around;
      mesh.vertices.row(a) << 1.1 * radius * std::cos(turn), radius * std::sin(turn), 260.0 * share;
      if (j == along) continue;
      mesh.faces.row(face++) << a, b, b + around;
      mesh.faces.row(face++) << a, b + around, a + around;
    }
  return mesh;
}

// Appends to a file, so that the text of a large mesh is never held whole.
class Out {
 public:
  explicit Out(const std::filesystem::path& file) : file_(std::fopen(file.c_str(), "wb")) {}
  ~Out() { close(); }
  Out(const Out&) = delete;
  Out& operator=(const Out&) = delete;

  template <class... Values>
  void text(const char* format, Values... values) {
    std::fprintf(file_, format, values...);
  }
  template <class Value>
  void bytes(const Value& value) {
    std::fwrite(&value, sizeof value, 1, file_);
  }
  void close() {
    if (file_) std::fclose(std::exchange(file_, nullptr));
  }

 private:
  std::FILE* file_;
};

std::array<float, 3> stored(const RawMesh& mesh, int v) {
  return {static_cast<float>(mesh.vertices(v, 0)), static_cast<float>(mesh.vertices(v, 1)),
          static_cast<float>(mesh.vertices(v, 2))};
}

void write_stl(const RawMesh& mesh, Out& out) {
  out.bytes(std::array<char, 80>{});
  out.bytes(static_cast<std::uint32_t>(mesh.faces.rows()));
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    out.bytes(std::array<float, 3>{});
    for (int k = 0; k < 3; ++k) out.bytes(stored(mesh, mesh.faces(f, k)));
    out.bytes(std::uint16_t{0});
  }
}

void write_text_stl(const RawMesh& mesh, Out& out) {
  out.text("solid limb\n");
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    out.text("  facet normal %e %e %e\n    outer loop\n", 0.123456, 0.234567, -0.345678);
    for (int k = 0; k < 3; ++k) {
      const auto at = mesh.vertices.row(mesh.faces(f, k));
      out.text("      vertex %e %e %e\n", at[0], at[1], at[2]);
    }
    out.text("    endloop\n  endfacet\n");
  }
  out.text("endsolid limb\n");
}

void write_obj(const RawMesh& mesh, Out& out) {
  for (int v = 0; v < mesh.vertices.rows(); ++v)
    out.text("v %.6f %.6f %.6f\n", mesh.vertices(v, 0), mesh.vertices(v, 1), mesh.vertices(v, 2));
  for (int f = 0; f < mesh.faces.rows(); ++f)
    out.text("f %d %d %d\n", mesh.faces(f, 0) + 1, mesh.faces(f, 1) + 1, mesh.faces(f, 2) + 1);
}

void write_ply_header(const RawMesh& mesh, const char* format, Out& out) {
  out.text("ply\nformat %s 1.0\nelement vertex %d\nproperty float x\nproperty float y\nproperty float z\n",
           format, static_cast<int>(mesh.vertices.rows()));
  out.text("element face %d\nproperty list uchar int vertex_indices\nend_header\n",
           static_cast<int>(mesh.faces.rows()));
}

void write_ply(const RawMesh& mesh, Out& out) {
  write_ply_header(mesh, "binary_little_endian", out);
  for (int v = 0; v < mesh.vertices.rows(); ++v) out.bytes(stored(mesh, v));
  for (int f = 0; f < mesh.faces.rows(); ++f) {
    out.bytes('\3');
    out.bytes(std::array<int, 3>{mesh.faces(f, 0), mesh.faces(f, 1), mesh.faces(f, 2)});
  }
}

void write_text_ply(const RawMesh& mesh, Out& out) {
  write_ply_header(mesh, "ascii", out);
  for (int v = 0; v < mesh.vertices.rows(); ++v)
    out.text("%.6f %.6f %.6f\n", mesh.vertices(v, 0), mesh.vertices(v, 1), mesh.vertices(v, 2));
  for (int f = 0; f < mesh.faces.rows(); ++f)
    out.text("3 %d %d %d\n", mesh.faces(f, 0), mesh.faces(f, 1), mesh.faces(f, 2));
}

std::string gltf_description(const RawMesh& mesh) {
  const std::string points = std::to_string(12 * mesh.vertices.rows()),
                    corners = std::to_string(12 * mesh.faces.rows());
  std::string text =
      R"({"asset":{"version":"2.0"},"meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1}]}],)"
      R"("buffers":[{"byteLength":)" +
      std::to_string(12 * (mesh.vertices.rows() + mesh.faces.rows())) +
      R"(}],"bufferViews":[{"buffer":0,"byteLength":)" + points + R"(},{"buffer":0,"byteOffset":)" + points +
      R"(,"byteLength":)" + corners + R"(}],"accessors":[{"bufferView":0,"componentType":5126,"count":)" +
      std::to_string(mesh.vertices.rows()) +
      R"(,"type":"VEC3"},{"bufferView":1,"componentType":5125,"count":)" +
      std::to_string(3 * mesh.faces.rows()) + R"(,"type":"SCALAR"}]})";
  text.append((4 - text.size() % 4) % 4, ' ');
  return text;
}

void write_glb(const RawMesh& mesh, Out& out) {
  const std::string description = gltf_description(mesh);
  const auto text = static_cast<std::uint32_t>(description.size()),
             binary = static_cast<std::uint32_t>(12 * (mesh.vertices.rows() + mesh.faces.rows()));
  for (const std::uint32_t word : {0x46546C67U, 2U, 28 + text + binary, text, 0x4E4F534AU}) out.bytes(word);
  out.text("%s", description.c_str());
  for (const std::uint32_t word : {binary, 0x004E4942U}) out.bytes(word);
  for (int v = 0; v < mesh.vertices.rows(); ++v)
    for (const float millimetres : stored(mesh, v)) out.bytes(1e-3F * millimetres);
  for (int f = 0; f < mesh.faces.rows(); ++f)
    for (int k = 0; k < 3; ++k) out.bytes(static_cast<std::uint32_t>(mesh.faces(f, k)));
}

void read_and_check(benchmark::State& state, const char* ending, void (*write)(const RawMesh&, Out&)) {
  const auto file = std::filesystem::temp_directory_path() / (std::string("wrapgauge-bench") + ending);
  {
    const RawMesh mesh = limb(state.range(0));
    Out out(file);
    write(mesh, out);
  }
  for (auto _ : state) {
    auto raw = read_mesh(file);
    if (!raw) return state.SkipWithError(raw.problem().message.c_str());
    const auto checked = check_body(std::move(raw).value(), {});
    if (!checked) return state.SkipWithError(checked.problem().message.c_str());
    state.counters["triangles"] = static_cast<double>(checked->body.surface.faces.rows());
  }
  std::filesystem::remove(file);
  state.counters["peak_mb"] = peak_megabytes();
}

// 2500: the largest that bodies are promised to be read at, in at most 10 s and 700 MB.
#define MESH_READING(format, ending)               \
  void read_##format(benchmark::State& state) {    \
    read_and_check(state, ending, write_##format); \
  }                                                \
  BENCHMARK(read_##format)->Arg(100)->Arg(2500)->Unit(benchmark::kMillisecond)->Iterations(1)
MESH_READING(stl, ".stl");
MESH_READING(text_stl, ".stl");
MESH_READING(obj, ".obj");
MESH_READING(ply, ".ply");
MESH_READING(text_ply, ".ply");
MESH_READING(glb, ".glb");
#undef MESH_READING

}  // namespace
}  // namespace wrapgauge
