#pragma once
#include <optional>
#include <vector>

#include "model/body/length_unit.hpp"
#include "model/core/array.hpp"
#include "model/core/phrase.hpp"

namespace wrapgauge {

// A triangle mesh as a file gave it, unchecked except that indices are in range and coordinates finite.
struct RawMesh {
  Points3 vertices;  // in the file's unit, whatever that is
  Triangles faces;
  double coordinate_step =
      0.0;  // distance of neighbouring numbers the file could hold here, file units; 0: fine
  std::vector<Phrase> notes;                      // what reading had to say, one sentence each
  std::optional<LengthUnit> unit = std::nullopt;  // the format's own; none: the format has none
};

}  // namespace wrapgauge
