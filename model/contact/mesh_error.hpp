#pragma once
// How much the answer moves when the mesh is coarsened: an estimate of what the mesh leaves out.

#include "model/contact/contact_map.hpp"

namespace wrapgauge {

struct MeshError {
  Length coarse_edge;
  Pressure worst_mean_difference;  // of the chamber means, fine minus coarse: the largest in size
  Pressure peak_difference;        // of the peak anywhere, fine minus coarse
};

MeshError mesh_error(const ContactFigures& fine, const ContactFigures& coarse, Length coarse_edge);

}  // namespace wrapgauge
