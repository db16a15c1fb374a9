#include "model/io/readers/stl_reader.hpp"

#include <vtkNew.h>
#include <vtkSTLReader.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <optional>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/mesh_reader_vtk.hpp"

namespace wrapgauge {
namespace {

static_assert(std::endian::native == std::endian::little, "STL records are copied as they lie");

constexpr std::size_t kHeader = 84;  // 80 bytes of anything and the facet count
constexpr std::size_t kRecord = 50;  // normal, three corners, two spare bytes

// A checked file as plain binary records, ready for the library.
struct Records {
  std::string bytes;
  Vec3 offset = Vec3::Zero();  // taken off every corner
  std::uint32_t count = 0;
  double largest = 0.0;  // largest coordinate as in the file
  std::vector<Phrase> notes;
};

Problem facet_fault(const std::string& name, std::size_t facet, const std::string& why) {
  return bad_input(name + ": facet " + std::to_string(facet) + " " + why + "; export the mesh again.",
                   {{ProblemPlace::Kind::kFace, static_cast<int>(facet - 1)}});
}

void start(Records& records) {
  // No byte of this header can be printed, so that the library never takes the records for text.
  records.bytes.assign(80, '\x01');
  records.bytes.append(4, '\0');
}

void append(Records& records, const float (&record)[12]) {
  records.bytes.append(reinterpret_cast<const char*>(record), sizeof record);
  records.bytes.append(2, '\0');
  ++records.count;
}

std::optional<std::string> facet_count_fault(std::string_view bytes, std::uint64_t count) {
  if (count == 0) return "holds no facets; it is not a body surface.";
  const std::uint64_t needed = kHeader + kRecord * count;
  if (needed > bytes.size())
    return "says it holds " + std::to_string(count) + " facets, which take " + std::to_string(needed) +
           " bytes, but has only " + std::to_string(bytes.size()) + "; it is cut short or damaged.";
  if (count > kMostElements) return "holds more than 10 million facets; thin the mesh out.";
  return std::nullopt;
}

Result<Records> check_binary(std::string_view bytes, const std::string& name, std::uint32_t count) {
  if (const auto why = facet_count_fault(bytes, count)) return bad_input(name + " " + *why);
  Records records;
  start(records);
  records.bytes.reserve(kHeader + kRecord * count);
  for (std::size_t facet = 1; facet <= count; ++facet) {
    float record[12];
    std::memcpy(record, bytes.data() + kHeader + kRecord * (facet - 1), sizeof record);
    for (int k = 0; k < 12; ++k) {
      if (k < 3) {
        record[k] = 0.0F;  // normals are worked out anew, so a bad one does no harm
        continue;
      }
      const double value = static_cast<double>(record[k]);
      if (const auto why = coordinate_fault(number_word(value), value)) return facet_fault(name, facet, *why);
      records.largest = std::max(records.largest, std::abs(value));
    }
    append(records, record);
  }
  const std::size_t trailing = bytes.size() - kHeader - kRecord * count;
  if (trailing > 0)
    records.notes.push_back(
        Phrase::worded("After its %1 facets the file has %2 more bytes, which were ignored.",
                       {figures_of(std::to_string(count)), figures_of(std::to_string(trailing))}));
  return records;
}

// Reads ascii facets word by word.
class AsciiStl {
 public:
  AsciiStl(std::string_view text, const std::string& name) : rest_(text), name_(name) {}

  Result<Records> read() {
    start(records_);
    while (true) {
      const std::string_view word = take_word(rest_);
      if (word.empty()) break;
      if (same_word(word, "solid") || same_word(word, "endsolid")) {
        closed_ = same_word(word, "endsolid");
        take_line(rest_);  // the solid's name may be any words
      } else if (same_word(word, "facet")) {
        if (auto problem = read_facet()) return *problem;
      } else {
        return fault("is followed by " + in_quotes(word) + " where \"facet\" belongs");
      }
    }
    if (records_.count == 0) return bad_input(name_ + " holds no facets; it is not a body surface.");
    if (!closed_)
      records_.notes.push_back(Phrase::worded("The file has no closing \"endsolid\"; it may be cut short."));
    return std::move(records_);
  }

 private:
  std::optional<Problem> expect(std::string_view wanted) {
    const std::string_view word = take_word(rest_);
    if (same_word(word, wanted)) return std::nullopt;
    if (word.empty()) return fault("is the last whole one: the file is cut short");
    return fault("is followed by " + in_quotes(word) + " where \"" + std::string(wanted) + "\" belongs");
  }

  std::optional<Problem> read_facet() {
    if (auto problem = expect("normal")) return problem;
    for (int k = 0; k < 3; ++k) take_word(rest_);  // normals are worked out anew
    for (const auto* word : {"outer", "loop"})
      if (auto problem = expect(word)) return problem;
    float record[12] = {};
    for (int corner = 0; corner < 3; ++corner)
      if (auto problem = read_corner(record + 3 + 3 * corner)) return problem;
    for (const auto* word : {"endloop", "endfacet"})
      if (auto problem = expect(word)) return problem;
    append(records_, record);
    if (records_.count > kMostElements) return fault("is one of more than 10 million; thin the mesh out");
    return std::nullopt;
  }

  std::optional<Problem> read_corner(float* corner) {
    if (auto problem = expect("vertex")) return problem;
    Vec3 point;
    for (int k = 0; k < 3; ++k) {
      const std::string_view word = take_word(rest_);
      const auto value = parse_number(word);
      if (const auto why = coordinate_fault(word, value)) return facet_fault(name_, records_.count + 1, *why);
      point[k] = *value;
    }
    // Ascii files may hold more digits than a 4-byte number far from the origin: keep them by a common
    // offset.
    if (!offset_set_) records_.offset = point;
    offset_set_ = true;
    for (int k = 0; k < 3; ++k) corner[k] = static_cast<float>(point[k] - records_.offset[k]);
    return std::nullopt;
  }

  Problem fault(const std::string& what) const { return facet_fault(name_, records_.count, what); }

  std::string_view rest_;
  const std::string& name_;
  Records records_;
  bool closed_ = false, offset_set_ = false;
};

Result<Records> check(std::string_view bytes, const std::string& name) {
  std::uint32_t count = 0;
  if (bytes.size() >= kHeader) std::memcpy(&count, bytes.data() + 80, 4);
  const bool exact =
      bytes.size() >= kHeader && count > 0 && bytes.size() == kHeader + kRecord * std::uint64_t{count};
  if (exact) return check_binary(bytes, name, count);
  const bool text = bytes.substr(0, 1024).find('\0') == bytes.npos;
  std::string_view rest = bytes.starts_with("\xEF\xBB\xBF") ? bytes.substr(3) : bytes;
  const std::string_view body = rest;
  if (text && same_word(take_word(rest), "solid")) return AsciiStl(body, name).read();
  if (bytes.size() < kHeader)
    return bad_input(name + " has " + std::to_string(bytes.size()) +
                     " bytes; a binary STL starts with a header of 84, so it is cut short or no STL.");
  if (text)
    return bad_input(name +
                     " is text that does not begin with \"solid\", so it is no STL; check its ending.");
  return check_binary(bytes, name, count);
}

}  // namespace

Result<RawMesh> read_stl(std::string_view bytes, const std::string& name) {
  Result<Records> checked = check(bytes, name);
  if (!checked) return checked.problem();
  Records records = std::move(checked).value();
  std::memcpy(records.bytes.data() + 80, &records.count, 4);
  const MemoryFile file(records.bytes);
  if (!file.ok()) return bad_input(name + " could not be read: too little memory for its facets.");
  vtkNew<vtkSTLReader> reader;
  silence(*reader);
  reader->MergingOff();  // welding is done once for all formats, and counted
  reader->SetFileName(file.name().c_str());
  reader->Update();
  RawMesh mesh = to_raw_mesh(*reader->GetOutput(), records.offset);
  if (mesh.faces.rows() != static_cast<int>(records.count) || mesh.vertices.rows() != 3 * mesh.faces.rows())
    return bad_input(name + " could not be read as STL; export the mesh again.");
  mesh.coordinate_step = records.largest * static_cast<double>(std::numeric_limits<float>::epsilon());
  mesh.notes = std::move(records.notes);
  return mesh;
}

}  // namespace wrapgauge
