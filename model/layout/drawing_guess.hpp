#pragma once
// Guesses what a shape is that neither a rule nor a name says, from how the shapes lie to one another.
//
// A part is guessed only when nothing in the drawing is said to be that part; what is said of one single
// shape does not count, but for the outline:
// - the one shape that lies in no other and encloses some is the outline;
// - a closed shape inside it is a chamber; a circle or rectangle inside a chamber is an inset seam; what such
//   a hole encloses is a chamber again (a ring with a chamber in its hole);
// - a point, or a circle of at most 2.5 mm radius, is an inlet; three or more circles alike in one
//   chamber are inset spots;
// - an open line that begins at one chamber and ends at another, or at an inlet, is a channel; one that stays
//   in a chamber is an inset seam.
// All else stays unsaid. A guess is never more than that: whoever shows one has to mark it
// (DrawnAs::guessed).

#include "model/layout/drawing_parts.hpp"

namespace wrapgauge {

// Fills in `parts`, one a shape, where none is said. Nothing is guessed from more than 2000 closed paths or
// 20 000 points.
void guess_parts(const Drawing& drawing, std::vector<DrawnAs>& parts);

}  // namespace wrapgauge
