#pragma once
// Results of the study stage that a note takes in: bands and the ceiling of the same inputs.

#include <filesystem>
#include <optional>

#include "app/job/job.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {

struct NoteStudies {
  std::optional<std::filesystem::path> spread;   // folder that wrapgauge spread wrote to
  std::optional<std::filesystem::path> ceiling;  // file that wrapgauge ceiling wrote with --out
};

// Problems: a file is missing, of another kind, or stale: made from other inputs than the job's.
Result<NoteExtras> read_note_studies(const Job& job, const NoteStudies& studies);

}  // namespace wrapgauge
