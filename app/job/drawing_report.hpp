#pragma once
// What was found in a drawing, for people and as JSON.

#include <ostream>
#include <string>

#include "model/layout/drawing.hpp"
#include "model/layout/drawing_parts.hpp"

namespace wrapgauge {

// A shape as the reports show it; lengths in mm, in the drawing's own frame.
struct ShapeRow {
  const DrawnShape& shape;
  const DrawnAs& as;
  std::optional<double> area_mm2;  // none: open, faulty or crossing itself
  double length_mm;
  Bounds2 box_mm;
  std::string trouble;  // "is open", "crosses or touches itself at (x, y) mm", a fault; usually empty
  bool wrong;           // the trouble is one that the drawing has to be mended for
};

std::vector<ShapeRow> shape_rows(const Drawing& drawing, const std::vector<DrawnAs>& parts);

// All rows that are wrong, as one message; empty when none is.
std::string faults_sentence(const Drawing& drawing, const std::vector<ShapeRow>& rows);

// How many parts of which kind are guessed, and how many shapes and other things are left out; empty for
// none.
std::string guess_sentence(const std::vector<DrawnAs>& parts);
std::string left_out_sentence(const Drawing& drawing, const std::vector<DrawnAs>& parts);

// Both list at most 200 shapes and 50 things left out, and say how many there are.
void say_drawing(const Drawing& drawing, const std::vector<ShapeRow>& rows, std::ostream& out);
std::string drawing_json(const Drawing& drawing, const std::vector<ShapeRow>& rows,
                         const std::vector<std::string>& overlaps);

}  // namespace wrapgauge
