#pragma once
// What keeps a drawing from becoming a layout, one thing each.

#include <optional>
#include <string>
#include <vector>

#include "model/layout/drawing.hpp"

namespace wrapgauge {

struct DrawnFault {
  std::optional<std::size_t> shape;  // of the drawing; none: it is about the whole of it
  Phrase words;                      // what is wrong: half a sentence that goes on from the shape's name
  Phrase remedy;                     // what to do about it: half a sentence, with no word of any program
  std::string by_option = {};        // instead of the remedy, for the command line; empty: the remedy
  std::vector<Vec2> places_m = {};   // where, in the drawing's frame
  std::optional<Length> join = {};   // line ends that close are to be one: then it is whole
};

// As the command line says it: "the rect 'pad' at line 4 is open, from (0, 0) to (1, 0) mm; close it."
std::string fault_text(const Drawing& drawing, const DrawnFault& fault);

}  // namespace wrapgauge
