#pragma once
// The same job under another assumption of the mechanics, chamber by chamber.

#include "model/contact/contact_map.hpp"

namespace wrapgauge {

struct ChamberDifference {
  std::string chamber;
  Pressure mean, mean_other;  // as shown in the figures; under the other assumption
  Pressure peak, peak_other;  // over 1 cm2
};

struct FiguresDifference {
  std::string other;                        // what is assumed otherwise, e.g. "tissue as a foundation"
  std::vector<ChamberDifference> chambers;  // empty when there is a `problem`
  Pressure peak_anywhere, peak_anywhere_other;
  std::string problem;  // why the other run has no figures; empty when it has
};

FiguresDifference figures_difference(const ContactFigures& shown, const ContactFigures& other,
                                     std::string other_words);

}  // namespace wrapgauge
