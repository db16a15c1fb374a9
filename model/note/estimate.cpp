#include "model/note/estimate.hpp"

#include <algorithm>

namespace wrapgauge {

Severity Estimate::worst() const {
  Severity worst = Severity::kNote;
  for (const Finding& finding : findings) worst = std::max(worst, finding.severity);
  for (const Hazard& hazard : hazards) worst = std::max(worst, hazard.severity);
  return worst;
}

}  // namespace wrapgauge
