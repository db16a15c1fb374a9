#pragma once
// The parts of a layout as items of a scene in millimetres, y down.

#include <QGraphicsPathItem>
#include <QPen>
#include <functional>

#include "model/geometry/polygon.hpp"
#include "model/layout/layout.hpp"
#include "model/layout/layout_part.hpp"

namespace wrapgauge {

inline const QColor kChosenBlue(0, 120, 215);  // what is chosen or dragged, and what it is in line with

QPointF on_scene(const Vec2& point_m);
// As wide in pixels at any zoom.
QPen cosmetic_pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine);
// Cosmetic pens count the screen's own pixels: as wide in those of the view.
QPen on_screen(QPen pen, const QPainter& painter);

class FlatPartItem : public QGraphicsPathItem {
 public:
  enum { Type = UserType + 1 };
  // `chamber`: of an inset seam, whose item goes with it.
  FlatPartItem(const Layout& layout, const LayoutPart& part, QGraphicsItem* chamber);

  int type() const override { return Type; }
  const LayoutPart& part() const { return part_; }
  const Bounds2& box_m() const { return box_m_; }
  // Corrects a wished move; called while the item is dragged.
  void set_mover(std::function<Vec2(const FlatPartItem&, const Vec2&)> mover) { mover_ = std::move(mover); }
  Vec2 moved_by_m() const { return {1e-3 * pos().x(), -1e-3 * pos().y()}; }
  // Within a chamber, where its words stand; the item's own millimetres.
  const QPointF& label_at() const { return label_at_; }
  void set_marked(bool marked);

  QPainterPath shape() const override;  // lines can be hit a little beside them
  void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

 protected:
  QVariant itemChange(GraphicsItemChange change, const QVariant& value) override;

 private:
  LayoutPart part_;
  Bounds2 box_m_;
  QPointF label_at_;
  bool marked_ = false;
  std::function<Vec2(const FlatPartItem&, const Vec2&)> mover_;
};

QString flat_part_name(const Layout& layout, const LayoutPart& part);

// Whether outlines and chambers are drawn alike.
bool same_shape(const Layout& a, const Layout& b);

// The material that the map lies on: outline and straps.
QPainterPath material_of(const Layout& layout);

// Of one part as it is drawn: loops closed, lines as wide as they are cast; millimetres, y down.
QPainterPath flat_path(const Layout& layout, const LayoutPart& part);

// Outline first; inset seams are children of their chamber's item.
std::vector<FlatPartItem*> make_flat_items(const Layout& layout);

}  // namespace wrapgauge
