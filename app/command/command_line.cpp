#include "app/command/command_line.hpp"

#include <CLI/CLI.hpp>
#include <exception>
#include <new>

#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kAbout =
    "Predicts how hard an inflatable silicone wearable presses on a body, chamber by chamber.\n"
    "Predictions only: not a medical device; ask a clinician before anyone wears it.";
constexpr const char* kExitCodes =
    "Exit codes:\n"
    "  0    done, and nothing predicted is above a limit\n"
    "  2    bad input: a file, an option or a value has to be mended\n"
    "  3    no equilibrium was found, so there are no numbers\n"
    "  4    done, with findings above a limit\n"
    "  130  stopped with Ctrl-C\n";
constexpr const char* kMainExamples =
    "Examples:\n"
    "  wrapgauge demo demo-plans\n"
    "  wrapgauge look demo-plans/plans/forearm-cuff.json\n"
    "  wrapgauge estimate demo-plans/plans/forearm-cuff.json --out cuff\n";
constexpr const char* kEstimateExamples =
    "Examples:\n"
    "  wrapgauge estimate cuff.json --out cuff\n"
    "  wrapgauge estimate cuff.json --out quick --edge-mm 8 --no-mesh-error\n"
    "  wrapgauge estimate cuff.json --out cuff --json | jq .whole\n"
    "Writes summary.md, summary.json, chambers.csv, body.png, layout.png, body.vtp and layout.vtp.\n";
constexpr const char* kLookExamples =
    "Checks the plan, body, layout, materials and fit and says what is ready; nothing is solved.\n"
    "Example:\n  wrapgauge look cuff.json\n";
constexpr const char* kBodyExamples =
    "Examples:\n  wrapgauge body forearm.stl\n  wrapgauge body forearm.obj --unit cm --json\n";
constexpr const char* kDemoExamples = "Example:\n  wrapgauge demo demo-plans\n";

// What was asked for; filled by the parser.
struct Wanted {
  EstimateCommand estimate;
  std::string look_plan;
  BodyCommand body;
  std::string body_unit;
  std::string demo_folder;
};

void add_estimate(CLI::App& app, Wanted& wanted) {
  CLI::App* command = app.add_subcommand("estimate", "Solve a plan and write what was found");
  command->add_option("plan", wanted.estimate.plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->add_option("--out", wanted.estimate.folder, "Folder for the results; made if it is missing")
      ->required()
      ->type_name("DIR");
  command->add_flag("--json", wanted.estimate.json, "Print summary.json instead of sentences");
  command
      ->add_option("--edge-mm", wanted.estimate.edge_mm, "Mesh edge length instead of the plan's, 1 to 20 mm")
      ->check(CLI::Range(1.0, 20.0))
      ->type_name("MM");
  command->add_flag("!--no-mesh-error", wanted.estimate.mesh_error,
                    "Do not solve once more on a coarser mesh: quicker, but the mesh error stays unknown");
  command->footer(std::string(kEstimateExamples) + kExitCodes);
}

void add_look(CLI::App& app, Wanted& wanted) {
  CLI::App* command = app.add_subcommand("look", "Check everything an estimate needs, without solving");
  command->add_option("plan", wanted.look_plan, "The plan, a JSON file")->required()->type_name("PLAN");
  command->footer(kLookExamples);
}

void add_body(CLI::App& app, Wanted& wanted) {
  CLI::App* command =
      app.add_subcommand("body", "Report size, repairs, girths and likely unit of a body file");
  command->add_option("file", wanted.body.file, "OBJ, STL or PLY")->required()->type_name("FILE");
  command->add_option("--unit", wanted.body_unit, "Unit of the file; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  command->add_flag("--json", wanted.body.json, "Print JSON instead of sentences");
  command->footer(kBodyExamples);
}

void add_demo(CLI::App& app, Wanted& wanted) {
  CLI::App* command = app.add_subcommand("demo", "Write the demo plans and say how to run them");
  command->add_option("folder", wanted.demo_folder, "Folder to write them to; made if it is missing")
      ->required()
      ->type_name("DIR");
  command->footer(kDemoExamples);
}

std::optional<LengthUnit> unit_of(const std::string& name) {
  for (const LengthUnit unit :
       {LengthUnit::kMillimetre, LengthUnit::kCentimetre, LengthUnit::kMetre, LengthUnit::kInch})
    if (unit_name(unit) == name) return unit;
  return std::nullopt;
}

int run_wanted(const CLI::App& app, Wanted& wanted, Streams streams) {
  if (app.got_subcommand("estimate")) return run_estimate(wanted.estimate, streams);
  if (app.got_subcommand("look")) return run_look(wanted.look_plan, streams);
  if (app.got_subcommand("demo")) return run_demo(wanted.demo_folder, streams);
  wanted.body.unit = unit_of(wanted.body_unit);
  return run_body(wanted.body, streams);
}

int parse_and_run(std::vector<std::string> arguments, Streams streams) {
  CLI::App app(kAbout, "wrapgauge");
  Wanted wanted;
  app.require_subcommand(1);
  app.set_version_flag("--version", "wrapgauge " + std::string(program_version()));
  app.footer(std::string(kMainExamples) + kExitCodes);
  add_estimate(app, wanted);
  add_look(app, wanted);
  add_body(app, wanted);
  add_demo(app, wanted);
  try {
    std::reverse(arguments.begin(), arguments.end());  // the parser takes them from the back
    app.parse(arguments);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() == 0) {  // --help, --version
      app.exit(error, streams.out, streams.err);
      return kExitDone;
    }
    streams.err << "wrapgauge: " << error.what() << "; see wrapgauge --help.\n";
    return kExitBadInput;
  }
  return run_wanted(app, wanted, streams);
}

}  // namespace

int run_command_line(std::vector<std::string> arguments, Streams streams) {
  try {
    return parse_and_run(std::move(arguments), streams);
  } catch (const std::bad_alloc&) {
    streams.err
        << "wrapgauge: not enough memory for this input: use a coarser mesh or a smaller body file.\n";
  } catch (const std::exception& error) {
    streams.err << "wrapgauge: stopped by an error inside the program (" << error.what()
                << "): please report it with the input.\n";
  }
  return kExitBadInput;
}

}  // namespace wrapgauge
