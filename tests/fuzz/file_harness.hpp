#pragma once
// For what is read from a file alone: bytes put into one, in a folder of this process.

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace wrapgauge::fuzz {

inline void require(bool holds) {
  if (!holds) std::abort();
}

inline std::filesystem::path own_folder() {
  std::string name = std::filesystem::temp_directory_path() / "wrapgauge-fuzz-XXXXXX";
  require(mkdtemp(name.data()) != nullptr);
  return name;
}

inline std::filesystem::path as_file(const unsigned char* data, std::size_t size, const char* name) {
  static const std::filesystem::path folder = own_folder();
  const std::filesystem::path file = folder / name;
  std::ofstream out(file, std::ios::binary | std::ios::trunc);
  out.write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
  require(static_cast<bool>(out.flush()));
  return file;
}

}  // namespace wrapgauge::fuzz
