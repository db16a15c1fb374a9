#pragma once
// What of a layout can be gripped besides whole parts: the points that a seam or a channel is drawn through,
// and the two closing lines.

#include <optional>
#include <vector>

#include "model/layout/closing_window.hpp"
#include "model/layout/layout.hpp"
#include "model/layout/layout_part.hpp"

namespace wrapgauge {

struct LayoutGrip {
  enum class Kind { kPoint, kFirstLine, kSecondLine };
  Kind kind = Kind::kPoint;
  LayoutPart part;        // of a point
  std::size_t point = 0;  // of that part's loop or line

  bool operator==(const LayoutGrip&) const = default;
};

// Where the layout closes; none for a pad. `worn`: the closing length it was laid on with, for a layout that
// gives its stretch instead; without it the second line's place is not known and lies on the first.
std::optional<ClosingWindow> closing_lines_of(const Layout& layout, const std::optional<Length>& worn);

// The points of a part; none for inlets and inset spots, which are one point and are moved whole.
const std::vector<Vec2>* points_of(const Layout& layout, const LayoutPart& part);

// A point of a loop takes the rounding it belongs to along (corner_move.hpp), one of a line goes alone. The
// first closing line takes the second with it, so the closing length stays; the second changes the closing
// length, or the stretch that gives it. The closing length stays above 1 mm and the stretch within what a
// layout may have.
Layout with_grip_moved(Layout layout, const LayoutGrip& grip, const Vec2& by_m,
                       const std::optional<Length>& worn);

}  // namespace wrapgauge
