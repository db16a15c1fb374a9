#pragma once
// The lines of a layout that is not put on, or that a hand is moving: where it lies, and what keeps its ends
// apart.

#include "app/desk/views/body_scene.hpp"

namespace wrapgauge {

ScenePart rim_part(const ShownPlan& shown);             // empty: there is no such layout
QString rim_words(const ShownPlan& shown);              // what is wrong with it; empty: nothing
std::optional<Vec3> gap_place(const ShownPlan& shown);  // the middle of the gap

}  // namespace wrapgauge
