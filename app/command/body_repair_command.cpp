#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>
#include <nlohmann/json.hpp>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "bodyforms/form.hpp"
#include "model/body/mend.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "model/plan/mend_json.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBodyRepairExamples =
    "The scan's file stays as it is. Steps, in this order: drop a table, drop\n"
    "crumbs, fill holes, smooth, pose, cut (if asked for), mirror (if asked for),\n"
    "decimate. With --plan they are kept in the plan, where each can be changed or\n"
    "taken out again.\n"
    "Examples:\n"
    "  wrapgauge body repair scan.ply --unit mm --out calf.stl --picture calf.png\n"
    "  wrapgauge body repair scan.glb --cut 15 340 --edge-mm 5 --plan cuff.json\n";

struct BodyRepairCommand {
  std::filesystem::path scan, out, picture, plan;
  std::string unit, distal = "thin";
  bool keep_table = false, mirror = false, json = false;
  double hole_mm = FillHoles{}.up_to / mm, edge_mm = Decimate{}.edge / mm, turn_deg = 0.0;
  int passes = Smooth{}.passes;
  std::vector<double> cut_mm;
};

std::vector<MendStep> steps_of(const BodyRepairCommand& command) {
  std::vector<MendStep> steps;
  if (!command.keep_table) steps.push_back(DropTable{});
  steps.push_back(DropCrumbs{});
  if (command.hole_mm > 0.0) steps.push_back(FillHoles{command.hole_mm * mm});
  if (command.passes > 0) steps.push_back(Smooth{command.passes});
  const DistalEnd distal = command.distal == "thin"     ? DistalEnd::kThin
                           : command.distal == "thick"  ? DistalEnd::kThick
                           : command.distal == "turned" ? DistalEnd::kTurned
                                                        : DistalEnd::kAsItIs;
  steps.push_back(PoseLimb{distal, command.turn_deg});
  if (command.cut_mm.size() == 2) steps.push_back(CutLimb{command.cut_mm[0] * mm, command.cut_mm[1] * mm});
  if (command.mirror) steps.push_back(MirrorLimb{});
  if (command.edge_mm > 0.0) steps.push_back(Decimate{command.edge_mm * mm});
  return steps;
}

std::string report_json(const MendedBody& mended, const std::vector<MendStep>& steps) {
  using Json = nlohmann::ordered_json;
  const auto rounded = [](double value) { return std::round(value * 1e4) / 1e4; };
  Json json{{"wrapgauge-repair", 1}, {"repair", mend_steps_to_json(steps)}, {"reports", Json::array()}};
  for (const MendReport& report : mended.reports) {
    Json item{{"step", step_name(report.step)}, {"sentence", english(report.sentence)}};
    for (const MendFigure& figure : report.figures) item[figure.name] = rounded(figure.value);
    json["reports"].push_back(std::move(item));
  }
  json["girths"] = Json::array();
  for (const Girth& girth : mended.checked.report.girths)
    json["girths"].push_back(
        {{"station_mm", rounded(girth.station / mm)}, {"girth_mm", rounded(girth.girth / mm)}});
  json["triangles"] = mended.checked.body.surface.faces.rows();
  json["notes"] = english(mended.checked.report.notes);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

void say_report(const MendedBody& mended, const std::vector<MendStep>& steps, std::ostream& out) {
  for (const MendReport& report : mended.reports)
    out << step_name(report.step) << ": " << english(report.sentence) << "\n";
  const BodyReport& report = mended.checked.report;
  for (const Repair& repair : report.repairs) out << "repair: " << english(repair.sentence) << "\n";
  for (const Phrase& note : report.notes) out << "note: " << english(note) << "\n";
  out << "girths from the distal end:\n";
  for (const Girth& girth : report.girths)
    out << "  at " << fixed_text(girth.station / mm, 1) << " mm: " << fixed_text(girth.girth / mm, 1)
        << (girth.kind == SectionKind::kOneLoop ? " mm\n" : " mm (not one closed loop)\n");
  out << "for a plan: \"repair\": " << mend_steps_to_json(steps).dump() << "\n";
}

// What is wrong with the options, before the scan is read.
std::optional<Problem> option_fault(const BodyRepairCommand& command) {
  if (command.edge_mm > 0.0 && command.edge_mm < 0.5)
    return bad_input("--edge-mm is " + number_text(command.edge_mm) +
                     "; give 0.5 to 30, or 0 to keep the scan's own.");
  if (command.cut_mm.size() == 2 && command.cut_mm[1] <= command.cut_mm[0])
    return bad_input("--cut goes from " + number_text(command.cut_mm[0]) + " to " +
                     number_text(command.cut_mm[1]) + " mm; give the smaller station first.");
  if (command.out.empty()) return std::nullopt;
  if (const auto format = mesh_format_of(command.out); !format) return format.problem();
  std::error_code error;
  if (std::filesystem::equivalent(command.out, command.scan, error))
    return bad_input("--out names the scan itself, which stays as it is; choose another name.");
  return std::nullopt;
}

Result<std::string> picture_bytes(const MendedBody& mended, const std::filesystem::path& scan) {
  std::vector<GirthMark> marks;
  for (const Girth& girth : mended.checked.report.girths) marks.push_back({"", girth});
  return girth_picture_bytes(mended.checked.body, marks, scan.stem().string(), "repaired scan");
}

std::optional<BodyPart> part_of_form(const Plan& plan) {
  const auto* wanted = std::get_if<BodyForm>(&plan.body);
  for (const Form& form : forms())
    if (wanted && form.name == wanted->form) return form.part;
  return std::nullopt;
}

// The plan's body becomes the scan with these steps; everything else in it stays.
Result<std::string> changed_plan(const BodyRepairCommand& command, LengthUnit unit,
                                 const std::vector<MendStep>& steps) {
  auto plan = read_plan(command.plan);
  if (!plan) return plan.problem();
  Plan changed = std::move(plan).value();
  std::error_code error;
  auto scan = std::filesystem::proximate(
      command.scan,
      command.plan.parent_path().empty() ? std::filesystem::path(".") : command.plan.parent_path(), error);
  if (error) scan = std::filesystem::absolute(command.scan, error);
  if (changed.tissue_site.empty())
    return bad_input(
        "The plan's body was a form with a tissue site of its own: give the plan a tissue site, e.g. "
        "\"calf\", before its body becomes a scan.");
  if (!changed.part) changed.part = part_of_form(changed);  // the scan says nothing of itself
  BodyFile mended;
  mended.file = scan, mended.unit = unit, mended.mend = steps;
  changed.body = mended;
  return plan_bytes(changed, command.plan);
}

Result<std::monostate> write_files(const BodyRepairCommand& command, const MendedBody& mended,
                                   const std::vector<MendStep>& steps) {
  FilesToWrite files;
  if (!command.picture.empty()) files.add(command.picture, picture_bytes(mended, command.scan));
  if (!command.out.empty()) files.add(command.out, mesh_bytes(mended.checked.body.surface, command.out));
  if (!command.plan.empty())
    files.add(command.plan, changed_plan(command, mended.checked.report.unit.unit, steps));
  return files.write();
}

int run_body_repair(const BodyRepairCommand& command, Streams streams) {
  if (const auto problem = option_fault(command)) return say_problem(*problem, streams);
  auto raw = read_mesh(command.scan);
  if (!raw) return say_problem(raw.problem(), streams);
  const std::vector<MendStep> steps = steps_of(command);
  const auto mended =
      mend_body(std::move(raw).value(),
                {command.scan.stem().string(), unit_from_name(command.unit), std::nullopt}, steps);
  if (!mended) return say_problem(with_step_named(mended.problem(), steps), streams);
  if (auto written = write_files(command, *mended, steps); !written)
    return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << report_json(*mended, steps);
  else
    say_report(*mended, steps, streams.out);
  if (!command.plan.empty() && !command.json)
    streams.out << "written into " << command.plan.string()
                << ": its anchor and bony sites are now meant on the repaired body; check them with "
                   "wrapgauge look.\n";
  return kExitDone;
}

void add_step_options(CLI::App& command, BodyRepairCommand& wanted) {
  command.add_flag("--keep-table", wanted.keep_table, "Do not look for a table under the limb");
  command.add_option("--hole-mm", wanted.hole_mm, "Fill holes up to this width, mm; 0: none")
      ->check(CLI::Range(0.0, 500.0))
      ->capture_default_str();
  command.add_option("--passes", wanted.passes, "Smoothing passes; 0: none")
      ->check(CLI::Range(0, 200))
      ->capture_default_str();
  command
      .add_option("--distal", wanted.distal, "Which end is distal; turned: the other way than in the scan")
      ->check(CLI::IsMember({"thin", "thick", "as-it-is", "turned"}))
      ->capture_default_str();
  command.add_option("--turn-deg", wanted.turn_deg, "Turn about the axis after posing, degrees")
      ->check(CLI::Range(-360.0, 360.0))
      ->capture_default_str();
  command.add_option("--cut", wanted.cut_mm, "Keep what lies between two stations of the posed limb, mm")
      ->expected(2)
      ->check(CLI::Range(0.0, 3000.0))
      ->type_name("FROM TO");
  command.add_flag("--mirror", wanted.mirror, "Make a left limb of a right one, or a right of a left");
  command
      .add_option("--edge-mm", wanted.edge_mm,
                  "Edge of the new triangles, mm, 0.5 to 30; 0: keep the scan's own")
      ->check(CLI::Range(0.0, 30.0))
      ->capture_default_str();
}

}  // namespace

void add_body_repair(CLI::App& body, Action& action) {
  auto wanted = std::make_shared<BodyRepairCommand>();
  CLI::App* command =
      body.add_subcommand("repair", "Make a body out of a raw scan: fill holes, smooth, pose, cut");
  command->add_option("scan", wanted->scan, "OBJ, STL, PLY, GLB or glTF")->required()->type_name("SCAN");
  command->add_option("--unit", wanted->unit, "Unit of the file; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  add_step_options(*command, *wanted);
  command->add_option("--out", wanted->out, "Write the body here, in mm: .obj, .stl, .ply or .vtp")
      ->type_name("FILE");
  command->add_option("--picture", wanted->picture, "Write a picture with girth lines here")
      ->type_name("PNG");
  command->add_option("--plan", wanted->plan, "Make the scan with these steps the body of this plan")
      ->type_name("PLAN");
  command->add_flag("--json", wanted->json, "Print JSON instead of sentences");
  command->footer(kBodyRepairExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_body_repair(*wanted, streams); };
  });
}

}  // namespace wrapgauge
