#include "model/limits/own_limits.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <utility>

#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

// Collects the phrases; numbers that agree to a millionth count as equal.
class Laxer {
 public:
  std::vector<Phrase> parts;

  void more(const Phrase& what, double own, double shipped, const Phrase& own_figures,
            const Phrase& shipped_figures) {
    if (own > shipped + 1e-6 * std::abs(shipped))
      parts.push_back(Phrase::worded("%1 is %2 instead of %3", {what, own_figures, shipped_figures}));
  }
  void higher(const Phrase& what, Pressure own, Pressure shipped) {
    more(what, own.si(), shipped.si(), figures_of(own), figures_of(shipped));
  }
  void longer(const Phrase& what, Time own, Time shipped) {
    more(what, own.si(), shipped.si(), figures_of(own), figures_of(shipped));
  }
  void shorter(const Phrase& what, Time own, Time shipped) {
    more(what, -own.si(), -shipped.si(), figures_of(own), figures_of(shipped));
  }
  void higher(const Phrase& what, double own, double shipped) {
    more(what, own, shipped, figures_of(number_text(own, 4)), figures_of(number_text(shipped, 4)));
  }
  void lower(const Phrase& what, double own, double shipped) {
    more(what, -own, -shipped, figures_of(number_text(own, 4)), figures_of(number_text(shipped, 4)));
  }
};

void compare_times(const Phrase& row, const UseTimes& own, const UseTimes& shipped, Laxer& laxer) {
  laxer.longer(Phrase::worded("%1, first check", {row}), own.first_check, shipped.first_check);
  if (shipped.check_every && !own.check_every)
    laxer.parts.push_back(
        Phrase::worded("%1, checks every %2 are missing", {row, figures_of(*shipped.check_every)}));
  if (shipped.check_every && own.check_every)
    laxer.longer(Phrase::worded("%1, time between checks", {row}), *own.check_every, *shipped.check_every);
  laxer.longer(Phrase::worded("%1, hold", {row}), own.longest_hold, shipped.longest_hold);
  laxer.lower(Phrase::worded("%1, off over on", {row}), own.off_over_on, shipped.off_over_on);
  laxer.longer(Phrase::worded("%1, session", {row}), own.longest_session, shipped.longest_session);
}

// As limit sets write it.
Phrase row_name(SiteClass site, UsePattern use) {
  return Phrase::worded("row %1, %2",
                        {table_words(std::string(site_name(site))), table_words(std::string(use_name(use)))});
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
        if (mine->use != use && theirs->use != use) continue;  // compared under the use they are of
        before = {mine, theirs};
        const Phrase row = row_name(site, use);
        laxer.higher(Phrase::worded("%1, warning", {row}), mine->warn, theirs->warn);
        laxer.higher(Phrase::worded("%1, limit", {row}), mine->limit, theirs->limit);
        compare_times(row, mine->times, theirs->times, laxer);
      }
    }
}

void compare_rules(const LimitSet& own, const LimitSet& shipped, Laxer& laxer) {
  laxer.lower(Phrase::worded("the model factor"), own.model_factor, shipped.model_factor);
  laxer.higher(Phrase::worded("the share of the girth that counts as round the limb"),
               own.circumferential_share, shipped.circumferential_share);
  laxer.higher(Phrase::worded("the tourniquet caution"), own.tourniquet_warn, shipped.tourniquet_warn);
  laxer.higher(Phrase::worded("the tourniquet stop"), own.tourniquet_stop, shipped.tourniquet_stop);
  laxer.higher(Phrase::worded("the tissue strain warning"), own.strain_warn, shipped.strain_warn);
  laxer.higher(Phrase::worded("the tissue strain limit"), own.strain_limit, shipped.strain_limit);
  laxer.higher(Phrase::worded("the sheet stretch warning"), own.stretch_warn, shipped.stretch_warn);
  laxer.higher(Phrase::worded("the sheet stretch limit"), own.stretch_limit, shipped.stretch_limit);
  laxer.higher(Phrase::worded("the share of elongation at break"), own.share_of_break_limit,
               shipped.share_of_break_limit);
  laxer.higher(Phrase::worded("the pressure of a rested place"), own.rest.below, shipped.rest.below);
  laxer.shorter(Phrase::worded("the rest after a session"), own.rest.after_session,
                shipped.rest.after_session);
  laxer.higher(Phrase::worded("the relief setting over the limit"), own.relief.times_limit,
               shipped.relief.times_limit);
  laxer.higher(Phrase::worded("the highest relief setting of a cuff"), own.relief.cuff, shipped.relief.cuff);
  laxer.higher(Phrase::worded("the highest relief setting of a pad"), own.relief.pad, shipped.relief.pad);
  laxer.longer(Phrase::worded("the release time"), own.release.within, shipped.release.within);
  laxer.higher(Phrase::worded("the pressure after release"), own.release.down_to, shipped.release.down_to);
}

void compare_heat(const HeatRule& own, const HeatRule& shipped, Laxer& laxer) {
  laxer.higher(Phrase::worded("the hottest skin side in C"), own.hot_c, shipped.hot_c);
  laxer.higher(Phrase::worded("the hot stop in C"), own.hot_stop_c, shipped.hot_stop_c);
  laxer.lower(Phrase::worded("the coldest skin side in C"), own.cold_c, shipped.cold_c);
  laxer.longer(Phrase::worded("the time hot"), own.hot_time, shipped.hot_time);
  laxer.longer(Phrase::worded("the time cold"), own.cold_time, shipped.cold_time);
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
          return bad_input(Phrase::worded(
              "The row %1 of the limit set '%2' is taken from %3, which is no limit for held pressure: %4. "
              "Take the row out or base it on something else.",
              {in_a_row({table_words(std::string(site_name(row.site))),
                         table_words(std::string(use_name(row.use)))},
                        ", "),
               name_of(own.name), name_of(refused.name), name_of(refused.reason)}));
  return std::nullopt;
}

// The words of a set, beside its numbers.
std::vector<std::string> texts_of(const LimitSet& set) {
  std::vector<std::string> texts{set.name,          set.remark,          set.model_factor_source,
                                 set.strain_source, set.stretch_source,  set.tourniquet_source,
                                 set.rest.source,   set.relief.source,   set.release.source,
                                 set.heat.source,   set.heat.burn_source};
  for (const LimitRow& row : set.rows)
    texts.insert(texts.end(), {std::string(site_name(row.site)), std::string(use_name(row.use)), row.source,
                               row.status, row.remark});
  return texts;
}

// None for the shipped set itself.
std::optional<Phrase> differs_words(const LimitSet& own, const LimitSet& shipped, std::size_t laxer) {
  const std::size_t stricter = laxer_parts(shipped, own).size();
  if (laxer == 0 && stricter == 0 && texts_of(own) == texts_of(shipped)) return std::nullopt;
  return Phrase::worded(
      "The limits are those of the set '%1', not the program's own: %2 of their numbers are stricter, %3 "
      "laxer.",
      {name_of(own.name), figures_of(static_cast<int>(stricter)), figures_of(static_cast<int>(laxer))});
}

Problem laxer_without_reason(const std::string& set, const std::vector<Phrase>& parts) {
  const int more = static_cast<int>(parts.size()) - 1;
  return bad_input(Phrase::worded(
      "The limit set '%1' is laxer than the program's: %2. Make it as strict or stricter, or write the "
      "reason "
      "into the plan as limits.override_reason.",
      {name_of(set),
       more > 0 ? Phrase::worded("%1 (and %2 more)", {parts.front(), figures_of(more)}) : parts.front()}));
}

bool says_something(const std::optional<std::string>& reason) {
  return reason && reason->find_first_not_of(" \t\r\n") != std::string::npos;
}

}  // namespace

std::vector<Phrase> laxer_parts(const LimitSet& own, const LimitSet& shipped) {
  Laxer laxer;
  compare_rows(own, shipped, laxer);
  compare_rules(own, shipped, laxer);
  compare_heat(own.heat, shipped.heat, laxer);
  return laxer.parts;
}

Result<LimitSet> own_limit_set(LimitSet own, const LimitSet& shipped, const Comparisons& comparisons,
                               const std::optional<std::string>& reason) {
  if (auto problem = refused_row(own, comparisons)) return *problem;
  std::vector<Phrase> parts = laxer_parts(own, shipped);
  own.differs_words = differs_words(own, shipped, parts.size());
  if (parts.empty()) {
    if (says_something(reason))
      return bad_input(Phrase::worded(
          "The plan gives a reason to override limits but its set '%1' is nowhere laxer than the "
          "program's: take the reason out.",
          {name_of(own.name)}));
    return own;
  }
  if (!says_something(reason)) return laxer_without_reason(own.name, parts);
  own.override_words = Phrase::worded(
      "Limits of the program were overridden by the set '%1' (%2). Reason given in the plan: %3",
      {name_of(own.name), in_a_row(std::move(parts), "; "), name_of(*reason)});
  return own;
}

}  // namespace wrapgauge
