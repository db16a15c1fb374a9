#pragma once
// The sheet to fill in for a plan's device: which readings, under which conditions, and what is predicted.

#include "model/bench/bench_model.hpp"
#include "model/bench/readings_file.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {

struct BenchSheet {
  std::vector<Reading> rows;                     // conditions; what is to be read is empty
  std::vector<std::optional<double>> predicted;  // SI, a row each; none: not predicted
  std::vector<std::string> left_out;             // what could not be proposed, in sentences
  std::string materials_hash;                    // of what was predicted with
};

// Strips of both sheets, fills of each inlet, bulges of each chamber, plates, contact at each chamber's
// middle up to the plan's own pressure, closure, peel. A calibration among the resources is not used.
// Problems: those of prepare(); kCancelled.
Result<BenchSheet> bench_sheet(const BenchJob& job, Progress& progress);

// The table with the block before it, predictions beside the empty cells.
std::string readings_template(const BenchSheet& sheet, const Plan& plan, const Body& body);

// How readings of a kind are taken, to be read off the bench.
Phrase kind_title(ReadingKind kind);
Phrase kind_steps(ReadingKind kind);
// Under which conditions: "lean left, 36.0 mL".
Phrase conditions_of(const Reading& row);

// The printable page: steps, cautions, what is predicted.
Note sheet_note(const BenchSheet& sheet, const Plan& plan);

}  // namespace wrapgauge
