#pragma once
// The engine of every question that needs many solves. A run is told apart by what its answer depends on and
// is answered by one line of JSON in a folder: what is finished is never done twice, parts can be made
// anywhere, and the answers are the same whatever the parts, their order, the machines and the threads.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "model/core/progress.hpp"
#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct RunOrder {
  std::string name;            // "run 7"
  std::string identity;        // a JSON object of all its answer depends on, in one line
  double cost = 1.0;           // beside the other runs; the costliest are begun first
  bool of_every_part = false;  // each part needs its answer and solves it
};

// Of a run at `edge` beside one at `other` of the same layout: nodes go with its square, time with them to
// the power that docs/speed.md measured.
double cost_of_edge(Length edge, Length other);

struct RunFolders {
  std::filesystem::path runs;                    // finished runs are kept here; exists
  std::vector<std::filesystem::path> also_from;  // and are looked for here too
};

// Part `part` of `parts`, 1-based: runs are dealt out in turn.
struct RunPart {
  int part = 1, parts = 1;
};

// "2/4"; empty: all of it. Problems: anything else.
Result<RunPart> run_part_of(const std::string& text);

// A JSON text each, in the order of the runs; none: not solved yet.
using RunAnswers = std::vector<std::optional<std::string>>;
int missing_runs(const RunAnswers& answers);

// Solves one run: its answer as JSON in one line. A run that finds no answer says why in its answer; a
// Problem ends the whole study (cancelled, out of memory).
using AnswerRun = std::function<Result<std::string>(std::size_t run, Progress& progress)>;

// Solves what `part` still lacks, as many runs side by side as there are threads, and appends each answer to
// the part's file as soon as it is there, flushed; then looks once more for what other parts have kept. A
// line that was cut short by a kill is passed over and its run solved again. Problems: a part that does not
// exist; kCancelled with how many runs are kept; a file that cannot be written; another program that works on
// the same part in this folder.
Result<RunAnswers> solve_runs(const std::vector<RunOrder>& orders, const RunFolders& folders,
                              const RunPart& part, const AnswerRun& answer,
                              Progress& progress = silent_progress());

// What is kept already, nothing solved. Problems: a file that cannot be read.
Result<RunAnswers> kept_runs(const std::vector<RunOrder>& orders, const RunFolders& folders);

}  // namespace wrapgauge
