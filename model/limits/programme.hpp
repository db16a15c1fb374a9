#pragma once
// Inflation over time: steps, ramps and pulses of one inlet, repeated until the session ends.

#include <optional>
#include <string>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Levels are shares of the pressure or volume the inlet is asked for: 1 is what is solved, 0 is vented.
struct ProgrammeStep {
  double level = 1.0;
  Time ramp;  // straight from the level before; 0: at once
  Time hold;
  bool operator==(const ProgrammeStep&) const = default;
};

struct Session {
  Time length;
  std::optional<Time> hold, off;  // of every inlet without steps of its own; no hold: on from start to end
  Time ramp;                      // up and down, before a hold and after it
  bool operator==(const Session&) const = default;
};

struct LevelPoint {
  Time at;
  double level;  // straight between points; two at one time: a jump
};

// The steps an inlet without its own follows.
std::vector<ProgrammeStep> session_steps(const Session& session);

// From vented at time 0 to vented at the end, which is at once. `steps` pass `programme_problem`.
std::vector<LevelPoint> level_over_session(const std::vector<ProgrammeStep>& steps, Time length);

// Level at a time; at a jump the later one.
double level_at(const std::vector<LevelPoint>& levels, Time at);

// No steps; none reaches level 1, so that what is solved never happens; a level outside 0..1; a round shorter
// than 0.1 s; more than 20 000 rounds in a session. In words that end a sentence: "has no step at level 1".
std::optional<Phrase> programme_problem(const std::vector<ProgrammeStep>& steps, Time length);

// "to 100 % in 3 s, held for 30 s; vented in 3 s, held for 90 s; and so on". No steps: an empty text.
std::string programme_text(const std::vector<ProgrammeStep>& steps);

}  // namespace wrapgauge
