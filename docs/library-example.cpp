// A plan solved by a program of one's own: c++ with find_package(wrapgauge), see docs/install.md.
//
//   ./example PLAN.json TABLES      TABLES: the folder with limits.json, e.g. /usr/share/wrapgauge

#include <cstdio>

#include "bodyforms/form.hpp"
#include "model/core/number_text.hpp"
#include "model/note/verdict.hpp"
#include "model/pipeline/pipeline.hpp"

using namespace wrapgauge;

namespace {

int give_up(const Problem& problem) {
  std::fprintf(stderr, "%s\n", problem.message.c_str());
  return 2;
}

int solve(const char* plan_file, const char* tables) {
  const auto plan = read_plan(plan_file);
  if (!plan) return give_up(plan.problem());
  const auto* wanted = std::get_if<BodyForm>(&plan->body);
  if (wanted == nullptr) return give_up(bad_input("This example only takes plans whose body is a form."));
  const auto made = make_measured_form(wanted->form, wanted->parameters, wanted->person);
  if (!made) return give_up(made.problem());
  const auto resources = read_resources(tables);
  if (!resources) return give_up(resources.problem());
  const auto solved = estimate(*plan, made->body, *resources, {.mesh_error = false});
  if (!solved) return give_up(solved.problem());
  std::printf("%s\n", english(verdict(solved->summary)).c_str());
  for (const ChamberFigures& chamber : solved->figures.chambers)
    std::printf("%s: mean %s kPa, worst square centimetre %s kPa\n", chamber.chamber.c_str(),
                fixed_text(chamber.mean / kPa, 1).c_str(), fixed_text(chamber.peak / kPa, 1).c_str());
  return 0;
}

}  // namespace

int main(int count, char** arguments) {
  if (count == 3) return solve(arguments[1], arguments[2]);
  return give_up(bad_input("Name a plan and the folder of the tables."));
}
