#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>
#include <nlohmann/json.hpp>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "model/body/check_body.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/io/writers/mesh_writer.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBodyGirthsExamples =
    "Stations are measured from the distal end along the axis; a wearer's tape\n"
    "lies within 1 % of a girth where the limb leans less than 8 degrees from the\n"
    "axis.\n"
    "Examples:\n"
    "  wrapgauge body girths calf.stl --at 30 120 250\n"
    "  wrapgauge body girths arm.obj --unit cm --every 20 --picture arm.png\n";

struct BodyGirthsCommand {
  std::filesystem::path file, out, picture;
  std::string unit;
  std::vector<double> at_mm, axis;
  std::optional<double> every_mm;
  bool json = false;
};

Result<std::vector<Girth>> girths_of(const BodyGirthsCommand& command, const Body& body) {
  const double length_mm = body_length(body) / mm;
  std::vector<double> stations = command.at_mm;
  if (command.every_mm)
    for (double station = 0.0; station <= length_mm; station += *command.every_mm)
      stations.push_back(station);
  if (stations.empty()) return girth_profile(body);
  std::vector<Girth> girths;
  for (const double station : stations) {
    if (station < 0.0 || station > length_mm)
      return bad_input("the station " + number_text(station) + " mm lies off the body, which is " +
                       fixed_text(length_mm, 1) + " mm long; stations count from its distal end.");
    girths.push_back(girth_inside(body, station * mm));
    girths.back().station = station * mm;
  }
  return girths;
}

void say_girths(const CheckedBody& checked, const std::vector<Girth>& girths, std::ostream& out) {
  out << "unit: " << english(checked.report.unit.sentence) << "\n";
  for (const Repair& repair : checked.report.repairs) out << "repair: " << english(repair.sentence) << "\n";
  out << "length: " << fixed_text(checked.report.length / mm, 1) << " mm\n";
  for (const Girth& girth : girths)
    out << "at " << fixed_text(girth.station / mm, 1) << " mm: " << fixed_text(girth.girth / mm, 1) << " mm ("
        << section_words(girth) << ")\n";
}

std::string girths_json(const CheckedBody& checked, const std::vector<Girth>& girths) {
  using Json = nlohmann::ordered_json;
  const auto in_mm = [](Length length) { return std::round(length / mm * 1e4) / 1e4; };
  Json json{{"wrapgauge-girths", 1},
            {"unit", unit_name(checked.report.unit.unit)},
            {"length_mm", in_mm(checked.report.length)},
            {"girths", Json::array()}};
  for (const Girth& girth : girths)
    json["girths"].push_back({{"station_mm", in_mm(girth.station)},
                              {"girth_mm", in_mm(girth.girth)},
                              {"bridged_mm", in_mm(girth.bridged)},
                              {"section", section_words(girth)}});
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<std::monostate> write_files(const BodyGirthsCommand& command, const Body& body,
                                   const std::vector<Girth>& girths) {
  FilesToWrite files;
  std::vector<GirthMark> marks;
  for (const Girth& girth : girths) marks.push_back({"", girth});
  if (!command.picture.empty())
    files.add(command.picture, girth_picture_bytes(body, marks, body.name, "girths of a body file"));
  if (!command.out.empty()) files.add(command.out, mesh_bytes(body.surface, command.out));
  return files.write();
}

int run_body_girths(const BodyGirthsCommand& command, Streams streams) {
  auto raw = read_mesh(command.file);
  if (!raw) return say_problem(raw.problem(), streams);
  BodyOptions options{command.file.stem().string(), unit_from_name(command.unit), std::nullopt};
  options.axis_direction = vector_of(command.axis);
  const auto checked = check_body(std::move(raw).value(), options);
  if (!checked) return say_problem(checked.problem(), streams);
  const auto girths = girths_of(command, checked->body);
  if (!girths) return say_problem(girths.problem(), streams);
  if (auto written = write_files(command, checked->body, *girths); !written)
    return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << girths_json(*checked, *girths);
  else
    say_girths(*checked, *girths, streams.out);
  return kExitDone;
}

}  // namespace

void add_body_girths(CLI::App& body, Action& action) {
  auto wanted = std::make_shared<BodyGirthsCommand>();
  CLI::App* command = body.add_subcommand("girths", "Measure the girths of a body file at given stations");
  command->add_option("file", wanted->file, "OBJ, STL, PLY, GLB or glTF")->required()->type_name("FILE");
  CLI::Option* at =
      command->add_option("--at", wanted->at_mm, "Stations in mm from the distal end")->type_name("MM ...");
  command->add_option("--every", wanted->every_mm, "A station every so many mm instead")
      ->check(CLI::Range(1.0, 1000.0))
      ->excludes(at)
      ->type_name("MM");
  command->add_option("--axis", wanted->axis, "From hand or foot to trunk; found if not given")
      ->expected(3)
      ->type_name("X Y Z");
  command->add_option("--unit", wanted->unit, "Unit of the file; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  command->add_option("--out", wanted->out, "Write the checked body here, in mm: .obj, .stl, .ply or .vtp")
      ->type_name("FILE");
  command->add_option("--picture", wanted->picture, "Write a picture with girth lines here")
      ->type_name("PNG");
  command->add_flag("--json", wanted->json, "Print JSON instead of sentences");
  command->footer(kBodyGirthsExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_body_girths(*wanted, streams); };
  });
}

}  // namespace wrapgauge
