#include "model/io/readers/mesh_reader.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "model/core/file.hpp"
#include "model/io/readers/byte_source.hpp"
#include "model/io/readers/gltf_reader.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/obj_reader.hpp"
#include "model/io/readers/ply_reader.hpp"
#include "model/io/readers/stl_reader.hpp"

namespace wrapgauge {
namespace {

struct Signature {
  std::string_view start;
  std::string_view what;
};
constexpr std::string_view kGlbStart = "glTF";
// First bytes of files that get renamed to a mesh ending (from the formats' own definitions).
constexpr std::array<Signature, 10> kSignatures = {{{"\x89PNG", "a PNG picture"},
                                                    {"\xFF\xD8\xFF", "a JPEG picture"},
                                                    {"GIF8", "a GIF picture"},
                                                    {"%PDF", "a PDF document"},
                                                    {"PK\x03\x04", "a ZIP archive"},
                                                    {"\x1F\x8B", "a gzip archive"},
                                                    {kGlbStart, "a binary glTF scene"},
                                                    {"<?xml", "an XML document"},
                                                    {"<svg", "an SVG drawing"},
                                                    {"<!DOCTYPE", "a web page"}}};

constexpr std::size_t kStart = 1024;  // bytes that tell

// What the bytes of a file are in truth, and the ending that would say so; none: not to be renamed.
struct Content {
  std::string_view what, ending = {};
};

enum class Ending { kObj, kStl, kPly, kGlb, kGltf, kOther };

Ending ending_of(const std::filesystem::path& file) {
  const std::string text = file.extension().string();
  if (same_word(text, ".obj")) return Ending::kObj;
  if (same_word(text, ".stl")) return Ending::kStl;
  if (same_word(text, ".ply")) return Ending::kPly;
  if (same_word(text, ".glb")) return Ending::kGlb;
  if (same_word(text, ".gltf")) return Ending::kGltf;
  return Ending::kOther;
}

bool is_stl(std::string_view start, std::uintmax_t size) {
  if (binary_stl_facets(start, size)) return true;
  return same_word(take_word(start), "solid") && start.find("facet") != start.npos;
}

// Whether every line of the start is one that an OBJ has, and one of them gives a vertex.
bool is_obj(std::string_view start) {
  bool vertex = false;
  start = start.substr(0, start.find_last_of("\r\n"));  // the last line may be cut
  while (!start.empty()) {
    std::string_view line = take_line(start);
    const std::string_view word = take_word(line);
    constexpr std::array<std::string_view, 11> kKeywords = {"",  "v", "vn", "vt",     "f",     "o",
                                                            "g", "s", "l",  "mtllib", "usemtl"};
    const bool known =
        word.starts_with('#') || std::find(kKeywords.begin(), kKeywords.end(), word) != kKeywords.end();
    if (!known) return false;
    vertex |= word == "v";
  }
  return vertex;
}

// None when the bytes may well be what the ending says.
std::optional<Content> other_content(std::string_view bytes, std::uintmax_t size, Ending ending) {
  for (const Signature& signature : kSignatures)
    if (bytes.starts_with(signature.start) && !(ending == Ending::kGlb && signature.start == kGlbStart))
      return Content{signature.what};
  if (ending != Ending::kPly && (bytes.starts_with("ply\n") || bytes.starts_with("ply\r")))
    return Content{"a PLY mesh", ".ply"};
  if (ending != Ending::kStl && is_stl(bytes, size)) return Content{"an STL mesh", ".stl"};
  if (ending != Ending::kObj && is_obj(bytes)) return Content{"an OBJ mesh", ".obj"};
  const bool binary = bytes.find('\0') != bytes.npos;
  if (ending == Ending::kObj && binary) return Content{"binary data"};
  return std::nullopt;
}

Result<RawMesh> read_as(Ending ending, ByteSource& source, const std::filesystem::path& file) {
  const std::string name = file.filename().string();
  if (ending == Ending::kStl) return read_stl(source, name);
  const std::string_view bytes = source.ahead(static_cast<std::size_t>(source.size()));
  if (ending == Ending::kObj) return read_obj(bytes, name);
  if (ending == Ending::kGlb) return read_glb(bytes, name);
  if (ending == Ending::kGltf) return read_gltf(bytes, name, file.parent_path());
  return read_ply(bytes, name);
}

}  // namespace

Result<RawMesh> read_mesh(const std::filesystem::path& file) {
  const std::string name = file.filename().string();
  const Ending ending = ending_of(file);
  if (ending == Ending::kOther)
    return bad_input(name + " is not read as a body: save the surface as OBJ, STL, PLY, GLB or glTF.");
  auto opened = OpenedFile::open(file);
  if (!opened) return opened.problem();
  if (opened->size() == 0) return bad_input(name + " is empty (0 bytes); save the mesh again.");
  ByteSource source(std::move(opened).value());
  const std::string_view start = source.ahead(kStart).substr(0, kStart);
  if (const auto other = other_content(start, source.size(), ending))
    return bad_input(name + " is " + std::string(other->what) + ", not what its ending says; " +
                     (other->ending.empty() ? "choose the mesh file itself."
                                            : "rename it to end in " + std::string(other->ending) + "."));
  Result<RawMesh> mesh = read_as(ending, source, file);
  if (source.problem()) return *source.problem();
  return mesh;
}

}  // namespace wrapgauge
