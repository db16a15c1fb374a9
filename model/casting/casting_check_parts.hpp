#pragma once
// The single checks behind check_casting. Each adds what it finds.

#include "model/casting/casting_check.hpp"
#include "model/casting/casting_words.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/layout_shapes.hpp"

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
  Phrase figure(CastingRule rule) const { return figures_of(number_text(rules.value(rule))); }
  // A narrower open strip may fuse shut: the rules for channels.
  CastingRule strip_rule() const;
  double least_strip_m() const;

  void add_length(CastingRule rule, Phrase sentence, double length_m, double threshold_m, const Vec2& place_m,
                  std::vector<ProblemPlace> parts) const {
    findings.push_back(
        {rule, std::move(sentence), 1e3 * length_m, 1e3 * threshold_m, place_m, std::move(parts)});
  }
};

void check_sheets(const CastingCheck& check);
void check_seam_widths(const CastingCheck& check);
void check_inset_gaps(const CastingCheck& check);
void check_channel_widths(const CastingCheck& check);
void check_chamber_widths(const CastingCheck& check);  // necks too
void check_corners(const CastingCheck& check);
void check_outline_notches(const CastingCheck& check);
void check_curl(const CastingCheck& check);
void check_prestretch(const CastingCheck& check);
void check_twist(const CastingCheck& check);
void check_inlets(const CastingCheck& check);
void check_drawn_closing_lines(const CastingCheck& check);

}  // namespace wrapgauge
