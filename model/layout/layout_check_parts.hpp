#pragma once
// The single checks behind check_layout. Each adds what it finds to `problems`.

#include "model/layout/layout_lines.hpp"

namespace wrapgauge {

struct LayoutCheck {
  const Layout& layout;
  const LayoutShapes& shapes;
  const LayoutLines& lines;  // of a drawing without self-crossings
  std::vector<Problem>& problems;

  void add(Phrase sentence, std::vector<ProblemPlace> places = {}) const {
    problems.push_back(bad_input(std::move(sentence), std::move(places)));
  }
};

// Numbers and names.
void check_numbers(const Layout& layout, std::vector<Problem>& problems);
void check_names(const LayoutCheck& check);
// Loops.
void check_self_crossings(const LayoutCheck& check);
void check_open_regions(const LayoutCheck& check);  // overlaps, outline, thin seams
void check_insets(const LayoutCheck& check);
// What joins what.
void check_air(const LayoutCheck& check);
void check_straps(const LayoutCheck& check);
void check_closure(const LayoutCheck& check);

double thicker_sheet_m(const Layout& layout);

}  // namespace wrapgauge
