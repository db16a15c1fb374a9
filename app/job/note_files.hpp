#pragma once
// The study note written beside the results.

#include <filesystem>

#include "app/job/result_folder.hpp"
#include "model/note/note.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

struct NoteFiles {
  std::string markdown, html, pdf;
  std::string place, pressure;  // PNGs, called kPictureOfPlace and kPictureOfPressure by the first two
};
// In memory. `inputs_now`: the files as they are now, which must be those of the summary.
Result<NoteFiles> make_note(const Estimate& estimate, const Summary& summary,
                            const std::vector<InputFile>& inputs_now, const NoteExtras& extras = {});

// The pictures that note.md and note.html show, by their names.
Result<std::monostate> write_note_pictures(const NoteFiles& files, const std::filesystem::path& folder);

// note.md, note.html, note.pdf and the pictures they show. The plan and everything it names is read once
// more: a note is not made from inputs that have changed since.
Result<ResultPart> make_note_part(const std::filesystem::path& plan_file, const Estimate& estimate,
                                  const Summary& summary, const NoteExtras& extras = {});

}  // namespace wrapgauge
