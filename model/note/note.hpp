#pragma once
// The study safety note: two pages that reviewers read without this program. One value, the same words as
// Markdown, HTML and PDF (made in app/). Fields for the study to fill are empty, never invented.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/core/result.hpp"
#include "model/note/summary.hpp"

namespace wrapgauge {

struct NoteHeading {
  std::string text;
};
struct NoteText {
  std::string text;
  bool alert = false;  // in a box, bold
};
struct NoteList {
  std::vector<std::string> items;
};
// An empty cell is for the study to fill.
struct NoteTable {
  std::vector<std::string> header;
  std::vector<std::vector<std::string>> rows;
  std::vector<int> widths_percent;  // one a column
};
struct NotePicture {
  std::string file;  // beside the note
  std::string caption;
};
using NoteBlock = std::variant<NoteHeading, NoteText, NoteList, NoteTable, NotePicture>;

struct NotePage {
  std::vector<NoteBlock> blocks;
};
struct Note {
  std::string title;
  std::vector<NotePage> pages;  // two
};

// What studies of the same plan add; none: "not worked out". Their inputs must be those of the estimate.
struct NoteBand {
  std::string chamber;
  Pressure peak_low, peak_high;  // 5 and 95 % of the runs
};
struct NoteBands {
  std::string words;  // how many runs over which inputs
  std::vector<NoteBand> chambers;
  std::vector<InputFile> inputs;
};
struct NoteCeiling {
  std::string words;  // highest inflation of each inlet, what stops it, the relief setting that follows
  std::vector<InputFile> inputs;
  std::optional<std::string> relief;  // "3.0 kPa (22 mmHg) for inlet 'a'": for the valve's test
};
struct NoteExtras {
  std::optional<NoteBands> bands;
  std::optional<NoteCeiling> ceiling;
};

inline constexpr const char* kNotePicture = "note-pictures.png";
inline constexpr int kNotePictureWidth = 690;  // pixels, in HTML

// `inputs_now`: the input files as they are when the note is written. Problems: one of them changed since the
// estimate or a study read it; the pressure asked for was not reached, so no figure describes the device.
Result<Note> study_note(const Summary& summary, const std::vector<InputFile>& inputs_now,
                        const NoteExtras& extras = {});

std::string note_markdown(const Note& note);
std::string note_html(const Note& note);
// The inside of one page, for a page maker with a small part of HTML and CSS.
std::string note_page_html(const Note& note, std::size_t page);

// Every sentence of the note as running text, without tables of numbers: for a reading-ease check.
std::string note_prose(const Note& note);

}  // namespace wrapgauge
