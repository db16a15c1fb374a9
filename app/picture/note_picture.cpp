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
#include "model/core/pressure_figures.hpp"
#include "model/core/pressure_text.hpp"

namespace wrapgauge {
namespace {

// Ten pixels a millimetre of the page: 35 of them are 10 points.
constexpr int kWidth = 1800, kText = 35, kPlaceHeight = 800, kPressureHeight = 640;
const QRectF kAnchorSide(0, 60, 640, 730), kOtherSide(660, 60, 640, 730), kWholeLimb(1350, 110, 420, 630);
const QRectF kFlat(10, 60, 1000, 450), kCurve(1190, 80, 580, 420);

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
  const double step_x = round_step(axes.top_x_pa, 4.0, 100.0), step_y = round_step(axes.top_y_pa, 5.0, 100.0);
  for (double x = 0.0; x <= axes.top_x_pa * 1.0001; x += step_x) {
    const QPointF tick = axes.at(x, 0.0);
    painter.drawLine(tick, tick + QPointF(0, 9));
    painter.drawText(QRectF(tick.x() - 60, tick.y() + 10, 120, 44), Qt::AlignHCenter, in_kpa(x, step_x));
  }
  for (double y = 0.0; y <= axes.top_y_pa * 1.0001; y += step_y) {
    const QPointF tick = axes.at(0.0, y);
    painter.drawLine(tick, tick - QPointF(8, 0));
    painter.drawText(QRectF(tick.x() - 112, tick.y() - 22, 98, 44), Qt::AlignRight | Qt::AlignVCenter,
                     in_kpa(y, step_y));
  }
  painter.drawText(QRectF(kCurve.left() - 90, kCurve.bottom() + 60, kCurve.width() + 110, 46),
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
  const QString words = QString::fromStdString("limit " + kpa_figure(Pressure(threshold_pa * factor)) +
                                               " kPa ÷ " + fixed_text(factor, 1));
  const double width = QFontMetricsF(painter.font()).horizontalAdvance(words) + 12;
  // Above the line at the left: a curve that starts below the limit does not pass there.
  const QRectF plate(left.x() + 6, left.y() - 52, width, 44);
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
  painter.drawText(QRectF(bar.left(), bar.bottom() + 8, bar.width(), 46), Qt::AlignLeft, "0");
  painter.drawText(QRectF(bar.left(), bar.bottom() + 8, bar.width(), 46), Qt::AlignRight,
                   QString::fromStdString(pressure_text(Pressure(scene.top_pa))));
}

void draw_heading(const QRectF& area, const QString& text, QPainter& painter) {
  painter.setPen(kInk);
  painter.setFont(picture_font(kText, true));
  painter.drawText(QRectF(area.left() - 40, 4, area.width() + 80, 50), Qt::AlignHCenter | Qt::AlignVCenter,
                   text);
}

QImage blank(int height) {
  QImage image(kWidth, height, QImage::Format_RGB32);
  image.fill(Qt::white);
  return image;
}

bool is_limb(const Body& body) {
  if (!body.part) return true;
  return *body.part != BodyPart::kChest && *body.part != BodyPart::kAbdomen &&
         *body.part != BodyPart::kBack && *body.part != BodyPart::kHip && *body.part != BodyPart::kHead;
}

QImage place_picture(const Estimate& estimate) {
  QImage image = blank(kPlaceHeight);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  draw_worn(estimate, 1.0, kAnchorSide, kText, painter);
  draw_worn(estimate, -1.0, kOtherSide, kText, painter);
  draw_whole(estimate, kWholeLimb, painter);
  draw_heading(kAnchorSide, "side of the anchor", painter);
  draw_heading(kOtherSide, "opposite side", painter);
  draw_heading(kWholeLimb, is_limb(estimate.body) ? "whole limb" : "whole body", painter);
  painter.setFont(picture_font(kText));
  const QRectF above(kWholeLimb.left(), kWholeLimb.top() - 50, kWholeLimb.width(), 46),
      below(kWholeLimb.left(), kWholeLimb.bottom() + 4, kWholeLimb.width(), 46);
  painter.drawText(above, Qt::AlignCenter, "trunk end");
  painter.drawText(below, Qt::AlignCenter, "far end");
  return image;
}

QImage pressure_picture(const Estimate& estimate) {
  QImage image = blank(kPressureHeight);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  const MapScene scene = map_scene(estimate);
  draw_flat(estimate, kFlat, kText, painter);
  draw_colours(scene, painter);
  draw_curve(estimate, scene, painter);
  draw_heading(kFlat, "laid flat, pressure on the skin", painter);
  draw_heading(kCurve, "peak over 1 cm², kPa", painter);
  return image;
}

}  // namespace

NotePictures note_pictures(const Estimate& estimate) {
  return {place_picture(estimate), pressure_picture(estimate)};
}

QString with_picture_sizes(const std::string& html, const NotePictures& pictures, int width) {
  QString sized = QString::fromStdString(html);
  const auto size = [&](const char* file, const QImage& picture) {
    const QString as_written = QStringLiteral("src=\"%1\" width=\"%2\"").arg(file).arg(kNotePictureWidth);
    sized.replace(as_written, QStringLiteral("src=\"%1\" width=\"%2\" height=\"%3\"")
                                  .arg(file)
                                  .arg(width)
                                  .arg(width * picture.height() / std::max(1, picture.width())));
  };
  size(kPictureOfPlace, pictures.place);
  size(kPictureOfPressure, pictures.pressure);
  return sized;
}

}  // namespace wrapgauge
