#include "model/limits/limit_set.hpp"

#include <array>
#include <utility>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr NumberRange kPressure{0.1, 100.0, "kPa"};
constexpr std::array kSites = {SiteClass::kSoft, SiteClass::kBony, SiteClass::kCircumferential};
constexpr std::array kUses = {UsePattern::kSustained, UsePattern::kShortHold, UsePattern::kPulse};

std::string_view site_name(SiteClass site) {
  if (site == SiteClass::kSoft) return "soft";
  return site == SiteClass::kBony ? "bony" : "circumferential";
}

const LimitRow* exact_row(const LimitSet& limits, SiteClass site, UsePattern use) {
  for (const LimitRow& row : limits.rows)
    if (row.site == site && row.use == use) return &row;
  return nullptr;
}

void refuse_falling(JsonObject& object, const char* low_key, double low, const char* high_key, double high) {
  if (object.failed() || low <= high) return;
  object.fail(std::string(low_key) + " is " + number_text(low) + " and above " + high_key + ", " +
              number_text(high) + "; a warning comes at or below its limit.");
}

Result<LimitRow> row_from_json(const json& value, const std::string& where) {
  JsonObject object(value, where);
  LimitRow row;
  const std::string site = object.choice("site", {"soft", "bony", "circumferential"});
  for (SiteClass known : kSites)
    if (site == site_name(known)) row.site = known;
  row.use = use_from_name(object.choice("use", {"sustained", "short hold", "pulse"})).value_or(row.use);
  const double warn = object.number("warn_kpa", kPressure), limit = object.number("limit_kpa", kPressure);
  refuse_falling(object, "warn_kpa", warn, "limit_kpa", limit);
  row.warn = warn * kPa, row.limit = limit * kPa;
  if (const auto area = object.optional_number("largest_area_cm2", {0.1, 1e4, "cm2"}))
    row.largest_area = *area * cm2;
  row.time = object.text("time");
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
    if (exact_row(limits, row->site, row->use)) {
      return table.fail(bad_input(where + ": " + std::string(site_name(row->site)) + ", " +
                                  std::string(use_name(row->use)) + " stands twice; keep one row."));
    }
    limits.rows.push_back(std::move(row).value());
  }
  for (SiteClass site : kSites)
    for (UsePattern use : {UsePattern::kSustained, UsePattern::kShortHold})
      if (!exact_row(limits, site, use) && !table.failed())
        table.fail("has no row for " + std::string(site_name(site)) + ", " + std::string(use_name(use)) +
                   "; add one.");
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

}  // namespace

Result<LimitSet> read_limit_set(const std::filesystem::path& file) {
  const Result<json> parsed = read_json(file);
  if (!parsed) return parsed.problem();
  JsonObject table(*parsed, file.filename().string());
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
  if (auto problem = table.finish()) return *problem;
  return limits;
}

const LimitRow* find_row(const LimitSet& limits, SiteClass site, UsePattern use, Area pressed) {
  const LimitRow* row = exact_row(limits, site, use);
  if (row && (!row->largest_area || pressed <= *row->largest_area)) return row;
  if (use == UsePattern::kPulse) row = exact_row(limits, site, UsePattern::kShortHold);
  return row ? row : exact_row(limits, site, UsePattern::kSustained);
}

std::string_view site_text(SiteClass site) {
  if (site == SiteClass::kSoft) return "for a pad on a soft place";
  return site == SiteClass::kBony ? "over bone or a nerve" : "for a cuff round the limb";
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
