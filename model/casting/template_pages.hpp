#pragma once
// A 1:1 drawing cut into sheets of paper that are glued together again.

#include <optional>
#include <string_view>

#include "model/casting/template_drawing.hpp"

namespace wrapgauge {

struct Paper {
  std::string name;
  Length width, height;  // upright
};
std::optional<Paper> paper_of(std::string_view name);  // "a4" (ISO 216), "letter" (ANSI A)

struct TemplatePage {
  int column = 0, row = 0;  // from the left, from the top
  std::string label;        // "A1": the row's letter, the column's number
  Bounds2 window;           // the part of the drawing it shows, layout frame, metres
};

// All pages lie the same way, the way that takes fewer (upright when equal). Each shows `overlap` of its
// right and lower neighbour.
struct TemplatePages {
  Paper paper;
  bool lying = false;
  Length width, height;        // of the page as it lies
  Length margin = 10.0 * mm;   // judgement: most printers reach this far
  Length footer = 14.0 * mm;   // above the lower margin: check bar, page label
  Length overlap = 10.0 * mm;  // judgement: enough to glue
  int columns = 0, rows = 0;
  std::vector<TemplatePage> pages;  // row by row
};

// Problem: more than 200 pages.
Result<TemplatePages> template_pages(const TemplateDrawing& drawing, const Paper& paper);

}  // namespace wrapgauge
