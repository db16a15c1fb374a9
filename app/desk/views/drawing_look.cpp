#include "app/desk/views/drawing_look.hpp"

#include <QWidget>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

constexpr double kHatchGap = 7.0;  // pixels
const QColor kMaterial(226, 223, 232), kChamberGround(214, 206, 240), kChannelGround(190, 228, 230);

std::optional<QColor> ground_of(std::optional<DrawnPart> part) {
  if (part == DrawnPart::kOutline || part == DrawnPart::kStrap) return kMaterial;
  if (part == DrawnPart::kChamber) return kChamberGround;
  if (part == DrawnPart::kChannel) return kChannelGround;
  return std::nullopt;
}

}  // namespace

PartLook part_look(std::optional<DrawnPart> part) {
  if (!part) return {QColor(196, 40, 110), 2.0, Qt::DashDotLine};
  switch (*part) {
    case DrawnPart::kOutline:
      return {QColor(60, 58, 68), 2.4};
    case DrawnPart::kChamber:
      return {QColor(84, 62, 160), 1.8, Qt::SolidLine, 45.0};
    case DrawnPart::kInsetSeam:
      return {QColor(30, 28, 40), 1.6, Qt::SolidLine, 45.0, true};
    case DrawnPart::kChannel:
      return {QColor(0, 112, 122), 1.8, Qt::SolidLine, 0.0};
    case DrawnPart::kInlet:
      return {QColor(176, 76, 0), 2.0, Qt::SolidLine, {}, false, true};
    case DrawnPart::kStrap:
      return {QColor(122, 86, 40), 1.8, Qt::SolidLine, 90.0};
    case DrawnPart::kIgnore:
      break;
  }
  return {QColor(146, 144, 154), 1.4, Qt::DotLine};
}

void fill_hatched(QPainter& painter, const QPainterPath& path, const PartLook& look) {
  if (!look.hatch_deg) return;
  painter.save();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.setPen(QPen(look.line, 0.9));
  const QRectF box = path.boundingRect();
  const double reach = 0.5 * std::hypot(box.width(), box.height());
  for (const double turn : {0.0, 90.0}) {
    if (turn > 0.0 && !look.crossed) break;
    const double angle = (*look.hatch_deg + turn) * std::numbers::pi / 180.0;
    const QPointF along(std::cos(angle), -std::sin(angle)), across(std::sin(angle), std::cos(angle));
    // Fixed to the view, so that shapes beside one another are hatched as one.
    const double middle = QPointF::dotProduct(box.center(), across);
    const double first = std::ceil((middle - reach) / kHatchGap) * kHatchGap;
    for (double at = first; at < middle + reach; at += kHatchGap) {
      const QPointF foot = box.center() + (at - middle) * across;
      painter.drawLine(foot - reach * along, foot + reach * along);
    }
  }
  painter.restore();
}

void draw_part(QPainter& painter, const QPainterPath& path, std::optional<DrawnPart> part, bool closed) {
  const PartLook look = part_look(part);
  if (closed) {
    if (const auto ground = ground_of(part)) painter.fillPath(path, *ground);
    if (look.filled) painter.fillPath(path, look.line);
    fill_hatched(painter, path, look);
  }
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look.line, look.width, look.style, Qt::FlatCap, Qt::RoundJoin));
  painter.drawPath(path);
}

void draw_part_swatch(QPainter& painter, const QRectF& at, std::optional<DrawnPart> part) {
  QPainterPath path;
  if (part == DrawnPart::kInlet)
    path.addEllipse(at.center(), 0.28 * at.height(), 0.28 * at.height());
  else
    path.addRect(at.adjusted(1.5, 1.5, -1.5, -1.5));
  draw_part(painter, path, part, true);
}

QIcon part_icon(std::optional<DrawnPart> part, const QWidget& beside) {
  const double ratio = beside.devicePixelRatioF();
  QPixmap picture(QSize(qRound(22 * ratio), qRound(16 * ratio)));
  picture.setDevicePixelRatio(ratio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  draw_part_swatch(painter, QRectF(0, 0, 22, 16), part);
  return QIcon(picture);
}

}  // namespace wrapgauge
