#include "app/picture/template_page.hpp"

#include <QFont>
#include <QFontMetricsF>
#include <QPainterPath>

namespace wrapgauge {
namespace {

const QColor kBlack(0, 0, 0), kGrey(110, 110, 110), kPale(170, 170, 170);

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
      return {0.25, kBlack, {}};
    case TemplateStroke::kInset:
      return {0.25, kBlack, {}};
    case TemplateStroke::kChannel:
      return {0.2, kBlack, {}};
    case TemplateStroke::kFold:
      return {0.35, kBlack, {8, 3, 1, 3}};
    case TemplateStroke::kCentre:
      return {0.25, kGrey, {12, 4}};
    case TemplateStroke::kKeepClear:
      break;
  }
  return {0.35, kGrey, {1, 2}};
}

QPen pen_of(const Look& look) {
  QPen pen(look.colour, look.width_mm);
  pen.setJoinStyle(Qt::MiterJoin);
  pen.setCapStyle(Qt::FlatCap);
  if (!look.dashes.isEmpty()) pen.setDashPattern(look.dashes);
  return pen;
}

// Fonts come in whole units, so the words are set large and scaled down.
void put_words(QPainter& painter, const QPointF& at, const QString& words, double height_mm,
               bool bold = false, bool centred = false) {
  constexpr int kSet = 100;
  QFont font;
  font.setPixelSize(kSet);
  font.setBold(bold);
  painter.save();
  painter.translate(at);
  painter.scale(height_mm / kSet, height_mm / kSet);
  painter.setFont(font);
  const double half = centred ? 0.5 * QFontMetricsF(font).horizontalAdvance(words) : 0.0;
  painter.drawText(QPointF(-half, 0), words);
  painter.restore();
}

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
  painter.setPen(pen_of(look_of(line.stroke)));
  // Inset seams are filled, so that welds inside a chamber are seen at a glance.
  painter.setBrush(line.stroke == TemplateStroke::kInset ? QBrush(kPale) : QBrush(Qt::NoBrush));
  if (line.closed)
    painter.drawPolygon(path);
  else
    painter.drawPolyline(path);
}

void draw_arrow(QPainter& painter, const QPointF& tail) {
  const QPointF tip = tail + QPointF(0, 15);
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

void draw_content(QPainter& painter, const TemplateDrawing& drawing, const OnPage& on_page) {
  for (const TemplateLine& line : drawing.lines) draw_line(painter, on_page, line);
  for (const Vec2& inlet : drawing.inlets_m) draw_inlet(painter, on_page.at(inlet));
  draw_arrow(painter, on_page.at(drawing.distal_arrow_m));
  painter.setPen(kBlack);
  for (const TemplateWords& words : drawing.words)
    put_words(painter, on_page.at(words.place_m), QString::fromStdString(words.words), 3.0, false,
              words.centred);
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
    put_words(painter, {words_x, shown.top() + 0.5 * shown.height()}, words, 2.6);
  };
  const auto level = [&](double y, const QString& words, double words_y) {
    painter.drawLine(QPointF(shown.left(), y), QPointF(shown.right(), y));
    for (const double share : {0.2, 0.8}) cross({shown.left() + share * shown.width(), y});
    put_words(painter, {shown.left() + 0.5 * shown.width(), words_y}, words, 2.6);
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

void draw_legend(QPainter& painter, QPointF at, double right) {
  const QPointF first = at;
  for (const TemplateStroke stroke :
       {TemplateStroke::kCut, TemplateStroke::kStrap, TemplateStroke::kSeam, TemplateStroke::kFold,
        TemplateStroke::kCentre, TemplateStroke::kKeepClear}) {
    painter.setPen(pen_of(look_of(stroke)));
    painter.drawLine(at, at + QPointF(10, 0));
    painter.setPen(kBlack);
    put_words(painter, at + QPointF(11.5, 0.8), stroke_meaning(stroke), 2.4);
    at += QPointF(56, 0);
    if (at.x() + 50 > right) at = QPointF(first.x(), at.y() + 3.4);
  }
}

void draw_footer(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages,
                 const TemplatePage& page, const QRectF& shown) {
  const QPointF corner(shown.left(), shown.bottom() + 2.0);
  painter.fillRect(QRectF(corner, QSizeF(kCheckBar / mm, 2.0)), kBlack);
  painter.setPen(kBlack);
  put_words(painter, corner + QPointF(kCheckBar / mm + 2.0, 2.0), QString::fromStdString(check_bar_words()),
            2.6);
  const QString count = QString::number(pages.pages.size());
  put_words(
      painter, corner + QPointF(0, 5.6),
      QString::fromStdString(drawing.name + ", template 1:1, outer sheet towards you, page " + page.label) +
          (pages.pages.size() > 1 ? " of " + count : QString()),
      2.6, true);
  draw_legend(painter, corner + QPointF(0, 8.4), shown.right());
}

}  // namespace

void draw_template_page(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages,
                        std::size_t index) {
  const TemplatePage& page = pages.pages[index];
  const double margin = pages.margin / mm;
  const QRectF shown(margin, margin, (pages.width - 2.0 * pages.margin) / mm,
                     (pages.height - 2.0 * pages.margin - pages.footer) / mm);
  painter.save();
  painter.setClipRect(shown);
  draw_content(painter, drawing, OnPage(pages, page));
  painter.restore();
  painter.setPen(QPen(kPale, 0.15));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(shown);
  draw_overlap(painter, pages, page, shown);
  draw_footer(painter, drawing, pages, page, shown);
}

}  // namespace wrapgauge
