#pragma once
// Results of the study stage that a note takes in: bands and the ceiling of the same inputs.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/job/job.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {

struct NoteStudies {
  std::optional<std::filesystem::path> spread;   // folder that wrapgauge spread wrote to
  std::optional<std::filesystem::path> ceiling;  // file that wrapgauge ceiling wrote with --out
  std::optional<std::filesystem::path> people;   // folder that wrapgauge people wrote to
};

// `brief`, `relief`: of ceiling_brief() and relief_brief(), or as read_ceiling() gives them back.
NoteCeiling note_ceiling(const std::vector<std::string>& brief, const std::optional<std::string>& relief,
                         const std::vector<InputFile>& inputs);

// Problems: a file is missing, of another kind, or stale: made from other inputs than the job's; a
// spread of fewer than 60 runs with an equilibrium.
Result<NoteExtras> read_note_studies(const Job& job, const NoteStudies& studies);

}  // namespace wrapgauge
