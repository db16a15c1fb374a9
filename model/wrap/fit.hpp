#pragma once
// What lying on this body tells of a layout before anything is solved: how tight it is and where, whether its
// edges meet, whether it laps itself.

#include <optional>
#include <vector>

#include "model/core/array.hpp"
#include "model/core/quantity.hpp"

namespace wrapgauge {

// A section that a fastened layout goes round in. Its station is that of the anchor's meridian there.
struct GirthSection {
  Length station, girth, closing_length;

  // Of the layout, round the body: 0.05 is 5 % longer than drawn, below 0 it is longer than the girth.
  double stretch() const { return girth / closing_length - 1.0; }
};

// Edges that face each other and stay apart.
struct Slit {
  Length station, girth;  // where it was measured
  Length width;           // round the body: of a layout without closure that all but goes round
  // Along the closing lines, of a layout whose lines meet over a part of its height; else 0.
  Length fastened, height;
};

// A place of the laid layout with its principal stretch there, less 1.
struct StretchedPlace {
  Vec2 at_flat_m;
  Length station;
  double stretch = 0.0;
};

// A layout without closure that comes to lie on itself.
struct SelfLap {
  int layers = 2;  // where it lies thickest
  Area area;       // of the flat layout that lies on or under another part of it
  Length station, girth;
};

struct Fit {
  std::vector<GirthSection> sections;  // of a layout that closes: every 2 mm from its distal edge on
  std::optional<GirthSection> anchor;  // the same at the anchor
  // Growth of the closing length for a unit of y that would stretch all heights as the anchor is.
  double even_taper = 0.0;
  Length tail;  // how far the layout goes on beyond its second closing line
  std::optional<Slit> slit;
  std::optional<SelfLap> lap;
  // Of a layout that does not close, laid: the area-weighted 1st and 99th percentile.
  std::optional<StretchedPlace> least, most;
};

}  // namespace wrapgauge
