// How the drawing view is painted.

#include <algorithm>
#include <numeric>

#include "app/desk/views/drawing_view.hpp"
#include "app/desk/views/view_legend.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/geometry/innermost_point.hpp"
#include "model/layout/drawn_shape_forms.hpp"

namespace wrapgauge {
namespace {

constexpr double kRing = 8.0, kLine = 20.0, kSwatch = 24.0, kBetweenKeys = 16.0;  // pixels
const QColor kChosen(0, 120, 215), kWrong(200, 30, 30);

bool has(const std::vector<std::size_t>& all, std::size_t one) {
  return std::find(all.begin(), all.end(), one) != all.end();
}

// What lies below others is drawn first.
int depth_of(std::optional<DrawnPart> part) {
  constexpr DrawnPart kOrder[] = {DrawnPart::kIgnore,  DrawnPart::kOutline,   DrawnPart::kStrap,
                                  DrawnPart::kChamber, DrawnPart::kInsetSeam, DrawnPart::kChannel,
                                  DrawnPart::kInlet};
  if (!part) return 7;
  return static_cast<int>(std::find(std::begin(kOrder), std::end(kOrder), *part) - std::begin(kOrder));
}

// As wide as it is cast.
QPainterPath strip_along(const QPainterPath& line, double width) {
  QPainterPathStroker stroker;
  stroker.setWidth(width);
  stroker.setCapStyle(Qt::RoundCap);
  stroker.setJoinStyle(Qt::RoundJoin);
  return stroker.createStroke(line).simplified();
}

QString part_title(std::optional<DrawnPart> part) {
  return part ? text(part_words(*part)) : DrawingView::tr("not said yet");
}

}  // namespace

void DrawingView::draw(QPainter& painter) const {
  const ViewColours colours = view_colours(*this);
  painter.fillRect(rect(), colours.paper);
  if (!drawing_) return;
  painter.save();
  painter.setClipRect(QRectF(rect()).adjusted(0, 0, 0, -legend_height()));
  draw_shapes(painter);
  draw_chosen(painter);
  draw_doubts(painter);
  painter.restore();
  draw_legend(painter);
  if (!asked_) return;
  const LegendLook look{colours, font()};
  const QString words = tr("Click where the air goes in");
  draw_plate(painter, {0.5 * width(), 0.5 * plate_size(words, fontMetrics()).height() + 8.0}, words, look);
}

void DrawingView::draw_shapes(QPainter& painter) const {
  std::vector<std::size_t> order(drawing_->shapes.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto part_of = [&](std::size_t i) {
    return i < marks_.parts.size() ? marks_.parts[i].part : std::optional<DrawnPart>();
  };
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return depth_of(part_of(a)) < depth_of(part_of(b)); });
  for (const std::size_t i : order) draw_shape(painter, i);
  for (const Vec2& inlet_m : marks_.added_inlets_m) {
    QPainterPath dot;
    dot.addEllipse(on_view(inlet_m), 5.0, 5.0);
    draw_part(painter, dot, DrawnPart::kInlet, true);
  }
}

void DrawingView::draw_shape(QPainter& painter, std::size_t shape) const {
  const DrawnShape& drawn = drawing_->shapes[shape];
  if (drawn.paths.empty()) return;
  const auto part = shape < marks_.parts.size() ? marks_.parts[shape].part : std::optional<DrawnPart>();
  QPainterPath path = path_of(drawn);
  // A dot that is an inlet is seen at any zoom.
  if (part == DrawnPart::kInlet && path.boundingRect().width() < 9.0) {
    const QPointF middle = path.boundingRect().center();
    path = {};
    path.addEllipse(middle, 4.5, 4.5);
  }
  const bool filled = all_closed(drawn) || drawn.paths[0].points_m.size() == 1;
  const Length width = shape < marks_.parts.size() ? marks_.parts[shape].width.value_or(Length()) : Length();
  if (filled || !(width.si() > 0.0))
    draw_part(painter, path, part, filled);
  else
    draw_part(painter, strip_along(path, std::max(4.0, scale_ * width.si())), part, true);
  if (!has(marks_.wrong, shape)) return;
  painter.setPen(QPen(kWrong, 2.4, Qt::DashLine));
  painter.drawPath(path);
}

void DrawingView::draw_chosen(QPainter& painter) const {
  if (!marks_.chosen) return;
  QPainterPath path;
  if (*marks_.chosen < drawing_->shapes.size())
    path = path_of(drawing_->shapes[*marks_.chosen]);
  else if (*marks_.chosen - drawing_->shapes.size() < marks_.added_inlets_m.size())
    path.addEllipse(on_view(marks_.added_inlets_m[*marks_.chosen - drawing_->shapes.size()]), 6.0, 6.0);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(QColor(255, 255, 255, 200), 6.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPath(path);
  painter.setPen(QPen(kChosen, 3.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPath(path);
}

// A question mark on what is guessed or not said, rings round faults, and what lacks its air.
void DrawingView::draw_doubts(QPainter& painter) const {
  const LegendLook look{view_colours(*this), font()};
  for (std::size_t i = 0; i < marks_.parts.size(); ++i) {
    const DrawnShape& shape = drawing_->shapes[i];
    if (shape.paths.empty()) continue;
    const QPainterPath path = path_of(shape);
    const bool roomy = path.boundingRect().width() > 26.0 && path.boundingRect().height() > 26.0;
    const Vec2 inside_m = all_closed(shape) ? innermost_point_m(shape.paths[0].points_m) : middle_m(shape);
    const QPointF at = marks_.parts[i].part == DrawnPart::kOutline
                           ? path.boundingRect().topLeft() + QPointF(14.0, 14.0)
                       : roomy ? on_view(inside_m)
                               : on_view(inside_m) + QPointF(0.0, -16.0);
    if (has(marks_.no_inlet, i))
      draw_plate(painter, at, tr("no inlet"), look);
    else if (marks_.parts[i].guessed || !marks_.parts[i].part)
      draw_plate(painter, at, QStringLiteral("?"), look);
  }
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(kWrong, 2.4));
  for (const Vec2& fault_m : marks_.faults_m) painter.drawEllipse(on_view(fault_m), kRing, kRing);
}

std::vector<std::pair<std::optional<DrawnPart>, QString>> DrawingView::legend() const {
  std::vector<std::pair<std::optional<DrawnPart>, QString>> entries;
  const auto count = [&](std::optional<DrawnPart> part) {
    return std::count_if(marks_.parts.begin(), marks_.parts.end(),
                         [&](const DrawnAs& as) { return as.part == part; });
  };
  for (const DrawnPart part : {DrawnPart::kOutline, DrawnPart::kChamber, DrawnPart::kInsetSeam,
                               DrawnPart::kChannel, DrawnPart::kInlet, DrawnPart::kStrap, DrawnPart::kIgnore})
    if (count(part) > 0 || (part == DrawnPart::kInlet && !marks_.added_inlets_m.empty()))
      entries.emplace_back(part, part_title(part));
  if (count(std::nullopt) > 0) entries.emplace_back(std::nullopt, part_title(std::nullopt));
  return entries;
}

double DrawingView::legend_height() const {
  double x = 10.0, lines = 1.0;
  for (const auto& [part, words] : legend()) {
    const double wide = kSwatch + 4.0 + fontMetrics().horizontalAdvance(words) + kBetweenKeys;
    if (x + wide > width() && x > 10.0) x = 10.0, lines += 1.0;
    x += wide;
  }
  return lines * kLine + 8.0;
}

void DrawingView::draw_legend(QPainter& painter) const {
  painter.setFont(font());
  double x = 10.0, y = height() - legend_height() + 4.0;
  for (const auto& [part, words] : legend()) {
    const double wide = kSwatch + 4.0 + fontMetrics().horizontalAdvance(words) + kBetweenKeys;
    if (x + wide > width() && x > 10.0) x = 10.0, y += kLine;
    draw_part_swatch(painter, {x, y + 2.0, kSwatch, kLine - 4.0}, part);
    painter.setPen(view_colours(*this).ink);
    painter.drawText(QRectF(x + kSwatch + 4.0, y, wide, kLine), Qt::AlignVCenter | Qt::AlignLeft, words);
    x += wide;
  }
}

}  // namespace wrapgauge
