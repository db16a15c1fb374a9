#pragma once
#include "app/job/note_studies.hpp"

namespace CLI {
class App;
}

namespace wrapgauge {

// --spread DIR and --ceiling FILE: studies of the same plan that the note shows. `studies` outlives the
// parsing. `note`: the flag they need; empty: none.
void add_note_studies_options(CLI::App& command, NoteStudies& studies, const std::string& note = "");

}  // namespace wrapgauge
