#include <CLI/CLI.hpp>
#include <memory>

#include "app/command/commands.hpp"
#include "app/job/casting_tables.hpp"
#include "app/job/job.hpp"
#include "model/casting/closing_range.hpp"
#include "model/casting/silicone_amount.hpp"
#include "model/casting/worn_layout.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kExamples =
    "Says what is wrong with the drawing, what may go wrong when it is cast and worn (rules of thumb from\n"
    "casting.json), how much silicone each sheet takes, and which girths it goes round.\n"
    "With a plan it is laid on the plan's body, in the place of the plan's own layout.\n"
    "Examples:\n"
    "  wrapgauge layout check cuff.json\n"
    "  wrapgauge layout check cuff.json --plan forearm.json\n";

struct LayoutCheckCommand {
  std::filesystem::path layout, plan;
};

std::string in_mm(Length length) {
  return fixed_text(length / mm, 1) + " mm";
}

// Problems of the drawing, all of them; none of the other checks means anything then.
int say_problems(const std::vector<Problem>& problems, Streams streams) {
  for (const Problem& problem : problems) say_problem(problem, streams);
  return kExitBadInput;
}

void say_amounts(const Layout& layout, const SheetGrades& grades, const CastingRules& rules,
                 std::ostream& out) {
  double total_g = 0.0;
  for (const SheetAmount& amount : silicone_amounts(layout, grades, rules)) {
    out << "silicone: " << amount.sheet << ", " << amount.material << ", " << in_mm(amount.thickness) << ": "
        << fixed_text(amount.area / cm2, 1) << " cm2, " << fixed_text(amount.volume / mL, 1) << " mL; mix "
        << fixed_text(amount.to_mix / mL, 1) << " mL = " << fixed_text(amount.grams_to_mix, 1) << " g with "
        << number_text(rules.value(CastingRule::kSpill)) << " % for spill\n";
    total_g += amount.grams_to_mix;
  }
  out << "silicone: " << fixed_text(total_g, 1)
      << " g in all; densities are table values from memory, so weigh by the maker's sheet if you have it\n";
}

void say_range(const Layout& layout, const CastingRules& rules, std::ostream& out) {
  const auto range = closing_range(layout, rules);
  if (!range) return;
  out << "closing: goes round girths from " << in_mm(range->smallest_girth()) << " to "
      << in_mm(range->largest_girth()) << " at its middle height, stretched by "
      << fixed_text(100.0 * range->stretch, 1) << " %";
  if (range->longest_held > range->shortest)
    out << "; to " << in_mm(range->largest_held_girth()) << " with "
        << number_text(rules.value(CastingRule::kClosureOverlap)) << " mm left to hold it by\n";
  else
    out << "; nothing is left beyond the closing line to hold it by, so its edges have to be joined\n";
}

// On the plan's body.
Result<std::vector<CastingFinding>> worn_findings(const Layout& layout,
                                                  const std::filesystem::path& plan_file,
                                                  const CastingRules& rules, std::ostream& out) {
  const auto job = read_job(plan_file);
  if (!job) return job.problem();
  const auto worn = wear_layout(job->body, layout, job->plan.placement);
  if (!worn) return worn.problem();
  std::vector<BonySite> sites = job->body.bony_sites;
  sites.insert(sites.end(), job->plan.bony_sites.begin(), job->plan.bony_sites.end());
  std::vector<CastingFinding> findings = check_worn_inlets(layout, *worn, sites, rules);
  if (worn->closing_length) {
    out << "worn: closed at " << in_mm(*worn->closing_length) << ", girth there "
        << in_mm(worn->wrap.closure->girth_at_anchor) << "\n";
    if (auto finding = check_overlap(layout, *worn->closing_length, rules))
      findings.push_back(std::move(*finding));
  }
  for (const SiteOnLayout& site : sites_on_layout(*worn, sites))
    out << "worn: " << site_word(site.kind) << " '" << site.name << "' lies at ("
        << fixed_text(1e3 * site.centre_m.x(), 1) << ", " << fixed_text(1e3 * site.centre_m.y(), 1)
        << ") mm of the layout\n";
  return findings;
}

int run_layout_check(const LayoutCheckCommand& command, Streams streams) {
  const auto layout = read_layout(command.layout);
  if (!layout) return say_problem(layout.problem(), streams);
  const std::vector<Problem> problems = check_layout(*layout);
  if (!problems.empty()) return say_problems(problems, streams);
  const auto tables = read_casting_tables();
  if (!tables) return say_problem(tables.problem(), streams);
  const auto grades = sheet_grades(*layout, tables->silicones);
  if (!grades) return say_problem(grades.problem(), streams);
  std::vector<CastingFinding> findings = check_casting(*layout, *grades, tables->rules);
  say_amounts(*layout, *grades, tables->rules, streams.out);
  say_range(*layout, tables->rules, streams.out);
  if (!command.plan.empty()) {
    auto worn = worn_findings(*layout, command.plan, tables->rules, streams.out);
    if (!worn) return say_problem(worn.problem(), streams);
    for (const CastingFinding& finding : *worn) findings.push_back(finding);
  }
  for (const CastingFinding& finding : findings) {
    const CastingRuleRow& row = tables->rules.row(finding.rule);
    streams.out << "change (" << row.name << ", " << row.status << "): " << finding.sentence << "\n";
  }
  streams.out << (findings.empty() ? "Keeps to every rule. " : "") << tables->rules.remark << "\n";
  return findings.empty() ? kExitDone : kExitAboveLimit;
}

}  // namespace

void add_layout_check(CLI::App& layout, Action& action) {
  auto wanted = std::make_shared<LayoutCheckCommand>();
  CLI::App* command = layout.add_subcommand("check", "Check a layout before it is cast and worn");
  command->add_option("layout", wanted->layout, "The layout, a JSON file")->required()->type_name("LAYOUT");
  command->add_option("--plan", wanted->plan, "Plan whose body and placement it is checked on")
      ->type_name("PLAN");
  command->footer(std::string(kExamples) + kExitCodeHelp);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_layout_check(*wanted, streams); };
  });
}

}  // namespace wrapgauge
