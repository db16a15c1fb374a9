#include "app/picture/template_page.hpp"

#include "app/picture/template_ink.hpp"

namespace wrapgauge {

using namespace template_ink;

namespace {

// From the layout's frame to the page.
class OnPage {
 public:
  OnPage(const TemplatePages& pages, const TemplatePage& page)
      : low_x_(page.window.low.x()), high_y_(page.window.high.y()), margin_mm_(pages.margin / mm) {}
  QPointF at(const Vec2& p) const {
    return {margin_mm_ + 1e3 * (p.x() - low_x_), margin_mm_ + 1e3 * (high_y_ - p.y())};
  }

 private:
  double low_x_, high_y_, margin_mm_;
};

void draw_line(QPainter& painter, const OnPage& on_page, const TemplateLine& line) {
  QPolygonF path;
  for (const Vec2& p : line.path_m) path << on_page.at(p);
  painter.setPen(pen_of(line.stroke));
  painter.setBrush(brush_of(line.stroke));
  if (line.closed)
    painter.drawPolygon(path);
  else
    painter.drawPolyline(path);
}

void draw_content(QPainter& painter, const TemplateDrawing& drawing, const OnPage& on_page) {
  for (const TemplateLine& line : drawing.lines) draw_line(painter, on_page, line);
  for (const Vec2& inlet : drawing.inlets_m) draw_inlet(painter, on_page.at(inlet));
  draw_arrow(painter, on_page.at(drawing.distal_arrow_m));
  painter.setPen(kBlack);
  for (const TemplateWords& words : drawing.words)
    put_words(painter, on_page.at(words.place_m), QString::fromStdString(words.words),
              {.from = words.from, .over_lines = true});
}

QString label_of(const TemplatePages& pages, int column, int row) {
  return QString::fromStdString(pages.pages[static_cast<std::size_t>(row * pages.columns + column)].label);
}

// The lines on which the neighbouring page's edge comes to lie, and crosses to line the sheets up by.
void draw_overlap(QPainter& painter, const TemplatePages& pages, const TemplatePage& page,
                  const QRectF& shown) {
  const double overlap = pages.overlap / mm;
  painter.setPen(QPen(kGrey, 0.2, Qt::DashLine));
  const auto cross = [&](const QPointF& at) {
    painter.drawLine(at - QPointF(3, 0), at + QPointF(3, 0));
    painter.drawLine(at - QPointF(0, 3), at + QPointF(0, 3));
  };
  const auto upright = [&](double x, const QString& words, double words_x) {
    painter.drawLine(QPointF(x, shown.top()), QPointF(x, shown.bottom()));
    for (const double share : {0.2, 0.8}) cross({x, shown.top() + share * shown.height()});
    put_words(painter, {words_x, shown.top() + 0.5 * shown.height()}, words, {.height_mm = 2.6});
  };
  const auto level = [&](double y, const QString& words, double words_y) {
    painter.drawLine(QPointF(shown.left(), y), QPointF(shown.right(), y));
    for (const double share : {0.2, 0.8}) cross({shown.left() + share * shown.width(), y});
    put_words(painter, {shown.left() + 0.5 * shown.width(), words_y}, words, {.height_mm = 2.6});
  };
  if (page.column + 1 < pages.columns)
    upright(shown.right() - overlap, "to " + label_of(pages, page.column + 1, page.row),
            shown.right() - overlap + 1.0);
  if (page.column > 0)
    upright(shown.left() + overlap, "to " + label_of(pages, page.column - 1, page.row), shown.left() + 1.0);
  if (page.row + 1 < pages.rows)
    level(shown.bottom() - overlap, "to " + label_of(pages, page.column, page.row + 1), shown.bottom() - 2.0);
  if (page.row > 0)
    level(shown.top() + overlap, "to " + label_of(pages, page.column, page.row - 1), shown.top() + 4.0);
}

// Small, and no more than two rows: the overview says it at leisure.
void draw_legend(QPainter& painter, const TemplateDrawing& drawing, const QRectF& shown) {
  constexpr double kCell_mm = 47.0;
  const QPointF first(shown.left(), shown.bottom() + 10.4);
  QPointF at = first;
  for (const TemplateStroke stroke : strokes_of(drawing)) {
    if (at.x() + kCell_mm > shown.right() + 0.5) at = QPointF(first.x(), at.y() + 3.2);
    draw_sample(painter, stroke, at, 8.0);
    painter.setPen(kBlack);
    put_words(painter, at + QPointF(9.0, 0.7), stroke_meaning(stroke), {.height_mm = 2.0});
    at += QPointF(kCell_mm, 0);
  }
}

QString page_title(const TemplateDrawing& drawing, const TemplatePages& pages, const TemplatePage& page) {
  const std::string of = pages.pages.size() > 1 ? " of " + std::to_string(pages.pages.size()) : "";
  return QString::fromStdString(drawing.title() + ", page " + page.label + of);
}

}  // namespace

void draw_template_page(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages,
                        std::size_t index) {
  const TemplatePage& page = pages.pages[index];
  const QRectF shown = shown_of(pages);
  painter.save();
  painter.setClipRect(shown);
  draw_content(painter, drawing, OnPage(pages, page));
  painter.restore();
  painter.setPen(QPen(kPale, 0.15));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(shown);
  draw_overlap(painter, pages, page, shown);
  draw_footer(painter, pages, page_title(drawing, pages, page));
  draw_legend(painter, drawing, shown);
}

}  // namespace wrapgauge
