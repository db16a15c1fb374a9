#include "model/note/cautions.hpp"
#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

NoteTable hazards_table(const Summary& summary) {
  NoteTable table{{"Hazard", "What was calculated", "What keeps it in check"}, {}, {22, 42, 36}, 2};
  for (const Hazard& hazard : summary.hazards)
    table.rows.push_back({marked(hazard.severity, english(hazard.name)),
                          without_source(english(hazard.sentence)), english(hazard.control)});
  return table;
}

NoteTable watch_table(const Summary& summary) {
  return {{"About the watch", "Answer"},
          {{"Who watches", summary.wearers.watched_by},
           {"How the wearer tells that it hurts", summary.wearers.how_they_tell}},
          {34, 66}};
}

}  // namespace

NoteBlocks note_on_hazards(const Summary& summary) {
  const Cautions all = cautions(summary.part, summary.calibration.has_value());
  NoteBlocks blocks{
      NoteHeading{"7. Hazards and what keeps them in check"},
      hazards_table(summary),
      NoteHeading{"8. Who must not take part"},
      NoteList{all.not_for},
      NoteText{all.never},
      NoteHeading{"9. Stop signs: open it and take it off at once"},
      NoteList{all.stop_signs},
      NoteText{"No reason is needed to stop. " + all.ask},
      NoteHeading{"10. Who watches, and how"},
      watch_table(summary),
      NoteText{"Whoever watches sees the skin beside the device and the hand or foot beyond it, "
               "talks with the wearer, and can open the closure within 3 s (judgement). Each "
               "time it goes on:"},
      NoteList{all.every_time}};
  if (!all.of_part.empty()) {
    blocks.push_back(NoteText{"On this part of the body:"});
    blocks.push_back(NoteList{all.of_part});
  }
  return blocks;
}

}  // namespace wrapgauge
