#pragma once
// What a person says of single shapes of a drawing, as rules that hold when the file is read again.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "model/layout/drawing.hpp"
#include "model/layout/drawing_map.hpp"
#include "model/layout/drawing_parts.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// Shapes that are the same so far and stand in the same group or layer, or where there is none are drawn in
// the same colours: what is said of one may be meant for all of them. The shape itself is among them.
std::vector<std::size_t> alike_shapes(const Drawing& drawing, const std::vector<DrawnAs>& parts,
                                      std::size_t shape);
// The group or layer that they share; empty: none.
std::string shared_group(const Drawing& drawing, const std::vector<std::size_t>& shapes);

// By their group when they are all that is in it, else each by a name of its own, else by how it is drawn.
// What was said of them before is taken back.
void say_part(DrawingMap& map, const Drawing& drawing, const std::vector<std::size_t>& shapes,
              DrawnPart part);

struct StartingMap {
  DrawingMap map;
  bool known = false;  // the file was read before
};
// With what the map starts when the file is opened for this plan: what the plan says of this very file, else
// what is remembered of it, else nothing. A layout that is there keeps its closing.
StartingMap starting_map(const std::filesystem::path& file, const Plan& plan,
                         const std::optional<DrawingMap>& remembered);

}  // namespace wrapgauge
