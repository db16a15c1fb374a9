#include "app/command/note_files.hpp"

#include "app/command/job.hpp"
#include "app/picture/note_pdf.hpp"
#include "app/picture/note_picture.hpp"
#include "app/picture/png.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {

Result<std::monostate> write_note(const std::filesystem::path& plan_file, const Estimate& estimate,
                                  const Summary& summary, const std::filesystem::path& folder) {
  const auto now = read_job(plan_file);
  if (!now) return now.problem();
  const auto note = study_note(summary, now->inputs);
  if (!note) return note.problem();
  const QImage picture = note_picture(estimate);
  // Everything is made before anything is written, so that no half of a note is left behind.
  const auto pdf = note_pdf(*note, picture);
  if (!pdf) return pdf.problem();
  const auto png = png_bytes(picture);
  if (!png) return png.problem();
  for (const auto& [name, bytes] : {std::pair<const char*, std::string>{kNotePicture, *png},
                                    {"note.md", note_markdown(*note)},
                                    {"note.html", note_html(*note)},
                                    {"note.pdf", *pdf}})
    if (auto written = write_file_atomically(folder / name, bytes); !written) return written.problem();
  return std::monostate{};
}

}  // namespace wrapgauge
