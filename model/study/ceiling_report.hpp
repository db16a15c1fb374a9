#pragma once
// A ceiling in words and figures.

#include <filesystem>
#include <string>
#include <vector>

#include "model/study/ceiling.hpp"

namespace wrapgauge {

// One sentence each. Pressures and volumes of a ceiling are settings, rounded down.
std::vector<std::string> ceiling_words(const Ceiling& ceiling);

// For a note: the answer in three sentences or so, without the sentences of the findings.
std::vector<std::string> ceiling_brief(const Ceiling& ceiling);
// "3.0 kPa (22 mmHg) for inlet 'a', 1.5 kPa (11 mmHg) for inlet 'b'"; none: no relief setting can be given.
std::optional<std::string> relief_brief(const Ceiling& ceiling);

// Same ceiling, same bytes. `plan`, `inputs_hash`: what it was found for.
std::string ceiling_json(const Ceiling& ceiling, const std::string& plan, const std::string& inputs_hash);

// What other commands take from a ceiling written by ceiling_json.
struct CeilingAnswer {
  std::vector<std::string> words, brief;
  std::optional<std::string> relief;
};
// Problems: no such file, another format, or stale: made from inputs other than `inputs_hash` or by another
// version of the program.
Result<CeilingAnswer> read_ceiling(const std::filesystem::path& file, const std::string& inputs_hash);

// "98 %", rounded down up to 100 %; above it with as many decimals as show the excess.
std::string percent_text(double share);

}  // namespace wrapgauge
