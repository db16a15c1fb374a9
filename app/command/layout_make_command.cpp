#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "app/command/wrapped_text.hpp"
#include "app/job/job.hpp"
#include "app/job/measured_layout.hpp"
#include "model/body/length_unit.hpp"
#include "model/core/number_text.hpp"
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
  std::string unit;
  std::vector<double> axis;
  std::optional<double> station_mm;
};

// The body as a plan that names the file would have it, with its label.
Result<Body> body_of(const LayoutMakeCommand& command) {
  BodyFile file;
  file.file = command.body;
  file.unit = unit_from_name(command.unit);
  file.axis_direction = vector_of(command.axis);
  Plan plan;
  plan.body = file;
  auto read = read_body(plan);
  if (!read) return read.problem();
  return std::move(read->body);
}

std::optional<Problem> option_fault(const LayoutMakeCommand& command) {
  if (command.body.empty() != !command.station_mm)
    return bad_input(
        "--body and --station go together: a body file, and where the layout's middle lies on it.");
  if (command.body.empty() && (!command.unit.empty() || !command.axis.empty()))
    return bad_input("--unit and --axis say how to read the body file; name it with --body.");
  return std::nullopt;
}

// Girths that the user did not give, from the body.
std::optional<Problem> measure(const LayoutMakeCommand& command, const Body& body,
                               std::map<std::string, double>& values, std::ostream& out) {
  const auto measures = measures_of(command.form, values, body, *command.station_mm * mm);
  if (!measures) return measures.problem();
  for (const LimbMeasure& measure : *measures) {
    values[measure.parameter] = measure.value_mm;
    out << measure.parameter << " measured " << measure.where << ": " << fixed_text(measure.value_mm, 1)
        << " mm\n";
  }
  return std::nullopt;
}

void say_made(const LayoutMakeCommand& command, const Layout& layout, Streams streams) {
  const Bounds2 box = bounds(layout.outline_m);
  streams.out << layout.name << ": " << fixed_text(1e3 * (box.high - box.low).x(), 1) << " by "
              << fixed_text(1e3 * (box.high - box.low).y(), 1) << " mm, " << layout.chambers.size()
              << (layout.chambers.size() == 1 ? " chamber" : " chambers") << "; written to "
              << command.out.string() << "\n";
}

int run_layout_make(const LayoutMakeCommand& command, Streams streams) {
  if (auto problem = option_fault(command)) return say_problem(*problem, streams);
  std::map<std::string, double> values;
  for (const auto& [name, value] : command.given)
    if (value) values[name] = *value;
  std::optional<Body> body;
  if (!command.body.empty()) {
    auto read = body_of(command);
    if (!read) return say_problem(read.problem(), streams);
    body = std::move(read).value();
    if (auto problem = measure(command, *body, values, streams.out)) return say_problem(*problem, streams);
  }
  const MadeSheets sheets{command.skin.over(command.form.skin_sheet),
                          command.outer.over(command.form.outer_sheet)};
  double wider = 0.0;
  auto layout = make_layout(command.form.name, values, sheets);
  if (body) {
    auto made = make_for_body(command.form, values, *body, *command.station_mm * mm, sheets);
    if (!made) return say_problem(made.problem(), streams);
    layout = made->layout;
    wider = made->wider;
  }
  if (!layout) return say_problem(layout.problem(), streams);
  if (auto written = write_layout(*layout, command.out); !written)
    return say_problem(written.problem(), streams);
  say_made(command, *layout, streams);
  const auto bulge = body ? girth_bulge(*layout, *body, *command.station_mm * mm) : std::nullopt;
  for (const Phrase& caution : made_layout_cautions(*layout, bulge, wider))
    streams.out << wrapped(english(caution));
  streams.out << "Next: wrapgauge layout check " << command.out.string() << "\n";
  return is_held(*layout) ? kExitDone : kExitAboveLimit;
}

std::string default_words(const LayoutParameter& parameter) {
  if (parameter.fit)
    return parameter.fit->beyond == 0.0
               ? "if not given, such that the outer sheet just meets round the limb"
               : "if not given, such that the outer sheet is stretched by " +
                     number_text(100.0 * parameter.fit->beyond) + " % when it meets round the limb";
  return (parameter.measured_at || parameter.measured_between || parameter.measured_bulge
              ? "from the body or "
              : "") +
         number_text(parameter.default_value) + " if not given";
}

std::string help_of(const LayoutParameter& parameter) {
  const std::string unit = parameter.unit.empty() ? "" : ", " + parameter.unit;
  return parameter.meaning + unit + "; " + number_text(parameter.least) + " to " +
         number_text(parameter.most) + ", " + default_words(parameter);
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
  command->add_option("--unit", wanted->unit, "Unit of the body file; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  command
      ->add_option("--axis", wanted->axis,
                   "The body's axis, from hand or foot to trunk; from its label or found if not given")
      ->expected(3)
      ->type_name("X Y Z");
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
