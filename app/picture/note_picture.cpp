#include "app/picture/note_picture.hpp"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/picture/body_picture.hpp"
#include "app/picture/colour_map.hpp"
#include "app/picture/flat_picture.hpp"
#include "app/picture/legend.hpp"
#include "app/picture/nice_axis.hpp"
#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"

namespace wrapgauge {
namespace {

constexpr int kWidth = 1800, kHeight = 600, kText = 25;
const QRectF kWorn(10, 50, 440, 540), kFlat(470, 50, 640, 430), kCurve(1230, 70, 540, 400);

struct CurvePoint {
  double inside_pa, peak_pa;  // highest pressure of air inside; highest mean over 1 cm2
};

std::vector<CurvePoint> peak_curve(const Estimate& estimate) {
  std::vector<CurvePoint> points;
  for (const EquilibriumState& state : estimate.path.states) {
    const TriangleMesh side = skin_side(estimate.setup, estimate.path.sheet, state.positions_m);
    const Eigen::VectorXd mean = disc_average_pa(side, state.contact_pressure_pa);
    points.push_back(
        {state.group_pressure_pa.size() > 0 ? std::max(0.0, state.group_pressure_pa.maxCoeff()) : 0.0,
         mean.size() > 0 ? mean.maxCoeff() : 0.0});
  }
  return points;
}

QString in_kpa(double pressure_pa, double step) {
  return QString::fromStdString(fixed_text(pressure_pa / 1e3, step < 1e3 ? 1 : 0));
}

struct Axes {
  double top_x_pa, top_y_pa;
  QPointF at(double x_pa, double y_pa) const {
    return {kCurve.left() + x_pa / top_x_pa * kCurve.width(),
            kCurve.bottom() - y_pa / top_y_pa * kCurve.height()};
  }
};

void draw_axes(const Axes& axes, QPainter& painter) {
  painter.setPen(QPen(kInk, 2.0));
  painter.drawLine(kCurve.bottomLeft(), kCurve.bottomRight());
  painter.drawLine(kCurve.bottomLeft(), kCurve.topLeft());
  painter.setFont(picture_font(kText));
  const double step_x = round_step(axes.top_x_pa, 5.0, 100.0), step_y = round_step(axes.top_y_pa, 5.0, 100.0);
  for (double x = 0.0; x <= axes.top_x_pa * 1.0001; x += step_x) {
    const QPointF tick = axes.at(x, 0.0);
    painter.drawLine(tick, tick + QPointF(0, 8));
    painter.drawText(QRectF(tick.x() - 50, tick.y() + 10, 100, 34), Qt::AlignHCenter, in_kpa(x, step_x));
  }
  for (double y = 0.0; y <= axes.top_y_pa * 1.0001; y += step_y) {
    const QPointF tick = axes.at(0.0, y);
    painter.drawLine(tick, tick - QPointF(8, 0));
    painter.drawText(QRectF(tick.x() - 86, tick.y() - 17, 72, 34), Qt::AlignRight | Qt::AlignVCenter,
                     in_kpa(y, step_y));
  }
  painter.drawText(QRectF(kCurve.left() - 60, kCurve.bottom() + 48, kCurve.width() + 60, 36),
                   Qt::AlignHCenter, "air inside, highest inlet, kPa");
}

void draw_limit(const Axes& axes, double threshold_pa, double factor, QPainter& painter) {
  if (threshold_pa <= 0.0 || threshold_pa > axes.top_y_pa) return;
  const QPointF left = axes.at(0.0, threshold_pa), right = axes.at(axes.top_x_pa, threshold_pa);
  painter.fillRect(QRectF(axes.at(0.0, axes.top_y_pa), right),
                   QBrush(QColor(120, 112, 132), Qt::BDiagPattern));
  painter.setPen(QPen(kInk, 3.5));
  painter.drawLine(left, right);
  painter.setFont(picture_font(kText, true));
  const QString words = QString::fromStdString("limit " + pressure_text(Pressure(threshold_pa * factor)) +
                                               " ÷ " + fixed_text(factor, 1));
  const double width = QFontMetricsF(painter.font()).horizontalAdvance(words) + 12;
  // Above the line at the left: a curve that starts below the limit does not pass there.
  const QRectF plate(left.x() + 6, left.y() - 42, width, 34);
  painter.fillRect(plate, QColor(255, 255, 255, 230));
  painter.drawText(plate, Qt::AlignCenter, words);
}

void draw_curve(const Estimate& estimate, const MapScene& scene, QPainter& painter) {
  const std::vector<CurvePoint> points = peak_curve(estimate);
  const double threshold = threshold_at_peak(estimate, scene.layout_threshold_pa).value_or(Pressure()).si();
  Axes axes{100.0, 1.15 * threshold};
  for (const CurvePoint& point : points) {
    axes.top_x_pa = std::max(axes.top_x_pa, 1.05 * point.inside_pa);
    axes.top_y_pa = std::max({axes.top_y_pa, 100.0, 1.1 * point.peak_pa});
  }
  draw_limit(axes, threshold, scene.model_factor, painter);
  draw_axes(axes, painter);
  painter.setPen(QPen(map_colour(0.85), 5.0));
  for (std::size_t i = 1; i < points.size(); ++i)
    painter.drawLine(axes.at(points[i - 1].inside_pa, points[i - 1].peak_pa),
                     axes.at(points[i].inside_pa, points[i].peak_pa));
  painter.setBrush(map_colour(0.85));
  for (const CurvePoint& point : points)
    painter.drawEllipse(axes.at(point.inside_pa, point.peak_pa), 5.0, 5.0);
  painter.setBrush(Qt::NoBrush);
}

void draw_colours(const MapScene& scene, QPainter& painter) {
  const QRectF bar(kFlat.left() + 60, kFlat.bottom() + 14, kFlat.width() - 120, 26);
  for (int i = 0; i < static_cast<int>(bar.width()); ++i)
    painter.fillRect(QRectF(bar.left() + i, bar.top(), 1.5, bar.height()),
                     map_colour((i + 0.5) / bar.width()));
  painter.setPen(QPen(kInk, 1.5));
  painter.drawRect(bar);
  painter.setFont(picture_font(kText));
  painter.drawText(QRectF(bar.left(), bar.bottom() + 6, bar.width(), 34), Qt::AlignLeft, "0");
  painter.drawText(QRectF(bar.left(), bar.bottom() + 6, bar.width(), 34), Qt::AlignRight,
                   QString::fromStdString(pressure_text(Pressure(scene.top_pa))));
}

void draw_heading(const QRectF& area, const QString& text, QPainter& painter) {
  painter.setPen(kInk);
  painter.setFont(picture_font(kText + 2, true));
  painter.drawText(QRectF(area.left() - 110, 6, area.width() + 140, 38), Qt::AlignHCenter | Qt::AlignVCenter,
                   text);
}

}  // namespace

QImage note_picture(const Estimate& estimate) {
  QImage image(kWidth, kHeight, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  const MapScene scene = map_scene(estimate);
  draw_worn(estimate, kWorn, kText, painter);
  draw_flat(estimate, kFlat, kText, painter);
  draw_colours(scene, painter);
  draw_curve(estimate, scene, painter);
  draw_heading(kWorn, "worn, trunk end up", painter);
  draw_heading(kFlat, "flat, pressure on the skin", painter);
  draw_heading(kCurve, "peak over 1 cm², kPa", painter);
  painter.end();
  return image;
}

QString with_picture_size(const std::string& pages, const QImage& picture, int width) {
  QString html = QString::fromStdString(pages);
  return html.replace(QStringLiteral("width=\"%1\"").arg(kNotePictureWidth),
                      QStringLiteral("width=\"%1\" height=\"%2\"")
                          .arg(width)
                          .arg(width * picture.height() / picture.width()));
}

}  // namespace wrapgauge
