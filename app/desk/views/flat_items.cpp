#include "app/desk/views/flat_items.hpp"

#include <QObject>
#include <QPainter>
#include <QPen>

#include "model/geometry/innermost_point.hpp"

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

Bounds2 box_round(const Vec2& centre_m, double radius_m) {
  return {centre_m - Vec2::Constant(radius_m), centre_m + Vec2::Constant(radius_m)};
}

struct Pens {
  QPen rim, edge, thin, chosen;
};

Pens pens_of() {
  return {cosmetic_pen(QColor(50, 50, 56), 2.2), cosmetic_pen(QColor(85, 80, 95), 1.5),
          cosmetic_pen(QColor(110, 105, 120), 1.1), cosmetic_pen(QColor(0, 120, 215), 3.5)};
}

}  // namespace

FlatPartItem::FlatPartItem(const LayoutPart& part, const QPainterPath& outline, const Bounds2& box_m)
    : QGraphicsPathItem(outline), part_(part), box_m_(box_m) {
  setFlag(ItemIsSelectable);
  setFlag(ItemSendsGeometryChanges);
}

void FlatPartItem::set_look(const QPen& pen, const QPen& chosen) {
  setPen(pen);
  chosen_ = chosen;
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
  painter->setBrush(brush());
  painter->setPen(on_screen(isSelected() ? chosen_ : pen(), *painter));
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

namespace {

constexpr double kInlet_mm = 2.2;

void add_insets(const Layout& layout, std::size_t index, const Pens& pens, FlatPartItem* parent,
                std::vector<FlatPartItem*>& items) {
  const Chamber& chamber = layout.chambers[index];
  const auto add = [&](LayoutPart::Kind kind, std::size_t inset, const Bounds2& box) {
    const LayoutPart part{kind, index, inset};
    auto* item = new FlatPartItem(part, flat_path(layout, part), box);
    item->set_look(pens.edge, pens.chosen);
    item->setParentItem(parent);
    items.push_back(item);
  };
  for (std::size_t s = 0; s < chamber.inset_spots.size(); ++s) {
    const InsetSpot& spot = chamber.inset_spots[s];
    add(LayoutPart::Kind::kInsetSpot, s, box_round(spot.centre_m, spot.radius.si()));
  }
  for (std::size_t l = 0; l < chamber.inset_lines.size(); ++l)
    add(LayoutPart::Kind::kInsetLine, l, bounds(chamber.inset_lines[l].path_m));
}

}  // namespace

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
  using Kind = LayoutPart::Kind;
  switch (part.kind) {
    case Kind::kOutline:
      return path_of(layout.outline_m, true);
    case Kind::kChamber:
      return path_of(layout.chambers[part.index].boundary_m, true);
    case Kind::kInsetSpot: {
      const InsetSpot& spot = layout.chambers[part.index].inset_spots[part.inset];
      return round(spot.centre_m, spot.radius / mm);
    }
    case Kind::kInsetLine: {
      const InsetLine& line = layout.chambers[part.index].inset_lines[part.inset];
      return strip_of(line.path_m, line.width);
    }
    case Kind::kChannel:
      return strip_of(layout.channels[part.index].path_m, layout.channels[part.index].width);
    case Kind::kInlet:
      return round(layout.inlets[part.index].point_m, kInlet_mm);
    case Kind::kStrap:
      break;
  }
  return path_of(layout.straps[part.index].boundary_m, true);
}

std::vector<FlatPartItem*> make_flat_items(const Layout& layout) {
  const Pens pens = pens_of();
  std::vector<FlatPartItem*> items;
  const auto add = [&](const LayoutPart& part, const Bounds2& box, const QPen& pen) {
    items.push_back(new FlatPartItem(part, flat_path(layout, part), box));
    items.back()->set_look(pen, pens.chosen);
    return items.back();
  };
  using Kind = LayoutPart::Kind;
  add({Kind::kOutline, 0, 0}, bounds(layout.outline_m), pens.rim);
  for (std::size_t k = 0; k < layout.straps.size(); ++k)
    add({Kind::kStrap, k, 0}, bounds(layout.straps[k].boundary_m), pens.edge);
  for (std::size_t k = 0; k < layout.channels.size(); ++k)
    add({Kind::kChannel, k, 0}, bounds(layout.channels[k].path_m), pens.thin);
  for (std::size_t k = 0; k < layout.chambers.size(); ++k) {
    FlatPartItem* item = add({Kind::kChamber, k, 0}, bounds(layout.chambers[k].boundary_m), pens.edge);
    item->set_label_at(on_scene(innermost_point_m(layout.chambers[k].boundary_m)));
    add_insets(layout, k, pens, item, items);
  }
  for (std::size_t k = 0; k < layout.inlets.size(); ++k) {
    FlatPartItem* item = add({Kind::kInlet, k, 0}, box_round(layout.inlets[k].point_m, 0.0), pens.rim);
    item->setBrush(Qt::white);
  }
  return items;
}

}  // namespace wrapgauge
