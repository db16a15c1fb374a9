#pragma once
// Who can wear it, in words and figures.

#include <filesystem>
#include <string>
#include <vector>

#include "model/study/people.hpp"

namespace wrapgauge {

// One sentence each, the verdict first. `survey`: the people are rows of the survey, whose limits are said.
std::vector<std::string> people_words(const People& people, bool survey);

// "Accept girths from 243 to 286 mm, measured ..."; none: no range can be given.
std::optional<std::string> accepted_words(const People& people);

// For a note: the range, how many people it rests on, and what it leaves open.
std::string people_brief(const People& people);

// Same people, same bytes. A row each, as listed.
std::string people_csv(const People& people);
std::string people_markdown(const People& people, bool survey);
std::string people_json(const People& people);

// What a note takes from a people.json. Problems: no such file, another format, or stale: made from inputs
// other than `inputs_hash` or by another version of the program.
Result<std::string> read_people_brief(const std::filesystem::path& file, const std::string& inputs_hash);

}  // namespace wrapgauge
