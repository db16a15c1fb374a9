#include "model/study/relief_valve.hpp"

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"

namespace wrapgauge {

std::string relief_rule_text(const LimitSet& limits, bool goes_round) {
  const ReliefRule& rule = limits.relief;
  return "no place above " + number_text(rule.times_limit, 3) +
         " times its limit with every valve at its setting, and no setting above " +
         pressure_text(goes_round ? rule.cuff : rule.pad) + " (" + rule.source + ")";
}

}  // namespace wrapgauge
