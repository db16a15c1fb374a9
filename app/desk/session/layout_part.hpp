#pragma once
// The parts of a layout as a list, and the numbers that say where each one lies: for editing by keyboard.

#include <QString>
#include <optional>
#include <vector>

#include "model/layout/layout.hpp"
#include "model/layout/layout_part.hpp"

namespace wrapgauge {

// Outline first, each chamber followed by its inset seams, then channels, inlets and straps.
std::vector<LayoutPart> layout_parts(const Layout& layout);
QString part_title(const Layout& layout, const LayoutPart& part);  // "inset spot 2 of left back"

struct PartNumber {
  QString name, unit;
  double value = 0.0;  // mm; N/mm for cloth
  double least = -3000.0;
};
// Chamber, outline and strap: lower left corner, width and height of the box round it. Lines: their ends and
// width (bends in between stay where they are).
std::vector<PartNumber> part_numbers(const Layout& layout, const LayoutPart& part);

// --- edits; each gives the changed layout ---

// What lies in a chamber goes with it: inset seams, inlets, and the points of channels.
Layout with_part_moved(Layout layout, const LayoutPart& part, const Vec2& by_m);
Layout with_number(Layout layout, const LayoutPart& part, std::size_t number, double value);
// None: the part has no name of its own, or another one of its kind has this name.
std::optional<Layout> with_name(Layout layout, const LayoutPart& part, const std::string& name);
Layout without_part(Layout layout, const LayoutPart& part);

// New parts go beside or inside what is there: a chamber right of the outline's middle, a spot or line in the
// middle of the chamber, a channel from it to the next chamber, an inlet in it, a strap where the outline
// ends along x.
Layout with_new_part(Layout layout, LayoutPart::Kind kind, std::size_t chamber);

}  // namespace wrapgauge
