#pragma once
// One thing to grip: a small square on a point, or a closing line with a knob at each end.

#include <QGraphicsPathItem>

#include "app/desk/views/flat_grips.hpp"

namespace wrapgauge {

class FlatGripItem : public QGraphicsPathItem {
 public:
  enum { Type = UserType + 2 };
  // `path`: of a line, in the scene; of a point, in pixels about `at`.
  FlatGripItem(FlatGrips& grips, const LayoutGrip& grip, const Bounds2& box_m, double pixels_per_mm);

  int type() const override { return Type; }
  const LayoutGrip& grip() const { return grip_; }
  const Bounds2& box_m() const { return box_m_; }
  void set_chosen(bool chosen);

  QPainterPath shape() const override;
  QRectF boundingRect() const override;
  void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

 protected:
  void hoverEnterEvent(QGraphicsSceneHoverEvent* event) override;
  void hoverLeaveEvent(QGraphicsSceneHoverEvent* event) override;
  void mousePressEvent(QGraphicsSceneMouseEvent* event) override;
  void mouseMoveEvent(QGraphicsSceneMouseEvent* event) override;
  void mouseReleaseEvent(QGraphicsSceneMouseEvent* event) override;

 private:
  bool is_line() const { return grip_.kind != LayoutGrip::Kind::kPoint; }

  FlatGrips& grips_;
  LayoutGrip grip_;
  Bounds2 box_m_;
  double pixel_ = 1.0;  // in the item's own unit
  bool chosen_ = false, hovered_ = false;
};

}  // namespace wrapgauge
