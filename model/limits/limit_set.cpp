#include "model/limits/limit_set.hpp"

#include "model/core/number_text.hpp"
#include "model/core/time_text.hpp"

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

std::string times_text(const UseTimes& times) {
  std::string text = "look at the skin after " + time_text(times.first_check);
  if (times.check_every) text += " and every " + time_text(*times.check_every) + " afterwards";
  text += ", hold for " + time_text(times.longest_hold) + " at most, ";
  if (times.off_over_on > 0.0)
    text += "then off for " + number_text(times.off_over_on, 3) + " times as long or longer, ";
  return text + "no more than " + time_text(times.longest_session) + " in a session";
}

std::string_view site_text(SiteClass site) {
  if (site == SiteClass::kSoft) return "for a pad on a soft place";
  return site == SiteClass::kBony ? "over bone or a nerve" : "for a cuff round the limb";
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

std::string_view use_text(UsePattern use) {
  if (use == UsePattern::kSustained) return "held for a session";
  return use == UsePattern::kShortHold ? "held for a minute at most" : "in pulses of 2 s at most";
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

}  // namespace wrapgauge
