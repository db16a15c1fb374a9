#include "model/io/readers/stl_reader.hpp"

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <optional>

#include "model/core/number_text.hpp"
#include "model/io/readers/growing_rows.hpp"
#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

static_assert(std::endian::native == std::endian::little, "STL records are copied as they lie");

constexpr std::size_t kHeader = 84;  // 80 bytes of anything and the facet count
constexpr std::size_t kRecord = 50;  // normal, three corners, two spare bytes

// As the header says; 0 where there is none.
std::uint32_t facets_said(std::string_view start) {
  std::uint32_t count = 0;
  if (start.size() >= kHeader) std::memcpy(&count, start.data() + 80, sizeof count);
  return count;
}

Problem facet_fault(const std::string& name, std::size_t facet, const Phrase& why) {
  return bad_input(Phrase::worded("%1: facet %2 %3; export the mesh again.",
                                  {name_of(name), figures_of(std::to_string(facet)), why}),
                   {{ProblemPlace::Kind::kFace, static_cast<int>(facet - 1)}});
}

// Facets that do not share vertices: corner k of facet f is vertex 3 f + k.
RawMesh mesh_of(Points3 corners) {
  RawMesh mesh;
  mesh.vertices = std::move(corners);
  mesh.faces.resize(mesh.vertices.rows() / 3, 3);
  for (int corner = 0; corner < mesh.faces.size(); ++corner) mesh.faces.data()[corner] = corner;
  return mesh;
}

std::optional<Problem> facet_count_fault(const std::string& name, std::uint64_t size, std::uint64_t count) {
  if (count == 0)
    return bad_input(Phrase::worded("%1 holds no facets; it is not a body surface.", {name_of(name)}));
  const std::uint64_t needed = kHeader + kRecord * count;
  if (needed > size) {
    const Phrase room = figures_of(std::to_string((size - kHeader) / kRecord));
    const Phrase said = figures_of(std::to_string(count));
    // What is missing of a whole file is some part of it, not ten times all there is. Judgement.
    if (needed > 10 * size)
      return bad_input(Phrase::worded(
          "%1 is damaged: its count of facets is %2, but there is room for %3; export the mesh again.",
          {name_of(name), said, room}));
    return bad_input(
        Phrase::worded("%1 is cut short: %2 of its %3 facets are there; copy or export it again.",
                       {name_of(name), room, said}));
  }
  if (count > kMostElements)
    return bad_input(
        Phrase::worded("%1 holds more than 10 million facets; thin the mesh out.", {name_of(name)}));
  return std::nullopt;
}

Result<RawMesh> read_binary(ByteSource& source, const std::string& name, std::uint32_t count) {
  if (auto problem = facet_count_fault(name, source.size(), count)) return *problem;
  source.skip(kHeader);
  Points3 corners(Eigen::Index{3} * count, 3);
  double largest = 0.0;
  for (std::size_t facet = 0; facet < count; ++facet) {
    const std::string_view record = source.ahead(kRecord);
    if (record.size() < kRecord)
      return bad_input(Phrase::worded(
          "%1 became shorter while it was read; read it again once it is written.", {name_of(name)}));
    std::array<float, 9> numbers;  // after the normal, which is worked out anew: a bad one does no harm
    std::memcpy(numbers.data(), record.data() + 12, sizeof numbers);
    source.skip(kRecord);
    for (std::size_t k = 0; k < 9; ++k) {
      const auto value = static_cast<double>(numbers[k]);
      if (!is_usable(value))
        return facet_fault(name, facet + 1, *coordinate_fault(number_word(value), value));
      corners.data()[9 * facet + k] = value;
      largest = std::max(largest, std::abs(value));
    }
  }
  RawMesh mesh = mesh_of(std::move(corners));
  mesh.coordinate_step = largest * static_cast<double>(std::numeric_limits<float>::epsilon());
  if (const std::uint64_t trailing = source.size() - kHeader - kRecord * std::uint64_t{count}; trailing > 0)
    mesh.notes.push_back(
        Phrase::worded("After its %1 facets the file has %2 more bytes, which were ignored.",
                       {figures_of(std::to_string(count)), figures_of(std::to_string(trailing))}));
  return mesh;
}

// Reads ascii facets word by word, from behind the first "solid".
class AsciiStl {
 public:
  AsciiStl(ByteSource& source, const std::string& name) : source_(source), name_(name) {}

  Result<RawMesh> read() {
    source_.line();  // the solid's name may be any words
    while (true) {
      const std::string_view word = source_.word();
      if (word.empty()) break;
      if (same_word(word, "solid") || same_word(word, "endsolid")) {
        closed_ = same_word(word, "endsolid");
        source_.line();
      } else if (same_word(word, "facet")) {
        if (auto problem = read_facet()) return *problem;
      } else {
        return not_expected(word, "facet");
      }
    }
    if (count_ == 0)
      return bad_input(Phrase::worded("%1 holds no facets; it is not a body surface.", {name_of(name_)}));
    RawMesh mesh = mesh_of(corners_.take());
    if (!closed_)
      mesh.notes.push_back(Phrase::worded("The file has no closing \"endsolid\"; it may be cut short."));
    return mesh;
  }

 private:
  std::optional<Problem> expect(std::string_view wanted) {
    const std::string_view word = source_.word();
    if (same_word(word, wanted)) return std::nullopt;
    if (word.empty()) return fault(Phrase::worded("is the last whole one: the file is cut short"));
    return not_expected(word, wanted);
  }

  std::optional<Problem> read_facet() {
    if (auto problem = expect("normal")) return problem;
    for (int k = 0; k < 3; ++k) source_.word();  // normals are worked out anew
    for (const auto* word : {"outer", "loop"})
      if (auto problem = expect(word)) return problem;
    for (int corner = 0; corner < 3; ++corner)
      if (auto problem = read_corner()) return problem;
    for (const auto* word : {"endloop", "endfacet"})
      if (auto problem = expect(word)) return problem;
    if (++count_ > kMostElements)
      return fault(Phrase::worded("is one of more than 10 million; thin the mesh out"));
    return std::nullopt;
  }

  std::optional<Problem> read_corner() {
    if (auto problem = expect("vertex")) return problem;
    Vec3 point;
    for (int k = 0; k < 3; ++k) {
      const std::string_view word = source_.word();
      const auto value = parse_number(word);
      if (const auto why = coordinate_fault(word, value)) return facet_fault(name_, count_ + 1, *why);
      point[k] = *value;
    }
    corners_.add(point[0], point[1], point[2]);
    return std::nullopt;
  }

  Problem fault(const Phrase& what) const { return facet_fault(name_, count_, what); }
  Problem not_expected(std::string_view word, std::string_view wanted) const {
    return fault(Phrase::worded("is followed by %1 where \"%2\" belongs",
                                {name_of(in_quotes(word)), name_of(std::string(wanted))}));
  }

  ByteSource& source_;
  const std::string& name_;
  GrowingRows<Points3> corners_;
  std::size_t count_ = 0;  // whole facets
  bool closed_ = false;
};

}  // namespace

std::optional<std::uint32_t> binary_stl_facets(std::string_view start, std::uintmax_t size) {
  const std::uint32_t count = facets_said(start);
  if (count == 0 || size != kHeader + kRecord * std::uint64_t{count}) return std::nullopt;
  return count;
}

Result<RawMesh> read_stl(ByteSource& source, const std::string& name) {
  const std::uintmax_t size = source.size();
  const std::uint32_t count = facets_said(source.ahead(kHeader));
  if (binary_stl_facets(source.ahead(kHeader), size)) return read_binary(source, name, count);
  const bool text = source.ahead(1024).substr(0, 1024).find('\0') == std::string_view::npos;
  if (text) {
    if (source.ahead(3).starts_with("\xEF\xBB\xBF")) source.skip(3);
    if (same_word(source.word(), "solid")) return AsciiStl(source, name).read();
  }
  if (size < kHeader)
    return bad_input(Phrase::worded(
        "%1 has %2 bytes; a binary STL starts with a header of 84, so it is cut short or no STL.",
        {name_of(name), figures_of(std::to_string(size))}));
  if (text)
    return bad_input(
        Phrase::worded("%1 is text that does not begin with \"solid\", so it is no STL; check its ending.",
                       {name_of(name)}));
  return read_binary(source, name, count);
}

Result<RawMesh> read_stl(std::string_view bytes, const std::string& name) {
  ByteSource source(bytes);
  return read_stl(source, name);
}

}  // namespace wrapgauge
