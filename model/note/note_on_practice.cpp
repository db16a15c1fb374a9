#include <algorithm>
#include <utility>

#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"
#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

NoteTable tests_table(const Summary& summary, const NoteExtras& extras) {
  const Pressure gauge = highest_gauge(summary);
  const std::string relief =
      extras.ceiling && extras.ceiling->relief
          ? "it opens at " + *extras.ceiling->relief + " or less, as solved for with the ceiling"
      : summary.relief.empty() ? "no setting can be given for this plan"
                               : "it opens at " + relief_text(summary.relief) + " or less";
  const std::string release =
      "below " + pressure_text(summary.release.down_to) + " within " + time_text(summary.release.within);
  NoteTable table{{"Test off the body", "Accept when", "Reading", "Date, name"}, {}, {32, 32, 17, 19}, 2};
  table.rows = {
      {"Leak: fill to " + pressure_text(gauge) + ", shut, wait 5 min",
       "it falls by less than a tenth (judgement)", "", ""},
      {"Hold: 10 min at 1.5 times, " + pressure_text(gauge * 1.5), "no seam opens, no bulge grows", "", ""},
      {"Relief valve: raise the pressure slowly", relief, "", ""},
      {"Vent by hand at full pressure", release, "", ""},
      {"Open the closure at full pressure, with one hand",
       "it is open within " + time_text(summary.release.within), "", ""},
      {"Power off at full pressure, if it has power", "the vents open: " + release, "", ""},
      {"Burst: two spare casts, behind a screen",
       "they hold " + pressure_text(gauge * 3.0) + ", three times, or more", "", ""}};
  return table;
}

NoteTable sensor_table(const Summary& summary) {
  NoteTable table{{"Thin sensor under", "Predicted", "Limit", "Accept up to", "Reading", "Date, name"},
                  {},
                  {26, 15, 15, 15, 13, 16},
                  2};
  for (const SensorLine& line : sensor_lines(summary))
    table.rows.push_back({line.place, pressure_text(line.predicted),
                          line.limit > Pressure() ? pressure_text(line.limit) : "none",
                          at_most_text(line.accept), "", ""});
  return table;
}

// When to look first, and how long after.
std::pair<Time, Time> looks(const Summary& summary) {
  if (summary.exposure) return {summary.exposure->first_check, summary.exposure->rest_after};
  Time first;
  for (const LimitRow& row : summary.rows_in_use)
    if (first == Time() || row.times.first_check < first) first = row.times.first_check;
  return {first, 30.0 * minute};
}

std::optional<Time> check_every(const Summary& summary) {
  std::optional<Time> every;
  for (const LimitRow& row : summary.rows_in_use)
    if (row.times.check_every && (!every || *row.times.check_every < *every)) every = row.times.check_every;
  return every;
}

NoteTable checks_table(const Summary& summary) {
  const auto [first, rest] = looks(summary);
  NoteTable table{{"Look at the skin", "What for", "Seen", "Time, name"}, {}, {26, 34, 22, 18}, 3};
  const auto add = [&](const std::string& when, const std::string& what) {
    table.rows.push_back({when, what, "", ""});
  };
  add("Before", "Broken, red or swollen skin: do not start");
  add(first > Time() ? "After " + time_text(first) : "After the first minutes",
      "Colour, feeling, swelling, warmth, marks; colour comes back within 3 s after a press");
  if (const auto every = check_every(summary))
    add("Then every " + time_text(*every) + " until it comes off", "The same");
  add("When it comes off", "The same; press on red skin: it must turn pale");
  add(time_text(rest) + " later", "A mark that is still there: stop, no second session, ask a clinician");
  return table;
}

std::string release_text(const Summary& summary) {
  const bool fastened = summary.closure.has_value();
  std::string text = fastened ? "Release means: open the closure. Venting is not enough. "
                              : "Release means: vent it and lift it off. ";
  if (summary.exposure && summary.exposure->still_pressed > Pressure())
    text += "Vented but still worn, it is predicted to press up to " +
            pressure_text(summary.exposure->still_pressed) + ". ";
  else if (fastened)
    text += "A vented band that is still fastened can press. ";
  return text +
         "Open, then vent, then look at the skin. If it sticks, cut it off with blunt scissors, away from "
         "the "
         "skin. Call for help when breath is short, the chest hurts, or a limb stays white, blue, cold or "
         "numb "
         "once it is off (judgement). A clinician decides what comes next.";
}

NoteTable emergency_table() {
  return {{"In an emergency", "Answer"},
          {{"Number to call, and the address here", ""},
           {"Who is trained in first aid, and where", ""},
           {"Where the blunt scissors lie", ""}},
          {40, 60},
          2};
}

NoteTable materials_table() {
  return {{"About the materials", "Answer"},
          {{"Silicone: maker, product, batch", ""},
           {"Cured for how long, and how warm", ""},
           {"What uncured silicone gives off, by its data sheet", ""},
           {"Latex in tubes, valves, gloves or straps", ""},
           {"Skin irritation test: method, date, result", ""},
           {"Cloth, glue and dye that touch the skin", ""},
           {"Who cleans it, with what, how often", ""}},
          {40, 60},
          2};
}

}  // namespace

Pressure highest_gauge(const Summary& summary) {
  Pressure highest;
  for (const InflatedInlet& inlet : summary.inlets) highest = std::max(highest, inlet.gauge);
  return highest;
}

NoteBlocks note_on_practice(const Summary& summary, const NoteExtras& extras) {
  return {
      NoteHeading{"11. Tests before any person wears it"},
      tests_table(summary, extras),
      NoteText{
          "Each place is also tried on a dummy limb. The accept line is the lower of the limit and the "
          "prediction, rounded down. Zero the sensor in place. Read three times and write down the highest "
          "(judgement). One reading above its line: stop, and find out why."},
      sensor_table(summary),
      NoteHeading{"12. Skin checks"},
      checks_table(summary),
      NoteHeading{"13. Release and emergency"},
      NoteText{release_text(summary)},
      emergency_table(),
      NoteHeading{"14. Materials and cleaning"},
      materials_table(),
      NoteText{"Wash with mild soap and water. Wipe with 70 % alcohol. Let it dry. Keep one cast for each "
               "wearer, or use a fresh liner. Throw away a cast that is sticky, cut or cloudy "
               "(common practice, no source)."}};
}

}  // namespace wrapgauge
