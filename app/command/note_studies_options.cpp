#include "app/command/note_studies_options.hpp"

#include <CLI/CLI.hpp>

#include "model/core/day.hpp"

namespace wrapgauge {

void add_note_studies_options(CLI::App& command, NoteStudies& studies, const std::string& note) {
  CLI::Option* spread =
      command
          .add_option("--spread", studies.spread, "Folder of a spread of this plan: the note shows its bands")
          ->type_name("DIR");
  CLI::Option* ceiling = command
                             .add_option("--ceiling", studies.ceiling,
                                         "File of a ceiling of this plan (ceiling --out): the note shows it")
                             ->type_name("FILE");
  CLI::Option* people =
      command
          .add_option("--people", studies.people,
                      "Folder of the people this plan was tried on: the note says which girths to accept")
          ->type_name("DIR");
  if (note.empty()) return;
  for (CLI::Option* option : {spread, ceiling, people}) option->needs(command.get_option(note));
}

void add_note_date_option(CLI::App& command, std::optional<std::string>& date, const std::string& note) {
  CLI::Option* option =
      command.add_option("--date", date, "Day the note is made, instead of the plan's")
          ->check([](const std::string& day) {
            return is_day(day) ? std::string() : "'" + day + "' is no day; write year-month-day, 2026-11-29.";
          })
          ->type_name("YYYY-MM-DD");
  if (!note.empty()) option->needs(command.get_option(note));
}

}  // namespace wrapgauge
