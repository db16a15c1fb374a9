#include "model/io/writers/mesh_writer.hpp"

#include <Eigen/Geometry>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>

#include "model/core/file.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/writers/vtp_writer.hpp"

namespace wrapgauge {
namespace {

static_assert(std::endian::native == std::endian::little, "numbers are written as they lie in memory");

constexpr const char* kUnitWords = "unit: mm";

// A name that stays on one line of a text header and holds printable letters only.
std::string header_name(std::string_view name) {
  std::string text(name.substr(0, 60));
  for (char& letter : text)
    if (letter < ' ' || letter > '~') letter = '_';
  return text;
}

template <class Number>
void append(std::string& bytes, Number number) {
  char raw[sizeof number];
  std::memcpy(raw, &number, sizeof number);
  bytes.append(raw, sizeof number);
}

void append_vector(std::string& bytes, const Vec3& v) {
  for (int k = 0; k < 3; ++k) append(bytes, static_cast<float>(v[k]));
}

// Written so that a number is the same text in every locale, with "-0" made "0".
std::string coordinate_word(double value_mm) {
  const double rounded = std::round(value_mm * 1e7) / 1e7;
  return number_word(rounded == 0.0 ? 0.0 : rounded);
}

std::string obj_bytes(const TriangleMesh& mesh, std::string_view name) {
  std::string text = "# " + std::string(kUnitWords) + "\no ";
  text.append(header_name(name)).append("\n");
  for (Eigen::Index v = 0; v < mesh.vertices_m.rows(); ++v) {
    text += "v";
    for (int k = 0; k < 3; ++k) text.append(" ").append(coordinate_word(1e3 * mesh.vertices_m(v, k)));
    text += "\n";
  }
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f) {
    text += "f";
    for (int k = 0; k < 3; ++k) text.append(" ").append(std::to_string(mesh.faces(f, k) + 1));
    text += "\n";
  }
  return text;
}

std::string stl_bytes(const TriangleMesh& mesh, std::string_view name) {
  // The header must not begin with "solid", which says that text follows.
  std::string bytes = std::string(kUnitWords) + "; " + header_name(name);
  bytes.resize(80, ' ');
  append(bytes, static_cast<std::uint32_t>(mesh.faces.rows()));
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f) {
    const auto corner = [&](int k) -> Vec3 {
      return 1e3 * mesh.vertices_m.row(mesh.faces(f, k)).transpose();
    };
    append_vector(bytes, (corner(1) - corner(0)).cross(corner(2) - corner(0)).normalized());
    for (int k = 0; k < 3; ++k) append_vector(bytes, corner(k));
    append(bytes, std::uint16_t{0});
  }
  return bytes;
}

std::string ply_bytes(const TriangleMesh& mesh, std::string_view name) {
  std::string bytes =
      std::string("ply\nformat binary_little_endian 1.0\ncomment ") + kUnitWords +
      "\ncomment name: " + header_name(name) + "\nelement vertex " + std::to_string(mesh.vertices_m.rows()) +
      "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
      std::to_string(mesh.faces.rows()) + "\nproperty list uchar int vertex_indices\nend_header\n";
  for (Eigen::Index v = 0; v < mesh.vertices_m.rows(); ++v)
    append_vector(bytes, 1e3 * mesh.vertices_m.row(v).transpose());
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f) {
    bytes += '\3';
    for (int k = 0; k < 3; ++k) append(bytes, std::int32_t{mesh.faces(f, k)});
  }
  return bytes;
}

}  // namespace

Result<MeshFormat> mesh_format_of(const std::filesystem::path& file) {
  const std::string ending = file.extension().string();
  if (same_word(ending, ".obj")) return MeshFormat::kObj;
  if (same_word(ending, ".stl")) return MeshFormat::kStl;
  if (same_word(ending, ".ply")) return MeshFormat::kPly;
  if (same_word(ending, ".vtp")) return MeshFormat::kVtp;
  return bad_input(
      Phrase::worded("The file name %1 does not say what to write: end it with .obj, .stl, .ply or .vtp.",
                     {name_of(in_quotes(file.filename().string()))}));
}

Result<std::string> mesh_bytes(const TriangleMesh& mesh, MeshFormat format, std::string_view name) {
  if (mesh.faces.rows() == 0)
    return bad_input(Phrase::worded("The surface has no faces; there is nothing to write."));
  if (!mesh.vertices_m.allFinite())
    return bad_input(Phrase::worded("A vertex of the surface is not a finite number; it is not written."));
  switch (format) {
    case MeshFormat::kObj:
      return obj_bytes(mesh, name);
    case MeshFormat::kStl:
      return stl_bytes(mesh, name);
    case MeshFormat::kPly:
      return ply_bytes(mesh, name);
    case MeshFormat::kVtp:
      break;
  }
  return vtp_bytes(mesh, {});
}

Result<std::string> mesh_bytes(const TriangleMesh& mesh, const std::filesystem::path& file) {
  const auto format = mesh_format_of(file);
  if (!format) return format.problem();
  return mesh_bytes(mesh, *format, file.stem().string());
}

Result<std::monostate> write_mesh(const TriangleMesh& mesh, const std::filesystem::path& file) {
  const auto bytes = mesh_bytes(mesh, file);
  if (!bytes) return bytes.problem();
  return write_file_atomically(file, *bytes);
}

}  // namespace wrapgauge
