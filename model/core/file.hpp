#pragma once
// Whole files in and out, without exceptions.

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <variant>

#include "model/core/result.hpp"

namespace wrapgauge {

inline constexpr std::uintmax_t kOneGibibyte = std::uintmax_t{1} << 30;

// Reads at most `max_bytes`. Problems: no such file, a folder, larger than `max_bytes`, unreadable.
Result<std::string> read_file(const std::filesystem::path& file, std::uintmax_t max_bytes = kOneGibibyte);

// Writes a temporary file beside `file`, flushes it to the disk and renames it, so that a reader sees the old
// bytes or the new ones and never half of them. Missing folders are not made.
Result<std::monostate> write_file_atomically(const std::filesystem::path& file, std::string_view bytes);

}  // namespace wrapgauge
