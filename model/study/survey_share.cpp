#include "model/study/survey_share.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace wrapgauge {
namespace {

double normal_probability(double deviate) {
  return 0.5 * std::erfc(-deviate / std::numbers::sqrt2);
}

// `rising`: at least two, by deviate. Held within the first and the last of them.
double deviate_at(const std::vector<SurveyGirth>& rising, Length girth) {
  for (std::size_t k = 0; k < rising.size(); ++k) {
    if (girth > rising[k].girth) continue;
    if (k == 0) return rising.front().place.deviate;
    const SurveyGirth &below = rising[k - 1], &above = rising[k];
    const double along = (girth - below.girth) / (above.girth - below.girth);
    return std::lerp(below.place.deviate, above.place.deviate, along);
  }
  return rising.back().place.deviate;
}

bool girths_rise(const std::vector<SurveyGirth>& people) {
  return std::adjacent_find(people.begin(), people.end(), [](const SurveyGirth& a, const SurveyGirth& b) {
           return a.girth >= b.girth;
         }) == people.end();
}

std::optional<double> share_of_group(std::vector<SurveyGirth> people, Length from, Length to) {
  std::sort(people.begin(), people.end(),
            [](const SurveyGirth& a, const SurveyGirth& b) { return a.place.deviate < b.place.deviate; });
  if (people.size() < 2 || !girths_rise(people)) return std::nullopt;
  return normal_probability(deviate_at(people, to)) - normal_probability(deviate_at(people, from));
}

}  // namespace

std::vector<SurveyShare> survey_shares(const std::vector<SurveyGirth>& people, Length from, Length to) {
  std::vector<std::string> groups;
  for (const SurveyGirth& person : people)
    if (std::find(groups.begin(), groups.end(), person.place.group) == groups.end())
      groups.push_back(person.place.group);
  std::vector<SurveyShare> shares;
  for (const std::string& group : groups) {
    std::vector<SurveyGirth> members;
    for (const SurveyGirth& person : people)
      if (person.place.group == group) members.push_back(person);
    if (const auto share = share_of_group(std::move(members), from, to)) shares.push_back({group, *share});
  }
  return shares;
}

}  // namespace wrapgauge
