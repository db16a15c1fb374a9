#include "model/contact/mesh_error.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {

MeshError mesh_error(const ContactFigures& fine, const ContactFigures& coarse, Length coarse_edge) {
  MeshError error{coarse_edge, {}, fine.peak_anywhere - coarse.peak_anywhere};
  const std::size_t count = std::min(fine.chambers.size(), coarse.chambers.size());
  for (std::size_t c = 0; c < count; ++c) {
    const Pressure difference = fine.chambers[c].mean - coarse.chambers[c].mean;
    if (std::abs(difference.si()) > std::abs(error.worst_mean_difference.si()))
      error.worst_mean_difference = difference;
  }
  return error;
}

}  // namespace wrapgauge
