#include "app/picture/bench_picture.hpp"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

constexpr int kWidth = 1400, kHeight = 900;
const QRectF kPlot(120.0, 110.0, 1000.0, 680.0);

QImage page(const QString& title, const QString& subtitle, QPainter& painter) {
  QImage image(kWidth, kHeight, QImage::Format_RGB32);
  image.fill(Qt::white);
  painter.begin(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  draw_title(painter, title, subtitle);
  return image;
}

// Kinds are told apart by shape, not by colour alone.
void draw_mark(ReadingKind kind, const QPointF& at, QPainter& painter) {
  const QColor colours[] = {QColor(104, 44, 132), QColor(30, 96, 140), QColor(28, 26, 34)};
  const int k = static_cast<int>(kind);
  painter.setPen(QPen(colours[k % 3], 2.5));
  painter.setBrush(k % 2 ? QBrush(Qt::white) : QBrush(colours[k % 3]));
  constexpr double r = 8.0;
  if (k % 4 == 0)
    painter.drawEllipse(at, r, r);
  else if (k % 4 == 1)
    painter.drawRect(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
  else if (k % 4 == 2)
    painter.drawPolygon(QPolygonF({at + QPointF(0, -r), at + QPointF(r, r), at + QPointF(-r, r)}));
  else
    painter.drawPolygon(
        QPolygonF({at + QPointF(0, -r), at + QPointF(r, 0), at + QPointF(0, r), at + QPointF(-r, 0)}));
}

std::vector<ReadingKind> kinds_of(const BenchResult& result) {
  std::vector<ReadingKind> kinds;
  for (const FittedReading& one : result.fit.readings)
    if (const ReadingKind kind = result.readings.rows[one.row].kind;
        std::find(kinds.begin(), kinds.end(), kind) == kinds.end())
      kinds.push_back(kind);
  return kinds;
}

void draw_kinds(const std::vector<ReadingKind>& kinds, QPainter& painter) {
  painter.setFont(picture_font(18));
  double y = kPlot.top() + 20.0;
  for (const ReadingKind kind : kinds) {
    draw_mark(kind, {kPlot.right() + 50.0, y}, painter);
    painter.setPen(kInk);
    painter.drawText(QPointF(kPlot.right() + 75.0, y + 6.0),
                     QString::fromStdString(std::string(kind_name(kind))));
    y += 34.0;
  }
}

// Geometric mean of what was read of each kind.
double middle_of(const BenchResult& result, ReadingKind kind) {
  double sum = 0.0;
  int count = 0;
  for (const FittedReading& one : result.fit.readings)
    if (result.readings.rows[one.row].kind == kind) sum += std::log(one.read), ++count;
  return std::exp(sum / std::max(count, 1));
}

struct AgreementPoint {
  ReadingKind kind;
  double read = 0.0, fitted = 0.0;  // ln, over the middle of its kind
  QString outlier;
};

std::vector<AgreementPoint> agreement_points(const BenchResult& result) {
  std::vector<AgreementPoint> points;
  for (const FittedReading& one : result.fit.readings) {
    const Reading& row = result.readings.rows[one.row];
    const double middle = middle_of(result, row.kind);
    points.push_back({row.kind, std::log(one.read / middle), std::log(one.fitted / middle),
                      one.outlier ? QString::fromStdString(row.id) : QString()});
  }
  return points;
}

double largest_error(const BenchResult& result) {
  double error = 0.0;
  for (const FittedReading& one : result.fit.readings)
    error = std::max(error, result.readings.rows[one.row].error);
  return error;
}

struct AgreementScale {
  double reach = 0.5;  // ln, both ways
  QPointF at(double read, double fitted) const {
    return {kPlot.center().x() + 0.5 * kPlot.width() * read / reach,
            kPlot.center().y() - 0.5 * kPlot.height() * fitted / reach};
  }
};

void draw_agreement_axes(const AgreementScale& scale, double band, QPainter& painter) {
  const double reach = scale.reach;
  painter.setClipRect(kPlot);
  painter.setPen(Qt::NoPen);
  painter.setBrush(QColor(228, 226, 234));
  painter.drawPolygon(QPolygonF({scale.at(-reach, -reach - band), scale.at(reach, reach - band),
                                 scale.at(reach, reach + band), scale.at(-reach, -reach + band)}));
  painter.setPen(QPen(kInk, 2.0));
  painter.drawLine(scale.at(-reach, -reach), scale.at(reach, reach));
  painter.setClipping(false);
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(kPlot);
  painter.setFont(picture_font(18));
  for (const double times : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0}) {
    const double place = std::log(times);
    if (std::abs(place) > reach) continue;
    const QString words = QString::number(times);
    painter.drawText(QRectF(scale.at(place, -reach) + QPointF(-40, 6), QSizeF(80, 24)), Qt::AlignHCenter,
                     words);
    painter.drawText(QRectF(scale.at(-reach, place) + QPointF(-66, -12), QSizeF(58, 24)), Qt::AlignRight,
                     words);
  }
  painter.drawText(QRectF(kPlot.left(), kPlot.bottom() + 32, kPlot.width(), 26), Qt::AlignHCenter,
                   "read, over the middle of its kind");
  painter.save();
  painter.translate(kPlot.left() - 80.0, kPlot.center().y());
  painter.rotate(-90.0);
  painter.drawText(QRectF(-300, -20, 600, 26), Qt::AlignHCenter, "fitted, over the same");
  painter.restore();
}

QImage agreement_picture(const BenchResult& result) {
  QPainter painter;
  QImage image = page("Fitted against read", QString::fromStdString(result.readings.remark), painter);
  const std::vector<AgreementPoint> points = agreement_points(result);
  AgreementScale scale;
  for (const AgreementPoint& point : points)
    scale.reach = std::max({scale.reach, 1.1 * std::abs(point.read), 1.1 * std::abs(point.fitted)});
  draw_agreement_axes(scale, 2.0 * largest_error(result), painter);
  for (const AgreementPoint& point : points) {
    const QPointF at = scale.at(point.read, point.fitted);
    draw_mark(point.kind, at, painter);
    painter.setPen(kInk);
    if (!point.outlier.isEmpty()) painter.drawText(at + QPointF(14, 6), point.outlier);
  }
  draw_kinds(kinds_of(result), painter);
  painter.end();
  return image;
}

QImage residual_picture(const BenchResult& result) {
  QPainter painter;
  QImage image = page("What is left, in standard errors", QString(), painter);
  const std::vector<ReadingKind> kinds = kinds_of(result);
  double reach = 3.5;
  for (const FittedReading& one : result.fit.readings) reach = std::max(reach, 1.1 * std::abs(one.standard));
  const auto height = [&](double standard) {
    return kPlot.center().y() - 0.5 * kPlot.height() * standard / reach;
  };
  painter.setPen(Qt::NoPen);
  painter.setBrush(QColor(228, 226, 234));
  painter.drawRect(QRectF(QPointF(kPlot.left(), height(2.0)), QPointF(kPlot.right(), height(-2.0))));
  painter.setPen(QPen(kInk, 1.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(kPlot);
  painter.drawLine(QPointF(kPlot.left(), height(0.0)), QPointF(kPlot.right(), height(0.0)));
  painter.setFont(picture_font(18));
  for (int s = -3; s <= 3; ++s)
    painter.drawText(QRectF(kPlot.left() - 66, height(s) - 12, 58, 24), Qt::AlignRight, QString::number(s));
  const double column = kPlot.width() / static_cast<double>(std::max<std::size_t>(kinds.size(), 1));
  for (std::size_t k = 0; k < kinds.size(); ++k) {
    std::vector<const FittedReading*> of_kind;
    for (const FittedReading& one : result.fit.readings)
      if (result.readings.rows[one.row].kind == kinds[k]) of_kind.push_back(&one);
    const double left = kPlot.left() + column * static_cast<double>(k);
    for (std::size_t i = 0; i < of_kind.size(); ++i)
      draw_mark(kinds[k],
                {left + column * (static_cast<double>(i) + 1.0) / (static_cast<double>(of_kind.size()) + 1.0),
                 height(of_kind[i]->standard)},
                painter);
    painter.setPen(kInk);
    painter.drawText(QRectF(left, kPlot.bottom() + 8, column, 26), Qt::AlignHCenter,
                     QString::fromStdString(std::string(kind_name(kinds[k]))));
  }
  painter.end();
  return image;
}

}  // namespace

NotePictures bench_pictures(const BenchResult& result) {
  return {agreement_picture(result), residual_picture(result)};
}

}  // namespace wrapgauge
