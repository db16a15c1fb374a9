#pragma once
// Which shape of a drawing becomes which part.

#include "model/layout/drawing.hpp"
#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

struct DrawnAs {
  std::optional<DrawnPart> part;  // none: nothing says what it is
  std::string why;                // "layer CHAMBER", "rule 'cells'", or why it is left out
  std::optional<Length> width;    // of a channel or inset line: the rule's, the map's, else the drawn line's
};

// One a shape, in their order. A rule looks at the shape's own names, then at its groups from the inside out.
std::vector<DrawnAs> drawn_parts(const Drawing& drawing, const DrawingMap& map);

// Closed shapes that cut one another and are, or may be, chambers: whole sentences with the area in mm2.
std::vector<std::string> overlap_sentences(const Drawing& drawing, const std::vector<DrawnAs>& parts);

}  // namespace wrapgauge
