#pragma once
// One function a subcommand: adds its options and help to the parser and, when the user named it, says what
// to run. A command writes to `out`, problems to `err`, and returns the exit code.

#include <functional>
#include <ostream>

#include "app/command/exit_code.hpp"
#include "app/job/result_folder.hpp"

namespace CLI {
class App;
}

namespace wrapgauge {

struct Streams {
  std::ostream& out;
  std::ostream& err;
};

// What the parser found to do.
using Action = std::function<int(Streams)>;

void add_estimate(CLI::App& app, Action& action);
void add_look(CLI::App& app, Action& action);
void add_ceiling(CLI::App& app, Action& action);
void add_aim(CLI::App& app, Action& action);
void add_spread(CLI::App& app, Action& action);
void add_people(CLI::App& app, Action& action);
void add_advise(CLI::App& app, Action& action);
void add_vary(CLI::App& app, Action& action);
void add_note(CLI::App& app, Action& action);
void add_demo(CLI::App& app, Action& action);

// Group `body`.
void add_body_check(CLI::App& body, Action& action);
void add_body_repair(CLI::App& body, Action& action);
void add_body_make(CLI::App& body, Action& action);
void add_body_girths(CLI::App& body, Action& action);
void add_body_sites(CLI::App& body, Action& action);
void add_body_pieces(CLI::App& body, Action& action);

// Group `layout`.
void add_layout_read(CLI::App& layout, Action& action);
void add_layout_make(CLI::App& layout, Action& action);
void add_layout_check(CLI::App& layout, Action& action);
void add_layout_template(CLI::App& layout, Action& action);

// place.write, and what that had to say on `err`.
Result<std::monostate> write_set(ResultFolder& place, const std::vector<ResultPart>& parts, Streams streams);

// Group `bench`.
void add_bench_sheet(CLI::App& bench, Action& action);
void add_bench_fit(CLI::App& bench, Action& action);
void add_bench_compare(CLI::App& bench, Action& action);

// "wrapgauge: SENTENCE" and the exit code that belongs to it.
int say_problem(const Problem& problem, Streams streams);

// Exit codes in words, for the foot of a help page.
extern const char* const kExitCodeHelp;

}  // namespace wrapgauge
