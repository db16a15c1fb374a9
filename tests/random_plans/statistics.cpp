// Solves many random plans and counts how they end.  Usage: random_plans FIRST_SEED COUNT [SECONDS [TOTAL]]
// SECONDS: processor time that one plan may take; none: as long as the solver's own bound lets it. TOTAL: no
// plan is begun after so many seconds of it; the table is then of those before. Interrupted: the same.
// One line a plan on standard error, a table in Markdown on standard output (docs/random-plans.md).
#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <iterator>
#include <vector>

#include "model/core/number_text.hpp"
#include "tests/random_plans/outcome.hpp"

namespace wrapgauge::random_plans {
namespace {

struct EndRow {
  End end;
  const char* words;
};
constexpr EndRow kEnds[] = {
    {End::kReached, "reached the asked load"},
    {End::kRunsAway, "limit point: a pressure maximum"},
    {End::kOverstretched, "limit point: a sheet's material is known no further"},
    {End::kFolds, "limit point: a sheet folds"},
    {End::kNotClosed, "Problem: no equilibrium closed and empty"},
    {End::kGaveUp, "Problem, with the last load that converged"},
    {End::kOutOfTime, "stopped for its processor time"},
    {End::kOutOfBalance, "fails the audit"},
};
constexpr std::size_t kEndCount = std::size(kEnds);

volatile std::sig_atomic_t interrupted = 0;

class Clock : public Progress {
 public:
  explicit Clock(double seconds) : allowed_(seconds) {}
  double seconds() const { return static_cast<double>(std::clock() - start_) / CLOCKS_PER_SEC; }
  bool cancelled() const override { return interrupted != 0 || seconds() > allowed_; }

 private:
  std::clock_t start_ = std::clock();  // of both threads
  double allowed_;
};

double share_at(std::vector<double> values, double share) {
  if (values.empty()) return 0.0;
  std::sort(values.begin(), values.end());
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

struct Tally {
  int ends[kEndCount] = {}, turned_down = 0;
  std::vector<double> factorisations, sums, cuts, seconds;
};

// False: interrupted, and not counted.
bool add(unsigned seed, const Resources& resources, double allowed, Tally& tally) {
  const RandomPlan random = random_plan(seed, resources, tally.turned_down);
  Clock clock(allowed);
  const Outcome outcome = outcome_of(random, resources, clock);
  if (interrupted != 0) return false;
  tally.seconds.push_back(clock.seconds());
  const auto end = static_cast<std::size_t>(outcome.end);
  ++tally.ends[end];
  std::cerr << seed << " | " << kEnds[end].words << " | " << outcome.factorisations << " | "
            << fixed_text(tally.seconds.back(), 2) << " s | " << random.words << " | " << outcome.message
            << std::endl;
  if (outcome.factorisations == 0) return true;
  tally.factorisations.push_back(outcome.factorisations);
  tally.sums.push_back(outcome.worst_balance);
  if (outcome.cut_balance > 0.0) tally.cuts.push_back(outcome.cut_balance);
  return true;
}

void say_row(const char* name, const std::vector<double>& values, double factor, int digits) {
  std::cout << "| " << name;
  for (double share : {0.5, 0.95, 1.0})
    std::cout << " | " << fixed_text(factor * share_at(values, share), digits);
  std::cout << " |\n";
}

void say(unsigned first, unsigned count, const Tally& tally) {
  std::cout << "Seeds " << first << " to " << first + count - 1
            << ".\n\n| end | plans | share |\n|---|---|---|\n";
  for (std::size_t end = 0; end < kEndCount; ++end)
    std::cout << "| " << kEnds[end].words << " | " << tally.ends[end] << " | "
              << fixed_text(100.0 * tally.ends[end] / std::max(count, 1u), 1) << " % |\n";
  std::cout << "\n"
            << tally.turned_down
            << " more draws were turned down before solving (the layout does not go on there).\n\n"
               "| figure | half of the plans below | 95 % below | all below |\n|---|---|---|---|\n";
  say_row("factorisations", tally.factorisations, 1.0, 0);
  say_row("sums of contact force, %", tally.sums, 100.0, 3);
  say_row("balance of a cut through a closed layout, %", tally.cuts, 100.0, 2);
  say_row("processor time, s", tally.seconds, 1.0, 1);
}

int run(unsigned first, unsigned count, double allowed, double in_all) {
  const Resources resources =
      read_resources(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources").value();
  Tally tally;
  std::signal(SIGINT, [](int) { interrupted = 1; });
  const Clock total(in_all);
  unsigned done = 0;
  while (done < count && !total.cancelled() && add(first + done, resources, allowed, tally)) ++done;
  say(first, done, tally);
  return 0;
}

}  // namespace
}  // namespace wrapgauge::random_plans

int main(int argc, char** argv) {
  if (argc < 3 || argc > 5) {
    std::cerr << "Usage: random_plans FIRST_SEED COUNT [SECONDS [TOTAL]]\n";
    return 2;
  }
  const double allowed = argc > 3 ? std::strtod(argv[3], nullptr) : 1e9,
               in_all = argc > 4 ? std::strtod(argv[4], nullptr) : 1e9;
  return wrapgauge::random_plans::run(static_cast<unsigned>(std::strtoul(argv[1], nullptr, 10)),
                                      static_cast<unsigned>(std::strtoul(argv[2], nullptr, 10)), allowed,
                                      in_all);
}
