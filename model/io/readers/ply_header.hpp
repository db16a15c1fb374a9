#pragma once
// The header of a PLY file: which elements follow, with which properties, written how.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

enum class PlyFormat { kAscii, kLittleEndian, kBigEndian };
enum class PlyType { kInt8, kUint8, kInt16, kUint16, kInt32, kUint32, kFloat, kDouble };

std::size_t size_of(PlyType type);
inline bool is_integer(PlyType type) {
  return type != PlyType::kFloat && type != PlyType::kDouble;
}

struct PlyProperty {
  std::string name;
  PlyType type = PlyType::kFloat;
  bool is_list = false;
  PlyType count_type = PlyType::kUint8;  // of lists
};

struct PlyElement {
  std::string name;
  std::uint64_t count = 0;
  std::vector<PlyProperty> properties;
};

struct PlyHeader {
  PlyFormat format = PlyFormat::kAscii;
  std::vector<PlyElement> elements;
  std::size_t size = 0;  // bytes before the data
};

// Problems name the header line. Counts are not checked against the data.
Result<PlyHeader> read_ply_header(std::string_view bytes, const std::string& name);

}  // namespace wrapgauge
