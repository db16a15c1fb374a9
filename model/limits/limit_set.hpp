#pragma once
// Conservative skin-pressure limits as data, each row with where it comes from.

#include <filesystem>
#include <string>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

enum class SiteClass { kSoft, kBony, kCircumferential };
enum class UsePattern { kSustained, kShortHold, kPulse };

struct LimitRow {
  SiteClass site;
  UsePattern use;
  Pressure warn, limit;
  std::string time;    // "check after 15 min, ..."
  std::string source, status, remark;
};

struct LimitSet {
  std::string name;
  double model_factor = 1.5;  // predicted pressure x this is compared, until a calibration exists
  std::vector<LimitRow> rows;
  Pressure tourniquet_warn, tourniquet_stop;  // any circumferential part
  double circumferential_share = 2.0 / 3.0;   // of the girth: from here the circumferential rows hold
  double strain_warn = 0.2, strain_limit = 0.3;
  std::string strain_source, tourniquet_source;
};

Result<LimitSet> read_limit_set(const std::filesystem::path& file);

}  // namespace wrapgauge
