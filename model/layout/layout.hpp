#pragma once
// A flat bladder pattern as drawn: two sheets fused everywhere inside the outline except in chambers and
// channels.
//
// Frame: seen with the outer sheet towards you, x runs along the wrap direction, y towards proximal, and
// x cross y points away from the body. Metres.

#include <optional>
#include <string>
#include <vector>

#include "model/core/id.hpp"
#include "model/core/quantity.hpp"
#include "model/geometry/polygon.hpp"

namespace wrapgauge {

inline constexpr std::size_t kMostLayoutPoints = 20000;  // of all its loops and lines
inline constexpr double kFlattening = 5e-5;  // m: how far a curve and the polygon in its place may lie apart

// A weld inside a chamber: a round spot, or a line of a given width.
struct InsetSpot {
  Vec2 centre_m;
  Length radius;
  bool operator==(const InsetSpot&) const = default;
};
struct InsetLine {
  Polyline path_m;
  Length width;
  bool operator==(const InsetLine&) const = default;
};

struct Chamber {
  std::string name;
  Polygon boundary_m;
  std::vector<InsetSpot> inset_spots;
  std::vector<InsetLine> inset_lines;
  bool operator==(const Chamber&) const = default;
};

// An unfused strip joining chambers, or a chamber and an inlet.
struct Channel {
  std::string name;
  Polyline path_m;
  Length width;
  bool operator==(const Channel&) const = default;
};

// Where air or liquid enters; feeds everything joined to the chamber or channel it lies in.
struct Inlet {
  std::string name;
  Vec2 point_m;
  bool operator==(const Inlet&) const = default;
};

struct Sheet {
  std::string material;  // row of the silicone table
  Length thickness;
  double prestretch = 1.0;  // stretched along x by this factor when it was fused to the other sheet
  bool operator==(const Sheet&) const = default;
};

// Cloth on the outer sheet: pulls only, along x and along y.
struct Backing {
  LineTension along;
  LineTension across;
  bool operator==(const Backing&) const = default;
};

// Cloth strip that continues the layout beyond its outline; touches it along an edge.
struct Strap {
  std::string name;
  Polygon boundary_m;
  LineTension stiffness;  // along x, N/m of width
  Length thickness;
  bool operator==(const Strap&) const = default;
};

// How the worn layout closes round the limb: the line x = `from_x` meets the line x = from_x + closing
// length. What lies beyond that second line is the overlapping tail; it is cut from the model (it lies on the
// outside). Exactly one of the two is given. On a limb that tapers the lines may slant, and bend where it
// bulges: `from_x` and the closing length then hold at the middle of the outline's height, and each line
// takes half.
struct Closure {
  double from_x_m = 0.0;  // usually the left edge of the layout
  std::optional<Length> closing_length;
  std::optional<double> stretch;  // closing length = girth at the anchor / (1 + stretch)
  double taper = 0.0;             // growth of the closing length for a unit of y (towards proximal)
  double bend = 0.0;              // below the middle it grows by so much more, above it by so much less
  bool operator==(const Closure&) const = default;
};
// A girth that grows faster belongs to a limb that flares by more than 18 degrees a side (derived).
inline constexpr double kSteepestTaper = 2.0;

struct Layout {
  std::string name;
  Polygon outline_m;
  std::vector<Chamber> chambers;
  std::vector<Channel> channels;
  std::vector<Inlet> inlets;
  Sheet skin_sheet;  // lies on the body
  Sheet outer_sheet;
  Backing backing;
  std::vector<Strap> straps;
  std::optional<Closure> closure;  // none: a pad that does not go round
  bool rim_bonded = false;         // fused rim glued or taped to the skin
  bool operator==(const Layout&) const = default;
};

// Whether anything in the layout holds it on a body: a closure, or a rim glued or taped on.
inline bool is_held(const Layout& layout) {
  return layout.closure.has_value() || layout.rim_bonded;
}

}  // namespace wrapgauge
