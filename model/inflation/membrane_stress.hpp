#pragma once
// Stretch and tension of every sheet triangle in a given shape.

#include "model/inflation/load_path.hpp"

namespace wrapgauge {

struct SheetStress {
  Eigen::VectorXd stretch_max;  // largest principal stretch, a triangle each
  // Rest-frame nominal tension (first Piola-Kirchhoff x rest thickness), N/m: columns 2i, 2i+1 of triangle
  // i's 3x2 block; times a rest normal times a rest length it gives the force across that line. Membranes +
  // backing.
  Eigen::Matrix<double, 3, Eigen::Dynamic> nominal_tension_n_per_m;
  Eigen::VectorXd tension_max_n_per_m;  // largest principal Cauchy tension, deformed frame
};

SheetStress sheet_stress(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m);

}  // namespace wrapgauge
