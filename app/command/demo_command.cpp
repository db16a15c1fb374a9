#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/job/demo_files.hpp"

namespace wrapgauge {
namespace {

int run_demo(const std::filesystem::path& folder, Streams streams) {
  const auto plans = write_demo(folder);
  if (!plans) return say_problem(plans.problem(), streams);
  for (const std::filesystem::path& plan : *plans)
    streams.out << "wrapgauge estimate " << plan.string() << " --out " << (folder / plan.stem()).string()
                << "\n";
  return kExitDone;
}

}  // namespace

void add_demo(CLI::App& app, Action& action) {
  auto folder = std::make_shared<std::string>();
  CLI::App* command = app.add_subcommand("demo", "Write the demo plans and say how to run them");
  command->add_option("folder", *folder, "Folder to write them to; made if it is missing")
      ->required()
      ->type_name("DIR");
  command->footer("Example:\n  wrapgauge demo demo-plans\n");
  command->callback(
      [&action, folder] { action = [folder](Streams streams) { return run_demo(*folder, streams); }; });
}

}  // namespace wrapgauge
