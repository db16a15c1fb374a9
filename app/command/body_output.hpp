#pragma once
// What the commands on bodies have in common.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/picture/girth_picture.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {

// Three numbers of an option as a vector; none where it is not given.
std::optional<Vec3> vector_of(const std::vector<double>& numbers);

std::string section_words(const Girth& girth);  // "one loop"

// The girth at a station. At the very ends a plane only touches the surface, so a thousandth of a millimetre
// inside.
Girth girth_inside(const Body& body, Length station);

// A picture with girth lines, as PNG.
Result<std::string> girth_picture_bytes(const Body& body, const std::vector<GirthMark>& marks,
                                        const std::string& title, const std::string& subtitle);

// Files of one command, made before the first is written and then written together.
class FilesToWrite {
 public:
  void add(const std::filesystem::path& file, Result<std::string> bytes);
  // Problem: the first of what was to be added, or that of the writing.
  Result<std::monostate> write() const;

 private:
  std::vector<FileToWrite> files_;
  std::optional<Problem> problem_;
};

}  // namespace wrapgauge
