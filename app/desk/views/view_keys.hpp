#pragma once
// The same keys and the wheel for the same things in every view.

#include <QKeyEvent>
#include <QWheelEvent>
#include <optional>

#include "model/core/array.hpp"

namespace wrapgauge {

// Right and up of an arrow key, 1 each.
std::optional<Vec2> arrow_of(const QKeyEvent& event);
// By how much + and - and the wheel enlarge.
std::optional<double> zoom_of(const QKeyEvent& event);
double zoom_of(const QWheelEvent& event);

}  // namespace wrapgauge
