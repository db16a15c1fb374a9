#pragma once
// The sections of the study note in the order in which they stand.

#include "model/note/note.hpp"

namespace wrapgauge {

using NoteBlocks = std::vector<NoteBlock>;

// What the reviewer sees first. `to_fill`: empty cells of the whole note.
NoteBox note_verdict(const Summary& summary, int to_fill);

// 1 to 3: study, device, wearers, place.
NoteBlocks note_on_device(const Summary& summary, const NoteExtras& extras);
// 4 to 6: pressures with bands, limits, findings.
NoteBlocks note_on_pressures(const Summary& summary, const NoteExtras& extras);
// 7 to 10: hazards, who must not take part, stop signs, who watches.
NoteBlocks note_on_hazards(const Summary& summary);
// 11 to 14: tests off the body, skin checks, release, materials.
NoteBlocks note_on_practice(const Summary& summary, const NoteExtras& extras);
// 15 to 18: calibration, what was not checked, versions, signatures.
NoteBlocks note_on_record(const Summary& summary);

// The inlet that is filled hardest.
Pressure highest_gauge(const Summary& summary);

// The lower of limit and prediction: above it a reading on a dummy limb is not accepted.
struct SensorLine {
  std::string place;
  Pressure predicted, limit, accept;
};
// A line for each chamber and for each other place that a finding holds against a row in use. Where no
// finding gives a chamber's limit, the strictest of the rows in use holds.
std::vector<SensorLine> sensor_lines(const Summary& summary);

}  // namespace wrapgauge
