#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"
#include "model/note/cautions.hpp"
#include "model/note/note_pages.hpp"

namespace wrapgauge {
namespace {

NoteTable hazards_table(const Summary& summary) {
  NoteTable table{{"Hazard", "Worked out", "What keeps it in check"}, {}, {18, 48, 34}};
  for (const Hazard& hazard : summary.hazards)
    table.rows.push_back(
        {english(hazard.name), without_source(english(hazard.sentence)), english(hazard.control)});
  table.rows.push_back(
      {"Rub and pinch at seams", "Not worked out.",
       "No seam or fold on a joint crease; a thin cloth sleeve; look at the skin there first."});
  table.rows.push_back({"Skin that reacts", "Not worked out; unknown for casts that are not made for skin.",
                        "Cure fully; wash; ask about allergy; one wearer each, or a liner."});
  return table;
}

Pressure planned(const Summary& summary) {
  Pressure highest;
  for (const InflatedInlet& inlet : summary.inlets) highest = std::max(highest, inlet.gauge);
  return highest;
}

NoteTable tests_table(const Summary& summary, const NoteExtras& extras) {
  const Pressure gauge = planned(summary);
  const std::string relief =
      extras.ceiling && extras.ceiling->relief
          ? "it opens at " + *extras.ceiling->relief + " or less, as solved for with the ceiling"
          : "it opens at " + pressure_text(summary.highest_relief) + " or less";
  NoteTable table{{"Test off the body", "Accept when", "Reading", "Date and name"}, {}, {34, 32, 17, 17}};
  table.rows = {
      {"Leak: fill to " + pressure_text(gauge) + ", close, wait 5 min",
       "it falls by less than a tenth (judgement)", "", ""},
      {"Hold: 10 min at 1.5 times, " + pressure_text(gauge * 1.5), "no seam opens, no bulge grows", "", ""},
      {"Relief valve: raise the pressure slowly", relief, "", ""},
      {"Release: let go by hand at full pressure",
       "below " + pressure_text(summary.release.down_to) + " within " + time_text(summary.release.within), "",
       ""},
      {"Burst: two spare casts, behind a screen",
       "they hold " + pressure_text(gauge * 3.0) + ", three times, or more", "", ""},
      {"Thin sensor under each chamber, on a dummy limb",
       "no reading above the limits of section 3 or the last column of section 2", "", ""}};
  return table;
}

NoteTable checks_table(const Summary& summary) {
  Time first, rest = 30.0 * minute;
  for (const LimitRow& row : summary.rows_in_use)
    if (first == Time() || row.times.first_check < first) first = row.times.first_check;
  if (summary.exposure) first = summary.exposure->first_check, rest = summary.exposure->rest_after;
  const std::string after = first > Time() ? "After " + time_text(first) : "After the first minutes";
  return {{"Look at the skin", "What for", "Seen", "Time and name"},
          {{"Before", "Broken, red or swollen skin: do not start", "", ""},
           {after + ", first session; then as section 3 says", "Colour, feeling, swelling, warmth, marks", "",
            ""},
           {"When it comes off", "The same; press on red skin: it must turn pale", "", ""},
           {time_text(rest) + " later",
            "A mark that is still there: stop, no second session, ask a clinician", "", ""}},
          {34, 38, 14, 14}};
}

std::string inputs_text(const Summary& summary) {
  std::string text = "Wrapgauge " + summary.program_version + ", mesh of " +
                     fixed_text(summary.mesh.edge / mm, 1) + " mm, " + std::to_string(summary.mesh.nodes) +
                     " nodes. Input files and the start of their SHA-256:";
  for (const InputFile& input : summary.inputs)
    text += " " + input.role + " " + input.name + " " + input.sha256.substr(0, 12) +
            (&input == &summary.inputs.back() ? "." : ",");
  return text;
}

}  // namespace

NotePage note_second_page(const Summary& summary, const NoteExtras& extras) {
  const Cautions all = cautions(summary.part);
  NotePage page;
  const auto add = [&](const char* heading, NoteBlock block) {
    page.blocks.push_back(NoteHeading{heading});
    page.blocks.push_back(std::move(block));
  };
  add("5. Hazards and what keeps them in check", hazards_table(summary));
  add("6. Who must not take part", NoteList{all.not_for});
  add("7. Stop signs: vent and take it off at once", NoteList{all.stop_signs});
  page.blocks.push_back(NoteText{"Or when the wearer wants to stop. No reason is needed. " + all.ask});
  add("8. Tests before any person wears it", tests_table(summary, extras));
  add("9. Skin checks", checks_table(summary));
  add("10. Cleaning",
      NoteText{"Wash with mild soap and water. Wipe with 70 % alcohol. Let it dry. Keep one cast for each "
               "wearer, or use a fresh liner. Throw away a cast that is sticky, cut or cloudy "
               "(common practice, no source)."});
  add("11. Not checked", NoteText{"How the wearer moves, sweats or tenses; clothes; bone shape beyond the "
                                  "sites named; how tissue heals; any "
                                  "person's own health; how the cast ages; electric parts; what the silicone "
                                  "gives off. No standard for "
                                  "medical devices is claimed to be met."});
  add("12. Versions and inputs", NoteText{inputs_text(summary)});
  page.blocks.push_back(
      NoteText{"This is not a medical device and this note is no approval. It neither diagnoses nor treats. "
               "For clinical use ask a clinician and the body that licenses devices. Empty "
               "cells are for the study to fill.",
               true});
  return page;
}

}  // namespace wrapgauge
