#include "model/limits/own_limits.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <utility>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"

namespace wrapgauge {
namespace {

// Collects the phrases; numbers that agree to a millionth count as equal.
class Laxer {
 public:
  std::vector<std::string> parts;

  void more(const std::string& what, double own, double shipped, const std::string& own_text,
            const std::string& shipped_text) {
    if (own > shipped + 1e-6 * std::abs(shipped))
      parts.push_back(what + " is " + own_text + " instead of " + shipped_text);
  }
  void higher(const std::string& what, Pressure own, Pressure shipped) {
    more(what, own.si(), shipped.si(), pressure_text(own), pressure_text(shipped));
  }
  void longer(const std::string& what, Time own, Time shipped) {
    more(what, own.si(), shipped.si(), time_text(own), time_text(shipped));
  }
  void higher(const std::string& what, double own, double shipped) {
    more(what, own, shipped, number_text(own, 4), number_text(shipped, 4));
  }
  void lower(const std::string& what, double own, double shipped) {
    more(what, -own, -shipped, number_text(own, 4), number_text(shipped, 4));
  }
};

void compare_times(const std::string& row, const UseTimes& own, const UseTimes& shipped, Laxer& laxer) {
  laxer.longer(row + ", first check", own.first_check, shipped.first_check);
  if (shipped.check_every && !own.check_every)
    laxer.parts.push_back(row + ", checks every " + time_text(*shipped.check_every) + " are missing");
  if (shipped.check_every && own.check_every)
    laxer.longer(row + ", time between checks", *own.check_every, *shipped.check_every);
  laxer.longer(row + ", hold", own.longest_hold, shipped.longest_hold);
  laxer.lower(row + ", off over on", own.off_over_on, shipped.off_over_on);
  laxer.longer(row + ", session", own.longest_session, shipped.longest_session);
}

// The rows that would hold over a small and over a large area.
void compare_rows(const LimitSet& own, const LimitSet& shipped, Laxer& laxer) {
  for (const SiteClass site : {SiteClass::kSoft, SiteClass::kBony, SiteClass::kCircumferential})
    for (const UsePattern use : {UsePattern::kSustained, UsePattern::kShortHold, UsePattern::kPulse}) {
      std::pair<const LimitRow*, const LimitRow*> before;
      for (const Area pressed : {0.0 * cm2, 1e6 * cm2}) {
        const LimitRow *mine = find_row(own, site, use, pressed),
                       *theirs = find_row(shipped, site, use, pressed);
        if (!mine || !theirs || before == std::pair(mine, theirs)) continue;
        before = {mine, theirs};
        const std::string name = "row " + std::string(site_name(site)) + ", " + std::string(use_name(use));
        laxer.higher(name + ", warning", mine->warn, theirs->warn);
        laxer.higher(name + ", limit", mine->limit, theirs->limit);
        compare_times(name, mine->times, theirs->times, laxer);
      }
    }
}

void compare_rules(const LimitSet& own, const LimitSet& shipped, Laxer& laxer) {
  laxer.lower("the model factor", own.model_factor, shipped.model_factor);
  laxer.higher("the share of the girth that counts as round the limb", own.circumferential_share,
               shipped.circumferential_share);
  laxer.higher("the tourniquet caution", own.tourniquet_warn, shipped.tourniquet_warn);
  laxer.higher("the tourniquet stop", own.tourniquet_stop, shipped.tourniquet_stop);
  laxer.higher("the tissue strain warning", own.strain_warn, shipped.strain_warn);
  laxer.higher("the tissue strain limit", own.strain_limit, shipped.strain_limit);
  laxer.higher("the sheet stretch warning", own.stretch_warn, shipped.stretch_warn);
  laxer.higher("the sheet stretch limit", own.stretch_limit, shipped.stretch_limit);
  laxer.higher("the share of elongation at break", own.share_of_break_limit, shipped.share_of_break_limit);
  laxer.higher("the pressure of a rested place", own.rest.below, shipped.rest.below);
  laxer.more("the rest after a session", -own.rest.after_session.si(), -shipped.rest.after_session.si(),
             time_text(own.rest.after_session), time_text(shipped.rest.after_session));
  laxer.higher("the relief setting over the limit", own.relief.times_limit, shipped.relief.times_limit);
  laxer.higher("the highest relief setting of a cuff", own.relief.cuff, shipped.relief.cuff);
  laxer.higher("the highest relief setting of a pad", own.relief.pad, shipped.relief.pad);
  laxer.longer("the release time", own.release.within, shipped.release.within);
  laxer.higher("the pressure after release", own.release.down_to, shipped.release.down_to);
}

void compare_heat(const HeatRule& own, const HeatRule& shipped, Laxer& laxer) {
  laxer.higher("the hottest skin side in C", own.hot_c, shipped.hot_c);
  laxer.higher("the hot stop in C", own.hot_stop_c, shipped.hot_stop_c);
  laxer.lower("the coldest skin side in C", own.cold_c, shipped.cold_c);
  laxer.longer("the time hot", own.hot_time, shipped.hot_time);
  laxer.longer("the time cold", own.cold_time, shipped.cold_time);
}

std::string lower_case(std::string text) {
  for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

std::optional<Problem> refused_row(const LimitSet& own, const Comparisons& comparisons) {
  for (const LimitRow& row : own.rows)
    for (const RefusedSource& refused : comparisons.refused)
      for (const std::string& word : refused.named_as)
        if (lower_case(row.source).find(lower_case(word)) != std::string::npos)
          return bad_input("The row " + std::string(site_name(row.site)) + ", " +
                           std::string(use_name(row.use)) + " of the limit set '" + own.name +
                           "' is taken from " + refused.name + ", which is no limit for held pressure: " +
                           refused.reason + ". Take the row out or base it on something else.");
  return std::nullopt;
}

}  // namespace

std::vector<std::string> laxer_parts(const LimitSet& own, const LimitSet& shipped) {
  Laxer laxer;
  compare_rows(own, shipped, laxer);
  compare_rules(own, shipped, laxer);
  compare_heat(own.heat, shipped.heat, laxer);
  return laxer.parts;
}

Result<LimitSet> own_limit_set(LimitSet own, const LimitSet& shipped, const Comparisons& comparisons,
                               const std::optional<std::string>& reason) {
  if (auto problem = refused_row(own, comparisons)) return *problem;
  const std::vector<std::string> parts = laxer_parts(own, shipped);
  if (parts.empty()) {
    if (reason)
      return bad_input("The plan gives a reason to override limits but its set '" + own.name +
                       "' is nowhere laxer than the program's: take the reason out.");
    return own;
  }
  const std::string more = parts.size() > 1 ? " (and " + std::to_string(parts.size() - 1) + " more)" : "";
  if (!reason)
    return bad_input("The limit set '" + own.name + "' is laxer than the program's: " + parts.front() + more +
                     ". Make it as strict or stricter, or write the reason into the plan as "
                     "limits.override_reason.");
  std::string all;
  for (const std::string& part : parts) all += (all.empty() ? "" : "; ") + part;
  own.override_words = "Limits of the program were overridden by the set '" + own.name + "' (" + all +
                       "). Reason given in the plan: " + *reason;
  return own;
}

}  // namespace wrapgauge
