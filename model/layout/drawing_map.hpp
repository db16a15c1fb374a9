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
// The same for a name that a number may follow, as drawing programs count copies: "chamber-0", "Chamber 2".
std::optional<DrawnPart> part_from_numbered_name(std::string_view name);

// Shapes called so, in a group or layer called so, or of this colour, become this part; or one single shape
// (shape_keys).
struct DrawingRule {
  enum class Of { kName, kFill, kStroke, kShape };
  Of of = Of::kName;
  std::string pattern;  // any case of letters; * stands for any letters
  DrawnPart part = DrawnPart::kIgnore;
  std::optional<Length> width;  // of channels and inset lines
  bool operator==(const DrawingRule&) const = default;
};

// "KEY=PART" or "KEY=PART WIDTH" (mm); KEY is a name, "fill:COLOUR", "stroke:COLOUR" or "shape:SHAPE".
Result<DrawingRule> rule_from_text(std::string_view text);
std::string rule_text(const DrawingRule& rule);  // "fill:#ff0000=chamber"
bool matches(std::string_view pattern, std::string_view text);

// How the file is read.
struct DrawingReading {
  std::optional<Length> unit;  // of one unit of the drawing; none: as the file says
  double scale = 1.0;          // everything is drawn this many times larger than the file says
  std::optional<Length> join;  // line ends this close are one; none: 0.1 mm in a DXF, not joined in an SVG
  bool operator==(const DrawingReading&) const = default;
};

struct StrapCloth {
  std::string strap;  // its name
  LineTension stiffness;
  Length thickness;
  bool operator==(const StrapCloth&) const = default;
};

// What stands in no drawing.
struct LayoutDetails {
  std::string name;  // empty: the file's
  std::optional<Sheet> skin_sheet, outer_sheet;
  Backing backing;
  std::optional<LineTension> strap_stiffness;
  std::optional<Length> strap_thickness;
  std::vector<StrapCloth> strap_cloths;  // of single straps; the others have the one above
  std::optional<Closure> closure;
  bool rim_bonded = false;
  Vec2 corner_m = Vec2::Zero();    // where the outline's lower left corner lies in the layout's frame
  std::vector<Inlet> inlets = {};  // that the drawing does not show, in the layout's frame
  bool operator==(const LayoutDetails&) const = default;
};

struct DrawingMap {
  DrawingReading reading;
  std::vector<DrawingRule> rules;  // the first that fits holds; then names that are a part's own name
  bool guess = true;               // parts that nobody names are guessed (drawing_guess.hpp)
  std::optional<Length> channel_width, inset_width;  // where the rule has none; else the drawn line's width
  LayoutDetails details;
  bool operator==(const DrawingMap&) const = default;
};

// `said` with what the drawing says of itself below it: its rules come last, its details hold where nothing
// else is said.
DrawingMap with_carried(DrawingMap said, const DrawingMap& carried);

}  // namespace wrapgauge
