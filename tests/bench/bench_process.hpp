#pragma once
// What every benchmark asks of its process.

#include <sys/resource.h>

#include <filesystem>

namespace wrapgauge {

inline const std::filesystem::path kResources = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources";

// So far: run one size at a time for it.
inline double peak_megabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

}  // namespace wrapgauge
