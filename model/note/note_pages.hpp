#pragma once
// The two pages of the study note, block by block.

#include "model/note/note.hpp"

namespace wrapgauge {

NotePage note_first_page(const Summary& summary,
                         const NoteExtras& extras);  // what presses where, and how hard
NotePage note_second_page(const Summary& summary,
                          const NoteExtras& extras);  // what to mind, test and watch

// A finding without the bracket that names status and source, which stands in the table of limits.
std::string without_source(const std::string& sentence);

}  // namespace wrapgauge
