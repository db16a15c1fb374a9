#include "app/job/note_files.hpp"

#include "app/job/job.hpp"
#include "app/picture/note_pdf.hpp"
#include "app/picture/note_picture.hpp"
#include "app/picture/png.hpp"
#include "model/body/part_rules.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {

Result<NoteFiles> make_note(const Estimate& estimate, const Summary& summary,
                            const std::vector<InputFile>& inputs_now, const NoteExtras& extras) {
  if (auto problem = not_of_a_test_object(summary.part, "note")) return *problem;
  const auto note = study_note(summary, inputs_now, extras);
  if (!note) return note.problem();
  const QImage picture = note_picture(estimate);
  const auto pdf = note_pdf(*note, picture);
  if (!pdf) return pdf.problem();
  const auto png = png_bytes(picture);
  if (!png) return png.problem();
  return NoteFiles{note_markdown(*note), note_html(*note), *pdf, *png};
}

Result<std::monostate> write_note(const std::filesystem::path& plan_file, const Estimate& estimate,
                                  const Summary& summary, const std::filesystem::path& folder,
                                  const NoteExtras& extras) {
  const auto now = read_job(plan_file);
  if (!now) return now.problem();
  // Everything is made before anything is written, so that no half of a note is left behind.
  const auto made = make_note(estimate, summary, now->inputs, extras);
  if (!made) return made.problem();
  for (const auto& [name, bytes] : {std::pair<const char*, const std::string&>{kNotePicture, made->picture},
                                    {"note.md", made->markdown},
                                    {"note.html", made->html},
                                    {"note.pdf", made->pdf}})
    if (auto written = write_file_atomically(folder / name, bytes); !written) return written.problem();
  return std::monostate{};
}

}  // namespace wrapgauge
