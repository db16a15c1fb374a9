#include "app/desk/views/flat_items.hpp"

#include <QObject>
#include <QPainter>
#include <QPen>

#include "model/geometry/innermost_point.hpp"
#include "model/layout/layout_grip.hpp"

namespace wrapgauge {

QPointF on_scene(const Vec2& point_m) {
  return {1e3 * point_m.x(), -1e3 * point_m.y()};
}

QPen cosmetic_pen(const QColor& colour, double width, Qt::PenStyle style) {
  QPen pen(colour, width, style);
  pen.setCosmetic(true);
  return pen;
}

QPen on_screen(QPen pen, const QPainter& painter) {
  pen.setWidthF(pen.widthF() * painter.device()->devicePixelRatioF());
  return pen;
}

namespace {

QPainterPath path_of(const std::vector<Vec2>& points_m, bool closed) {
  QPainterPath path;
  for (std::size_t k = 0; k < points_m.size(); ++k)
    k == 0 ? path.moveTo(on_scene(points_m[k])) : path.lineTo(on_scene(points_m[k]));
  if (closed) path.closeSubpath();
  return path;
}

// A strip of a given width along a line, ends round as they are cast.
QPainterPath strip_of(const Polyline& line_m, Length width) {
  QPainterPathStroker stroker;
  stroker.setWidth(width / mm);
  stroker.setCapStyle(Qt::RoundCap);
  stroker.setJoinStyle(Qt::RoundJoin);
  return stroker.createStroke(path_of(line_m, false)).simplified();
}

QPainterPath round(const Vec2& centre_m, double radius_mm) {
  QPainterPath path;
  path.addEllipse(on_scene(centre_m), radius_mm, radius_mm);
  return path;
}

const InsetSpot& spot_of(const Layout& layout, const LayoutPart& part) {
  return layout.chambers[part.index].inset_spots[part.inset];
}

Bounds2 box_of(const Layout& layout, const LayoutPart& part) {
  if (const auto* points_m = points_of(layout, part)) return bounds(*points_m);
  if (part.kind == LayoutPart::Kind::kInlet)
    return {layout.inlets[part.index].point_m, layout.inlets[part.index].point_m};
  const InsetSpot& spot = spot_of(layout, part);
  const Vec2 reach_m = Vec2::Constant(spot.radius.si());
  return {spot.centre_m - reach_m, spot.centre_m + reach_m};
}

QPen pen_of(LayoutPart::Kind kind) {
  using PartKind = LayoutPart::Kind;
  if (kind == PartKind::kOutline || kind == PartKind::kInlet) return cosmetic_pen(QColor(50, 50, 56), 2.2);
  return kind == PartKind::kChannel ? cosmetic_pen(QColor(110, 105, 120), 1.1)
                                    : cosmetic_pen(QColor(85, 80, 95), 1.5);
}

}  // namespace

FlatPartItem::FlatPartItem(const Layout& layout, const LayoutPart& part, QGraphicsItem* chamber)
    : QGraphicsPathItem(flat_path(layout, part), chamber), part_(part), box_m_(box_of(layout, part)) {
  setPen(pen_of(part.kind));
  if (part.kind == LayoutPart::Kind::kInlet) setBrush(Qt::white);
  if (part.kind == LayoutPart::Kind::kChamber)
    label_at_ = on_scene(innermost_point_m(layout.chambers[part.index].boundary_m));
  setFlag(ItemIsSelectable);
  setFlag(ItemSendsGeometryChanges);
}

void FlatPartItem::set_marked(bool marked) {
  marked_ = marked;
  update();
}

QPainterPath FlatPartItem::shape() const {
  constexpr double kReach_mm = 2.0;
  QPainterPathStroker stroker;
  stroker.setWidth(kReach_mm);
  const QPainterPath rim = stroker.createStroke(path());
  return part_.kind == LayoutPart::Kind::kOutline ? rim : rim.united(path());
}

void FlatPartItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
  if (marked_) {
    painter->setPen(on_screen(cosmetic_pen(QColor(200, 90, 0), 4.0, Qt::DashLine), *painter));
    painter->drawPath(path());
  }
  static const QPen kChosen = cosmetic_pen(kChosenBlue, 3.5);
  painter->setBrush(brush());
  painter->setPen(on_screen(isSelected() ? kChosen : pen(), *painter));
  painter->drawPath(path());
}

QVariant FlatPartItem::itemChange(GraphicsItemChange change, const QVariant& value) {
  if (change == ItemPositionChange && mover_ && value.toPointF() != QPointF()) {
    const QPointF wished = value.toPointF();
    const Vec2 by_m = mover_(*this, {1e-3 * wished.x(), -1e-3 * wished.y()});
    return on_scene(by_m);
  }
  return QGraphicsPathItem::itemChange(change, value);
}

QString flat_part_name(const Layout& layout, const LayoutPart& part) {
  const auto named = [](const QString& kind, const std::string& name) {
    return kind.arg(QString::fromStdString(name));
  };
  switch (part.kind) {
    case LayoutPart::Kind::kOutline:
      return QObject::tr("outline");
    case LayoutPart::Kind::kChamber:
      return named(QObject::tr("chamber %1"), layout.chambers[part.index].name);
    case LayoutPart::Kind::kInsetSpot:
      return named(QObject::tr("inset spot of %1"), layout.chambers[part.index].name);
    case LayoutPart::Kind::kInsetLine:
      return named(QObject::tr("inset line of %1"), layout.chambers[part.index].name);
    case LayoutPart::Kind::kChannel:
      return named(QObject::tr("channel %1"), layout.channels[part.index].name);
    case LayoutPart::Kind::kInlet:
      return named(QObject::tr("inlet %1"), layout.inlets[part.index].name);
    case LayoutPart::Kind::kStrap:
      return named(QObject::tr("strap %1"), layout.straps[part.index].name);
  }
  return {};
}

bool same_shape(const Layout& a, const Layout& b) {
  if (a.outline_m != b.outline_m || a.chambers.size() != b.chambers.size()) return false;
  for (std::size_t c = 0; c < a.chambers.size(); ++c)
    if (a.chambers[c].boundary_m != b.chambers[c].boundary_m) return false;
  return true;
}

QPainterPath material_of(const Layout& layout) {
  QPainterPath path = path_of(layout.outline_m, true);
  for (const Strap& strap : layout.straps) path = path.united(path_of(strap.boundary_m, true));
  return path;
}

QPainterPath flat_path(const Layout& layout, const LayoutPart& part) {
  using PartKind = LayoutPart::Kind;
  constexpr double kInlet_mm = 2.2;
  if (part.kind == PartKind::kInlet) return round(layout.inlets[part.index].point_m, kInlet_mm);
  if (part.kind == PartKind::kInsetSpot)
    return round(spot_of(layout, part).centre_m, spot_of(layout, part).radius / mm);
  const std::vector<Vec2>& points_m = *points_of(layout, part);
  if (part.kind == PartKind::kChannel) return strip_of(points_m, layout.channels[part.index].width);
  if (part.kind == PartKind::kInsetLine)
    return strip_of(points_m, layout.chambers[part.index].inset_lines[part.inset].width);
  return path_of(points_m, true);
}

std::vector<FlatPartItem*> make_flat_items(const Layout& layout) {
  std::vector<FlatPartItem*> items;
  using PartKind = LayoutPart::Kind;
  const auto add = [&](PartKind kind, std::size_t index, std::size_t inset = 0,
                       FlatPartItem* chamber = nullptr) {
    items.push_back(new FlatPartItem(layout, {kind, index, inset}, chamber));
    return items.back();
  };
  add(PartKind::kOutline, 0);
  for (std::size_t k = 0; k < layout.straps.size(); ++k) add(PartKind::kStrap, k);
  for (std::size_t k = 0; k < layout.channels.size(); ++k) add(PartKind::kChannel, k);
  for (std::size_t k = 0; k < layout.chambers.size(); ++k) {
    FlatPartItem* chamber = add(PartKind::kChamber, k);
    for (std::size_t s = 0; s < layout.chambers[k].inset_spots.size(); ++s)
      add(PartKind::kInsetSpot, k, s, chamber);
    for (std::size_t l = 0; l < layout.chambers[k].inset_lines.size(); ++l)
      add(PartKind::kInsetLine, k, l, chamber);
  }
  for (std::size_t k = 0; k < layout.inlets.size(); ++k) add(PartKind::kInlet, k);
  return items;
}

}  // namespace wrapgauge
