#pragma once
// What the commands on bodies have in common.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/picture/girth_picture.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Three numbers of an option as a vector; none where it is not given.
std::optional<Vec3> vector_of(const std::vector<double>& numbers);

std::string section_words(const Girth& girth);  // "one loop"

// The girth at a station. At the very ends a plane only touches the surface, so a thousandth of a millimetre
// inside.
Girth girth_inside(const Body& body, Length station);

// A picture with girth lines, written atomically.
Result<std::monostate> write_girth_picture(const Body& body, const std::vector<GirthMark>& marks,
                                           const std::string& title, const std::string& subtitle,
                                           const std::filesystem::path& file);

}  // namespace wrapgauge
