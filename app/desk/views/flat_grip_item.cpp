#include "app/desk/views/flat_grip_item.hpp"

#include <QCursor>
#include <QGraphicsSceneMouseEvent>
#include <QPainter>

#include "app/desk/views/flat_items.hpp"

namespace wrapgauge {
namespace {

constexpr double kReach_pixels = 6.0, kPoint_pixels = 4.0, kKnob_pixels = 4.5;

}  // namespace

FlatGripItem::FlatGripItem(FlatGrips& grips, const LayoutGrip& grip, const Bounds2& box_m,
                           double pixels_per_mm)
    : grips_(grips), grip_(grip), box_m_(box_m), pixel_(is_line() ? 1.0 / pixels_per_mm : 1.0) {
  setAcceptHoverEvents(true);
  setAcceptedMouseButtons(Qt::LeftButton);
  setCursor(is_line() ? Qt::SizeHorCursor : Qt::SizeAllCursor);
  setFlag(ItemIgnoresTransformations, !is_line());
  setZValue(is_line() ? 5.0 : 6.0);
  if (is_line()) return;
  QPainterPath square;
  square.addRect(QRectF(-kPoint_pixels, -kPoint_pixels, 2.0 * kPoint_pixels, 2.0 * kPoint_pixels));
  setPath(square);
}

void FlatGripItem::set_chosen(bool chosen) {
  chosen_ = chosen;
  update();
}

QPainterPath FlatGripItem::shape() const {
  QPainterPathStroker stroker;
  stroker.setWidth(2.0 * (is_line() ? kReach_pixels : kReach_pixels - kPoint_pixels) * pixel_);
  const QPainterPath near = stroker.createStroke(path());
  return is_line() ? near : near.united(path());
}

QRectF FlatGripItem::boundingRect() const {
  const double reach = 2.0 * kReach_pixels * pixel_;
  return path().boundingRect().adjusted(-reach, -reach, reach, reach);
}

void FlatGripItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
  const QColor violet(112, 70, 170);
  const bool lit = chosen_ || hovered_;
  const QColor colour = lit ? kChosenBlue : violet;
  const auto pen = [painter](const QPen& drawn) { painter->setPen(on_screen(drawn, *painter)); };
  painter->setBrush(lit ? kChosenBlue : QColor(Qt::white));
  if (!is_line()) {
    pen(cosmetic_pen(colour, 1.6));
    painter->drawPath(path());
    return;
  }
  painter->save();
  painter->setBrush(Qt::NoBrush);
  pen(cosmetic_pen(QColor(255, 255, 255, 190), 5.0));  // seen on a dark map too
  painter->drawPath(path());
  pen(cosmetic_pen(colour, lit ? 3.0 : 2.0, Qt::DashDotLine));
  painter->drawPath(path());
  painter->restore();
  pen(cosmetic_pen(colour, 1.8));
  for (const QPointF& end : {QPointF(path().elementAt(0)), QPointF(path().currentPosition())})
    painter->drawEllipse(end, kKnob_pixels * pixel_, kKnob_pixels * pixel_);
}

void FlatGripItem::hoverEnterEvent(QGraphicsSceneHoverEvent*) {
  hovered_ = true;
  update();
}

void FlatGripItem::hoverLeaveEvent(QGraphicsSceneHoverEvent*) {
  hovered_ = false;
  update();
}

void FlatGripItem::mousePressEvent(QGraphicsSceneMouseEvent* event) {
  event->accept();
  grips_.grip(*this);
}

void FlatGripItem::mouseMoveEvent(QGraphicsSceneMouseEvent* event) {
  const QPointF by = event->scenePos() - event->buttonDownScenePos(Qt::LeftButton);
  grips_.drag(*this, {1e-3 * by.x(), -1e-3 * by.y()});
}

// The view asks how far it went: the item may not outlive the edit.
void FlatGripItem::mouseReleaseEvent(QGraphicsSceneMouseEvent* event) {
  event->accept();
}

}  // namespace wrapgauge
