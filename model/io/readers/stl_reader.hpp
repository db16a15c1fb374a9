#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "model/body/raw_mesh.hpp"
#include "model/core/result.hpp"
#include "model/io/readers/byte_source.hpp"

namespace wrapgauge {

// How many facets a binary STL has, when its size is what that count asks for; none: it is no such file.
// `start`: its first bytes, 84 or more.
std::optional<std::uint32_t> binary_stl_facets(std::string_view start, std::uintmax_t size);

// Reads an STL file, ascii or binary, facet by facet; `name` stands in messages. Facets do not share
// vertices. A file is binary when its size is what its facet count asks for, whatever word it starts with.
Result<RawMesh> read_stl(ByteSource& source, const std::string& name);
Result<RawMesh> read_stl(std::string_view bytes, const std::string& name);

}  // namespace wrapgauge
