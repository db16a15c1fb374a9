// The flat view's answers to mouse and keyboard.

#include <QGraphicsScene>
#include <QKeyEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/desk/views/flat_view.hpp"
#include "app/desk/views/next_in_ring.hpp"
#include "app/desk/views/view_keys.hpp"

namespace wrapgauge {

// The axis round the limb: the body turns to where the hand is.
void FlatView::mousePressEvent(QMouseEvent* event) {
  constexpr double kReach = 16.0;
  const bool on_axis = !angles().empty() && std::abs(event->position().y() - axis_y()) < kReach;
  if (on_axis && event->button() == Qt::LeftButton && ask_for_look(event->position())) {
    rolling_ = true;
    return;
  }
  grips_.unchoose();
  QGraphicsView::mousePressEvent(event);
  viewport()->update();
}

void FlatView::mouseMoveEvent(QMouseEvent* event) {
  if (!rolling_) return QGraphicsView::mouseMoveEvent(event);
  ask_for_look(event->position());
}

void FlatView::mouseReleaseEvent(QMouseEvent* event) {
  if (std::exchange(rolling_, false)) return;
  QGraphicsView::mouseReleaseEvent(event);
  guide_x_m_ = guide_y_m_ = std::nullopt;
  viewport()->update();
  if (const auto by_m = grips_.take_drag()) return move_chosen(*by_m);
  FlatPartItem* item = chosen_item();
  if (!item || item->pos() == QPointF()) return;
  const LayoutPart part = item->part();
  const Vec2 by_m = item->moved_by_m();
  item->setPos({});
  tell_moved(part, by_m);
}

// What is held by the mouse goes back to where it was and is let go.
bool FlatView::cancel_drag() {
  FlatPartItem* item = chosen_item();
  const bool part = item && item->pos() != QPointF();
  if (!part && !grips_.dragging()) return false;
  if (QGraphicsItem* held = scene_.mouseGrabberItem()) held->ungrabMouse();
  if (part) item->setPos({});
  grips_.cancel_drag();
  guide_x_m_ = guide_y_m_ = std::nullopt;
  show_grips();
  viewport()->update();
  return true;
}

void FlatView::move_chosen(const Vec2& by_m) {
  const auto part = chosen_part();
  if (!editable_) return;
  if (const auto grip = grips_.chosen())
    emit gripMoved(*grip, grips_.moved_layout(*grip, by_m));
  else if (part && part->kind != LayoutPart::Kind::kOutline)
    tell_moved(*part, by_m);
}

void FlatView::tell_moved(const LayoutPart& part, const Vec2& by_m) {
  if (part.kind == LayoutPart::Kind::kChamber)
    emit chamberMoved(ChamberId(static_cast<int>(part.index)), by_m);
  else
    emit partMoved(part, by_m);
}

void FlatView::step_part(int by) {
  if (items_.empty()) return;
  const auto chosen = std::find(items_.begin(), items_.end(), chosen_item());
  const auto at = static_cast<std::size_t>(chosen - items_.begin());
  choose_part(items_[next_in_ring(at, items_.size(), by)]->part());
}

void FlatView::keyPressEvent(QKeyEvent* event) {
  const bool control = event->modifiers() & Qt::ControlModifier;
  const double step_mm = event->modifiers() & Qt::ShiftModifier ? 5.0 : control ? 0.1 : 1.0;
  if (const auto arrow = arrow_of(*event)) return move_chosen(1e-3 * step_mm * *arrow);
  if (const auto factor = zoom_of(*event)) return zoom(*factor);
  switch (event->key()) {
    case Qt::Key_PageDown:
      return control ? step_grip(1) : step_part(1);
    case Qt::Key_PageUp:
      return control ? step_grip(-1) : step_part(-1);
    case Qt::Key_Home:
      return show_all();
    case Qt::Key_Escape:
      if (cancel_drag() || leave_chosen()) return;
      break;
    default:
      break;
  }
  QGraphicsView::keyPressEvent(event);
}

void FlatView::step_grip(int by) {
  grips_.choose_next(by);
  setAccessibleDescription(readout());
  viewport()->update();
}

// First the grip, then the part.
bool FlatView::leave_chosen() {
  if (grips_.chosen()) {
    grips_.unchoose();
    viewport()->update();
    return true;
  }
  if (!chosen_part()) return false;
  choose_part(std::nullopt);
  return true;
}

void FlatView::wheelEvent(QWheelEvent* event) {
  zoom(zoom_of(*event));
}

}  // namespace wrapgauge
