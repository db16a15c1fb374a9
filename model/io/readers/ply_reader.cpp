#include "model/io/readers/ply_reader.hpp"

#include <vtkNew.h>
#include <vtkPLYReader.h>

#include <bit>
#include <cmath>
#include <cstring>
#include <limits>
#include <optional>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/mesh_reader_vtk.hpp"
#include "model/io/readers/ply_header.hpp"

namespace wrapgauge {
namespace {

static_assert(std::endian::native == std::endian::little, "values are written little-endian as they lie");

constexpr std::uint64_t kMostPlyCorners = 255;  // the library counts the corners of a face in one byte

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
    const double value = decode(type, bytes);
    number_ = number_word(value);
    word_ = number_;
    return value;
  }

  bool ended() const { return ended_; }
  std::string_view word() const { return word_; }  // the last value as written
  std::size_t left() {
    if (format_ != PlyFormat::kAscii) return rest_.size();
    const std::string_view word = take_word(rest_);
    return word.size() + rest_.size();
  }

 private:
  std::string_view rest_, word_;
  std::string number_;
  PlyFormat format_;
  bool ended_ = false;
};

// Checks all values and writes vertices and faces plainly for the library.
class PlyScan {
 public:
  PlyScan(const PlyHeader& header, std::string_view data, const std::string& name)
      : header_(header), values_(data, header.format), name_(name) {}

  std::optional<Problem> scan() {
    if (auto problem = check_elements()) return problem;
    for (const PlyElement& element : header_.elements) {
      if (element.properties.empty()) continue;  // takes no bytes, whatever its count
      for (std::uint64_t i = 1; i <= element.count; ++i)
        if (auto problem = scan_one(element, i)) return problem;
    }
    if (vertex_bytes_.size() != 12 * vertex_count_ || written_faces_ != face_count_)
      return bad_input(name_ +
                       " describes its vertices or faces in more than one way; export the mesh again.");
    if (const std::size_t left = values_.left(); left > 0)
      notes.push_back(Phrase::worded("After its last element the file has %1 more bytes, which were ignored.",
                                     {figures_of(std::to_string(left))}));
    return std::nullopt;
  }

  std::string plain() const {
    return "ply\nformat binary_little_endian 1.0\nelement vertex " + std::to_string(vertex_count_) +
           "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
           std::to_string(face_count_) + "\nproperty list uchar int vertex_indices\nend_header\n" +
           vertex_bytes_ + face_bytes_;
  }
  std::uint64_t vertex_count() const { return vertex_count_; }
  std::uint64_t triangle_count() const { return triangle_count_; }
  const Vec3& offset() const { return offset_; }
  double coordinate_step() const { return coordinate_step_; }
  std::vector<Phrase> notes;

 private:
  std::optional<Problem> check_elements() {
    bool coordinates[3] = {false, false, false}, indices = false;
    for (const PlyElement& element : header_.elements) {
      if (element.name == "vertex") vertex_count_ += element.count;
      if (element.name == "face") face_count_ += element.count;
      for (const PlyProperty& property : element.properties) {
        for (int k = 0; k < 3; ++k) coordinates[k] |= is_coordinate(element, property, k);
        indices |= is_indices(element, property);
      }
    }
    if (vertex_count_ == 0 || !coordinates[0] || !coordinates[1] || !coordinates[2])
      return bad_input(name_ + " holds no vertices with x, y and z; it is not a body surface.");
    if (face_count_ == 0 || !indices)
      return bad_input(name_ + " holds no faces with vertex_indices; export it as a surface of polygons.");
    if (vertex_count_ > kMostElements || face_count_ > kMostElements)
      return bad_input(name_ + " says it holds " + std::to_string(vertex_count_) + " vertices and " +
                       std::to_string(face_count_) + " faces; at most 10 million of each are read.");
    return std::nullopt;
  }

  static bool is_coordinate(const PlyElement& element, const PlyProperty& property, int k) {
    return element.name == "vertex" && !property.is_list && property.name == std::string(1, "xyz"[k]);
  }
  static bool is_indices(const PlyElement& element, const PlyProperty& property) {
    return element.name == "face" && property.is_list && is_integer(property.type) &&
           (property.name == "vertex_indices" || property.name == "vertex_index");
  }

  std::optional<Problem> scan_one(const PlyElement& element, std::uint64_t number) {
    Vec3 point = Vec3::Zero();
    for (const PlyProperty& property : element.properties) {
      if (is_indices(element, property)) {
        if (auto problem = scan_face(property, number)) return problem;
        continue;
      }
      std::uint64_t count = 1;
      if (property.is_list) {
        const auto length = values_.next(property.count_type);
        if (!length || *length < 0) return fault(element, number, "");
        count = static_cast<std::uint64_t>(*length);
      }
      for (std::uint64_t i = 0; i < count; ++i) {
        const auto value = values_.next(property.type);
        for (int k = 0; k < 3; ++k) {
          if (!is_coordinate(element, property, k)) continue;
          const auto why = coordinate_fault(values_.word(), value);
          if (why && !values_.ended()) return fault(element, number, *why);
          point[k] = value.value_or(0.0);
          note_step(property.type, point[k]);
        }
        if (!value) return fault(element, number, "");
      }
    }
    if (element.name == "vertex") add_vertex(point);
    return std::nullopt;
  }

  std::optional<Problem> scan_face(const PlyProperty& property, std::uint64_t number) {
    const PlyElement face{"face", 0, {}};
    const auto corners = values_.next(property.count_type);
    if (!corners) return fault(face, number, "");
    if (*corners < 3.0 || *corners > static_cast<double>(kMostPlyCorners))
      return fault(
          face, number,
          "has " + number_word(*corners) + " corners; a face has 3 to " + std::to_string(kMostPlyCorners));
    ++written_faces_;
    face_bytes_ += static_cast<char>(static_cast<unsigned char>(*corners));
    triangle_count_ += static_cast<std::uint64_t>(*corners) - 2;
    for (int k = 0; k < static_cast<int>(*corners); ++k) {
      const auto index = values_.next(property.type);
      if (!index) return fault(face, number, "");
      if (!(*index >= 0.0 && *index < static_cast<double>(vertex_count_)))
        return fault(face, number,
                     "names vertex " + number_word(*index) + " (counted from 0), but the file has " +
                         std::to_string(vertex_count_) + " vertices");
      const auto stored = static_cast<std::int32_t>(*index);
      face_bytes_.append(reinterpret_cast<const char*>(&stored), sizeof stored);
    }
    return std::nullopt;
  }

  void add_vertex(const Vec3& point) {
    // The library keeps 4-byte numbers: the common offset saves the digits of bodies far from the origin.
    if (vertex_bytes_.empty()) offset_ = point;
    for (int k = 0; k < 3; ++k) {
      const auto stored = static_cast<float>(point[k] - offset_[k]);
      vertex_bytes_.append(reinterpret_cast<const char*>(&stored), sizeof stored);
    }
  }

  void note_step(PlyType type, double coordinate) {
    if (type != PlyType::kFloat || header_.format == PlyFormat::kAscii) return;
    coordinate_step_ = std::max(
        coordinate_step_, std::abs(coordinate) * static_cast<double>(std::numeric_limits<float>::epsilon()));
  }

  // `what` empty: the value itself could not be read.
  Problem fault(const PlyElement& element, std::uint64_t number, std::string what) {
    if (what.empty())
      what = values_.ended() ? "is not there or not whole: the file is cut short"
                             : "has " + in_quotes(values_.word()) + " where a number belongs";
    const auto kind = element.name == "face" ? ProblemPlace::Kind::kFace : ProblemPlace::Kind::kVertex;
    return bad_input(
        name_ + ": " + element.name + " " + std::to_string(number) + " " + what + "; export the mesh again.",
        {{kind, static_cast<int>(number - 1)}});
  }

  const PlyHeader& header_;
  PlyValues values_;
  const std::string& name_;
  std::string vertex_bytes_, face_bytes_;
  std::uint64_t vertex_count_ = 0, face_count_ = 0, triangle_count_ = 0, written_faces_ = 0;
  Vec3 offset_ = Vec3::Zero();
  double coordinate_step_ = 0.0;
};

}  // namespace

Result<RawMesh> read_ply(std::string_view bytes, const std::string& name) {
  const Result<PlyHeader> header = read_ply_header(bytes, name);
  if (!header) return header.problem();
  PlyScan scan(*header, bytes.substr(header->size), name);
  if (auto problem = scan.scan()) return *problem;
  vtkNew<vtkPLYReader> reader;
  silence(*reader);
  reader->ReadFromInputStringOn();
  reader->SetInputString(scan.plain());
  reader->Update();
  RawMesh mesh = to_raw_mesh(*reader->GetOutput(), scan.offset());
  if (mesh.vertices.rows() != static_cast<int>(scan.vertex_count()) ||
      mesh.faces.rows() != static_cast<int>(scan.triangle_count()))
    return bad_input(name + " could not be read as PLY; export the mesh again.");
  mesh.coordinate_step = scan.coordinate_step();
  mesh.notes = std::move(scan.notes);
  return mesh;
}

}  // namespace wrapgauge
