#include "model/study/relief_valve.hpp"

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"

namespace wrapgauge {

std::string relief_words(const ReliefRule& rule, Pressure cap) {
  return "no place above " + number_text(rule.times_limit, 3) +
         " times its limit with every valve at its setting, and no "
         "setting above " +
         pressure_text(cap) + " (" + rule.source + ")";
}

}  // namespace wrapgauge
