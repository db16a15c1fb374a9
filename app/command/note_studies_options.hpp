#pragma once
#include <optional>
#include <string>

#include "app/job/note_studies.hpp"

namespace CLI {
class App;
}

namespace wrapgauge {

// --spread DIR, --ceiling FILE and --people DIR: studies of the same plan that the note shows. `studies`
// outlives the parsing. `note`: the flag they need; empty: none.
void add_note_studies_options(CLI::App& command, NoteStudies& studies, const std::string& note = "");

// --date YYYY-MM-DD: when the note is made, instead of the plan's day; never the clock's, so that the same
// input gives the same bytes. `date` outlives the parsing; `note` as above.
void add_note_date_option(CLI::App& command, std::optional<std::string>& date, const std::string& note = "");

}  // namespace wrapgauge
