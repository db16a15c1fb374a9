#include "model/io/readers/obj_reader.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"

#define TINYOBJLOADER_USE_DOUBLE
#define TINYOBJLOADER_IMPLEMENTATION
#include <tiny_obj_loader.h>

namespace wrapgauge {
namespace {

// Larger polygons make the ear clipping below take long. Judgement.
constexpr std::size_t kMostCorners = 4096;

// Statements of the format that carry no surface of points and faces. Free-form curves and surfaces are among
// them.
constexpr std::array kIgnored = {
    "vt",     "vn",       "vp",     "l",      "p",        "o",          "g",        "s",    "mg",   "usemtl",
    "mtllib", "lod",      "usemap", "maplib", "bevel",    "cstype",     "deg",      "bmat", "step", "curv",
    "curv2",  "surf",     "parm",   "trim",   "hole",     "scrv",       "sp",       "end",  "con",  "call",
    "csh",    "c_interp", "ctech",  "stech",  "d_interp", "shadow_obj", "trace_obj"};

// Checks an OBJ text line by line and writes what counts, plainly, for the library: "v x y z" and "f a b c
// ...".
class ObjScan {
 public:
  explicit ObjScan(const std::string& name) : name_(name) {}

  std::optional<Problem> scan(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    while (!text.empty()) {
      ++line_;
      std::string_view line = take_line(text);
      std::string joined;
      while (line.ends_with('\\') && !text.empty()) {  // a backslash continues the statement on the next line
        joined = std::string(line.substr(0, line.size() - 1)) + ' ' + std::string(take_line(text));
        continued_.push_back(std::move(joined));
        line = continued_.back();
        ++continuation_lines_;
      }
      if (auto problem = scan_line(line)) return problem;
      continued_.clear();
      line_ += std::exchange(continuation_lines_, 0);
    }
    return check_whole();
  }

  std::size_t vertices() const { return vertices_; }
  std::size_t triangles() const { return triangles_; }
  const std::string& plain() const { return plain_; }

 private:
  std::optional<Problem> scan_line(std::string_view line) {
    const std::string_view keyword = take_word(line);
    if (keyword.empty() || keyword[0] == '#') return std::nullopt;
    if (keyword == "v") return scan_vertex(line);
    if (keyword == "f" || keyword == "fo") return scan_face(line);
    if (std::find(kIgnored.begin(), kIgnored.end(), keyword) != kIgnored.end()) return std::nullopt;
    return fault("starts with " + in_quotes(keyword) + ", which is no OBJ statement");
  }

  std::optional<Problem> scan_vertex(std::string_view line) {
    ++vertices_;
    plain_ += 'v';
    for (int k = 0; k < 3; ++k) {
      const std::string_view word = take_word(line);
      const auto value = parse_number(word);
      if (const auto why = coordinate_fault(word, value))
        return bad_input(name_ + ": vertex " + std::to_string(vertices_) + " (line " + std::to_string(line_) +
                             ") " + *why + "; export the mesh again.",
                         {{ProblemPlace::Kind::kVertex, static_cast<int>(vertices_ - 1)}});
      plain_ += ' ';
      plain_ += number_word(*value);
    }
    plain_ += '\n';
    if (vertices_ > kMostElements) return fault("brings more than 10 million vertices; thin the mesh out");
    return std::nullopt;
  }

  std::optional<Problem> scan_face(std::string_view line) {
    std::size_t corners = 0;
    plain_ += 'f';
    for (std::string_view word = take_word(line); !word.empty(); word = take_word(line)) {
      if (word[0] == '#') break;
      const auto index = parse_integer(word.substr(0, word.find('/')));
      if (!index) return fault("has " + in_quotes(word) + " where a face corner belongs");
      if (*index == 0) return fault("has a face corner with index 0; OBJ counts vertices from 1");
      const long long vertex = *index > 0 ? *index : static_cast<long long>(vertices_) + 1 + *index;
      if (vertex < 1)
        return fault("has the face corner " + in_quotes(word) + ", which reaches before the first vertex");
      if (vertex > highest_index_) {
        highest_index_ = vertex;
        highest_index_line_ = line_;
      }
      plain_ += ' ';
      plain_ += std::to_string(vertex);
      ++corners;
    }
    plain_ += '\n';
    if (corners < 3)
      return fault("has a face of " + std::to_string(corners) + " corners; a face needs at least 3");
    if (corners > kMostCorners)
      return fault("has a face of " + std::to_string(corners) + " corners; at most 4096 are read");
    triangles_ += corners - 2;
    if (triangles_ > kMostElements) return fault("brings more than 10 million triangles; thin the mesh out");
    return std::nullopt;
  }

  std::optional<Problem> check_whole() const {
    if (vertices_ == 0) return bad_input(name_ + " holds no vertices; it is not a body surface.");
    if (triangles_ == 0)
      return bad_input(name_ + " holds " + std::to_string(vertices_) +
                       " vertices but no faces; export it as a surface, not as points or lines.");
    if (highest_index_ > static_cast<long long>(vertices_))
      return bad_input(name_ + ": line " + std::to_string(highest_index_line_) + " names vertex " +
                       std::to_string(highest_index_) + ", but the file has " + std::to_string(vertices_) +
                       "; it is damaged or cut short.");
    return std::nullopt;
  }

  Problem fault(const std::string& what) const {
    return bad_input(name_ + ": line " + std::to_string(line_) + " " + what + ".");
  }

  const std::string& name_;
  std::string plain_;
  std::vector<std::string> continued_;  // keeps joined lines alive while they are scanned
  std::size_t line_ = 0, continuation_lines_ = 0, vertices_ = 0, triangles_ = 0, highest_index_line_ = 0;
  long long highest_index_ = 0;
};

RawMesh to_mesh(const tinyobj::ObjReader& reader) {
  const auto& coordinates = reader.GetAttrib().vertices;
  RawMesh mesh;
  mesh.vertices = Eigen::Map<const Points3>(coordinates.data(), static_cast<int>(coordinates.size() / 3), 3);
  std::size_t corners = 0;
  for (const auto& shape : reader.GetShapes()) corners += shape.mesh.indices.size();
  mesh.faces.resize(static_cast<int>(corners / 3), 3);
  int corner = 0;
  for (const auto& shape : reader.GetShapes())
    for (const auto& index : shape.mesh.indices) mesh.faces.data()[corner++] = index.vertex_index;
  return mesh;
}

}  // namespace

Result<RawMesh> read_obj(std::string_view text, const std::string& name) {
  ObjScan scan(name);
  if (auto problem = scan.scan(text)) return *problem;
  tinyobj::ObjReader reader;
  tinyobj::ObjReaderConfig config;
  config.triangulate = true;
  config.vertex_color = false;
  if (!reader.ParseFromString(scan.plain(), "", config))
    return bad_input(name + " could not be read as OBJ; export the mesh again.");
  RawMesh mesh = to_mesh(reader);
  if (mesh.vertices.rows() != static_cast<int>(scan.vertices()) || mesh.faces.rows() == 0 ||
      mesh.faces.minCoeff() < 0 || mesh.faces.maxCoeff() >= mesh.vertices.rows())
    return bad_input(name + " holds no face that can be cut into triangles.");
  const long long missing = static_cast<long long>(scan.triangles()) - mesh.faces.rows();
  if (missing > 0)
    mesh.notes.push_back(
        Phrase::worded("Polygons with corners on one line or on each other lost %1 triangles of no area when "
                       "they were cut up.",
                       {figures_of(std::to_string(missing))}));
  return mesh;
}

}  // namespace wrapgauge
