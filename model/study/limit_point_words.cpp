#include "model/study/limit_point_words.hpp"

#include "model/core/pressure_text.hpp"

namespace wrapgauge {

std::string limit_point_words(const LimitPoint& limit_point) {
  const std::string pressure = pressure_text(limit_point.pressure);
  switch (limit_point.kind) {
    case LimitKind::kOverstretched:
      return "A sheet is stretched further than its material is known for above " + pressure +
             ", below the inflation asked for.";
    case LimitKind::kFolds:
      return "A sheet folds above " + pressure + ", below the inflation asked for.";
    case LimitKind::kRunsAway:
      break;
  }
  return "A chamber runs away at " + pressure + ", below the pressure asked for.";
}

}  // namespace wrapgauge
