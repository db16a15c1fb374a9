// Solves many random plans and counts how they end.  Usage: random_plans FIRST_SEED COUNT
// One line a plan on standard error, a table in Markdown on standard output (docs/random-plans.md).
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <vector>

#include "model/core/number_text.hpp"
#include "tests/random_plans/outcome.hpp"

namespace wrapgauge::random_plans {
namespace {

const char* kEndWords[] = {"reached the asked load", "stopped at a named limit point",
                           "gave up, with the last load that converged", "out of balance"};

double share_at(std::vector<double> values, double share) {
  if (values.empty()) return 0.0;
  std::sort(values.begin(), values.end());
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

int run(unsigned first, unsigned count) {
  const Resources resources =
      read_resources(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources").value();
  int ends[4] = {0, 0, 0, 0}, turned_down = 0;
  std::vector<double> factorisations, cuts, seconds;
  for (unsigned seed = first; seed < first + count; ++seed) {
    const RandomPlan random = random_plan(seed, resources, turned_down);
    const auto start = std::chrono::steady_clock::now();
    const Outcome outcome = outcome_of(random, resources);
    seconds.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    ++ends[static_cast<int>(outcome.end)];
    std::cerr << seed << " | " << kEndWords[static_cast<int>(outcome.end)] << " | " << outcome.factorisations
              << " | " << fixed_text(seconds.back(), 2) << " s | " << random.words << " | " << outcome.message
              << "\n";
    if (outcome.end == End::kGaveUp) continue;
    factorisations.push_back(outcome.factorisations);
    if (outcome.cut_balance > 0.0) cuts.push_back(outcome.cut_balance);
  }
  std::cout << "Seeds " << first << " to " << first + count - 1
            << ".\n\n| end | plans | share |\n|---|---|---|\n";
  for (int end = 0; end < 4; ++end)
    std::cout << "| " << kEndWords[end] << " | " << ends[end] << " | "
              << fixed_text(100.0 * ends[end] / count, 1) << " % |\n";
  std::cout << "\n"
            << turned_down
            << " more draws were turned down before solving (the layout does not go on there).\n\n"
               "| figure | half of the plans below | 95 % below | all below |\n|---|---|---|---|\n";
  const auto row = [](const char* name, const std::vector<double>& values, double factor, int digits) {
    std::cout << "| " << name;
    for (double share : {0.5, 0.95, 1.0})
      std::cout << " | " << fixed_text(factor * share_at(values, share), digits);
    std::cout << " |\n";
  };
  row("factorisations", factorisations, 1.0, 0);
  row("balance of a cut through a closed layout, %", cuts, 100.0, 2);
  row("time, s", seconds, 1.0, 1);
  return 0;
}

}  // namespace
}  // namespace wrapgauge::random_plans

int main(int argc, char** argv) {
  if (argc != 3) {
    std::cerr << "Usage: random_plans FIRST_SEED COUNT\n";
    return 2;
  }
  return wrapgauge::random_plans::run(static_cast<unsigned>(std::strtoul(argv[1], nullptr, 10)),
                                      static_cast<unsigned>(std::strtoul(argv[2], nullptr, 10)));
}
