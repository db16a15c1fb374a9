#include "model/io/readers/ply_header.hpp"

#include <array>
#include <optional>

#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

struct TypeName {
  std::string_view name;
  PlyType type;
};
constexpr std::array<TypeName, 16> kTypes = {{{"char", PlyType::kInt8},
                                              {"int8", PlyType::kInt8},
                                              {"uchar", PlyType::kUint8},
                                              {"uint8", PlyType::kUint8},
                                              {"short", PlyType::kInt16},
                                              {"int16", PlyType::kInt16},
                                              {"ushort", PlyType::kUint16},
                                              {"uint16", PlyType::kUint16},
                                              {"int", PlyType::kInt32},
                                              {"int32", PlyType::kInt32},
                                              {"uint", PlyType::kUint32},
                                              {"uint32", PlyType::kUint32},
                                              {"float", PlyType::kFloat},
                                              {"float32", PlyType::kFloat},
                                              {"double", PlyType::kDouble},
                                              {"float64", PlyType::kDouble}}};

std::optional<PlyType> find_type(std::string_view word) {
  for (const TypeName& entry : kTypes)
    if (entry.name == word) return entry.type;
  return std::nullopt;
}

constexpr std::size_t kMostLines = 1000;  // of a header; judgement, real ones have some twenty

class HeaderReader {
 public:
  HeaderReader(std::string_view bytes, const std::string& name) : all_(bytes), rest_(bytes), name_(name) {}

  Result<PlyHeader> read() {
    if (take_line(rest_) != "ply")
      return bad_input(Phrase::worded("%1 does not begin with \"ply\", so it is no PLY.", {name_of(name_)}));
    for (line_ = 2; line_ <= kMostLines && !rest_.empty(); ++line_) {
      std::string_view line = take_line(rest_);
      const std::string_view keyword = take_word(line);
      if (keyword == "end_header") {
        header_.size = all_.size() - rest_.size();
        if (!format_set_) return fault(Phrase::worded("ends a header that names no format"));
        return std::move(header_);
      }
      if (auto problem = read_line(keyword, line)) return *problem;
    }
    return bad_input(Phrase::worded("%1 has a PLY header without \"end_header\"; it is cut short or damaged.",
                                    {name_of(name_)}));
  }

 private:
  std::optional<Problem> read_line(std::string_view keyword, std::string_view line) {
    if (keyword == "format") return read_format(line);
    if (keyword == "element") return read_element(line);
    if (keyword == "property") return read_property(line);
    if (keyword.empty() || keyword == "comment" || keyword == "obj_info") return std::nullopt;
    return fault(
        Phrase::worded("starts with %1, which belongs in no PLY header", {name_of(in_quotes(keyword))}));
  }

  std::optional<Problem> read_format(std::string_view line) {
    const std::string_view word = take_word(line);
    format_set_ = true;
    if (word == "ascii")
      header_.format = PlyFormat::kAscii;
    else if (word == "binary_little_endian")
      header_.format = PlyFormat::kLittleEndian;
    else if (word == "binary_big_endian")
      header_.format = PlyFormat::kBigEndian;
    else
      return fault(Phrase::worded("names the unknown format %1", {name_of(in_quotes(word))}));
    return std::nullopt;
  }

  std::optional<Problem> read_element(std::string_view line) {
    PlyElement element;
    element.name = take_word(line);
    const std::string_view word = take_word(line);
    const auto count = parse_integer(word);
    if (element.name.empty() || !count || *count < 0)
      return fault(
          Phrase::worded("has %1 where the count of an element belongs", {name_of(in_quotes(word))}));
    element.count = static_cast<std::uint64_t>(*count);
    header_.elements.push_back(std::move(element));
    return std::nullopt;
  }

  std::optional<Problem> read_property(std::string_view line) {
    if (header_.elements.empty()) return fault(Phrase::worded("has a property before any element"));
    PlyProperty property;
    std::string_view word = take_word(line);
    property.is_list = word == "list";
    if (property.is_list) {
      const auto count_type = find_type(take_word(line));
      if (!count_type || !is_integer(*count_type))
        return fault(Phrase::worded("has a list whose length is no integer type"));
      property.count_type = *count_type;
      word = take_word(line);
    }
    const auto type = find_type(word);
    if (!type) return fault(Phrase::worded("has the unknown property type %1", {name_of(in_quotes(word))}));
    property.type = *type;
    property.name = take_word(line);
    header_.elements.back().properties.push_back(std::move(property));
    return std::nullopt;
  }

  Problem fault(const Phrase& what) const {
    return bad_input(
        Phrase::worded("%1: header line %2 %3.", {name_of(name_), figures_of(std::to_string(line_)), what}));
  }

  std::string_view all_, rest_;
  const std::string& name_;
  PlyHeader header_;
  std::size_t line_ = 1;
  bool format_set_ = false;
};

}  // namespace

std::size_t size_of(PlyType type) {
  switch (type) {
    case PlyType::kInt8:
    case PlyType::kUint8:
      return 1;
    case PlyType::kInt16:
    case PlyType::kUint16:
      return 2;
    case PlyType::kInt32:
    case PlyType::kUint32:
    case PlyType::kFloat:
      return 4;
    case PlyType::kDouble:
      return 8;
  }
  return 1;
}

Result<PlyHeader> read_ply_header(std::string_view bytes, const std::string& name) {
  return HeaderReader(bytes, name).read();
}

}  // namespace wrapgauge
