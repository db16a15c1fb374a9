#pragma once
// The numbers that say where a part of a layout lies: for editing by keyboard.

#include <string>
#include <vector>

#include "model/layout/layout_part.hpp"

namespace wrapgauge {

struct PartNumber {
  Phrase name;
  std::string unit;
  double value = 0.0;  // mm; N/mm for cloth
  double least = -3000.0;
};
// Chamber, outline and strap: lower left corner, width and height of the box round it. Lines: their ends and
// width (bends in between stay where they are).
std::vector<PartNumber> part_numbers(const Layout& layout, const LayoutPart& part);

// The layout with the `number`th of these changed. What lies in a chamber goes with it.
Layout with_number(Layout layout, const LayoutPart& part, std::size_t number, double value);

}  // namespace wrapgauge
