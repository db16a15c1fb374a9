#pragma once
// One function a subcommand: writes to `out`, problems to `err`, returns the exit code.

#include <filesystem>
#include <optional>
#include <ostream>
#include <string>

#include "app/command/exit_code.hpp"
#include "model/body/length_unit.hpp"

namespace wrapgauge {

struct Streams {
  std::ostream& out;
  std::ostream& err;
};

struct EstimateCommand {
  std::filesystem::path plan, folder;
  bool json = false;              // summary.json on `out` too
  std::optional<double> edge_mm;  // instead of the plan's
  bool mesh_error = true;
};
int run_estimate(const EstimateCommand& command, Streams streams);

int run_look(const std::filesystem::path& plan, Streams streams);

struct BodyCommand {
  std::filesystem::path file;
  std::optional<LengthUnit> unit;
  bool json = false;
};
int run_body(const BodyCommand& command, Streams streams);

int run_demo(const std::filesystem::path& folder, Streams streams);

// "wrapgauge: SENTENCE" and the exit code that belongs to it.
int say_problem(const Problem& problem, Streams streams);

}  // namespace wrapgauge
