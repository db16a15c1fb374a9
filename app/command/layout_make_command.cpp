#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "model/body/check_body.hpp"
#include "model/body/girth.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/layout/forms/layout_form.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

struct SheetOptions {
  std::optional<std::string> material;
  std::optional<double> thickness_mm;

  std::optional<Sheet> over(Sheet sheet) const {
    if (material) sheet.material = *material;
    if (thickness_mm) sheet.thickness = *thickness_mm * mm;
    return sheet;
  }
};

struct LayoutMakeCommand {
  LayoutForm form;
  std::map<std::string, std::optional<double>> given;
  SheetOptions skin, outer;
  std::filesystem::path body, out;
  std::optional<double> station_mm;
};

double height_mm(const LayoutMakeCommand& command) {
  for (const LayoutParameter& parameter : command.form.parameters)
    if (parameter.name == "height") return command.given.at("height").value_or(parameter.default_value);
  return 0.0;
}

Result<Length> measured(const Body& body, const LayoutParameter& parameter, Length station) {
  const Girth girth = girth_at(body, station);
  if (girth.kind == SectionKind::kOneLoop) return girth.girth;
  return bad_input("The body has no single closed section at " + fixed_text(station / mm, 1) +
                   " mm, where \"" + parameter.name + "\" is measured (the body is " +
                   fixed_text(body_length(body) / mm, 1) + " mm long): choose another --station, or give --" +
                   parameter.name + ".");
}

// Girths that the user did not give, from the body.
std::optional<Problem> measure_girths(const LayoutMakeCommand& command, std::map<std::string, double>& values,
                                      std::ostream& out) {
  if (command.body.empty() && !command.station_mm) return std::nullopt;
  if (command.body.empty() || !command.station_mm)
    return bad_input(
        "--body and --station go together: a body file, and where the layout's middle lies on it.");
  auto raw = read_mesh(command.body);
  if (!raw) return raw.problem();
  const auto checked = check_body(std::move(raw).value(), {command.body.stem().string(), {}, {}});
  if (!checked) return checked.problem();
  for (const LayoutParameter& parameter : command.form.parameters) {
    if (!parameter.measured_at || values.contains(parameter.name)) continue;
    const Length station = (*command.station_mm + *parameter.measured_at * height_mm(command)) * mm;
    const auto girth = measured(checked->body, parameter, station);
    if (!girth) return girth.problem();
    values[parameter.name] = *girth / mm;
    out << parameter.name << " measured at " << fixed_text(station / mm, 1)
        << " mm: " << fixed_text(*girth / mm, 1) << " mm\n";
  }
  return std::nullopt;
}

int run_layout_make(const LayoutMakeCommand& command, Streams streams) {
  std::map<std::string, double> values;
  for (const auto& [name, value] : command.given)
    if (value) values[name] = *value;
  if (auto problem = measure_girths(command, values, streams.out)) return say_problem(*problem, streams);
  const auto layout =
      make_layout(command.form.name, values,
                  {command.skin.over(command.form.skin_sheet), command.outer.over(command.form.outer_sheet)});
  if (!layout) return say_problem(layout.problem(), streams);
  if (auto written = write_layout(*layout, command.out); !written)
    return say_problem(written.problem(), streams);
  const Bounds2 box = bounds(layout->outline_m);
  streams.out << layout->name << ": " << fixed_text(1e3 * (box.high - box.low).x(), 1) << " by "
              << fixed_text(1e3 * (box.high - box.low).y(), 1) << " mm, " << layout->chambers.size()
              << " chambers; written to " << command.out.string() << "\nNext: wrapgauge layout check "
              << command.out.string() << "\n";
  return kExitDone;
}

std::string help_of(const LayoutParameter& parameter) {
  const std::string unit = parameter.unit.empty() ? "" : ", " + parameter.unit;
  return parameter.meaning + unit + "; " + number_text(parameter.least) + " to " +
         number_text(parameter.most) + ", " + (parameter.measured_at ? "from the body or " : "") +
         number_text(parameter.default_value) + " if not given";
}

void add_sheet(CLI::App& command, const std::string& name, SheetOptions& options, const Sheet& sheet) {
  command
      .add_option("--" + name + "-material", options.material,
                  "Hardness of the " + name + " sheet; " + sheet.material + " if not given")
      ->type_name("HARDNESS");
  command
      .add_option(
          "--" + name + "-thickness", options.thickness_mm,
          "Thickness of the " + name + " sheet, mm; " + number_text(sheet.thickness / mm) + " if not given")
      ->type_name("MM");
}

void add_form(CLI::App& make, Action& action, const LayoutForm& form) {
  auto wanted = std::make_shared<LayoutMakeCommand>();
  wanted->form = form;
  CLI::App* command = make.add_subcommand(form.name, form.about);
  for (const LayoutParameter& parameter : form.parameters)
    command->add_option("--" + parameter.name, wanted->given[parameter.name], help_of(parameter))
        ->type_name(parameter.whole ? "N" : "NUMBER");
  add_sheet(*command, "skin", wanted->skin, form.skin_sheet);
  add_sheet(*command, "outer", wanted->outer, form.outer_sheet);
  command->add_option("--body", wanted->body, "Body file to measure girths on that are not given")
      ->type_name("FILE");
  command
      ->add_option("--station", wanted->station_mm,
                   "Where the layout's middle lies on the body, mm from its distal end")
      ->type_name("MM");
  command->add_option("--out", wanted->out, "The layout to write, a JSON file")
      ->required()
      ->type_name("FILE");
  command->footer("Example:\n  wrapgauge layout make " + form.name +
                  " --body forearm.stl --station 150 --out " + form.name + ".json\n");
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_layout_make(*wanted, streams); };
  });
}

}  // namespace

void add_layout_make(CLI::App& layout, Action& action) {
  CLI::App* make = layout.add_subcommand("make", "Draw a starting layout from girths and sizes");
  make->require_subcommand(1);
  make->footer("Example:\n  wrapgauge layout make cuff --girth 260 --chambers 4 --out cuff.json\n");
  for (const LayoutForm& form : layout_forms()) add_form(*make, action, form);
}

}  // namespace wrapgauge
