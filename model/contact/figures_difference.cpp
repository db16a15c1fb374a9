#include "model/contact/figures_difference.hpp"

#include <algorithm>
#include <utility>

namespace wrapgauge {

FiguresDifference figures_difference(const ContactFigures& shown, const ContactFigures& other,
                                     std::string other_words) {
  FiguresDifference difference{std::move(other_words), {}, shown.peak_anywhere, other.peak_anywhere, {}};
  const std::size_t count = std::min(shown.chambers.size(), other.chambers.size());
  for (std::size_t c = 0; c < count; ++c)
    difference.chambers.push_back({shown.chambers[c].chamber, shown.chambers[c].mean, other.chambers[c].mean,
                                   shown.chambers[c].peak, other.chambers[c].peak});
  return difference;
}

}  // namespace wrapgauge
