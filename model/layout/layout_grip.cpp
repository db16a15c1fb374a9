#include "model/layout/layout_grip.hpp"

#include <algorithm>
#include <utility>

#include "model/layout/corner_move.hpp"

namespace wrapgauge {
namespace {

using PartKind = LayoutPart::Kind;

std::optional<Length> length_of(const Closure& closure, const std::optional<Length>& worn) {
  return closure.closing_length ? closure.closing_length : worn;
}

// girth = length (1 + stretch) whatever the layout: it is the body's.
void set_length(Closure& closure, Length before, Length wished) {
  constexpr Length kShortest = 1.0 * mm;
  constexpr double kLeastStretch = -0.49, kMostStretch = 1.99;
  const Length length = std::max(wished, kShortest);
  if (closure.closing_length)
    closure.closing_length = length;
  else if (closure.stretch)
    closure.stretch =
        std::clamp((1.0 + *closure.stretch) * (before / length) - 1.0, kLeastStretch, kMostStretch);
}

// Of a layout that may be changed or one that may not.
template <class AnyLayout>
auto points_in(AnyLayout& layout, const LayoutPart& part) -> decltype(&layout.outline_m) {
  switch (part.kind) {
    case PartKind::kOutline:
      return &layout.outline_m;
    case PartKind::kChamber:
      return &layout.chambers[part.index].boundary_m;
    case PartKind::kInsetLine:
      return &layout.chambers[part.index].inset_lines[part.inset].path_m;
    case PartKind::kChannel:
      return &layout.channels[part.index].path_m;
    case PartKind::kStrap:
      return &layout.straps[part.index].boundary_m;
    case PartKind::kInsetSpot:
    case PartKind::kInlet:
      break;
  }
  return nullptr;
}

bool is_loop(PartKind kind) {
  return kind == PartKind::kOutline || kind == PartKind::kChamber || kind == PartKind::kStrap;
}

}  // namespace

std::optional<ClosingWindow> closing_lines_of(const Layout& layout, const std::optional<Length>& worn) {
  if (!layout.closure || layout.outline_m.empty()) return std::nullopt;
  return window_of(layout, length_of(*layout.closure, worn).value_or(Length()));
}

const std::vector<Vec2>* points_of(const Layout& layout, const LayoutPart& part) {
  return points_in(layout, part);
}

Layout with_grip_moved(Layout layout, const LayoutGrip& grip, const Vec2& by_m,
                       const std::optional<Length>& worn) {
  if (grip.kind == LayoutGrip::Kind::kPoint) {
    auto* points = points_in(layout, grip.part);
    if (!points || grip.point >= points->size()) return layout;
    if (is_loop(grip.part.kind))
      *points = with_corner_moved(std::move(*points), grip.point, by_m);
    else
      (*points)[grip.point] += by_m;
    return layout;
  }
  if (!layout.closure) return layout;
  if (grip.kind == LayoutGrip::Kind::kFirstLine)
    layout.closure->from_x_m += by_m.x();
  else if (const auto length = length_of(*layout.closure, worn))
    set_length(*layout.closure, *length, *length + by_m.x() * metre);
  return layout;
}

}  // namespace wrapgauge
