#include "model/io/readers/ply_reader.hpp"

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/ply_header.hpp"
#include "model/io/readers/polygon_cut.hpp"

namespace wrapgauge {
namespace {

static_assert(std::endian::native == std::endian::little, "values are copied as they lie");

constexpr std::uint64_t kMostPlyCorners = 255;  // what most files count them in: one byte

template <class T>
double as_double(const unsigned char* bytes) {
  T value;
  std::memcpy(&value, bytes, sizeof value);
  return static_cast<double>(value);
}

double decode(PlyType type, const unsigned char* bytes) {
  switch (type) {
    case PlyType::kInt8:
      return as_double<std::int8_t>(bytes);
    case PlyType::kUint8:
      return as_double<std::uint8_t>(bytes);
    case PlyType::kInt16:
      return as_double<std::int16_t>(bytes);
    case PlyType::kUint16:
      return as_double<std::uint16_t>(bytes);
    case PlyType::kInt32:
      return as_double<std::int32_t>(bytes);
    case PlyType::kUint32:
      return as_double<std::uint32_t>(bytes);
    case PlyType::kFloat:
      return as_double<float>(bytes);
    case PlyType::kDouble:
      return as_double<double>(bytes);
  }
  return 0.0;
}

// The values after the header one by one, ascii or binary.
class PlyValues {
 public:
  PlyValues(std::string_view data, PlyFormat format) : rest_(data), format_(format) {}

  // None: the data ends here or, in ascii, the word is no number of that type.
  std::optional<double> next(PlyType type) {
    if (format_ == PlyFormat::kAscii) {
      word_ = take_word(rest_);
      ended_ = word_.empty();
      const auto value = parse_number(word_);
      if (value && is_integer(type) && *value != std::floor(*value)) return std::nullopt;
      return value;
    }
    const std::size_t size = size_of(type);
    ended_ = rest_.size() < size;
    if (ended_) return std::nullopt;
    unsigned char bytes[8];
    for (std::size_t i = 0; i < size; ++i)
      bytes[i] = static_cast<unsigned char>(rest_[format_ == PlyFormat::kBigEndian ? size - 1 - i : i]);
    rest_.remove_prefix(size);
    number_ = decode(type, bytes);
    return number_;
  }

  bool ended() const { return ended_; }
  // The last value as written; empty when the data ended before it.
  std::string word() const {
    if (format_ == PlyFormat::kAscii || ended_) return std::string(word_);
    return number_word(number_);
  }
  std::size_t left() {
    if (format_ != PlyFormat::kAscii) return rest_.size();
    const std::string_view word = take_word(rest_);
    return word.size() + rest_.size();
  }

 private:
  std::string_view rest_, word_;
  double number_ = 0.0;
  PlyFormat format_;
  bool ended_ = false;
};

// What a property is to a mesh.
enum class PlyRole { kX, kY, kZ, kCorners, kOther };

PlyRole role_of(const PlyElement& element, const PlyProperty& property) {
  const std::string& name = property.name;
  if (element.name == "vertex" && !property.is_list && name.size() == 1 && name[0] >= 'x' && name[0] <= 'z')
    return static_cast<PlyRole>(name[0] - 'x');
  if (element.name == "face" && property.is_list && is_integer(property.type) &&
      (name == "vertex_indices" || name == "vertex_index"))
    return PlyRole::kCorners;
  return PlyRole::kOther;
}

const std::string kFaceElement = "face";

// Reads vertices and faces, checking every value.
class PlyMesh {
 public:
  PlyMesh(const PlyHeader& header, std::string_view data, const std::string& name)
      : header_(header), values_(data, header.format), name_(name) {}

  Result<RawMesh> read() {
    if (auto problem = check_elements()) return *problem;
    for (const PlyElement& element : header_.elements)
      if (auto problem = read_element(element)) return *problem;
    if (vertices_.count() != static_cast<Eigen::Index>(vertex_count_) || corner_counts_.size() != face_count_)
      return bad_input(
          Phrase::worded("%1 describes its vertices or faces in more than one way; export the mesh again.",
                         {name_of(name_)}));
    RawMesh mesh;
    mesh.vertices = vertices_.take();
    mesh.faces = triangles(mesh.vertices);
    mesh.coordinate_step = coordinate_step_;
    if (const std::size_t left = values_.left(); left > 0)
      mesh.notes.push_back(
          Phrase::worded("After its last element the file has %1 more bytes, which were ignored.",
                         {figures_of(std::to_string(left))}));
    return mesh;
  }

 private:
  std::optional<Problem> check_elements() {
    bool coordinates[3] = {false, false, false}, indices = false;
    for (const PlyElement& element : header_.elements) {
      if (element.name == "vertex") vertex_count_ += element.count;
      if (element.name == "face") face_count_ += element.count;
      for (const PlyProperty& property : element.properties) {
        const PlyRole role = role_of(element, property);
        if (role <= PlyRole::kZ) coordinates[static_cast<int>(role)] = true;
        if (role == PlyRole::kCorners) indices = true;
      }
    }
    if (vertex_count_ == 0 || !coordinates[0] || !coordinates[1] || !coordinates[2])
      return bad_input(Phrase::worded("%1 holds no vertices with x, y and z; it is not a body surface.",
                                      {name_of(name_)}));
    if (face_count_ == 0 || !indices)
      return bad_input(Phrase::worded(
          "%1 holds no faces with vertex_indices; export it as a surface of polygons.", {name_of(name_)}));
    if (vertex_count_ > kMostElements || face_count_ > kMostElements)
      return bad_input(
          Phrase::worded("%1 says it holds %2 vertices and %3 faces; at most 10 million of each are read.",
                         {name_of(name_), figures_of(std::to_string(vertex_count_)),
                          figures_of(std::to_string(face_count_))}));
    return std::nullopt;
  }

  std::optional<Problem> read_element(const PlyElement& element) {
    if (element.properties.empty()) return std::nullopt;  // takes no bytes, whatever its count
    std::vector<PlyRole> roles;
    for (const PlyProperty& property : element.properties) roles.push_back(role_of(element, property));
    const bool is_vertex = element.name == "vertex";
    for (std::uint64_t number = 1; number <= element.count; ++number) {
      Vec3 point = Vec3::Zero();
      for (std::size_t i = 0; i < roles.size(); ++i) {
        const PlyProperty& property = element.properties[i];
        auto problem = roles[i] <= PlyRole::kZ
                           ? read_coordinate(element, property, number, point[static_cast<int>(roles[i])])
                       : roles[i] == PlyRole::kCorners ? read_face(property, number)
                                                       : skip(element, property, number);
        if (problem) return problem;
      }
      if (is_vertex) vertices_.add(point[0], point[1], point[2]);
    }
    return std::nullopt;
  }

  std::optional<Problem> read_coordinate(const PlyElement& element, const PlyProperty& property,
                                         std::uint64_t number, double& coordinate) {
    const auto value = values_.next(property.type);
    if (value && is_usable(*value)) {
      coordinate = *value;
      note_step(property.type, coordinate);
      return std::nullopt;
    }
    return values_.ended() ? unreadable(element.name, number)
                           : fault(element.name, number, *coordinate_fault(values_.word(), value));
  }

  std::optional<Problem> skip(const PlyElement& element, const PlyProperty& property, std::uint64_t number) {
    std::uint64_t count = 1;
    if (property.is_list) {
      const auto length = values_.next(property.count_type);
      if (!length || *length < 0) return unreadable(element.name, number);
      count = static_cast<std::uint64_t>(*length);
    }
    for (std::uint64_t i = 0; i < count; ++i)
      if (!values_.next(property.type)) return unreadable(element.name, number);
    return std::nullopt;
  }

  std::optional<Problem> read_face(const PlyProperty& property, std::uint64_t number) {
    const auto corners = values_.next(property.count_type);
    if (!corners) return unreadable(kFaceElement, number);
    if (*corners < 3.0 || *corners > static_cast<double>(kMostPlyCorners))
      return fault(
          kFaceElement, number,
          Phrase::worded("has %1 corners; a face has 3 to %2",
                         {figures_of(number_word(*corners)), figures_of(std::to_string(kMostPlyCorners))}));
    corner_counts_.push_back(static_cast<std::uint8_t>(*corners));
    for (int k = 0; k < static_cast<int>(*corners); ++k) {
      const auto index = values_.next(property.type);
      if (!index) return unreadable(kFaceElement, number);
      if (!(*index >= 0.0 && *index < static_cast<double>(vertex_count_)))
        return fault(
            kFaceElement, number,
            Phrase::worded("names vertex %1 (counted from 0), but the file has %2 vertices",
                           {figures_of(number_word(*index)), figures_of(std::to_string(vertex_count_))}));
      corners_.push_back(static_cast<int>(*index));
    }
    return std::nullopt;
  }

  // Polygons are cut when all vertices are known: faces may come first.
  Triangles triangles(const Points3& vertices) const {
    if (corners_.size() == 3 * corner_counts_.size())
      return Eigen::Map<const Triangles>(corners_.data(), static_cast<Eigen::Index>(corner_counts_.size()),
                                         3);
    GrowingRows<Triangles> faces;
    std::span<const int> rest(corners_);
    for (const std::uint8_t count : corner_counts_) {
      cut_polygon(vertices, rest.first(count), faces);
      rest = rest.subspan(count);
    }
    return faces.take();
  }

  void note_step(PlyType type, double coordinate) {
    if (type != PlyType::kFloat || header_.format == PlyFormat::kAscii) return;
    coordinate_step_ = std::max(
        coordinate_step_, std::abs(coordinate) * static_cast<double>(std::numeric_limits<float>::epsilon()));
  }

  // `element`: its name.
  Problem fault(const std::string& element, std::uint64_t number, const Phrase& what) const {
    const int index = static_cast<int>(number - 1);
    const std::vector<Phrase> values{name_of(name_), figures_of(std::to_string(number)), what,
                                     name_of(element)};
    if (element == kFaceElement)
      return bad_input(Phrase::worded("%1: face %2 %3; export the mesh again.", values),
                       {{ProblemPlace::Kind::kFace, index}});
    const std::vector<ProblemPlace> vertex{{ProblemPlace::Kind::kVertex, index}};
    if (element == "vertex")
      return bad_input(Phrase::worded("%1: vertex %2 %3; export the mesh again.", values), vertex);
    return bad_input(Phrase::worded("%1: %4 %2 %3; export the mesh again.", values), vertex);
  }
  // The value itself could not be read.
  Problem unreadable(const std::string& element, std::uint64_t number) const {
    if (values_.ended())
      return fault(element, number, Phrase::worded("is not there or not whole: the file is cut short"));
    return fault(element, number,
                 Phrase::worded("has %1 where a number belongs", {name_of(in_quotes(values_.word()))}));
  }

  const PlyHeader& header_;
  PlyValues values_;
  const std::string& name_;
  GrowingRows<Points3> vertices_;
  std::vector<int> corners_;  // of all faces, one after the other
  std::vector<std::uint8_t> corner_counts_;
  std::uint64_t vertex_count_ = 0, face_count_ = 0;  // as the header says
  double coordinate_step_ = 0.0;
};

}  // namespace

Result<RawMesh> read_ply(std::string_view bytes, const std::string& name) {
  const Result<PlyHeader> header = read_ply_header(bytes, name);
  if (!header) return header.problem();
  return PlyMesh(*header, bytes.substr(header->size), name).read();
}

}  // namespace wrapgauge
