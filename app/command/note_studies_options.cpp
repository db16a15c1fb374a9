#include "app/command/note_studies_options.hpp"

#include <CLI/CLI.hpp>

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
  if (note.empty()) return;
  spread->needs(command.get_option(note));
  ceiling->needs(command.get_option(note));
}

}  // namespace wrapgauge
