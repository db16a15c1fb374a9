#include <CLI/CLI.hpp>
#include <cmath>
#include <iomanip>
#include <memory>
#include <nlohmann/json.hpp>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "model/body/check_body.hpp"
#include "model/body/mend_step.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBodyCheckExamples =
    "Examples:\n  wrapgauge body check forearm.stl\n  wrapgauge body check forearm.obj --unit cm --json\n";

struct BodyCheckCommand {
  std::filesystem::path file;
  std::string unit;  // empty: guessed from the size
  bool json = false;
};

void say_report(const CheckedBody& checked, std::ostream& out) {
  const BodyReport& report = checked.report;
  out << "unit: " << english(report.unit.sentence) << "\n";
  out << "size: length " << fixed_text(report.length / mm, 1) << " mm, width "
      << fixed_text(report.width_least / mm, 1) << " to " << fixed_text(report.width_most / mm, 1) << " mm, "
      << checked.body.surface.vertices_m.rows() << " vertices, " << checked.body.surface.faces.rows()
      << " triangles\n";
  for (const Repair& repair : report.repairs) out << "repair: " << english(repair.sentence) << "\n";
  for (const Phrase& note : report.notes)
    if (note != report.unit.sentence) out << "note: " << english(note) << "\n";
  out << "girths from the distal end:\n";
  for (const Girth& girth : report.girths)
    out << "  at " << fixed_text(girth.station / mm, 1) << " mm: " << fixed_text(girth.girth / mm, 1)
        << " mm (" << section_words(girth) << ")\n";
}

std::string report_json(const CheckedBody& checked) {
  using Json = nlohmann::ordered_json;
  const auto in_mm = [](Length length) { return std::round(length / mm * 1e4) / 1e4; };
  const BodyReport& report = checked.report;
  Json json;
  json["wrapgauge-body"] = 1;
  json["unit"] = unit_name(report.unit.unit);
  json["unit_guessed"] = report.unit.guessed;
  json["length_mm"] = in_mm(report.length);
  json["width_least_mm"] = in_mm(report.width_least);
  json["width_most_mm"] = in_mm(report.width_most);
  json["vertices"] = checked.body.surface.vertices_m.rows();
  json["triangles"] = checked.body.surface.faces.rows();
  json["open_ends"] = report.open_ends.size();
  json["self_crossings"] = report.self_crossings;
  json["repairs"] = Json::array();
  for (const Repair& repair : report.repairs)
    json["repairs"].push_back({{"count", repair.count}, {"sentence", english(repair.sentence)}});
  json["girths"] = Json::array();
  for (const Girth& girth : report.girths)
    json["girths"].push_back({{"station_mm", in_mm(girth.station)},
                              {"girth_mm", in_mm(girth.girth)},
                              {"bridged_mm", in_mm(girth.bridged)},
                              {"section", section_words(girth)}});
  json["notes"] = english(report.notes);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

// A table that hangs together with the limb: the body check keeps it, only a repair drops it.
void note_table(CheckedBody& checked) {
  const auto without = drop_table({checked.body.surface, checked.body.axis, true}, {});
  if (!without || without->scan.surface.faces.rows() == checked.body.surface.faces.rows()) return;
  checked.report.notes.push_back(
      Phrase::worded("A flat plane under the body looks like a table and was measured with it. Drop it: step "
                     "Body, or wrapgauge body repair."));
}

int run_body_check(const BodyCheckCommand& command, Streams streams) {
  auto raw = read_mesh(command.file);
  if (!raw) return say_problem(raw.problem(), streams);
  auto read = check_body(std::move(raw).value(),
                         {command.file.stem().string(), unit_from_name(command.unit), std::nullopt});
  if (!read) return say_problem(read.problem(), streams);
  CheckedBody checked = std::move(read).value();
  note_table(checked);
  if (command.json)
    streams.out << report_json(checked);
  else
    say_report(checked, streams.out);
  return kExitDone;
}

}  // namespace

void add_body_check(CLI::App& body, Action& action) {
  auto wanted = std::make_shared<BodyCheckCommand>();
  CLI::App* command =
      body.add_subcommand("check", "Report size, repairs, girths and likely unit of a body file");
  command->add_option("file", wanted->file, "OBJ, STL, PLY, GLB or glTF")->required()->type_name("FILE");
  command->add_option("--unit", wanted->unit, "Unit of the file; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  command->add_flag("--json", wanted->json, "Print JSON instead of sentences");
  command->footer(kBodyCheckExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_body_check(*wanted, streams); }; });
}

}  // namespace wrapgauge
