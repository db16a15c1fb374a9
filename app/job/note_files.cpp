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
  if (auto problem = not_of_a_test_object(summary.part, Phrase::worded("note"))) return *problem;
  const auto note = study_note(summary, inputs_now, extras);
  if (!note) return note.problem();
  const NotePictures pictures = note_pictures(estimate);
  const auto pdf = note_pdf(*note, pictures);
  if (!pdf) return pdf.problem();
  const auto place = png_bytes(pictures.place), pressure = png_bytes(pictures.pressure);
  if (!place) return place.problem();
  if (!pressure) return pressure.problem();
  return NoteFiles{note_markdown(*note), note_html(*note), *pdf, *place, *pressure};
}

Result<std::monostate> write_note_pictures(const NoteFiles& files, const std::filesystem::path& folder) {
  if (auto place = write_file_atomically(folder / kPictureOfPlace, files.place); !place)
    return place.problem();
  return write_file_atomically(folder / kPictureOfPressure, files.pressure);
}

Result<ResultPart> make_note_part(const std::filesystem::path& plan_file, const Estimate& estimate,
                                  const Summary& summary, const NoteExtras& extras) {
  const auto now = read_job(plan_file);
  if (!now) return now.problem();
  const auto made = make_note(estimate, summary, now->inputs, extras);
  if (!made) return made.problem();
  return part_of("note", {{"note.md", made->markdown},
                          {"note.html", made->html},
                          {"note.pdf", made->pdf},
                          {kPictureOfPlace, made->place},
                          {kPictureOfPressure, made->pressure}});
}

}  // namespace wrapgauge
