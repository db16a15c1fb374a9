#pragma once
// The single checks behind check_casting. Each adds what it finds.

#include "model/casting/casting_check.hpp"
#include "model/layout/layout_shapes.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {

struct CastingCheck {
  const Layout& layout;
  const LayoutShapes& shapes;
  const SheetGrades& grades;
  const CastingRules& rules;
  std::vector<CastingFinding>& findings;

  double thinner_m() const {
    return std::min(layout.skin_sheet.thickness, layout.outer_sheet.thickness).si();
  }
  double thicker_m() const {
    return std::max(layout.skin_sheet.thickness, layout.outer_sheet.thickness).si();
  }
};

void check_seam_widths(const CastingCheck& check);
void check_inset_gaps(const CastingCheck& check);
void check_channel_widths(const CastingCheck& check);
void check_corners(const CastingCheck& check);
void check_curl(const CastingCheck& check);
void check_twist(const CastingCheck& check);
void check_inlets(const CastingCheck& check);

}  // namespace wrapgauge
