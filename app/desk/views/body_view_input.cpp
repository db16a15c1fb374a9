// The body view's answers to mouse and keyboard.

#include <QKeyEvent>
#include <QMouseEvent>
#include <QScopedValueRollback>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/desk/views/body_overlay.hpp"
#include "app/desk/views/body_view.hpp"
#include "app/desk/views/view_keys.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

constexpr double kTurnStep_deg = 15.0, kShiftStep = 40.0;

double distance_to_piece(const QPointF& at, const QPointF& a, const QPointF& b) {
  const QPointF along = b - a;
  const double length2 = QPointF::dotProduct(along, along);
  const double t = length2 > 0.0 ? std::clamp(QPointF::dotProduct(at - a, along) / length2, 0.0, 1.0) : 0.0;
  const QPointF off = at - (a + t * along);
  return std::hypot(off.x(), off.y());
}

}  // namespace

bool BodyView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Wheel) {
    eye_is_ours_ = false;
    turntable_.zoom(zoom_of(*static_cast<QWheelEvent*>(event)));
    show_view();
    return true;
  }
  if (event->type() == QEvent::MouseButtonPress) press(static_cast<QMouseEvent*>(event));
  if (event->type() == QEvent::MouseMove) move(static_cast<QMouseEvent*>(event));
  if (event->type() == QEvent::MouseButtonRelease) release(static_cast<QMouseEvent*>(event));
  return QWidget::eventFilter(watched, event);
}

void BodyView::press(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  pressed_at_ = last_at_ = event->position();
  moved_ = false;
  const bool left = event->button() == Qt::LeftButton;
  if (event->button() == Qt::RightButton) drag_ = placing_ ? Drag::kTurnTable : Drag::kNone;
  if (event->button() == Qt::MiddleButton) drag_ = Drag::kShift;
  if (left && !placing_ && asked_.isEmpty() && is_on_ring(event->position()))
    drag_ = Drag::kRing;
  else if (left && placing_)
    drag_ = event->modifiers() & Qt::ControlModifier ? Drag::kTurnLayout : Drag::kAnchor;
  else if (left)
    drag_ = event->modifiers() & Qt::ShiftModifier ? Drag::kShift : Drag::kTurnTable;
}

void BodyView::move(QMouseEvent* event) {
  constexpr double kDegreesPerPixel = 0.4;
  const QPointF by = event->position() - last_at_;
  if ((event->position() - pressed_at_).manhattanLength() > 4.0) moved_ = true;
  if (drag_ == Drag::kNone && asked_.isEmpty())
    canvas_->setCursor(!placing_ && is_on_ring(event->position()) ? Qt::SplitVCursor : Qt::ArrowCursor);
  if (drag_ == Drag::kNone || !moved_) return;
  eye_is_ours_ = false;
  last_at_ = event->position();
  if (drag_ == Drag::kTurnTable) turntable_.turn(-kDegreesPerPixel * by.x(), kDegreesPerPixel * by.y());
  if (drag_ == Drag::kShift) turntable_.pan(by.x(), by.y());
  if (drag_ == Drag::kRing) move_ring(event->position());
  if (drag_ == Drag::kAnchor) move_anchor(event->position(), false);
  if (drag_ == Drag::kTurnLayout) turn_layout(event->position(), false);
  show_view();
}

void BodyView::release(QMouseEvent* event) {
  const Drag ended = drag_;
  drag_ = Drag::kNone;
  if (ended == Drag::kAnchor) return move_anchor(event->position(), true);
  if (ended == Drag::kTurnLayout && moved_) return turn_layout(event->position(), true);
  if (!moved_ && event->button() == Qt::LeftButton) click(event->position());
}

// Of the cut that is shown beside; on the far side of the limb too, where it is seen past an edge.
bool BodyView::is_on_ring(const QPointF& at) const {
  constexpr double kReach_pixels = 6.0;
  if (!selection_.cut_m() || !shown_.sections()) return false;
  const Axis& axis = shown_.body()->axis;
  const auto on_screen = [this](const Vec3& point_m) {
    const RasterPoint pixel = turntable_.view().project(point_m);
    return QPointF(pixel.x, pixel.y);
  };
  for (const SectionLine& line :
       shown_.sections()->at(axis.origin_m + *selection_.cut_m() * axis.direction, axis.direction))
    for (std::size_t k = 1; k < line.points_m.size(); ++k)
      if (distance_to_piece(at, on_screen(line.points_m[k - 1]), on_screen(line.points_m[k])) < kReach_pixels)
        return true;
  return false;
}

void BodyView::move_ring(const QPointF& at) {
  const auto place = place_under(at);
  const Axis& axis = shown_.body()->axis;
  if (place) emit ringMoved((*place - axis.origin_m).dot(axis.direction));
}

std::optional<Vec3> BodyView::place_under(const QPointF& at) const {
  return shown_.skin() ? place_at(*shown_.skin(), turntable_.view(), at.x(), at.y()) : std::nullopt;
}

// The place that was clicked is read, and the chamber over it chosen.
void BodyView::click(const QPointF& at) {
  if (!shown_.skin()) return;
  const QScopedValueRollback here(clicked_here_, true);
  const auto place = place_under(at);
  selection_.pick_place(place);
  if (!place) return selection_.select_chamber(std::nullopt);
  if (!asked_.isEmpty()) return give_click(*place);
  const auto reading = read_place(shown_, selection_.state(), *place);
  if (reading) selection_.select_chamber(reading->chamber);
}

void BodyView::move_anchor(const QPointF& at, bool finished) {
  const auto place = place_under(at);
  if (!place) return;
  const auto anchor = station_and_angle(*shown_.sections(), shown_.body()->axis, *place);
  if (anchor) emit anchorMoved(*anchor, *place, finished);
}

// The angle swept about the anchor on the screen; seen from behind it counts the other way.
void BodyView::turn_layout(const QPointF& at, bool finished) {
  if (!wrap()) return;
  const RasterPoint centre = turntable_.view().project(wrap()->anchor_m);
  const auto angle = [&](const QPointF& p) { return std::atan2(centre.y - p.y(), p.x() - centre.x); };
  const double swept = (angle(at) - angle(pressed_at_)) * 180.0 / std::numbers::pi;
  const double sign = wrap()->outward.dot(turntable_.towards_eye()) < 0.0 ? -1.0 : 1.0;
  emit turned(std::remainder(sign * swept, 360.0), finished);
}

void BodyView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Home) return show_all();
  if (event->key() == Qt::Key_Escape && placing_) return set_placing(false);
  if (event->key() == Qt::Key_Escape && !asked_.isEmpty()) {
    ask_for_click({});
    return void(emit clickGivenUp());
  }
  const auto arrow = arrow_of(*event);
  const auto zoom = zoom_of(*event);
  if (!arrow && !zoom) return QWidget::keyPressEvent(event);
  eye_is_ours_ = false;
  if (zoom)
    turntable_.zoom(*zoom);
  else if (event->modifiers() & Qt::ShiftModifier)
    turntable_.pan(kShiftStep * arrow->x(), -kShiftStep * arrow->y());
  else
    turntable_.turn(kTurnStep_deg * arrow->x(), kTurnStep_deg * arrow->y());
  show_view();
}

}  // namespace wrapgauge
