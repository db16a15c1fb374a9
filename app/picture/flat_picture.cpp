#include "app/picture/flat_picture.hpp"

#include <algorithm>

#include "app/picture/flat_sheet.hpp"
#include "app/picture/legend.hpp"
#include "model/core/pressure_figures.hpp"
#include "model/geometry/innermost_point.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr int kFlatPanelLeft = 90, kFlatPanelTop = 120, kFlatPanelWidth = 1010, kFlatPanelHeight = 640;
constexpr double kRoundPanel = 20.0;  // words may stand so far outside the panel, pixels
constexpr double kInletRadius = 7.0;

struct PlacedSheet {
  FlatSheet sheet;
  QRectF panel;

  QPointF on_picture(const Vec2& point_m) const {
    const RasterPoint p = sheet.project(point_m);
    return {panel.left() + p.x, panel.top() + p.y};
  }
};

PlacedSheet placed(const FlatMesh& flat, const QRectF& panel) {
  constexpr double kRoom = 12.0;
  const Vec2 low = flat.vertices_m.colwise().minCoeff(), high = flat.vertices_m.colwise().maxCoeff();
  const Vec2 size = (high - low).cwiseMax(1e-3);
  const double scale =
      std::min((panel.width() - 2 * kRoom) / size.x(), (panel.height() - 2 * kRoom) / size.y());
  return {
      {low, size, scale, 0.5 * (panel.width() - scale * size.x()), 0.5 * (panel.height() - scale * size.y())},
      panel};
}

// The map with the edges of the layout's parts.
LimitContour draw_map(const Estimate& estimate, const MapScene& scene, const PlacedSheet& placed,
                      QPainter& painter) {
  const FlatMesh& flat = estimate.setup.flat;
  Raster raster(static_cast<int>(placed.panel.width()), static_cast<int>(placed.panel.height()),
                scene.top_pa);
  LimitContour contour =
      draw_flat_map(flat, estimate.map.on_layout_pa, scene.share_of_limit, placed.sheet, raster);
  for (const LayoutEdge& edge : layout_edges(flat))
    raster.line(placed.sheet.project(flat.vertices_m.row(edge.from)),
                placed.sheet.project(flat.vertices_m.row(edge.to)), edge.rim ? 2.4 : 1.4,
                edge.rim ? QColor(50, 50, 56) : QColor(85, 80, 95), kFlatLift);
  painter.drawImage(placed.panel.topLeft(), raster.image());
  return contour;
}

QString words_of(Pressure pressure, const char* before, const char* between) {
  return QString::fromStdString(before + kpa_figure(pressure) + " kPa" + between + mmhg_figure(pressure) +
                                " mmHg");
}

QPolygonF on_picture(const Polygon& loop_m, const PlacedSheet& sheet) {
  QPolygonF polygon;
  for (const Vec2& point_m : loop_m) polygon << sheet.on_picture(point_m);
  return polygon;
}

// What the map shows, straps too: its box, which words beside it keep off.
QPolygonF whole_sheet(const Estimate& estimate, const PlacedSheet& sheet) {
  const FlatMesh& flat = estimate.setup.flat;
  const Vec2 low = flat.vertices_m.colwise().minCoeff(), high = flat.vertices_m.colwise().maxCoeff();
  return on_picture({low, {high.x(), low.y()}, high, {low.x(), high.y()}}, sheet);
}

// Name, mean and peak: in three lines inside the chamber, else in five, else beside the layout.
void label_chamber(const ChamberFigures& figures, const QPolygonF& chamber, const QPointF& centre,
                   const QPolygonF& whole, const QRectF& room, MapLabels& labels) {
  const QStringList three{QString::fromStdString(figures.chamber), words_of(figures.mean, "mean ", ", "),
                          words_of(figures.peak, "peak ", ", ")};
  QStringList five{three[0]};
  five += words_of(figures.mean, "mean ", "\n").split('\n');
  five += words_of(figures.peak, "peak ", "\n").split('\n');
  for (const std::vector<int>& sizes : {std::vector<int>{17, 15, 13}, {12}})
    if (labels.put_inside(chamber, centre, three, sizes) || labels.put_inside(chamber, centre, five, sizes))
      return;
  labels.put_beside(room, whole, labels.point_in_sight(chamber, centre), three, 14);
}

std::vector<QPointF> label_chambers(const Estimate& estimate, const PlacedSheet& sheet, MapLabels& labels) {
  const QPolygonF whole = whole_sheet(estimate, sheet);
  std::vector<QPointF> centres;
  for (std::size_t c = 0; c < estimate.figures.chambers.size(); ++c) {
    const Polygon& boundary_m = estimate.setup.layout.chambers[c].boundary_m;
    centres.push_back(sheet.on_picture(innermost_point_m(boundary_m)));
    label_chamber(estimate.figures.chambers[c], on_picture(boundary_m, sheet), centres.back(), whole,
                  sheet.panel.marginsAdded(QMarginsF(kRoundPanel, kRoundPanel, kRoundPanel, kRoundPanel)),
                  labels);
  }
  return centres;
}

QRectF inlet_plate(const QPointF& at) {
  return {at.x() - kInletRadius - 2.0, at.y() - kInletRadius - 2.0, 2.0 * kInletRadius + 4.0,
          2.0 * kInletRadius + 4.0};
}

void draw_inlets(const Estimate& estimate, const PlacedSheet& sheet, QPainter& painter, MapLabels& labels) {
  for (const Inlet& inlet : estimate.setup.layout.inlets) {
    const QPointF at = sheet.on_picture(inlet.point_m);
    std::vector<QPointF> places;
    for (double distance = 20.0; distance < 400.0; distance += 6.0)
      for (const double sign : {1.0, -1.0}) places.push_back(at + QPointF(0.0, sign * distance));
    labels.put_where_free(places, QString::fromStdString(inlet_label(inlet)), 13);
    painter.setPen(QPen(kInk, 2.0));
    painter.setBrush(QColor(255, 255, 255));
    painter.drawEllipse(at, kInletRadius, kInletRadius);
    painter.setBrush(kInk);
    painter.drawEllipse(at, 2.5, 2.5);
    painter.setBrush(Qt::NoBrush);
  }
}

void draw_words(const Estimate& estimate, const PlacedSheet& sheet, const LimitContour& contour,
                QPainter& painter) {
  MapLabels labels(painter);
  for (const Inlet& inlet : estimate.setup.layout.inlets)
    labels.keep_off(inlet_plate(sheet.on_picture(inlet.point_m)));
  draw_inlets(estimate, sheet, painter, labels);
  const std::vector<QPointF> chambers = label_chambers(estimate, sheet, labels);
  std::vector<QPointF> pieces;
  for (const RasterPoint& piece : contour.middles())
    pieces.emplace_back(sheet.panel.left() + piece.x, sheet.panel.top() + piece.y);
  label_contour(labels, pieces, chambers);
}

void draw_direction(QPainter& painter) {
  const double x = 52.0, top = kFlatPanelTop + 210.0, bottom = kFlatPanelTop + 430.0;
  painter.setPen(QPen(kInk, 2.0));
  painter.drawLine(QPointF(x, bottom), QPointF(x, top));
  painter.drawLine(QPointF(x, top), QPointF(x - 6, top + 12));
  painter.drawLine(QPointF(x, top), QPointF(x + 6, top + 12));
  painter.setFont(picture_font(14));
  painter.drawText(QRectF(x - 44, top - 26, 88, 20), Qt::AlignHCenter, "proximal");
  painter.drawText(QRectF(x - 44, bottom + 6, 88, 20), Qt::AlignHCenter, "distal");
}

}  // namespace

void draw_flat(const Estimate& estimate, const QRectF& area, int label_pixels, QPainter& painter) {
  const PlacedSheet sheet = placed(estimate.setup.flat, area);
  draw_map(estimate, map_scene(estimate), sheet, painter);
  MapLabels labels(painter);
  for (const Chamber& chamber : estimate.setup.layout.chambers) {
    labels.put(sheet.on_picture(innermost_point_m(chamber.boundary_m)),
               QString::fromStdString(chamber.name).split(' '), label_pixels);
  }
}

QImage flat_picture(const Estimate& estimate, const QString& title) {
  QImage image(kPictureWidth, kPictureHeight, QImage::Format_RGB32);
  image.fill(QColor(252, 252, 253));
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  const MapScene scene = map_scene(estimate);
  const PlacedSheet sheet =
      placed(estimate.setup.flat, {kFlatPanelLeft, kFlatPanelTop, kFlatPanelWidth, kFlatPanelHeight});
  draw_title(painter, title,
             "Predicted contact pressure on the flat layout, outer sheet towards you; x runs round the limb");
  draw_words(estimate, sheet, draw_map(estimate, scene, sheet, painter), painter);
  draw_direction(painter);
  draw_scale_bar(painter, {kFlatPanelLeft + sheet.sheet.left, kFlatPanelTop + kFlatPanelHeight + 24.0},
                 sheet.sheet.pixels_per_m);
  draw_colour_bar(painter, kColourBar, scene);
  draw_caption(
      painter,
      {"Mean: force over the chamber as drawn. Peak: highest average over 1 cm². Line: the "
       "mean over 1 cm² × model factor meets the limit of that place; hatched: above it. Not a medical "
       "device." +
       override_caption(estimate.limits)});
  painter.end();
  return image;
}

}  // namespace wrapgauge
