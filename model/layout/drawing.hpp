#pragma once
// What a drawing file holds before anyone says which shape is which part of a layout.
//
// Frame: the drawing's own, metres. SVG: origin at the upper left corner of the page, y downwards. DXF: the
// file's origin, y upwards.

#include <optional>
#include <string>
#include <vector>

#include "model/core/phrase.hpp"
#include "model/core/quantity.hpp"
#include "model/geometry/polygon.hpp"
#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

struct DrawnPath {
  Polyline points_m;      // chords of the drawn curve; a closed path does not repeat its first point
  bool closed = false;    // a single point, never closed: a place marked in the drawing
  double swept_m2 = 0.0;  // integral of (x dy - y dx) / 2 along the curve itself: its signed area when closed
  double length_m = 0.0;  // of the curve itself; a closed path's perimeter
};

struct DrawnCircle {
  Vec2 centre_m;
  double radius_m;
};

enum class FillRule { kNonZero, kEvenOdd };

struct DrawnShape {
  std::string kind;                    // as the file calls it: "rect", "LWPOLYLINE"
  int line = 0;                        // in the file, from 1
  std::string name;                    // title, label or id, or a text inside it; may be empty
  std::vector<std::string> names;      // what the file calls it: label, id, class words
  std::vector<std::string> groups;     // names of the groups or of the layer it is in, innermost first
  std::string fill, stroke;            // "#rrggbb", "none", "colour 5" or as written; empty: not said
  std::optional<Length> stroke_width;  // only when the drawing states it
  std::vector<DrawnPath> paths;
  FillRule fill_rule = FillRule::kNonZero;
  std::optional<DrawnCircle> circle;  // the shape is exactly this circle
  std::string fault;                  // why it cannot be used: half a sentence; usually empty
  bool cut = false;                   // that is its fault: a clip or mask cuts it, and its paths are uncut
  std::string remark;                 // what is worth knowing and no fault: half a sentence; usually empty
};

// A line of text in the drawing.
struct DrawnWords {
  int line;
  Vec2 place_m;  // where its text begins, or its middle
  std::string kind, words;
};

// Something in the file that is no shape, and why.
struct DrawnRemark {
  int line;
  std::string kind, why;
};

// What is worth knowing of the whole drawing: whole sentences, and the option of the command line that
// changes it.
struct DrawnNote {
  Phrase words;
  std::string by_option = {};
};
std::string note_text(const DrawnNote& note);  // as the command line says it

struct Drawing {
  std::string file;
  std::vector<DrawnShape> shapes;
  std::vector<DrawnRemark> left_out;
  std::vector<DrawnNote> notes;  // unit, page
  bool y_down = false;
  std::vector<DrawnWords> words;
  std::optional<DrawingMap> carried;  // what a drawing of ours says of itself (carried_map.hpp)
  // A template of ours (template_layout.hpp) has its layout, or was changed and has none that is to be
  // trusted.
  std::optional<Layout> layout;
  bool changed_template = false;
};

bool all_closed(const DrawnShape& shape);  // and at least one path
Bounds2 bounds(const DrawnShape& shape);   // of all its points
double length_m(const DrawnShape& shape);

// Area that the fill rule covers, of the curves themselves, uncut. None when a path is open, crosses itself
// or crosses another path of the shape, or the shape has any other fault than being cut.
std::optional<double> area_m2(const DrawnShape& shape);

// Where a closed path of the shape crosses or touches itself.
std::optional<Vec2> crossing_of(const DrawnShape& shape);

std::string place_text(const DrawnShape& shape);  // "rect 'pad' at line 4"

// The faults of a drawing as one message, for a maker who goes back to it once; empty for none. Twelve are
// told.
std::string faults_sentence(const std::string& file, const std::vector<std::string>& faults);

// What one shape is known by: "rect 'left'" for each name of its own, and last how it is drawn, in the
// drawing's own frame: "rect of 80.0 x 54.0 mm at (70.0, 39.0)". Others may share a key.
std::vector<std::string> shape_keys(const DrawnShape& shape);

// A name as lists show it: at most 60 bytes of it.
std::string shown_name(const std::string& name);

}  // namespace wrapgauge
