#pragma once
// The study safety note, which reviewers read without this program. One value, the same words as Markdown,
// HTML and PDF (made in app/). What the study has to fill is an empty cell, never invented.

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
};
// The verdict and what goes with it; the first line is bold.
struct NoteBox {
  std::vector<std::string> lines;
};
struct NoteList {
  std::vector<std::string> items;
};
// An empty cell is for the study to fill. In a row with fewer cells than the header the last one reaches to
// the right edge.
struct NoteTable {
  std::vector<std::string> header;
  std::vector<std::vector<std::string>> rows;
  std::vector<int> widths_percent;  // one a column, 100 together
  int room_lines = 1;               // lines of writing that an empty cell has room for
};
struct NotePicture {
  std::string file;  // beside the note
  std::string caption;
};
using NoteBlock = std::variant<NoteHeading, NoteText, NoteBox, NoteList, NoteTable, NotePicture>;

struct Note {
  std::string title;
  std::string date;  // of making, "2026-11-29"; empty: not said
  std::vector<NoteBlock> blocks;
};

// What studies of the same plan add; none: "not calculated". Their inputs must be those of the estimate.
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
struct NotePeople {
  std::string words;  // which girths may be accepted, and what that rests on
  std::vector<InputFile> inputs;
};
struct NoteExtras {
  std::optional<NoteBands> bands;
  std::optional<NoteCeiling> ceiling;
  std::optional<NotePeople> people;
};

inline constexpr const char* kPictureOfPlace = "note-place.png";        // where it sits, with sites
inline constexpr const char* kPictureOfPressure = "note-pressure.png";  // laid flat, and while it fills
inline constexpr int kNotePictureWidth = 680;                           // pixels, in HTML

// `inputs_now`: the input files as they are when the note is written. Problems: a test object, which nobody
// wears; a file changed since the estimate or a study read it; the pressure asked for was not reached, so no
// figure describes the device.
Result<Note> study_note(const Summary& summary, const std::vector<InputFile>& inputs_now,
                        const NoteExtras& extras = {});

// Empty cells of its tables.
int cells_to_fill(const std::vector<NoteBlock>& blocks);

std::string note_markdown(const Note& note);
std::string note_html(const Note& note);
// What stands between <body> and </body>, for a viewer with a small part of HTML and CSS.
std::string note_body_html(const Note& note);

// Every sentence of the note as running text, without tables of numbers: for a reading-ease check.
std::string note_prose(const Note& note);

}  // namespace wrapgauge
