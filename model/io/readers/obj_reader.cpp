#include "model/io/readers/obj_reader.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <istream>
#include <optional>
#include <span>
#include <streambuf>
#include <utility>
#include <vector>

#include "model/io/readers/growing_rows.hpp"
#include "model/io/readers/mesh_reader_text.hpp"

#define TINYOBJLOADER_USE_DOUBLE
#define TINYOBJLOADER_IMPLEMENTATION
#include <tiny_obj_loader.h>

namespace wrapgauge {
namespace {

// Larger polygons make the library's ear clipping take long. Judgement.
constexpr std::size_t kMostCorners = 4096;

// Statements of the format that carry no surface of points and faces. Free-form curves and surfaces are among
// them.
constexpr std::array kIgnored = {
    "vt",     "vn",       "vp",     "l",      "p",        "o",          "g",        "s",    "mg",   "usemtl",
    "mtllib", "lod",      "usemap", "maplib", "bevel",    "cstype",     "deg",      "bmat", "step", "curv",
    "curv2",  "surf",     "parm",   "trim",   "hole",     "scrv",       "sp",       "end",  "con",  "call",
    "csh",    "c_interp", "ctech",  "stech",  "d_interp", "shadow_obj", "trace_obj"};

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

std::string_view take_blanks(std::string_view text) {
  return text.substr(std::min(text.find_first_not_of(" \t"), text.size()));
}

// Takes the digits off the front of `text`; how many there were.
std::size_t take_digits(std::string_view& text) {
  std::size_t count = 0;
  while (count < text.size() && is_digit(text[count])) ++count;
  text.remove_prefix(count);
  return count;
}

bool take_sign(std::string_view& text) {
  const bool found = !text.empty() && (text[0] == '-' || text[0] == '+');
  if (found) text.remove_prefix(1);
  return found;
}

bool ends_here(std::string_view text) {
  return text.empty() || text[0] == ' ' || text[0] == '\t';
}

// Whether `text` starts with three blank-separated decimal numbers, written as the library reads them.
bool starts_with_numbers(std::string_view text) {
  for (int k = 0; k < 3; ++k) {
    text = take_blanks(text);
    take_sign(text);
    std::size_t digits = take_digits(text);
    if (text.starts_with('.')) {
      text.remove_prefix(1);
      digits += take_digits(text);
    }
    if (digits == 0) return false;
    if (!text.empty() && (text[0] == 'e' || text[0] == 'E')) {
      text.remove_prefix(1);
      take_sign(text);
      if (const std::size_t exponent = take_digits(text); exponent == 0 || exponent > 3) return false;
    }
    if (!ends_here(text)) return false;
  }
  return true;
}

// Whether `text` is nothing but three or more face corners "i", "i/j", "i//k" or "i/j/k", each i short enough
// for the library's numbers.
bool is_all_corners(std::string_view text) {
  std::size_t corners = 0;
  for (text = take_blanks(text); !text.empty(); text = take_blanks(text), ++corners) {
    take_sign(text);
    if (const std::size_t digits = take_digits(text); digits == 0 || digits > 9) return false;
    std::size_t slashes = 0;
    if (text.starts_with('/'))
      for (; !ends_here(text); text.remove_prefix(1)) {
        if (text[0] == '/' ? ++slashes > 2 : !is_digit(text[0]) && text[0] != '-') return false;
      }
    if (!ends_here(text)) return false;
  }
  return corners >= 3;
}

// Hands the statements of an OBJ text to the library one at a time and takes what it read from each, so that
// the line of every vertex and face is known. A statement that is not written plainly is looked at word by
// word first and handed on in plain words.
class ObjReading : private std::streambuf {
 public:
  ObjReading(std::string_view text, const std::string& name) : rest_(text), name_(name) {
    if (rest_.starts_with("\xEF\xBB\xBF")) rest_.remove_prefix(3);
  }

  Result<RawMesh> read() {
    tinyobj::callback_t callback;
    callback.vertex_cb = [](void* self, double x, double y, double z, double) {
      static_cast<ObjReading*>(self)->add_vertex({x, y, z});
    };
    callback.index_cb = [](void* self, tinyobj::index_t* corners, int count) {
      static_cast<ObjReading*>(self)->add_face({corners, static_cast<std::size_t>(count)});
    };
    std::istream stream(this);
    stream.exceptions(std::ios::badbit);  // hands on what underflow throws instead of ending there
    tinyobj::LoadObjWithCallback(stream, callback, this);
    if (!problem_) problem_ = check_whole();
    if (problem_) return *problem_;
    return mesh();
  }

 private:
  // The next statement for the library: a vertex or a face.
  int_type underflow() override {
    while (!problem_ && !rest_.empty()) {
      ++line_;
      line_ += std::exchange(continuation_lines_, 0);
      std::string_view line = take_line(rest_);
      while (line.ends_with('\\') &&
             !rest_.empty()) {  // a backslash continues the statement on the next line
        joined_ = std::string(line.substr(0, line.size() - 1)) + ' ' + std::string(take_line(rest_));
        line = joined_;
        ++continuation_lines_;
      }
      if (offer(line)) return traits_type::to_int_type(*gptr());
    }
    return traits_type::eof();
  }

  // Whether the line holds something for the library, which then lies ready.
  bool offer(std::string_view line) {
    statement_ = line;
    const std::string_view keyword = take_word(line);
    if (keyword == "v") {
      if (!starts_with_numbers(line)) return offer_words("v", line, fault_of_vertex(line, count() + 1));
      return lay_ready(statement_);
    }
    if (keyword == "f" || keyword == "fo") {
      if (keyword == "fo" || !is_all_corners(line)) return offer_words("f", line, fault_of_face(line));
      return lay_ready(statement_);
    }
    if (keyword.empty() || keyword[0] == '#') return false;
    if (std::find(kIgnored.begin(), kIgnored.end(), keyword) == kIgnored.end())
      problem_ =
          fault(Phrase::worded("starts with %1, which is no OBJ statement", {name_of(in_quotes(keyword))}));
    return false;
  }

  bool offer_words(std::string_view keyword, std::string_view line, std::optional<Problem> found) {
    problem_ = std::move(found);
    if (problem_) return false;
    std::string plain(keyword);
    for (std::string_view word = take_word(line); !word.empty() && word[0] != '#'; word = take_word(line))
      plain.append(" ").append(keyword == "f" ? word.substr(0, word.find('/')) : word);
    return lay_ready(plain);
  }

  bool lay_ready(std::string_view statement) {
    ready_.assign(statement);
    ready_ += '\n';
    setg(ready_.data(), ready_.data(), ready_.data() + ready_.size());
    return true;
  }

  std::size_t count() const { return static_cast<std::size_t>(vertices_.count()); }

  std::optional<Problem> fault_of_vertex(std::string_view words, std::size_t number) const {
    for (int k = 0; k < 3; ++k) {
      const std::string_view word = take_word(words);
      if (const auto why = coordinate_fault(word, parse_number(word)))
        return bad_input(Phrase::worded("%1: vertex %2 (line %3) %4; export the mesh again.",
                                        {name_of(name_), count_of(number), count_of(line_), *why}),
                         {{ProblemPlace::Kind::kVertex, static_cast<int>(number - 1)}});
    }
    return std::nullopt;
  }

  void add_vertex(Vec3 point) {
    if (!is_usable(point[0]) || !is_usable(point[1]) || !is_usable(point[2])) {
      std::string_view words = statement_;
      take_word(words);
      problem_ = fault_of_vertex(words, count() + 1);
      if (problem_) return;
      for (int k = 0; k < 3; ++k) point[k] = parse_number(take_word(words)).value_or(0.0);
    }
    vertices_.add(point[0], point[1], point[2]);
    if (count() > kMostElements)
      problem_ = fault(Phrase::worded("brings more than 10 million vertices; thin the mesh out"));
  }

  std::optional<Problem> fault_of_face(std::string_view words) {
    std::size_t corners = 0;
    for (std::string_view word = take_word(words); !word.empty() && word[0] != '#'; word = take_word(words)) {
      const auto index = parse_integer(word.substr(0, word.find('/')));
      if (!index)
        return fault(Phrase::worded("has %1 where a face corner belongs", {name_of(in_quotes(word))}));
      if (*index == 0)
        return fault(Phrase::worded("has a face corner with index 0; OBJ counts vertices from 1"));
      const long long vertex = numbered(*index);
      if (vertex < 1)
        return fault(Phrase::worded("has the face corner %1, which reaches before the first vertex",
                                    {name_of(in_quotes(word))}));
      note_highest(vertex);
      ++corners;
    }
    if (corners < 3)
      return fault(Phrase::worded("has a face of %1 corners; a face needs at least 3", {count_of(corners)}));
    if (corners > kMostCorners)
      return fault(Phrase::worded("has a face of %1 corners; at most 4096 are read", {count_of(corners)}));
    return std::nullopt;
  }

  // Negative indices count back from the last vertex so far.
  long long numbered(long long index) const {
    return index > 0 ? index : static_cast<long long>(count()) + 1 + index;
  }

  void note_highest(long long vertex) {
    if (vertex <= highest_index_) return;
    highest_index_ = vertex;
    highest_index_line_ = line_;
  }

  void add_face(std::span<const tinyobj::index_t> corners) {
    const bool usable = corners.size() >= 3 && corners.size() <= kMostCorners &&
                        std::all_of(corners.begin(), corners.end(), [&](const tinyobj::index_t& corner) {
                          return corner.vertex_index != 0 && numbered(corner.vertex_index) >= 1;
                        });
    if (!usable) {
      std::string_view words = statement_;
      take_word(words);
      problem_ = fault_of_face(words);
      return;
    }
    for (const tinyobj::index_t& corner : corners) {
      const long long vertex = numbered(corner.vertex_index);
      note_highest(vertex);
      corners_.push_back(static_cast<int>(vertex - 1));
    }
    corner_counts_.push_back(static_cast<std::uint16_t>(corners.size()));
    triangles_ += corners.size() - 2;
    if (triangles_ > kMostElements)
      problem_ = fault(Phrase::worded("brings more than 10 million triangles; thin the mesh out"));
  }

  std::optional<Problem> check_whole() const {
    if (count() == 0)
      return bad_input(Phrase::worded("%1 holds no vertices; it is not a body surface.", {name_of(name_)}));
    if (highest_index_ > static_cast<long long>(count()))
      return bad_input(
          Phrase::worded("%1: line %2 names vertex %3, but the file has %4; it is damaged or cut short.",
                         {name_of(name_), count_of(highest_index_line_),
                          count_of(static_cast<std::size_t>(highest_index_)), count_of(count())}));
    if (triangles_ == 0)
      return bad_input(
          Phrase::worded("%1 holds %2 vertices but no faces; export it as a surface, not as points or lines.",
                         {name_of(name_), count_of(count())}));
    return std::nullopt;
  }

  Problem fault(const Phrase& what) const {
    return bad_input(Phrase::worded("%1: line %2 %3.", {name_of(name_), count_of(line_), what}));
  }

  Result<RawMesh> mesh() {
    RawMesh mesh;
    mesh.vertices = vertices_.take();
    mesh.faces = cut(mesh.vertices);
    if (mesh.faces.rows() == 0)
      return bad_input(Phrase::worded("%1 holds no face that can be cut into triangles.", {name_of(name_)}));
    const long long missing = static_cast<long long>(triangles_) - mesh.faces.rows();
    if (missing > 0)
      mesh.notes.push_back(Phrase::worded(
          "Polygons with corners on one line or on each other lost %1 triangles of no area when "
          "they were cut up.",
          {figures_of(std::to_string(missing))}));
    return mesh;
  }

  // Polygons are cut, as the library does it, when all vertices are known: faces may come first.
  Triangles cut(const Points3& vertices) const {
    if (corners_.size() == 3 * corner_counts_.size())
      return Eigen::Map<const Triangles>(corners_.data(), static_cast<Eigen::Index>(corner_counts_.size()),
                                         3);
    const std::vector<double> coordinates(vertices.data(), vertices.data() + vertices.size());
    tinyobj::PrimGroup polygon;
    polygon.faceGroup.resize(1);
    tinyobj::shape_t pieces;
    GrowingRows<Triangles> faces;
    auto corner = corners_.begin();
    for (const std::uint16_t count : corner_counts_) {
      auto& corners = polygon.faceGroup[0].vertex_indices;
      corners.clear();
      for (std::uint16_t k = 0; k < count; ++k) corners.emplace_back(*corner++);
      pieces.mesh = {};
      tinyobj::exportGroupsToShape(&pieces, polygon, {}, -1, "", true, coordinates, nullptr);
      const auto& found = pieces.mesh.indices;
      for (std::size_t k = 0; k + 2 < found.size(); k += 3)
        faces.add(found[k].vertex_index, found[k + 1].vertex_index, found[k + 2].vertex_index);
    }
    return faces.take();
  }

  std::string_view rest_;
  const std::string& name_;
  std::string_view statement_;  // as it stands in the file
  std::string joined_, ready_;  // a continued statement; the statement as the library gets it
  std::size_t line_ = 0, continuation_lines_ = 0, triangles_ = 0, highest_index_line_ = 0;
  long long highest_index_ = 0;
  GrowingRows<Points3> vertices_;
  std::vector<int> corners_;  // of all faces, one after the other
  std::vector<std::uint16_t> corner_counts_;
  std::optional<Problem> problem_;
};

}  // namespace

Result<RawMesh> read_obj(std::string_view text, const std::string& name) {
  return ObjReading(text, name).read();
}

}  // namespace wrapgauge
