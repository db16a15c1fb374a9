#pragma once
// A ceiling in words and figures.

#include <filesystem>
#include <string>
#include <vector>

#include "model/study/ceiling.hpp"

namespace wrapgauge {

// One sentence each. Pressures and volumes of a ceiling are rounded down.
std::vector<std::string> ceiling_words(const Ceiling& ceiling);

// Same ceiling, same bytes. `plan`, `inputs_hash`: what it was found for.
std::string ceiling_json(const Ceiling& ceiling, const std::string& plan, const std::string& inputs_hash);

// The sentences of a ceiling written by ceiling_json. Problems: no such file, another format, or stale: made
// from inputs other than `inputs_hash` or by another version of the program.
Result<std::vector<std::string>> read_ceiling_words(const std::filesystem::path& file,
                                                    const std::string& inputs_hash);

std::string pressure_down_text(Pressure pressure);  // "4.2 kPa (31 mmHg)", never above the pressure
std::string percent_text(double share);             // "98 %"

}  // namespace wrapgauge
