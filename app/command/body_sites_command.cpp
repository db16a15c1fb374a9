#include <CLI/CLI.hpp>
#include <memory>
#include <tuple>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "bodyforms/standard_sites.hpp"
#include "model/body/check_body.hpp"
#include "model/body/part_rules.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/plan/body_label.hpp"
#include "model/wrap/carry_sites.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBodySitesExamples =
    "Lays the standard bony and nerve places of the part on a scan, from one or\n"
    "two landmarks that someone felt and marked: standard places by name, in mm in\n"
    "the scan's own frame.\n"
    "Examples:\n"
    "  wrapgauge body sites arm.ply --part forearm --side right\n"
    "    --landmark 'ulnar styloid' -22 -6 9\n"
    "  wrapgauge body sites arm.ply --part forearm --side left\n"
    "    --landmark 'ulnar styloid' 22 -6 9\n"
    "    --landmark 'olecranon side of the elbow' 0 -38 245\n"
    "    --out arm.ply.label.json\n"
    "  wrapgauge body sites --part forearm --list\n"
    "Each is a proposal: in the file, change its status to \"judgement\" or\n"
    "\"confirmed\", or drop it. While one is still proposed the sites are not known,\n"
    "and the bony limit holds everywhere.\n";

struct BodySitesCommand {
  std::filesystem::path scan, out;
  std::string part, side, unit;
  std::vector<std::tuple<std::string, double, double, double>> landmarks;
  std::vector<double> front, axis;
  std::optional<double> length_mm;
  bool list = false;
};

Result<CarryOptions> options_of(const BodySitesCommand& command) {
  const auto part = body_part_from_name(command.part);
  if (!part)
    return bad_input("the part '" + command.part + "' is not known; it may be " + body_part_names() + ".");
  if (const auto agreed = agreed_part(command.scan.stem().string(), std::nullopt, part); !agreed)
    return agreed.problem();
  if (standard_sites(*part).empty())
    return bad_input("there are no standard places for the part '" + command.part +
                     "': mark its bony and nerve sites by hand in the plan.");
  CarryOptions options;
  options.part = *part;
  options.side = side_from_name(command.side);
  if (is_paired(*part) && !options.side)
    return bad_input("the part '" + command.part + "' has a left and a right: give --side.");
  if (!is_paired(*part) && options.side)
    return bad_input("the part '" + command.part + "' has no left and right: leave --side out.");
  options.front = vector_of(command.front);
  if (command.length_mm) options.length = *command.length_mm * mm;
  return options;
}

std::string point_words(const Vec3& point_m) {
  const Vec3 at = 1e3 * point_m;
  return fixed_text(at.x(), 1) + ", " + fixed_text(at.y(), 1) + ", " + fixed_text(at.z(), 1) + " mm";
}

void say_sites(const CarriedSites& carried, const CarryOptions& options, std::ostream& out) {
  out << carried.proposals.size() << " places proposed for the "
      << (options.side ? side_name(*options.side) : "") << (options.side ? " " : "")
      << body_part_name(options.part) << "; " << carried.rests_on << ".\n";
  out << "part: " << fixed_text(carried.length / mm, 1) << " mm long, from station "
      << fixed_text(carried.from / mm, 1) << " mm; front towards " << point_words(1e-3 * carried.front)
      << "\n";
  for (const SiteProposal& proposal : carried.proposals)
    out << "  " << proposal.site.name << " (" << site_kind_name(proposal.site.kind) << ") at "
        << point_words(proposal.site.point_m) << ": station " << fixed_text(proposal.place.station / mm, 1)
        << " mm (" << fixed_text(100.0 * proposal.share, 0) << " %), "
        << fixed_text(proposal.place.angle_deg, 0) << " degrees\n";
  for (const std::string& name : carried.beyond) out << "  left out, beyond the scan: " << name << "\n";
  out << "Proposed from memory of anatomy (judgement); people differ: feel for each, then confirm or drop "
         "it.\n";
}

// The scan as any command takes it, with what it was scaled and measured by.
Result<CheckedBody> read_scan(const BodySitesCommand& command, int& triangles) {
  auto raw = read_mesh(command.scan);
  if (!raw) return raw.problem();
  triangles = static_cast<int>(raw->faces.rows());
  BodyOptions options{command.scan.stem().string(), unit_from_name(command.unit), std::nullopt};
  options.axis_direction = vector_of(command.axis);
  return check_body(std::move(raw).value(), options);
}

int list_sites(const CarryOptions& options, std::ostream& out) {
  for (const StandardSite& site : standard_sites(options.part))
    out << site.name << " (" << site_kind_name(site.kind) << ")\n";
  return kExitDone;
}

int run_body_sites(const BodySitesCommand& command, Streams streams) {
  const auto options = options_of(command);
  if (command.list && options) return list_sites(*options, streams.out);
  if (!options) return say_problem(options.problem(), streams);
  if (command.scan.empty()) return say_problem(bad_input("name the scan."), streams);
  int triangles = 0;
  const auto checked = read_scan(command, triangles);
  if (!checked) return say_problem(checked.problem(), streams);
  std::vector<Landmark> landmarks;
  for (const auto& [name, x, y, z] : command.landmarks) landmarks.push_back({name, 1e-3 * Vec3(x, y, z)});
  const auto carried = carry_sites(checked->body, standard_sites(options->part), landmarks, *options);
  if (!carried) return say_problem(carried.problem(), streams);
  BodyLabel label{options->part, options->side, checked->body.axis.direction, carried->front, {}, triangles};
  for (const SiteProposal& proposal : carried->proposals) label.sites.push_back(proposal.site);
  if (!command.out.empty())
    if (auto written = write_label(label, command.out); !written)
      return say_problem(written.problem(), streams);
  say_sites(*carried, *options, streams.out);
  if (!command.out.empty())
    streams.out << "Written to " << command.out.string()
                << "; a plan reads it when it lies beside the scan as "
                << label_file_of(command.scan).filename().string() << ".\n";
  return kExitDone;
}

}  // namespace

void add_body_sites(CLI::App& body, Action& action) {
  auto wanted = std::make_shared<BodySitesCommand>();
  CLI::App* command = body.add_subcommand("sites", "Propose bony and nerve sites on a scan from landmarks");
  command->add_option("scan", wanted->scan, "OBJ, STL, PLY, GLB or glTF")->type_name("SCAN");
  command->add_option("--part", wanted->part, "Part of the person, e.g. forearm")
      ->required()
      ->type_name("PART");
  command->add_option("--side", wanted->side, "Of a limb")->check(CLI::IsMember({"right", "left"}));
  command->add_option("--landmark", wanted->landmarks, "A standard place and its point; once or twice")
      ->type_name("NAME X Y Z");
  command->add_option("--front", wanted->front, "Towards the person's front; landmarks must agree")
      ->expected(3)
      ->type_name("X Y Z");
  command->add_option("--axis", wanted->axis, "From hand or foot to trunk; found if not given")
      ->expected(3)
      ->type_name("X Y Z");
  command->add_option("--length-mm", wanted->length_mm, "Length of the part by tape, mm")
      ->check(CLI::Range(20.0, 1000.0));
  command->add_option("--unit", wanted->unit, "Unit of the scan; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  command->add_option("--out", wanted->out, "Write a label with the proposals here")->type_name("FILE");
  command->add_flag("--list", wanted->list, "Show the standard places of the part");
  command->footer(kBodySitesExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_body_sites(*wanted, streams); }; });
}

}  // namespace wrapgauge
