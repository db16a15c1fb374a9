#include <algorithm>

#include "app/picture/template_ink.hpp"
#include "app/picture/template_page.hpp"

namespace wrapgauge {

using namespace template_ink;

namespace {

constexpr double kRow_mm = 5.0;

// Rows of words no wider than they may be, from `at` down; says where the next row goes.
double put_paragraph(QPainter& painter, QPointF at, const QString& words, double width_mm) {
  QString row;
  const auto put = [&] {
    put_words(painter, at, row, {});
    at.ry() += kRow_mm;
    row.clear();
  };
  for (const QString& word : words.split(' ')) {
    const QString longer = row.isEmpty() ? word : row + ' ' + word;
    if (!row.isEmpty() && words_width_mm(longer, 3.0) > width_mm) put();
    row += row.isEmpty() ? word : ' ' + word;
  }
  put();
  return at.y();
}

double draw_notes(QPainter& painter, const TemplateDrawing& drawing, QPointF at, double width_mm) {
  painter.setPen(kBlack);
  at.setY(put_paragraph(painter, at,
                        "Glue the pages by their labels, cut, wrap the paper on, and mark what to change.",
                        width_mm));
  for (const std::string& note : drawing.notes)
    at.setY(put_paragraph(painter, at, QString::fromStdString(note), width_mm));
  return at.y();
}

double draw_meanings(QPainter& painter, const TemplateDrawing& drawing, QPointF at) {
  const auto say = [&](const char* meaning) {
    painter.setPen(kBlack);
    put_words(painter, at + QPointF(14, 1), meaning, {});
    at.ry() += kRow_mm;
  };
  at.ry() -= 1.0;
  for (const TemplateStroke stroke : strokes_of(drawing)) {
    draw_sample(painter, stroke, at, 12.0);
    say(stroke_meaning(stroke));
  }
  if (!drawing.inlets_m.empty()) {
    draw_inlet(painter, at + QPointF(6, 0));
    say(kInletMeaning);
  }
  draw_arrow(painter, at + QPointF(6, -2), 4.5);
  say(kArrowMeaning);
  return at.y();
}

// The drawing made small, with the pages' frames and labels over it.
void draw_map(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages,
              const QRectF& room) {
  Vec2 low = drawing.box.low, high = drawing.box.high;
  for (const TemplatePage& page : pages.pages) {
    low = low.cwiseMin(page.window.low);
    high = high.cwiseMax(page.window.high);
  }
  const double scale = std::min(room.width() / (high - low).x(), room.height() / (high - low).y());
  const auto at = [&](const Vec2& p) {
    return QPointF(room.left() + scale * (p.x() - low.x()), room.top() + scale * (high.y() - p.y()));
  };
  for (const TemplateLine& line : drawing.lines) {
    QPolygonF path;
    for (const Vec2& p : line.path_m) path << at(p);
    QPen pen = pen_of(line.stroke);
    pen.setWidthF(line.stroke == TemplateStroke::kCut ? 0.3 : 0.12);
    painter.setPen(pen);
    painter.setBrush(brush_of(line.stroke));
    line.closed ? painter.drawPolygon(path) : painter.drawPolyline(path);
  }
  painter.setBrush(Qt::NoBrush);
  for (const TemplatePage& page : pages.pages) {
    const QRectF frame(at({page.window.low.x(), page.window.high.y()}),
                       at({page.window.high.x(), page.window.low.y()}));
    painter.setPen(QPen(kGrey, 0.2));
    painter.drawRect(frame);
    const double height = std::clamp(0.25 * frame.height(), 1.5, 6.0);
    painter.setPen(kBlack);
    put_words(painter, frame.topLeft() + QPointF(0.3 * height, 1.1 * height),
              QString::fromStdString(page.label), {.height_mm = height, .bold = true});
  }
}

}  // namespace

void draw_template_overview(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages) {
  const QRectF shown = shown_of(pages);
  painter.setPen(kBlack);
  put_words(painter, shown.topLeft() + QPointF(0, 6), QString::fromStdString(drawing.title()),
            {.height_mm = 4.4, .bold = true});
  const double half = 0.5 * shown.width();
  const double below_notes = draw_notes(painter, drawing, shown.topLeft() + QPointF(0, 15), half - 6.0);
  const double below_meanings = draw_meanings(painter, drawing, shown.topLeft() + QPointF(half, 15));
  const double top = std::max(below_notes, below_meanings) + 4.0;
  draw_map(
      painter, drawing, pages,
      QRectF(QPointF(shown.left(), top), QPointF(shown.right(), std::max(shown.bottom() - 2.0, top + 10.0))));
  draw_footer(painter, pages, QString::fromStdString(drawing.title() + ", overview"));
}

}  // namespace wrapgauge
