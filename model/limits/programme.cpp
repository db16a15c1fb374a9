#include "model/limits/programme.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/core/time_text.hpp"

namespace wrapgauge {
namespace {

Time round_time(const std::vector<ProgrammeStep>& steps) {
  Time sum;
  for (const ProgrammeStep& step : steps) sum = sum + step.ramp + step.hold;
  return sum;
}

// Where the straight line from `from` to `to` stands at `at`.
double between(const LevelPoint& from, const LevelPoint& to, Time at) {
  const Time span = to.at - from.at;
  return span > Time() ? from.level + (to.level - from.level) * ((at - from.at) / span) : to.level;
}

}  // namespace

std::vector<ProgrammeStep> session_steps(const Session& session) {
  if (!session.hold) return {{1.0, session.ramp, session.length}};
  std::vector<ProgrammeStep> steps{{1.0, session.ramp, *session.hold}};
  if (session.off) steps.push_back({0.0, session.ramp, *session.off});
  return steps;
}

std::vector<LevelPoint> level_over_session(const std::vector<ProgrammeStep>& steps, Time length) {
  std::vector<LevelPoint> points{{Time(), 0.0}};
  const auto add = [&](Time at, double level) {
    points.push_back({at, level});
    if (at < length) return true;
    const LevelPoint& before = points[points.size() - 2];
    points.back() = {length, between(before, points.back(), length)};
    return false;
  };
  Time now;
  for (bool going = true; going;)
    for (const ProgrammeStep& step : steps) {
      if (going = add(now + step.ramp, step.level); !going) break;
      if (going = add(now + step.ramp + step.hold, step.level); !going) break;
      now = now + step.ramp + step.hold;
    }
  points.push_back({length, 0.0});
  return points;
}

double level_at(const std::vector<LevelPoint>& levels, Time at) {
  const auto after = std::upper_bound(levels.begin(), levels.end(), at,
                                      [](Time time, const LevelPoint& point) { return time < point.at; });
  if (after == levels.begin()) return levels.empty() ? 0.0 : levels.front().level;
  if (after == levels.end()) return levels.back().level;
  return between(*(after - 1), *after, at);
}

std::string programme_text(const std::vector<ProgrammeStep>& steps) {
  constexpr std::size_t kShown = 6;
  std::string text;
  for (std::size_t i = 0; i < std::min(steps.size(), kShown); ++i) {
    const ProgrammeStep& step = steps[i];
    text += i ? "; " : "";
    text += step.level > 0.0 ? "to " + fixed_text(100.0 * step.level, 0) + " %" : std::string("vented");
    text += step.ramp > Time() ? " in " + time_text(step.ramp) : " at once";
    if (step.hold > Time()) text += ", held for " + time_text(step.hold);
  }
  if (steps.size() > kShown) text += "; and " + std::to_string(steps.size() - kShown) + " more steps";
  return text.empty() ? text : text + "; and so on";
}

std::optional<Phrase> programme_problem(const std::vector<ProgrammeStep>& steps, Time length) {
  if (steps.empty()) return Phrase::worded("has no steps; give at least one");
  double highest = 0.0;
  for (const ProgrammeStep& step : steps) {
    if (!(step.level >= 0.0 && step.level <= 1.0))
      return Phrase::worded("asks for level %1; levels lie between 0 and 1",
                            {figures_of(number_text(step.level))});
    if (!(step.ramp >= Time() && step.hold >= Time()))
      return Phrase::worded("has a time below 0; give 0 or more");
    highest = std::max(highest, step.level);
  }
  if (highest < 1.0)
    return Phrase::worded(
        "reaches level %1 at most, so what is solved never happens; ask for less and let a "
        "step reach level 1",
        {figures_of(number_text(highest, 3))});
  const Time round = round_time(steps);
  if (round < 0.1 * second)
    return Phrase::worded("takes %1 a round; give 0.1 s or more", {figures_of(round)});
  if (length / round > 20000.0)
    return Phrase::worded("runs %1 rounds in a session; give 20000 or fewer",
                          {figures_of(number_text(length / round, 6))});
  return std::nullopt;
}

}  // namespace wrapgauge
