#pragma once
// The people a device is tried on: rows of a survey, or a list of one's own.

#include <filesystem>
#include <vector>

#include "bodyforms/form.hpp"
#include "model/study/people.hpp"

namespace wrapgauge {

// "women p5", "men p50" ...: percentiles rise within a sex. Measures that the plan gives and a survey
// supplies are the survey's here; what else the plan gives of its form stays. Problems: the plan's body is a
// file; the form has no measures of the survey; a percentile outside 1 to 99 or given twice.
Result<std::vector<PersonTried>> people_of_survey(const Plan& plan, const std::vector<double>& percentiles,
                                                  const std::vector<Sex>& sexes);

// A CSV file with a heading: `id`, and the form's measures (girth_wrist, or girth_wrist_in for inches, `sex`,
// `percentile`, `side`), or `file` with a body mesh each (from the list's own folder; `unit`, `side`). What a
// row does not give is the plan's. Problems, each with its row: no heading, an unknown or missing column, a
// row with more or fewer cells, a comma for a decimal point, a value out of range, what looks like inches or
// centimetres in a column of mm, the same id twice, more than kMostPeople rows, a body file that is missing.
Result<std::vector<PersonTried>> people_of_list(const Plan& plan, const std::filesystem::path& list);

inline constexpr int kMostPeople = 50000;

}  // namespace wrapgauge
