#pragma once
// How many of a survey's people have a girth that may be accepted.

#include <string>
#include <vector>

#include "model/core/quantity.hpp"

namespace wrapgauge {

// Where somebody stands in a survey: "men", and the standard normal deviate of their percentile.
struct SurveyPlace {
  std::string group;
  double deviate = 0.0;
};

struct SurveyGirth {
  SurveyPlace place;
  Length girth;
};

struct SurveyShare {
  std::string group;
  double share = 0.0;  // 0..1 of the group
};

// Of each group, in the order it comes, the share whose girth lies in [from, to]. Between its people the
// girth is linear in the normal deviate, as it is for a measure that is normally distributed; whoever lies
// beyond the least or the greatest of them is not counted. A group of fewer than two, or whose girths do not
// rise, is left out.
std::vector<SurveyShare> survey_shares(const std::vector<SurveyGirth>& people, Length from, Length to);

}  // namespace wrapgauge
