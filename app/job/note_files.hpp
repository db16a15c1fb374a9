#pragma once
// The study note written beside the results.

#include <filesystem>

#include "model/note/note.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

struct NoteFiles {
  std::string markdown, html, pdf, picture;  // the picture is a PNG, called kNotePicture by the first two
};
// In memory. `inputs_now`: the files as they are now, which must be those of the summary.
Result<NoteFiles> make_note(const Estimate& estimate, const Summary& summary,
                            const std::vector<InputFile>& inputs_now, const NoteExtras& extras = {});

// Writes note.md, note.html, note.pdf and the picture they show into `folder`, which exists. The plan and
// everything it names is read once more: a note is not written from inputs that have changed since.
Result<std::monostate> write_note(const std::filesystem::path& plan_file, const Estimate& estimate,
                                  const Summary& summary, const std::filesystem::path& folder,
                                  const NoteExtras& extras = {});

}  // namespace wrapgauge
