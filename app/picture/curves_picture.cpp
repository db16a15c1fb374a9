#include <algorithm>
#include <cmath>

#include "app/picture/legend.hpp"
#include "app/picture/nice_axis.hpp"
#include "app/picture/variant_pictures.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr double kCurvesLeft = 36.0, kCurvesTop = 96.0, kPanelWidth = 348.0, kPanelHeight = 250.0;
constexpr double kPlotLeft = 44.0, kPlotRight = 50.0, kPlotTop = 44.0, kPlotBottom = 50.0;
constexpr double kKeyRow = 24.0, kCurvesFoot = 84.0;
constexpr double kKeyGap = 12.0;  // between two letters at the ends of lines, pixels
constexpr double kRoomForKeys = 1.1;

// What a column shows: one figure against another.
struct CurveColumn {
  const char *title, *x_words, *y_words;
  double (*x)(const CurvePoint&);
  double (*y)(const CurvePoint&);
  bool mmhg;  // pressures upwards: a second scale on the right
};

double gauge_of(const CurvePoint& p) {
  return p.gauge_kpa;
}

constexpr CurveColumn kColumns[] = {
    {"pressure inside", "volume, mL", "kPa", [](const CurvePoint& p) { return p.volume_ml; }, gauge_of, true},
    {"mean on the skin", "pressure inside, kPa", "kPa", gauge_of,
     [](const CurvePoint& p) { return p.mean_kpa; }, true},
    {"peak over 1 cm² on the skin", "pressure inside, kPa", "kPa", gauge_of,
     [](const CurvePoint& p) { return p.peak_kpa; }, true},
    {"height of the bulge", "pressure inside, kPa", "mm", gauge_of,
     [](const CurvePoint& p) { return p.bulge_mm; }, false},
    {"largest stretch", "pressure inside, kPa", "%", gauge_of,
     [](const CurvePoint& p) { return 100.0 * (p.stretch_max - 1.0); }, false}};
constexpr int kColumnCount = 5;

QString letter(std::size_t variant) {
  return QString(QChar('A' + static_cast<int>(variant)));
}

// Told apart by dash and width; the colour only helps.
QPen pen_of_variant(std::size_t variant) {
  static const QVector<qreal> dashes[] = {{}, {6, 3}, {2, 2}, {8, 2, 2, 2}, {12, 3}, {4, 2, 1, 2, 1, 2}};
  static const QColor colours[] = {QColor(28, 26, 34), QColor(104, 44, 132), QColor(30, 96, 140)};
  QPen pen(colours[variant % 3], variant < 6 ? 1.8 : 2.8);
  if (const auto& pattern = dashes[variant % 6]; !pattern.isEmpty()) pen.setDashPattern(pattern);
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

std::vector<std::string> chambers_of(const CurvesPage& page) {
  std::vector<std::string> names;
  for (const VariantCurves& variant : page.variants)
    for (const ChamberCurve& curve : variant.chambers)
      if (std::find(names.begin(), names.end(), curve.chamber) == names.end()) names.push_back(curve.chamber);
  return names;
}

int key_rows(const CurvesPage& page) {
  return (static_cast<int>(page.variants.size()) + 1) / 2;
}

struct ColumnAxes {
  NiceAxis x, y;
};

// One scale for all chambers, so that they can be compared.
ColumnAxes axes_of(const CurvesPage& page, const CurveColumn& column) {
  double x = 1e-6, y = 1e-6;
  for (const VariantCurves& variant : page.variants)
    for (const ChamberCurve& curve : variant.chambers)
      for (const CurvePoint& point : curve.points) {
        x = std::max(x, column.x(point));
        y = std::max(y, column.y(point));
      }
  return {nice_axis(kRoomForKeys * x, 4), nice_axis(1.03 * y, 4)};
}

struct CurvePanel {
  const CurveColumn& column;
  ColumnAxes axes;
  QRectF plot;

  QPointF at(const CurvePoint& point) const {
    const double x = std::max(0.0, column.x(point)) / axes.x.top(),
                 y = std::max(0.0, column.y(point)) / axes.y.top();
    return {plot.left() + x * plot.width(), plot.bottom() - y * plot.height()};
  }
};

QString axis_number(double value, int decimals) {
  return QString::fromStdString(fixed_text(value, decimals));
}

void draw_axes(const CurvePanel& panel, QPainter& painter) {
  const QRectF& plot = panel.plot;
  const QPen grid(QColor(222, 220, 228), 1.0);
  painter.setFont(picture_font(12));
  for (int i = 0; i <= panel.axes.y.steps; ++i) {
    const double y = plot.bottom() - plot.height() * i / panel.axes.y.steps;
    const double value = panel.axes.y.step * i;
    painter.setPen(grid);
    painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    painter.setPen(kInk);
    painter.drawText(QRectF(plot.left() - 44, y - 9, 38, 18), Qt::AlignRight | Qt::AlignVCenter,
                     axis_number(value, panel.axes.y.decimals));
    if (panel.column.mmhg)
      painter.drawText(QRectF(plot.right() + 5, y - 9, 40, 18), Qt::AlignLeft | Qt::AlignVCenter,
                       axis_number(value * (kPa / mmHg), value > 0.0 && panel.axes.y.top() < 0.8 ? 1 : 0));
  }
  for (int i = 0; i <= panel.axes.x.steps; ++i) {
    const double x = plot.left() + plot.width() * i / panel.axes.x.steps;
    painter.setPen(QPen(kInk, 1.0));
    painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4));
    painter.drawText(QRectF(x - 26, plot.bottom() + 5, 52, 16), Qt::AlignHCenter,
                     axis_number(panel.axes.x.step * i, panel.axes.x.decimals));
  }
  painter.setPen(QPen(kInk, 1.2));
  painter.drawLine(plot.bottomLeft(), plot.bottomRight());
  painter.drawLine(plot.topLeft(), plot.bottomLeft());
  painter.drawText(QRectF(plot.left(), plot.bottom() + 21, plot.width(), 18), Qt::AlignHCenter,
                   panel.column.x_words);
  painter.setFont(picture_font(12, true));
  painter.drawText(QRectF(plot.left() - 44, plot.top() - 22, 38, 16), Qt::AlignRight, panel.column.y_words);
  if (panel.column.mmhg)
    painter.drawText(QRectF(plot.right() + 5, plot.top() - 22, 44, 16), Qt::AlignLeft, "mmHg");
}

struct LineEnd {
  QPointF at;
  std::size_t variant = 0;
  double words_y = 0.0;
};

// Letters that would cover each other stand in one block, in the middle of what they name.
void place_letters(std::vector<LineEnd>& ends, const QRectF& plot) {
  struct Block {
    std::size_t first = 0, count = 0;
    double middle = 0.0;  // of the ends
    double top() const { return middle - 0.5 * kKeyGap * static_cast<double>(count - 1); }
    double bottom() const { return middle + 0.5 * kKeyGap * static_cast<double>(count - 1); }
  };
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < ends.size(); ++i) {
    Block block{i, 1, ends[i].at.y()};
    while (!blocks.empty() && block.top() - blocks.back().bottom() < kKeyGap) {
      const Block& above = blocks.back();
      const auto of = static_cast<double>(above.count), own = static_cast<double>(block.count);
      block = {above.first, above.count + block.count, (of * above.middle + own * block.middle) / (of + own)};
      blocks.pop_back();
    }
    blocks.push_back(block);
  }
  for (const Block& block : blocks) {
    const double height = block.bottom() - block.top();
    const double top = std::max(plot.top() - 8.0, std::min(block.top(), plot.bottom() - 4.0 - height));
    for (std::size_t k = 0; k < block.count; ++k)
      ends[block.first + k].words_y = top + kKeyGap * static_cast<double>(k);
  }
}

void draw_letters(std::vector<LineEnd> ends, const QRectF& plot, QPainter& painter) {
  std::stable_sort(ends.begin(), ends.end(),
                   [](const LineEnd& a, const LineEnd& b) { return a.at.y() < b.at.y(); });
  place_letters(ends, plot);
  double right = 0.0;  // of all lines, so that no letter stands on one
  for (const LineEnd& end : ends) right = std::max(right, end.at.x() + 14.0);
  painter.setFont(picture_font(12, true));
  for (const LineEnd& end : ends) {
    const QPointF words(right, end.words_y);
    painter.setPen(QPen(QColor(170, 168, 176), 1.0));
    if (std::abs(end.words_y - end.at.y()) > 3.0) painter.drawLine(end.at, words);
    painter.setPen(kInk);
    painter.drawText(QRectF(words.x(), words.y() - 8, 16, 16), Qt::AlignLeft | Qt::AlignVCenter,
                     letter(end.variant));
  }
}

void draw_panel(const CurvesPage& page, const std::string& chamber, const CurvePanel& panel,
                QPainter& painter) {
  draw_axes(panel, painter);
  std::vector<LineEnd> ends;
  for (std::size_t v = 0; v < page.variants.size(); ++v)
    for (const ChamberCurve& curve : page.variants[v].chambers) {
      if (curve.chamber != chamber || curve.points.empty()) continue;
      QPolygonF line;
      for (const CurvePoint& point : curve.points) line << panel.at(point);
      painter.setPen(pen_of_variant(v));
      painter.setBrush(Qt::NoBrush);
      painter.drawPolyline(line);
      ends.push_back({line.back(), v, 0.0});
    }
  draw_letters(std::move(ends), panel.plot, painter);
}

void draw_key(const CurvesPage& page, double top, double width, QPainter& painter) {
  const int rows = key_rows(page);
  const double half = 0.5 * (width - 2.0 * kCurvesLeft);
  for (std::size_t v = 0; v < page.variants.size(); ++v) {
    const int column = static_cast<int>(v) / std::max(1, rows), row = static_cast<int>(v) % std::max(1, rows);
    const double x = kCurvesLeft + column * half, y = top + (row + 0.5) * kKeyRow;
    painter.setPen(kInk);
    painter.setFont(picture_font(14, true));
    painter.drawText(QRectF(x, y - 10, 18, 20), Qt::AlignLeft | Qt::AlignVCenter, letter(v));
    painter.setPen(pen_of_variant(v));
    painter.drawLine(QPointF(x + 22, y), QPointF(x + 82, y));
    painter.setPen(kInk);
    painter.setFont(picture_font(14));
    const QFontMetricsF metrics(painter.font());
    painter.drawText(QRectF(x + 92, y - 10, half - 104, 20), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(page.variants[v].name, Qt::ElideRight, half - 104));
  }
}

}  // namespace

QSize size_of(const CurvesPage& page) {
  const double rows = static_cast<double>(std::max<std::size_t>(1, chambers_of(page).size()));
  return {
      static_cast<int>(2.0 * kCurvesLeft + kColumnCount * kPanelWidth),
      static_cast<int>(kCurvesTop + key_rows(page) * kKeyRow + rows * (kPanelHeight + 24.0) + kCurvesFoot)};
}

void draw_curves(const CurvesPage& page, QPainter& painter) {
  const QSize size = size_of(page);
  draw_title(painter, page.title, page.subtitle);
  draw_key(page, kCurvesTop - 8.0, size.width(), painter);
  double top = kCurvesTop + key_rows(page) * kKeyRow;
  for (const std::string& chamber : chambers_of(page)) {
    for (int c = 0; c < kColumnCount; ++c) {
      const double left = kCurvesLeft + c * kPanelWidth;
      const CurvePanel panel{
          kColumns[c], axes_of(page, kColumns[c]),
          QRectF(left + kPlotLeft, top + kPlotTop + 16.0, kPanelWidth - kPlotLeft - kPlotRight,
                 kPanelHeight - kPlotTop - kPlotBottom)};
      painter.setPen(kInk);
      painter.setFont(picture_font(14, true));
      const QFontMetricsF metrics(painter.font());
      painter.drawText(QRectF(left, top + 10, kPanelWidth - 16, 22), Qt::AlignLeft | Qt::AlignVCenter,
                       metrics.elidedText(QString::fromStdString(chamber) + ": " + kColumns[c].title,
                                          Qt::ElideRight, kPanelWidth - 16));
      draw_panel(page, chamber, panel, painter);
    }
    top += kPanelHeight + 24.0;
  }
  painter.save();
  painter.translate(0.0, size.height() - kPictureHeight);
  draw_caption(painter, page.caption);
  painter.restore();
}

}  // namespace wrapgauge
