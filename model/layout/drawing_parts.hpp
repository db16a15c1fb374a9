#pragma once
// Which shape of a drawing becomes which part.

#include "model/layout/drawing.hpp"
#include "model/layout/drawing_map.hpp"

namespace wrapgauge {

struct DrawnAs {
  std::optional<DrawnPart> part;  // none: nothing says what it is
  Phrase why;                     // "called 'cells'", "encloses the others", or why it is left out
  std::optional<Length> width;    // of a channel or inset line: the rule's, the map's, else the drawn line's
  bool alone = false;             // said of this one shape: it says nothing of others
  bool guessed = false;           // nobody said so (drawing_guess.hpp): to be marked wherever it is shown
};

// "outline", "left out".
Phrase part_words(DrawnPart part);

// `said` and what the drawing says of itself.
DrawingMap whole_map(const Drawing& drawing, const DrawingMap& said);

// One a shape, in their order. A rule looks at the shape's own names, then at its groups from the inside out.
std::vector<DrawnAs> drawn_parts(const Drawing& drawing, const DrawingMap& map);

// The shapes that the rule fits, whatever other rules say.
std::vector<std::size_t> shapes_that_fit(const Drawing& drawing, const DrawingRule& rule);

// Rules of the map, not of the drawing itself, that fit no shape, or none that an earlier one leaves: whole
// sentences with the keys that would fit.
std::vector<std::string> idle_rule_sentences(const Drawing& drawing, const DrawingMap& map);

// What a rule can know the shape by, as --map wants it: names, groups, "fill:#ff0000", where it has none of
// these how it is drawn. No word twice.
std::vector<std::string> keys_of(const DrawnShape& shape);

// Closed shapes that cut one another and are, or may be, chambers: whole sentences with the area in mm2.
std::vector<std::string> overlap_sentences(const Drawing& drawing, const std::vector<DrawnAs>& parts);

}  // namespace wrapgauge
