#pragma once
// Conservative skin-pressure limits as data, each row with where it comes from. They are judgement: no row is
// a proven threshold.

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/phrase.hpp"
#include "model/core/quantity.hpp"
#include "model/core/result.hpp"
#include "model/limits/calibration.hpp"

namespace wrapgauge {

enum class SiteClass { kSoft, kBony, kCircumferential };
inline constexpr std::array kSiteClasses = {SiteClass::kSoft, SiteClass::kBony, SiteClass::kCircumferential};
enum class UsePattern { kSustained, kShortHold, kPulse };

using PressureTime = Quantity<-1, 1, -1>;  // Pa s: pressure times how long it lasts
inline constexpr PressureTime kPa_min{6e4};

// How long and how often a limit holds.
struct UseTimes {
  Time first_check;                 // first look at the skin, from the start of a session
  std::optional<Time> check_every;  // and further ones
  Time longest_hold;
  double off_over_on = 0.0;  // after a hold: off at least this many times as long
  Time longest_session;

  double largest_duty() const { return 1.0 / (1.0 + off_over_on); }
  Time longest_on() const { return longest_session * largest_duty(); }
};

struct LimitRow {
  SiteClass site = SiteClass::kSoft;
  UsePattern use = UsePattern::kSustained;
  Pressure warn, limit;
  std::optional<Area> largest_area;  // pressed area above which the row does not hold
  UseTimes times;
  std::string source, status, remark;
};

struct RestRule {
  Pressure below;  // after the model factor: a place pressed less counts as let go
  Time after_session;
  std::string source;  // "STATUS, SOURCE", as in the rules below
};

// Highest setting of a mechanical relief valve.
struct ReliefRule {
  double times_limit = 1.25;  // of the strictest limit pressed on
  Pressure cuff, pad;         // and never above, round a limb and elsewhere
  std::string source;
};

struct ReleaseRule {
  Time within;
  Pressure down_to;  // gauge
  std::string source;
};

struct BurnThreshold {
  Time contact;
  double celsius;
};

// Pads filled hot or cold, temperatures of the face that touches the skin.
struct HeatRule {
  double hot_c = 40.0, hot_stop_c = 41.0, cold_c = 15.0;
  Time hot_time, cold_time;
  std::string source;
  std::vector<BurnThreshold> burn;  // rising time
  std::string burn_source;
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
  RestRule rest;
  ReliefRule relief;
  ReleaseRule release;
  HeatRule heat;
  // Set when a plan's own set is laxer than the program's and the plan says why; every output carries it.
  std::optional<Phrase> override_words;
  // Set whenever the set is not the one that the program ships, however it came in; every output carries it.
  std::optional<Phrase> differs_words{};
  // Readings of the plan's own device; their model factor is then the one above. Every output says so.
  std::optional<Calibration> calibration{};
};

// Takes a calibration in. A set of one's own that asks for more than the program's usual factor keeps it.
void take_calibration(const Calibration& calibration, double usual_factor, LimitSet& limits);

// Every site has a row for sustained use and for a short hold; a pulse row may be missing.
// Problems: a row missing or twice, a warning above its limit, an unknown key, a number out of range.
Result<LimitSet> read_limit_set(const std::filesystem::path& file);

// The row that holds for a site pressed over `pressed` area. Where the set has no pulse row, or the area is
// larger than the row allows, the short-hold row holds. Null only for a set without sustained rows.
const LimitRow* find_row(const LimitSet& limits, SiteClass site, UsePattern use, Area pressed);

// "look at the skin after 15 min, hold for 60 s at most, ..."
Phrase times_words(const UseTimes& times);

Phrase site_words(SiteClass site);          // "for a cuff round the limb"
Phrase use_words(UsePattern use);           // "held for a session"
std::string_view use_name(UsePattern use);  // as plans write it: "sustained"
std::optional<UsePattern> use_from_name(std::string_view name);
std::string_view site_name(SiteClass site);  // as limit sets write it: "soft"
std::optional<SiteClass> site_from_name(std::string_view name);

}  // namespace wrapgauge
