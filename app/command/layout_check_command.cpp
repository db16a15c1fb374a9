#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/allowance_options.hpp"
#include "app/command/commands.hpp"
#include "app/command/layout_check_report.hpp"
#include "app/command/plan_job.hpp"
#include "app/job/casting_tables.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"
#include "model/wrap/fit_words.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kLayoutCheckExamples =
    "Says what is wrong with the drawing, what may go wrong when it is cast and\n"
    "worn (rules of thumb from casting.json), how much silicone each sheet takes,\n"
    "and which girths it goes round. With a plan it is laid on the plan's body, in\n"
    "the place of the plan's own layout.\n"
    "Examples:\n"
    "  wrapgauge layout check cuff.json\n"
    "  wrapgauge layout check cuff.json --plan forearm.json --json\n";

struct LayoutCheckCommand {
  std::filesystem::path layout, plan;
  AllowanceOptions allowance;
  bool json = false;
};

// On the plan's body.
std::optional<Problem> check_worn(const Layout& layout, const Job& job, const CastingRules& rules,
                                  LayoutCheckReport& report) {
  const auto worn = wear_layout(job.body, layout, job.plan.placement);
  if (!worn) return worn.problem();
  std::vector<BonySite> sites = job.body.bony_sites;
  sites.insert(sites.end(), job.plan.bony_sites.begin(), job.plan.bony_sites.end());
  for (const auto& check : {check_worn_inlets, check_worn_chambers})
    for (CastingFinding& finding : check(layout, *worn, sites, rules))
      report.findings.push_back(std::move(finding));
  report.worn.emplace();
  report.worn->sites = sites_on_layout(*worn, sites);
  if (!worn->closing_length) return std::nullopt;
  report.worn->closing_length = worn->closing_length;
  report.worn->girth = worn->wrap.closure->girth_at_anchor;
  report.worn->round_body = english(fastened_words(worn->wrap.fit));
  if (auto finding = check_overlap(layout, *worn->closing_length, rules))
    report.findings.push_back(std::move(*finding));
  if (layout.closure->closing_length) return std::nullopt;  // its second line was checked as drawn
  if (auto finding = check_second_line(layout, *worn->closing_length, rules))
    report.findings.push_back(std::move(*finding));
  return std::nullopt;
}

// The drawing first: where it is wrong none of the other checks means anything.
std::optional<Problem> check_worn_as_planned(const Layout& layout, const std::filesystem::path& plan,
                                             const CastingRules& rules, LayoutCheckReport& report,
                                             Streams streams) {
  const auto job = read_plan_job(plan, streams);
  return job ? check_worn(layout, *job, rules, report) : job.problem();
}

Result<LayoutCheckReport> check(const Layout& layout, const LayoutCheckCommand& command,
                                const CastingTables& tables, Streams streams) {
  LayoutCheckReport report;
  report.problems = check_layout(layout);
  if (!report.problems.empty()) return report;
  const auto grades = sheet_grades(layout, tables.silicones);
  if (!grades) return grades.problem();
  report.findings = check_casting(layout, *grades, tables.rules);
  report.allowance = command.allowance.over(casting_allowance(tables.rules));
  report.amounts = silicone_amounts(layout, *grades, report.allowance);
  report.closing = closing_range(layout, tables.rules);
  if (!command.plan.empty())
    if (auto problem = check_worn_as_planned(layout, command.plan, tables.rules, report, streams))
      return *problem;
  return report;
}

int run_layout_check(const LayoutCheckCommand& command, Streams streams) {
  const auto layout = read_layout(command.layout);
  if (!layout) return say_problem(layout.problem(), streams);
  const auto tables = read_casting_tables();
  if (!tables) return say_problem(tables.problem(), streams);
  const auto report = check(*layout, command, *tables, streams);
  if (!report) return say_problem(report.problem(), streams);
  if (command.json)
    streams.out << layout_check_json(*layout, *report, tables->rules);
  else
    say_layout_check(*report, tables->rules, streams.out);
  for (const Problem& problem : report->problems) say_problem(problem, streams);
  if (!report->problems.empty()) return kExitBadInput;
  return report->findings.empty() ? kExitDone : kExitAboveLimit;
}

}  // namespace

void add_layout_check(CLI::App& layout, Action& action) {
  auto wanted = std::make_shared<LayoutCheckCommand>();
  CLI::App* command = layout.add_subcommand("check", "Check a layout before it is cast and worn");
  command->add_option("layout", wanted->layout, "The layout, a JSON file")->required()->type_name("LAYOUT");
  command->add_option("--plan", wanted->plan, "Plan whose body and placement it is checked on")
      ->type_name("PLAN");
  wanted->allowance.add_to(*command);
  command->add_flag("--json", wanted->json, "JSON on standard output instead of sentences");
  command->footer(kLayoutCheckExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_layout_check(*wanted, streams); };
  });
}

}  // namespace wrapgauge
