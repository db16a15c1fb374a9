#include "app/picture/template_ink.hpp"

#include <QFont>
#include <QFontMetricsF>
#include <QPainterPath>

namespace wrapgauge::template_ink {
namespace {

struct Look {
  double width_mm;
  QColor colour;
  QVector<qreal> dashes;  // in line widths; empty: full
};

// Kinds differ by dash and width, not by colour alone: templates are printed in black.
Look look_of(TemplateStroke stroke) {
  switch (stroke) {
    case TemplateStroke::kCut:
      return {0.5, kBlack, {}};
    case TemplateStroke::kStrap:
      return {0.5, kBlack, {6, 3}};
    case TemplateStroke::kSeam:
    case TemplateStroke::kInset:
      return {0.25, kBlack, {}};
    case TemplateStroke::kFold:
      return {0.35, kBlack, {8, 3, 1, 3}};
    case TemplateStroke::kCentre:
      return {0.25, kGrey, {12, 4}};
    case TemplateStroke::kKeepClear:
      break;
  }
  return {0.35, kGrey, {1, 2}};
}

// Fonts come in whole units, so the words are set large and scaled down.
constexpr int kSet = 100;
QFont font_of(bool bold) {
  QFont font;
  font.setPixelSize(kSet);
  font.setBold(bold);
  return font;
}

}  // namespace

QPen pen_of(TemplateStroke stroke) {
  const Look look = look_of(stroke);
  QPen pen(look.colour, look.width_mm);
  pen.setJoinStyle(Qt::MiterJoin);
  pen.setCapStyle(Qt::FlatCap);
  if (!look.dashes.isEmpty()) pen.setDashPattern(look.dashes);
  return pen;
}

QBrush brush_of(TemplateStroke stroke) {
  return stroke == TemplateStroke::kInset ? QBrush(kPale) : QBrush(Qt::NoBrush);
}

double words_width_mm(const QString& words, double height_mm, bool bold) {
  return QFontMetricsF(font_of(bold)).horizontalAdvance(words) * height_mm / kSet;
}

void put_words(QPainter& painter, const QPointF& at, const QString& words, const WordsLook& look) {
  const QFont font = font_of(look.bold);
  const double share = look.from == WordsFrom::kLeft ? 0.0 : look.from == WordsFrom::kMiddle ? 0.5 : 1.0;
  painter.save();
  painter.translate(at);
  painter.scale(look.height_mm / kSet, look.height_mm / kSet);
  painter.setFont(font);
  const QPointF from(-share * QFontMetricsF(font).horizontalAdvance(words), 0);
  if (look.over_lines) {
    QPainterPath letters;
    letters.addText(from, font, words);
    painter.strokePath(letters, QPen(Qt::white, 0.3 * kSet, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  }
  painter.drawText(from, words);
  painter.restore();
}

void draw_sample(QPainter& painter, TemplateStroke stroke, const QPointF& at, double length_mm) {
  painter.setPen(pen_of(stroke));
  painter.setBrush(brush_of(stroke));
  if (stroke == TemplateStroke::kInset)
    painter.drawRect(QRectF(at - QPointF(0, 0.8), QSizeF(length_mm, 1.6)));
  else
    painter.drawLine(at, at + QPointF(length_mm, 0));
}

void draw_arrow(QPainter& painter, const QPointF& tail, double length_mm) {
  const QPointF tip = tail + QPointF(0, length_mm);
  painter.setPen(QPen(kBlack, 0.6));
  painter.drawLine(tail, tip - QPointF(0, 3));
  painter.setBrush(kBlack);
  painter.setPen(Qt::NoPen);
  painter.drawPolygon(QPolygonF({tip, tip + QPointF(-1.8, -4), tip + QPointF(1.8, -4)}));
}

void draw_inlet(QPainter& painter, const QPointF& at) {
  constexpr double kRadius = 1.5;
  painter.setPen(QPen(kBlack, 0.25));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(at, kRadius, kRadius);
  painter.drawLine(at - QPointF(2, 0), at + QPointF(2, 0));
  painter.drawLine(at - QPointF(0, 2), at + QPointF(0, 2));
}

QRectF shown_of(const TemplatePages& pages) {
  const double margin = pages.margin / mm;
  return {margin, margin, (pages.width - 2.0 * pages.margin) / mm,
          (pages.height - 2.0 * pages.margin - pages.footer) / mm};
}

void draw_footer(QPainter& painter, const TemplatePages& pages, const QString& title) {
  const QRectF shown = shown_of(pages);
  const QPointF corner(shown.left(), shown.bottom() + 2.0);
  painter.fillRect(QRectF(corner, QSizeF(kCheckBar / mm, 2.0)), kBlack);
  painter.setPen(kBlack);
  put_words(painter, corner + QPointF(kCheckBar / mm + 2.0, 2.0), QString::fromStdString(check_bar_words()),
            {.height_mm = 2.6});
  put_words(painter, corner + QPointF(0, 5.6), title, {.height_mm = 2.6, .bold = true});
}

}  // namespace wrapgauge::template_ink
