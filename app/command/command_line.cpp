#include "app/command/command_line.hpp"

#include <CLI/CLI.hpp>
#include <exception>
#include <memory>
#include <sstream>

#include "app/command/clean_stream.hpp"
#include "app/command/help_format.hpp"
#include "app/command/wrapped_text.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/thrown.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kAbout =
    "Predicts how hard an inflatable silicone wearable presses on a body.\n"
    "Predictions only: not a medical device; ask a clinician before anyone wears it.";
constexpr const char* kMainExamples =
    "Examples:\n"
    "  wrapgauge demo demo-plans\n"
    "  wrapgauge look demo-plans/plans/forearm-cuff.json\n"
    "  wrapgauge estimate demo-plans/plans/forearm-cuff.json --out cuff\n";

// A command that is only a family of others.
CLI::App& add_group(CLI::App& app, const char* name, const char* about) {
  CLI::App* group = app.add_subcommand(name, about);
  group->require_subcommand(1);
  group->footer("");
  return *group;
}

int parse_and_run(std::vector<std::string> arguments, Streams streams) {
  CLI::App app(kAbout, "wrapgauge");
  Action action;
  app.formatter(std::make_shared<HelpFormat>());  // the commands take it over
  app.require_subcommand(1);
  app.set_version_flag("--version", "wrapgauge " + std::string(program_version()));
  app.footer(std::string(kMainExamples) + kExitCodeHelp);
  add_look(app, action);
  add_estimate(app, action);
  add_ceiling(app, action);
  add_aim(app, action);
  add_spread(app, action);
  add_people(app, action);
  add_advise(app, action);
  add_vary(app, action);
  add_note(app, action);
  CLI::App& body = add_group(app, "body", "Check, repair, make and measure bodies");
  add_body_check(body, action);
  add_body_repair(body, action);
  add_body_make(body, action);
  add_body_girths(body, action);
  add_body_sites(body, action);
  add_body_pieces(body, action);
  CLI::App& layout = add_group(app, "layout", "Read, make, check and print flat layouts");
  add_layout_read(layout, action);
  add_layout_make(layout, action);
  add_layout_check(layout, action);
  add_layout_template(layout, action);
  CLI::App& bench = add_group(app, "bench", "Fit the model to readings of a real device");
  add_bench_sheet(bench, action);
  add_bench_fit(bench, action);
  add_bench_compare(bench, action);
  add_demo(app, action);
  try {
    std::reverse(arguments.begin(), arguments.end());  // the parser takes them from the back
    app.parse(arguments);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() == 0) {  // --help, --version
      std::ostringstream page;
      app.exit(error, page, page);
      streams.out << wrapped_help(page.str());
      return kExitDone;
    }
    streams.err << "wrapgauge: " << clean_text(error.what()) << "; see wrapgauge --help.\n";
    return kExitBadInput;
  }
  return action(streams);
}

}  // namespace

int run_command_line(std::vector<std::string> arguments, Streams streams) {
  try {
    CleanStream out(streams.out), err(streams.err);
    return parse_and_run(std::move(arguments), {out, err});
  } catch (...) {
    return say_problem(problem_of(std::current_exception()), streams);
  }
}

}  // namespace wrapgauge
