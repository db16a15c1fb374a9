#pragma once
// What a layout has to have before it can be triangulated.

#include <optional>
#include <string>

#include "model/layout/region_map.hpp"

namespace wrapgauge {

// Problems: a number that is not finite, a loop of fewer than three points or no area, a path or width that
// gives no channel.
std::optional<Problem> unusable_shapes(const Layout& layout);
// Those, and an edge length that is not positive or that would need more than half a million vertices.
std::optional<Problem> unusable_request(const Layout& layout, const FlatMeshOptions& options);

// The lines that meet when closed; none when the layout does not close or no closing length is asked for.
// A second line within 0.1 mm of an edge drawn across the layout lies on that edge.
// Problems: a closing line before the layout begins or beyond its end (mm missing).
Result<std::optional<ClosingWindow>> closing_window(const Layout& layout,
                                                    const std::optional<Length>& closing_length);

// A chamber or channel that reaches across a closing line, named, with how far.
std::optional<Problem> cut_open_region(const Layout& layout, const LayoutShapes& shapes,
                                       const ClosingWindow& window);

std::string in_millimetres(double length_m);  // "12.3 mm"

}  // namespace wrapgauge
