#pragma once
// What a person says about a drawing: which shape is which part, and what no drawing can say.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/core/result.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

enum class DrawnPart { kOutline, kChamber, kInsetSeam, kChannel, kInlet, kStrap, kIgnore };

const char* part_name(DrawnPart part);  // "inset seam"
// In any case of letters, hyphens for spaces, one or several: "Inset-Seams". None: no such part.
std::optional<DrawnPart> part_from_name(std::string_view name);

// Shapes called so, in a group or layer called so, or of this colour, become this part.
struct DrawingRule {
  enum class Of { kName, kFill, kStroke };
  Of of = Of::kName;
  std::string pattern;  // any case of letters; * stands for any letters
  DrawnPart part = DrawnPart::kIgnore;
  std::optional<Length> width;  // of channels and inset lines
  bool operator==(const DrawingRule&) const = default;
};

// "KEY=PART" or "KEY=PART WIDTH" (mm); KEY is a name, "fill:COLOUR" or "stroke:COLOUR".
Result<DrawingRule> rule_from_text(std::string_view text);
bool matches(std::string_view pattern, std::string_view text);

// How the file is read.
struct DrawingReading {
  std::optional<Length> unit;  // of one unit of the drawing; none: as the file says
  Length join = 0.1 * mm;      // DXF: ends this close are one
  bool operator==(const DrawingReading&) const = default;
};

// What stands in no drawing.
struct LayoutDetails {
  std::string name;  // empty: the file's
  std::optional<Sheet> skin_sheet, outer_sheet;
  Backing backing;
  std::optional<LineTension> strap_stiffness;
  std::optional<Length> strap_thickness;
  std::optional<Closure> closure;
  bool rim_bonded = false;
  bool operator==(const LayoutDetails&) const = default;
};

struct DrawingMap {
  DrawingReading reading;
  std::vector<DrawingRule> rules;  // the first that fits holds; then names that are a part's own name
  std::optional<Length> channel_width, inset_width;  // where the rule has none; else the drawn line's width
  LayoutDetails details;
  bool operator==(const DrawingMap&) const = default;
};

}  // namespace wrapgauge
