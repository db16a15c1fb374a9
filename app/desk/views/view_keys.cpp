#include "app/desk/views/view_keys.hpp"

#include <cmath>

namespace wrapgauge {
namespace {

constexpr double kZoomStep = 1.2;  // of a key press or a notch of the wheel

}  // namespace

std::optional<Vec2> arrow_of(const QKeyEvent& event) {
  switch (event.key()) {
    case Qt::Key_Left:
      return Vec2(-1.0, 0.0);
    case Qt::Key_Right:
      return Vec2(1.0, 0.0);
    case Qt::Key_Up:
      return Vec2(0.0, 1.0);
    case Qt::Key_Down:
      return Vec2(0.0, -1.0);
    default:
      return std::nullopt;
  }
}

std::optional<double> zoom_of(const QKeyEvent& event) {
  if (event.key() == Qt::Key_Plus || event.key() == Qt::Key_Equal) return kZoomStep;
  if (event.key() == Qt::Key_Minus) return 1.0 / kZoomStep;
  return std::nullopt;
}

double zoom_of(const QWheelEvent& event) {
  return std::pow(kZoomStep, event.angleDelta().y() / 120.0);
}

}  // namespace wrapgauge
