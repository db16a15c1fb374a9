#pragma once
// What a layout has to have before it can be triangulated.

#include <optional>

#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {

// Problems: a number that is not finite, a loop of fewer than three points or no area, a path or width that
// gives no channel.
std::optional<Problem> unusable_shapes(const Layout& layout);
// Those, and an edge length that is not positive or that would need more than half a million vertices.
std::optional<Problem> unusable_request(const Layout& layout, const FlatMeshOptions& options);

}  // namespace wrapgauge
