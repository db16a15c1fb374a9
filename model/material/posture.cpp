#include "model/material/posture.hpp"

namespace wrapgauge {

std::string_view posture_name(Posture posture) {
  return posture == Posture::kTense ? "tense" : "relaxed";
}

Result<double> posture_factor(const TissueSite& site, std::optional<Posture> posture) {
  if (!posture) return 1.0;
  if (site.name.ends_with("tense")) {
    if (*posture == Posture::kTense) return 1.0;
    return bad_input(Phrase::worded(
        "The posture is \"relaxed\" but the tissue row is \"%1\": choose the relaxed row of that "
        "site, or leave the posture out.",
        {name_of(site.name)}));
  }
  return *posture == Posture::kTense && site.depth >= kLeastMuscle ? kTenseFactor : 1.0;
}

}  // namespace wrapgauge
