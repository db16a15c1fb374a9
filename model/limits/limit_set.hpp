#pragma once
// Conservative skin-pressure limits as data, each row with where it comes from. They are judgement: no row is
// a proven threshold.

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

enum class SiteClass { kSoft, kBony, kCircumferential };
enum class UsePattern { kSustained, kShortHold, kPulse };

struct LimitRow {
  SiteClass site = SiteClass::kSoft;
  UsePattern use = UsePattern::kSustained;
  Pressure warn, limit;
  std::optional<Area> largest_area;  // pressed area above which the row does not hold
  std::string time;                  // how long and how often, in words
  std::string source, status, remark;
};

struct LimitSet {
  std::string name, remark;
  double model_factor = 1.5;  // predicted pressure x this is compared, until a calibration exists
  std::string model_factor_source;
  std::vector<LimitRow> rows;
  Pressure tourniquet_warn, tourniquet_stop;     // any circumferential part
  double circumferential_share = 2.0 / 3.0;      // of the girth: from here the circumferential rows hold
  double strain_warn = 0.2, strain_limit = 0.3;  // indentation over tissue depth
  double stretch_warn = 1.5, stretch_limit = 2.0, share_of_break_limit = 0.25;  // of a silicone sheet
  std::string strain_source, tourniquet_source, stretch_source;                 // "STATUS, SOURCE"
};

// Every site has a row for sustained use and for a short hold; a pulse row may be missing.
// Problems: a row missing or twice, a warning above its limit, an unknown key, a number out of range.
Result<LimitSet> read_limit_set(const std::filesystem::path& file);

// The row that holds for a site pressed over `pressed` area. Where the set has no pulse row, or the area is
// larger than the row allows, the short-hold row holds. Null only for a set without sustained rows.
const LimitRow* find_row(const LimitSet& limits, SiteClass site, UsePattern use, Area pressed);

std::string_view site_text(SiteClass site);  // "for a cuff round the limb"
std::string_view use_text(UsePattern use);   // "held for a session"
std::string_view use_name(UsePattern use);   // as plans write it: "sustained"
std::optional<UsePattern> use_from_name(std::string_view name);

}  // namespace wrapgauge
