#include "model/limits/limit_set.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::array kUses = {UsePattern::kSustained, UsePattern::kShortHold, UsePattern::kPulse};

const LimitRow* exact_row(const LimitSet& limits, SiteClass site, UsePattern use) {
  for (const LimitRow& row : limits.rows)
    if (row.site == site && row.use == use) return &row;
  return nullptr;
}

}  // namespace

const LimitRow* find_row(const LimitSet& limits, SiteClass site, UsePattern use, Area pressed) {
  const LimitRow* row = exact_row(limits, site, use);
  if (row && (!row->largest_area || pressed <= *row->largest_area)) return row;
  if (use == UsePattern::kPulse) row = exact_row(limits, site, UsePattern::kShortHold);
  return row ? row : exact_row(limits, site, UsePattern::kSustained);
}

Phrase times_words(const UseTimes& times) {
  const Phrase first_check = figures_of(times.first_check);
  std::vector<Phrase> parts = {times.check_every
                                   ? Phrase::worded("look at the skin after %1 and every %2 afterwards",
                                                    {first_check, figures_of(*times.check_every)})
                                   : Phrase::worded("look at the skin after %1", {first_check})};
  parts.push_back(Phrase::worded("hold for %1 at most", {figures_of(times.longest_hold)}));
  if (times.off_over_on > 0.0)
    parts.push_back(Phrase::worded("then off for at least %1 times as long",
                                   {figures_of(number_text(times.off_over_on, 3))}));
  parts.push_back(Phrase::worded("no more than %1 in a session", {figures_of(times.longest_session)}));
  return in_a_row(std::move(parts), ", ");
}

Phrase site_words(SiteClass site) {
  if (site == SiteClass::kSoft) return Phrase::worded("for a pad on a soft place");
  return site == SiteClass::kBony ? Phrase::worded("over bone or a nerve")
                                  : Phrase::worded("for a cuff round the limb");
}

std::string_view site_name(SiteClass site) {
  if (site == SiteClass::kSoft) return "soft";
  return site == SiteClass::kBony ? "bony" : "circumferential";
}

std::optional<SiteClass> site_from_name(std::string_view name) {
  for (SiteClass site : kSiteClasses)
    if (name == site_name(site)) return site;
  return std::nullopt;
}

Phrase use_words(UsePattern use) {
  if (use == UsePattern::kSustained) return Phrase::worded("held for a session");
  return use == UsePattern::kShortHold ? Phrase::worded("held for a minute at most")
                                       : Phrase::worded("in pulses of 2 s at most");
}

std::string_view use_name(UsePattern use) {
  if (use == UsePattern::kSustained) return "sustained";
  return use == UsePattern::kShortHold ? "short hold" : "pulse";
}

std::optional<UsePattern> use_from_name(std::string_view name) {
  for (UsePattern use : kUses)
    if (name == use_name(use)) return use;
  return std::nullopt;
}

void take_calibration(const Calibration& calibration, double usual_factor, LimitSet& limits) {
  const bool asks_for_more = limits.model_factor > usual_factor;
  limits.model_factor =
      asks_for_more ? std::max(limits.model_factor, calibration.model_factor) : calibration.model_factor;
  limits.model_factor_source = calibrated_words(calibration) + ". " + calibration.model_factor_why;
  limits.calibration = calibration;
  limits.calibration->model_factor = limits.model_factor;
}

}  // namespace wrapgauge
