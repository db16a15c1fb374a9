#include "app/picture/map_comparison_picture.hpp"

#include <QPainter>
#include <algorithm>

#include "app/picture/colour_map.hpp"
#include "app/picture/legend.hpp"

namespace wrapgauge {
namespace {

// Where the grid and its surroundings lie on one panel.
struct PanelFrame {
  Bounds2 box_m;
  QRectF panel;

  QPointF at(const Vec2& point_m) const {
    const double scale = std::min(panel.width() / (box_m.high.x() - box_m.low.x()),
                                  panel.height() / (box_m.high.y() - box_m.low.y()));
    return {panel.left() + scale * (point_m.x() - box_m.low.x()),
            panel.bottom() - scale * (point_m.y() - box_m.low.y())};
  }
};

QPolygonF cell_on(const PanelFrame& frame, const SensorMap& map, Eigen::Index r, Eigen::Index c) {
  const Vec2 middle = map.middle_m(r, c);
  const Vec2 u = (map.low_right_m - map.low_left_m) / (2.0 * static_cast<double>(map.pressure_pa.cols()));
  const Vec2 v = (map.up_left_m - map.low_left_m) / (2.0 * static_cast<double>(map.pressure_pa.rows()));
  return QPolygonF({frame.at(middle - u - v), frame.at(middle + u - v), frame.at(middle + u + v),
                    frame.at(middle - u + v)});
}

void draw_chambers(const Layout& layout, const PanelFrame& frame, QPainter& painter) {
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(kInk, 2.0));
  for (const Chamber& chamber : layout.chambers) {
    QPolygonF line;
    for (const Vec2& point : chamber.boundary_m) line << frame.at(point);
    painter.drawPolygon(line);
  }
}

struct PanelWords {
  QString title, scale;
  bool with_sign = false;
};

// Over all lines, on a ground of the cell's own colour: a line across a plus would make it a minus.
void draw_signs(const SensorMap& map, const Eigen::MatrixXd& values, const Eigen::MatrixXd& compared,
                double top_pa, const PanelFrame& frame, QPainter& painter) {
  painter.setFont(picture_font(14, true));
  for (Eigen::Index r = 0; r < values.rows(); ++r)
    for (Eigen::Index c = 0; c < values.cols(); ++c) {
      const double share = std::abs(values(r, c)) / top_pa;
      if (compared(r, c) < 0.0 || share < 0.1) continue;
      const QRectF box = cell_on(frame, map, r, c).boundingRect();
      painter.fillRect(QRectF(box.center() - QPointF(6.0, 6.0), QSizeF(12.0, 12.0)), map_colour(share));
      painter.setPen(map_is_dark(share) ? QColor(Qt::white) : kInk);
      painter.drawText(box, Qt::AlignCenter, values(r, c) > 0.0 ? "+" : "−");
    }
}

void draw_panel(const Layout& layout, const SensorMap& map, const Eigen::MatrixXd& values,
                const Eigen::MatrixXd& compared, double top_pa, const PanelFrame& frame,
                const PanelWords& words, QPainter& painter) {
  painter.setFont(picture_font(20, true));
  painter.setPen(kInk);
  painter.drawText(QPointF(frame.panel.left(), frame.panel.top() - 14), words.title + ", " + words.scale);
  for (Eigen::Index r = 0; r < values.rows(); ++r)
    for (Eigen::Index c = 0; c < values.cols(); ++c) {
      if (compared(r, c) < 0.0) continue;
      const double share = std::abs(values(r, c)) / top_pa;
      const QPolygonF cell = cell_on(frame, map, r, c);
      painter.setPen(Qt::NoPen);
      painter.setBrush(map_colour(share));
      painter.drawPolygon(cell);
    }
  draw_chambers(layout, frame, painter);
  if (words.with_sign) draw_signs(map, values, compared, top_pa, frame, painter);
}

}  // namespace

QImage map_comparison_picture(const Layout& layout, const SensorMap& map, const MapComparison& comparison) {
  QImage image(kPictureWidth, kPictureHeight, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  draw_title(painter, "Contact pressure, read and predicted", QString::fromStdString(map.remark));
  const Eigen::MatrixXd difference =
      (comparison.predicted_pa.array() < 0.0).select(0.0, map.pressure_pa - comparison.predicted_pa);
  const double top = std::max({map.pressure_pa.maxCoeff(), comparison.predicted_pa.maxCoeff(), 1.0});
  const double most = std::max(difference.cwiseAbs().maxCoeff(), 1.0);
  const auto kilo = [](double pa) { return QString::number(pa / 1e3, 'f', 1); };
  const QString scale =
      "darkest " + kilo(top) + " kPa (" + QString::number(top / mmHg.si(), 'f', 0) + " mmHg)";
  const Bounds2 box = bounds(layout.outline_m);
  const double width = 1300.0, height = 200.0;
  const auto frame = [&](int k) { return PanelFrame{box, QRectF(50.0, 150.0 + 250.0 * k, width, height)}; };
  draw_panel(layout, map, map.pressure_pa, comparison.predicted_pa, top, frame(0), {"Read", scale, false},
             painter);
  draw_panel(layout, map, comparison.predicted_pa, comparison.predicted_pa, top, frame(1),
             {"Predicted", scale, false}, painter);
  draw_panel(layout, map, difference, comparison.predicted_pa, most, frame(2),
             {"Read less predicted", "darkest ±" + kilo(most) + " kPa", true}, painter);
  painter.end();
  return image;
}

}  // namespace wrapgauge
