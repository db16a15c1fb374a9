#include <CLI/CLI.hpp>
#include <algorithm>
#include <cstdlib>
#include <memory>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "app/command/form_report.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "model/plan/body_label.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBodyMakeExamples =
    "Measures come from a survey by sex and percentile, from your own tape, or\n"
    "both: what you give counts.\n"
    "Examples:\n"
    "  wrapgauge body make --list\n"
    "  wrapgauge body make calf --sex female --percentile 5 --side left \\\n"
    "      --out calf.stl --picture calf.png\n"
    "  wrapgauge body make upper-arm --sex male --girths middle=315\n"
    "  wrapgauge body make forearm --girths wrist=168,forearm=262,elbow=250 \\\n"
    "      --set length=255 --out arm.obj\n";

struct BodyMakeCommand {
  std::string form, sex, side;
  std::optional<double> percentile;
  std::vector<std::string> girths, others;  // NAME=VALUE
  std::filesystem::path out, picture;
  bool list = false, json = false;
};

Result<const Form*> find_form(const std::string& name) {
  std::string known;
  for (const Form& form : forms()) {
    if (form.name == name) return &form;
    known += (known.empty() ? "" : ", ") + form.name;
  }
  return bad_input(name.empty() ? "name a form; there are: " + known + "."
                                : "there is no body form '" + name + "'; there are: " + known + ".");
}

// NAME=VALUE; `prefix` may be left out of the name.
std::optional<Problem> take_value(const std::string& text, const std::string& prefix, const Form& form,
                                  std::map<std::string, double>& given) {
  const std::size_t equals = text.find('=');
  std::string name = text.substr(0, equals);
  const bool known = std::any_of(form.parameters.begin(), form.parameters.end(),
                                 [&](const FormParameter& parameter) { return parameter.name == name; });
  if (!known) name.insert(0, prefix);
  double value = 0.0;
  if (equals == std::string::npos || !CLI::detail::lexical_cast(text.substr(equals + 1), value))
    return bad_input("'" + text + "' is not NAME=NUMBER; write for example wrist=168.");
  if (!given.emplace(name, value).second) return bad_input("'" + name + "' is given twice; keep one.");
  return std::nullopt;
}

Result<FormOrder> order_of(const BodyMakeCommand& command, const Form& form) {
  FormOrder order{form.name, {}, {sex_from_name(command.sex), command.percentile, BodySide::kRight}};
  if (const auto side = side_from_name(command.side)) order.person.side = *side;
  for (const std::string& text : command.girths)
    if (auto problem = take_value(text, "girth_", form, order.given)) return *problem;
  for (const std::string& text : command.others)
    if (auto problem = take_value(text, "", form, order.given)) return *problem;
  if (command.percentile && !order.person.sex)
    return bad_input("--percentile needs --sex male or --sex female.");
  return order;
}

// Without a sex nothing is taken from the survey in silence.
std::optional<Problem> missing_problem(const FormOrder& order, const Form& form) {
  if (order.person.sex) return std::nullopt;
  std::string missing;
  for (const std::string& measure : measures_missing(form, order.given))
    missing += (missing.empty() ? "" : ", ") + measure;
  if (missing.empty()) return std::nullopt;
  return bad_input("the form '" + form.name + "' still needs " + missing +
                   ": measure them and give them with --girths and --set, or give --sex and --percentile.");
}

Result<std::monostate> write_files(const BodyMakeCommand& command, const FormOrder& order, const Form& form,
                                   const MadeForm& made) {
  FilesToWrite files;
  if (!command.picture.empty())
    files.add(command.picture, girth_picture_bytes(made.body, girth_marks(made), "form '" + form.name + "'",
                                                   person_words(order, form)));
  if (!command.out.empty()) {
    files.add(label_file_of(command.out), label_bytes(label_of(made.body)));
    files.add(command.out, mesh_bytes(made.body.surface, command.out));
  }
  return files.write();
}

int run_body_make(const BodyMakeCommand& command, Streams streams) {
  if (command.list && command.form.empty()) {
    list_forms(streams.out);
    return kExitDone;
  }
  const auto form = find_form(command.form);
  if (!form) return say_problem(form.problem(), streams);
  if (command.list) {
    list_parameters(**form, streams.out);
    return kExitDone;
  }
  const auto order = order_of(command, **form);
  if (!order) return say_problem(order.problem(), streams);
  if (const auto missing = missing_problem(*order, **form)) return say_problem(*missing, streams);
  const auto made = make_measured_form(order->form, order->given, order->person);
  if (!made) return say_problem(made.problem(), streams);
  if (auto written = write_files(command, *order, **form, *made); !written)
    return say_problem(written.problem(), streams);
  if (command.json)
    streams.out << form_json(*order, **form, *made);
  else
    say_form(*order, **form, *made, streams.out);
  if (!command.out.empty() && !command.json)
    streams.out << "written: " << command.out.string() << ", and beside it "
                << label_file_of(command.out).filename().string()
                << ", which says its part, side, front and places; keep the two together.\n";
  return kExitDone;
}

void add_measures(CLI::App& command, BodyMakeCommand& wanted) {
  command.add_option("--sex", wanted.sex, "Whose survey supplies measures not given")
      ->check(CLI::IsMember({"male", "female"}));
  command
      .add_option("--percentile", wanted.percentile, "Percentile of every measure, 1 to 99; 50 if not given")
      ->check(CLI::Range(1.0, 99.0));
  command.add_option("--side", wanted.side, "Right if not given")->check(CLI::IsMember({"right", "left"}));
  command.add_option("--girths", wanted.girths, "Your own tape values in mm, e.g. wrist=168,forearm=262")
      ->delimiter(',')
      ->type_name("NAME=MM");
  command.add_option("--set", wanted.others, "Other parameters, e.g. length=255,edge=4")
      ->delimiter(',')
      ->type_name("NAME=VALUE");
}

}  // namespace

void add_body_make(CLI::App& body, Action& action) {
  auto wanted = std::make_shared<BodyMakeCommand>();
  CLI::App* command = body.add_subcommand("make", "Make a body from a few measurements");
  command->add_option("form", wanted->form, "What to make; --list shows the forms")->type_name("FORM");
  add_measures(*command, *wanted);
  command->add_option("--out", wanted->out, "Write the body here, in mm: .obj, .stl, .ply or .vtp")
      ->type_name("FILE");
  command->add_option("--picture", wanted->picture, "Write a picture with girth lines here")
      ->type_name("PNG");
  command->add_flag("--list", wanted->list, "Show the forms, or the parameters of one");
  command->add_flag("--json", wanted->json, "Print JSON instead of sentences");
  command->footer(kBodyMakeExamples);
  command->callback(
      [&action, wanted] { action = [wanted](Streams streams) { return run_body_make(*wanted, streams); }; });
}

}  // namespace wrapgauge
