#pragma once
// Names that stand beside a shape rather than in it.

#include "model/layout/drawing.hpp"

namespace wrapgauge {

// A nameless closed shape takes the text that lies in it and in no smaller one, when there is just one such
// text; the frame round all others takes none. Texts that name nothing are listed as left out.
void name_by_words(Drawing& drawing);

// A shape that is still nameless takes the name of its block or layer, the innermost first, when no other
// shape is in it and it is not the name of a part.
void name_by_groups(Drawing& drawing);

}  // namespace wrapgauge
