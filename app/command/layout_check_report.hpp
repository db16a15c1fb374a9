#pragma once
// What `layout check` found, as sentences or JSON.

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "model/casting/closing_range.hpp"
#include "model/casting/silicone_amount.hpp"
#include "model/casting/worn_layout.hpp"

namespace wrapgauge {

// On a plan's body.
struct WornReport {
  std::optional<Length> closing_length, girth;  // none for a pad that does not go round
  std::string round_body;                       // its girths in words, where it does
  std::vector<SiteOnLayout> sites;
};

struct LayoutCheckReport {
  std::vector<Problem> problems;  // of the drawing; when there are any, the rest is empty
  std::vector<SheetAmount> amounts;
  CastingAllowance allowance;  // that they hold
  std::optional<ClosingRange> closing;
  std::optional<WornReport> worn;
  std::vector<CastingFinding> findings;
};

void say_layout_check(const LayoutCheckReport& report, const CastingRules& rules, std::ostream& out);
std::string layout_check_json(const Layout& layout, const LayoutCheckReport& report,
                              const CastingRules& rules);

}  // namespace wrapgauge
