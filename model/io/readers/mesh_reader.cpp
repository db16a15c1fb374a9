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

constexpr std::string_view kGlbStart = "glTF";

struct Signature {
  std::string_view start;
  Phrase what;
};
// First bytes of files that get renamed to a mesh ending (from the formats' own definitions).
std::array<Signature, 10> signatures() {
  return {{{"\x89PNG", Phrase::worded("a PNG picture")},
           {"\xFF\xD8\xFF", Phrase::worded("a JPEG picture")},
           {"GIF8", Phrase::worded("a GIF picture")},
           {"%PDF", Phrase::worded("a PDF document")},
           {"PK\x03\x04", Phrase::worded("a ZIP archive")},
           {"\x1F\x8B", Phrase::worded("a gzip archive")},
           {kGlbStart, Phrase::worded("a binary glTF scene")},
           {"<?xml", Phrase::worded("an XML document")},
           {"<svg", Phrase::worded("an SVG drawing")},
           {"<!DOCTYPE", Phrase::worded("a web page")}}};
}

constexpr std::size_t kStart = 1024;  // bytes that tell

// What the bytes of a file are in truth, and the ending that would say so; none: not to be renamed.
struct Content {
  Phrase what;
  std::string_view ending = {};
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
  for (const Signature& signature : signatures())
    if (bytes.starts_with(signature.start) && !(ending == Ending::kGlb && signature.start == kGlbStart))
      return Content{signature.what};
  if (ending != Ending::kPly && (bytes.starts_with("ply\n") || bytes.starts_with("ply\r")))
    return Content{Phrase::worded("a PLY mesh"), ".ply"};
  if (ending != Ending::kStl && is_stl(bytes, size)) return Content{Phrase::worded("an STL mesh"), ".stl"};
  if (ending != Ending::kObj && is_obj(bytes)) return Content{Phrase::worded("an OBJ mesh"), ".obj"};
  const bool binary = bytes.find('\0') != bytes.npos;
  if (ending == Ending::kObj && binary) return Content{Phrase::worded("binary data")};
  return std::nullopt;
}

Problem not_as_named(const std::string& name, const Content& content) {
  if (content.ending.empty())
    return bad_input(Phrase::worded("%1 is %2, not what its ending says; choose the mesh file itself.",
                                    {name_of(name), content.what}));
  return bad_input(Phrase::worded("%1 is %2, not what its ending says; rename it to end in %3.",
                                  {name_of(name), content.what, name_of(std::string(content.ending))}));
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
    return bad_input(Phrase::worded(
        "%1 is not read as a body: save the surface as OBJ, STL, PLY, GLB or glTF.", {name_of(name)}));
  auto opened = OpenedFile::open(file);
  if (!opened) return opened.problem();
  if (opened->size() == 0)
    return bad_input(Phrase::worded("%1 is empty (0 bytes); save the mesh again.", {name_of(name)}));
  ByteSource source(std::move(opened).value());
  const std::string_view start = source.ahead(kStart).substr(0, kStart);
  if (const auto other = other_content(start, source.size(), ending)) return not_as_named(name, *other);
  Result<RawMesh> mesh = read_as(ending, source, file);
  if (source.problem()) return *source.problem();
  return mesh;
}

}  // namespace wrapgauge
