#pragma once
// The tables that checks and templates of a layout need, read in.

#include "model/casting/casting_rules.hpp"
#include "model/material/silicone.hpp"

namespace wrapgauge {

struct CastingTables {
  CastingRules rules;
  std::vector<SiliconeGrade> silicones;
};
Result<CastingTables> read_casting_tables();

}  // namespace wrapgauge
