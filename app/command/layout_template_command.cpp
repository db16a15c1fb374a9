#include <CLI/CLI.hpp>
#include <memory>
#include <sstream>

#include "app/command/allowance_options.hpp"
#include "app/command/commands.hpp"
#include "app/command/plan_job.hpp"
#include "app/job/casting_tables.hpp"
#include "app/picture/picture_program.hpp"
#include "app/picture/template_pdf.hpp"
#include "model/core/file.hpp"
#include "model/core/json_object.hpp"
#include "model/io/writers/template_svg.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kLayoutTemplateExamples =
    "A paper mock-up: print at 100 %, measure the 50 mm bar, glue, cut, wrap it on\n"
    "and mark what to change before casting. Given a plan, it also carries the\n"
    "second closing line, the sites to keep clear and the anchor's centre line.\n"
    "Examples:\n"
    "  wrapgauge layout template cuff.json --paper a4 --out cuff.pdf\n"
    "  wrapgauge layout template plan.json --side skin --out cuff.svg\n";

struct LayoutTemplateCommand {
  std::filesystem::path input, out;
  std::string paper = "a4", side = "outer";
  AllowanceOptions allowance;
};

struct Marked {
  Layout layout;
  TemplateMarks marks;
};

Result<Marked> marked_plan(const std::filesystem::path& file, Streams streams) {
  const auto job = read_plan_job(file, streams);
  if (!job) return job.problem();
  const auto worn = wear_layout(job->body, job->plan.layout, job->plan.placement);
  if (!worn) return worn.problem();
  std::vector<BonySite> sites = job->body.bony_sites;
  sites.insert(sites.end(), job->plan.bony_sites.begin(), job->plan.bony_sites.end());
  TemplateMarks marks;
  marks.closing_length = worn->closing_length;
  marks.layout_point_m = job->plan.placement.layout_point_m;
  marks.sites = sites_on_layout(*worn, sites);
  return Marked{job->plan.layout, std::move(marks)};
}

// A plan or a layout, by what the file says it is.
Result<Marked> read_marked(const std::filesystem::path& file, Streams streams) {
  const auto json = read_json(file);
  if (!json) return json.problem();
  if (json->is_object() && json->contains("wrapgauge-plan")) return marked_plan(file, streams);
  auto layout = layout_from_json(*json, file.filename().string());
  if (!layout) return layout.problem();
  return Marked{std::move(layout).value(), {}};
}

Result<std::string> pdf_of(const TemplateDrawing& drawing, const std::string& paper, std::ostream& words) {
  if (auto started = start_picture_program(); !started) return started.problem();
  const auto pages = template_pages(drawing, *paper_of(paper));
  if (!pages) return pages.problem();
  words << pages->pages.size() << " " << pages->paper.name << " page" << (pages->pages.size() > 1 ? "s" : "")
        << ", " << pages->rows << " by " << pages->columns << (pages->lying ? ", lying" : ", upright")
        << ", and an overview\n";
  return template_pdf(drawing, *pages);
}

// Silicone to mix, as the sheets and the command ask for it. A hardness that the table does not have keeps
// nobody from trying the paper on: the print then carries no grams, and `words` says why.
std::optional<Problem> add_amounts(const LayoutTemplateCommand& command, Marked& marked,
                                   std::ostream& words) {
  const auto tables = read_casting_tables();
  if (!tables) return tables.problem();
  const auto grades = sheet_grades(marked.layout, tables->silicones);
  if (!grades) {
    words << "No grams on it: " << grades.problem().message << "\n";
    return std::nullopt;
  }
  marked.marks.allowance = command.allowance.over(casting_allowance(tables->rules));
  marked.marks.amounts = silicone_amounts(marked.layout, *grades, marked.marks.allowance);
  return std::nullopt;
}

int run_layout_template(const LayoutTemplateCommand& command, Streams streams) {
  const std::string ending = command.out.extension().string();
  if (ending != ".pdf" && ending != ".svg")
    return say_problem(
        bad_input("A template is written as .pdf or .svg, not as '" + command.out.filename().string() + "'."),
        streams);
  auto marked = read_marked(command.input, streams);
  if (!marked) return say_problem(marked.problem(), streams);
  if (const auto problems = check_layout(marked->layout); !problems.empty())
    return say_problem(problems.front(), streams);
  Marked wanted = std::move(marked).value();
  std::ostringstream words;  // said once the file is there
  if (auto problem = add_amounts(command, wanted, words)) return say_problem(*problem, streams);
  wanted.marks.skin_side = command.side == "skin";
  const TemplateDrawing drawing = template_drawing(wanted.layout, wanted.marks);
  const Result<std::string> bytes = ending == ".svg"
                                        ? Result<std::string>(template_svg(drawing, wanted.layout))
                                        : pdf_of(drawing, command.paper, words);
  if (!bytes) return say_problem(bytes.problem(), streams);
  if (auto written = write_file_atomically(command.out, *bytes); !written)
    return say_problem(written.problem(), streams);
  streams.out << words.str() << "Written to " << command.out.string() << ". " << check_bar_words() << "\n";
  return kExitDone;
}

}  // namespace

void add_layout_template(CLI::App& layout, Action& action) {
  auto wanted = std::make_shared<LayoutTemplateCommand>();
  CLI::App* command = layout.add_subcommand("template", "Print a layout at its true size: a paper mock-up");
  command->add_option("input", wanted->input, "A layout, or a plan to have placement marks too")
      ->required()
      ->type_name("LAYOUT|PLAN");
  command->add_option("--paper", wanted->paper, "Paper of the PDF's pages; a4 if not given")
      ->check(CLI::IsMember({"a4", "letter"}));
  command
      ->add_option("--side", wanted->side, "Sheet towards you: outer, or skin, mirrored; outer if not given")
      ->check(CLI::IsMember({"outer", "skin"}));
  wanted->allowance.add_to(*command);
  command->add_option("--out", wanted->out, "FILE.pdf, in pages; or FILE.svg, on one sheet")
      ->required()
      ->type_name("FILE");
  command->footer(kLayoutTemplateExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_layout_template(*wanted, streams); };
  });
}

}  // namespace wrapgauge
