#pragma once
// Rules of thumb for casting: thresholds with source and status, from resources/casting.json.

#include <filesystem>
#include <string>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

enum class CastingRule {
  kSeamWidth,
  kInsetGap,
  kChannelLeast,
  kChannelLeastThick,
  kChannelMost,
  kChamberLeast,
  kChamberMost,
  kSheetLeast,
  kCornerRadius,
  kOutlineNotch,
  kCurlThickness,
  kCurlStiffness,
  kCurlPrestretch,
  kTwistLength,
  kSharedSeam,
  kInletToSeam,
  kInletToBone,
  kChamberToSite,
  kClosingLine,
  kClosureOverlap,
  kSpill,
  kTrimBorder,
  kFusingLayer,
};

struct CastingRuleRow {
  std::string name;
  double value = 0.0;  // in `unit`
  std::string unit, source, status, remark;
};

struct CastingRules {
  std::string remark;
  std::vector<CastingRuleRow> rows;  // one a CastingRule, in its order

  const CastingRuleRow& row(CastingRule rule) const { return rows[static_cast<std::size_t>(rule)]; }
  double value(CastingRule rule) const { return row(rule).value; }
};

// Every rule has to be there exactly once. Problems: a rule missing, unknown or twice there, a value that is
// not above zero, a row without unit, source, status or remark.
Result<CastingRules> read_casting_rules(const std::filesystem::path& file);

}  // namespace wrapgauge
