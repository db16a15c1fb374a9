#pragma once
// What was said of a drawing, kept beside the user's files: the same file is read the same way the next time,
// whatever became of the plan it was read into.

#include <filesystem>
#include <optional>

#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

class DrawingMemory {
 public:
  // `folder`: made when there is something to keep.
  explicit DrawingMemory(std::filesystem::path folder) : folder_(std::move(folder)) {}

  // None: nothing is remembered of this file, or what is there cannot be read.
  std::optional<DrawingMap> of(const std::filesystem::path& drawing) const;
  // Where that cannot be written nothing is remembered; nothing else depends on it.
  void keep(const std::filesystem::path& drawing, const DrawingMap& map) const;

 private:
  std::filesystem::path place_of(const std::filesystem::path& drawing) const;

  std::filesystem::path folder_;
};

}  // namespace wrapgauge
