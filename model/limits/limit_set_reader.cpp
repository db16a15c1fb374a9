#include <array>
#include <utility>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/core/shipped_table.hpp"
#include "model/limits/limit_set.hpp"
#include "model/limits/shipped_limits.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr NumberRange kPressure{0.1, 100.0, "kPa"};
constexpr NumberRange kMinutes{0.1, 1440.0, "min"};

bool has_row(const LimitSet& limits, SiteClass site, UsePattern use) {
  for (const LimitRow& row : limits.rows)
    if (row.site == site && row.use == use) return true;
  return false;
}

// "soft, sustained"
Phrase words_of_row(SiteClass site, UsePattern use) {
  return in_a_row({table_words(std::string(site_name(site))), table_words(std::string(use_name(use)))}, ", ");
}

void refuse_falling(JsonObject& object, const char* low_key, double low, const char* high_key, double high) {
  if (object.failed() || low <= high) return;
  object.fail(Phrase::worded(
      "%1 is %2 and above %3, %4; a warning comes at or below its limit.",
      {name_of(low_key), figures_of(number_text(low)), name_of(high_key), figures_of(number_text(high))}));
}

void read_times(JsonObject& row, UseTimes& times) {
  const json& value = row.value("times");
  if (row.failed()) return;
  JsonObject object(value, row.place("times"));
  times.first_check = object.number("first_check_min", kMinutes) * minute;
  if (const auto every = object.optional_number("check_every_min", kMinutes))
    times.check_every = *every * minute;
  times.longest_hold = object.number("hold_s", {0.1, 86400.0, "s"}) * second;
  times.off_over_on = object.number("off_over_on", {0.0, 1000.0, ""});
  times.longest_session = object.number("session_min", kMinutes) * minute;
  if (auto problem = object.finish()) row.fail(*problem);
}

Result<LimitRow> row_from_json(const json& value, const std::string& where) {
  JsonObject object(value, where);
  LimitRow row;
  row.site = site_from_name(object.choice("site", {"soft", "bony", "circumferential"})).value_or(row.site);
  row.use = use_from_name(object.choice("use", {"sustained", "short hold", "pulse"})).value_or(row.use);
  const double warn = object.number("warn_kpa", kPressure), limit = object.number("limit_kpa", kPressure);
  refuse_falling(object, "warn_kpa", warn, "limit_kpa", limit);
  row.warn = warn * kPa, row.limit = limit * kPa;
  if (const auto area = object.optional_number("largest_area_cm2", {0.1, 1e4, "cm2"}))
    row.largest_area = *area * cm2;
  read_times(object, row.times);
  row.source = object.text("source");
  row.status = object.status("status");
  row.remark = object.text("remark");
  if (auto problem = object.finish()) return *problem;
  return row;
}

void read_rows(JsonObject& table, LimitSet& limits) {
  for (const json& value : table.list("rows")) {
    const std::string where = table.place("row ") + std::to_string(limits.rows.size() + 1);
    Result<LimitRow> row = row_from_json(value, where);
    if (!row) return table.fail(row.problem());
    if (has_row(limits, row->site, row->use)) {
      return table.fail(bad_input(Phrase::worded("%1: %2 stands twice; keep one row.",
                                                 {name_of(where), words_of_row(row->site, row->use)})));
    }
    limits.rows.push_back(std::move(row).value());
  }
  for (SiteClass site : kSiteClasses)
    for (UsePattern use : {UsePattern::kSustained, UsePattern::kShortHold})
      if (!has_row(limits, site, use) && !table.failed())
        table.fail(Phrase::worded("has no row for %1; add one.", {words_of_row(site, use)}));
}

// An object of two rising numbers and where they come from.
struct Rising {
  double low = 0.0, high = 0.0;
  std::string source;
};

Rising read_rising(JsonObject& table, const char* key, const char* low_key, const char* high_key,
                   NumberRange range) {
  const json& value = table.value(key);
  if (table.failed()) return {};
  JsonObject object(value, table.place(key));
  Rising out;
  out.low = object.number(low_key, range);
  out.high = object.number(high_key, range);
  refuse_falling(object, low_key, out.low, high_key, out.high);
  const std::string status = object.status("status");
  out.source = status + ", " + object.text("source");
  if (auto problem = object.finish()) table.fail(*problem);
  return out;
}

void read_sheet_stretch(JsonObject& table, LimitSet& limits) {
  const json& value = table.value("sheet_stretch");
  if (table.failed()) return;
  JsonObject object(value, table.place("sheet_stretch"));
  limits.stretch_warn = object.number("warn", {1.0, 10.0, ""});
  limits.stretch_limit = object.number("limit", {1.0, 10.0, ""});
  refuse_falling(object, "warn", limits.stretch_warn, "limit", limits.stretch_limit);
  limits.share_of_break_limit = object.number("share_of_break_limit", {0.01, 1.0, ""});
  const std::string status = object.status("status");
  limits.stretch_source = status + ", " + object.text("source");
  if (auto problem = object.finish()) table.fail(*problem);
}

// "STATUS, SOURCE" of the object.
std::string origin(JsonObject& object) {
  const std::string status = object.status("status");
  return status + ", " + object.text("source");
}

// Reads the rule under `key` with `read`.
template <class Read>
void read_rule(JsonObject& table, const char* key, const Read& read) {
  const json& value = table.value(key);
  if (table.failed()) return;
  JsonObject object(value, table.place(key));
  read(object);
  if (auto problem = object.finish()) table.fail(*problem);
}

void read_rest(JsonObject& object, RestRule& rest) {
  rest.below = object.number("below_kpa", {0.0, 10.0, "kPa"}) * kPa;
  rest.after_session = object.number("after_session_min", {0.0, 1440.0, "min"}) * minute;
  rest.source = origin(object);
}

void read_relief(JsonObject& object, ReliefRule& relief) {
  relief.times_limit = object.number("times_limit", {1.0, 10.0, ""});
  relief.cuff = object.number("cuff_kpa", kPressure) * kPa;
  relief.pad = object.number("pad_kpa", kPressure) * kPa;
  relief.source = origin(object);
}

void read_release(JsonObject& object, ReleaseRule& release) {
  release.within = object.number("seconds", {0.1, 600.0, "s"}) * second;
  release.down_to = object.number("to_kpa", {0.01, 10.0, "kPa"}) * kPa;
  release.source = origin(object);
}

void read_burns(JsonObject& heat, HeatRule& rule) {
  for (const json& value : heat.list("burn")) {
    JsonObject object(value, heat.place("burn ") + std::to_string(rule.burn.size() + 1));
    const BurnThreshold burn{object.number("minutes", kMinutes) * minute,
                             object.number("celsius", {20.0, 100.0, "C"})};
    if (auto problem = object.finish()) return heat.fail(*problem);
    if (!rule.burn.empty() && burn.contact <= rule.burn.back().contact)
      return heat.fail(Phrase::worded("burn thresholds must stand in order of rising minutes."));
    rule.burn.push_back(burn);
  }
  if (rule.burn.empty() && !heat.failed())
    heat.fail(Phrase::worded("burn holds no threshold; give at least one."));
}

void read_heat(JsonObject& object, HeatRule& heat) {
  constexpr NumberRange kWarm{20.0, 60.0, "C"};
  heat.hot_c = object.number("hot_c", kWarm);
  heat.hot_time = object.number("hot_min", kMinutes) * minute;
  heat.hot_stop_c = object.number("hot_stop_c", kWarm);
  refuse_falling(object, "hot_c", heat.hot_c, "hot_stop_c", heat.hot_stop_c);
  heat.cold_c = object.number("cold_c", {-20.0, 30.0, "C"});
  heat.cold_time = object.number("cold_min", kMinutes) * minute;
  heat.source = origin(object);
  read_burns(object, heat);
  const std::string status =
      object.choice("burn_status", {"confirmed", "from memory", "judgement", "derived", "common practice"});
  heat.burn_source = status + ", " + object.text("burn_source");
}

void read_rules(JsonObject& table, LimitSet& limits) {
  read_rule(table, "rest", [&](JsonObject& object) { read_rest(object, limits.rest); });
  read_rule(table, "relief", [&](JsonObject& object) { read_relief(object, limits.relief); });
  read_rule(table, "release", [&](JsonObject& object) { read_release(object, limits.release); });
  read_rule(table, "heat", [&](JsonObject& object) { read_heat(object, limits.heat); });
}

Result<LimitSet> limit_set_from_json(const Result<json>& parsed, const std::string& where) {
  if (!parsed) return parsed.problem();
  JsonObject table(*parsed, where);
  table.format_one("wrapgauge-limits");
  LimitSet limits;
  limits.name = table.text("name");
  limits.remark = table.text("remark");
  limits.model_factor = table.number("model_factor", {1.0, 10.0, ""});
  limits.model_factor_source = table.text("model_factor_source");
  limits.circumferential_share = table.number("circumferential_share", {0.0, 1.0, ""});
  read_rows(table, limits);
  const Rising tourniquet = read_rising(table, "tourniquet", "warn_kpa", "stop_kpa", kPressure);
  limits.tourniquet_warn = tourniquet.low * kPa, limits.tourniquet_stop = tourniquet.high * kPa;
  limits.tourniquet_source = tourniquet.source;
  const Rising strain = read_rising(table, "tissue_strain", "warn", "limit", {0.0, 1.0, ""});
  limits.strain_warn = strain.low, limits.strain_limit = strain.high, limits.strain_source = strain.source;
  read_sheet_stretch(table, limits);
  read_rules(table, limits);
  if (auto problem = table.finish()) return *problem;
  return limits;
}

}  // namespace

Result<LimitSet> read_limit_set(const std::filesystem::path& file) {
  return limit_set_from_json(read_json(file), file.filename().string());
}

Result<LimitSet> shipped_limit_set() {
  constexpr const char* kName = "limits.json";
  return limit_set_from_json(parse_json(shipped_table(kName).value_or(""), kName), kName);
}

}  // namespace wrapgauge
