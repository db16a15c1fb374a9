#pragma once
// The study note written beside the results.

#include <filesystem>

#include "model/note/note.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// Writes note.md, note.html, note.pdf and the picture they show into `folder`, which exists. The plan and
// everything it names is read once more: a note is not written from inputs that have changed since.
Result<std::monostate> write_note(const std::filesystem::path& plan_file, const Estimate& estimate,
                                  const Summary& summary, const std::filesystem::path& folder);

}  // namespace wrapgauge
