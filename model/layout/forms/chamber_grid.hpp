#pragma once
// Rows of chambers between two closing lines, which may slant and bend at half height: what a cuff and a
// sleeve have in common.

#include "model/layout/forms/layout_form_values.hpp"

namespace wrapgauge {

struct ChamberGrid {
  // Flat width between the closing lines at the lower and the upper edge, and how much wider it is halfway
  // than the mean of both; linear between.
  double lower_width_m, upper_width_m, bulge_m;
  double height_m;
  int columns, rows;
  double seam_m, rim_m, corner_m, channel_m, strap_m;
  double stretch;        // of the closure, at half height
  std::string row_word;  // "row", "band"
};

// Each row has one inlet; channels join its chambers. Problem: no room for the chambers.
Result<Layout> draw_chamber_grid(const ChamberGrid& grid);

// Widths and stretch are the caller's; all else, the backing too, is read from the values of a form whose
// columns are its "chambers" and whose rows are its `row_word`s.
Result<Layout> draw_band(const LayoutFormValues& values, double lower_width_m, double upper_width_m,
                         double stretch, const std::string& row_word, double bulge_m = 0.0);

}  // namespace wrapgauge
