#include "app/picture/body_picture.hpp"

#include <QLineF>
#include <algorithm>
#include <cstdlib>
#include <utility>

#include "app/picture/layout_lines.hpp"
#include "app/picture/legend.hpp"
#include "app/picture/seen_surface.hpp"
#include "app/picture/skin_surface.hpp"
#include "app/picture/whole_body.hpp"
#include "model/body/place_words.hpp"
#include "model/contact/skin_side.hpp"

namespace wrapgauge {
namespace {

constexpr int kBodyPanelWidth = 560, kBodyPanelHeight = 690, kBodyPanelTop = 116;
constexpr double kSpread = 8.0;  // of a box round vertices, pixels
constexpr double kBarHeight = 300.0;
const QRectF kInset(1186, 560, 200, 250);  // below the colour bar

// The skin, and the worn layout laid onto it. What it refers to outlives it.
struct Painted {
  const Body& body;
  const InflationSetup& setup;
  const std::vector<BonySite>& sites;
  Vec3 outward;                 // at the anchor
  Eigen::VectorXd pressure_pa;  // a flat vertex each; empty: not solved, and the scene says nothing either
  MapScene scene;
  SkinSurface skin;
  SkinPoints worn;  // a flat vertex each
  std::vector<LayoutEdge> edges;
};

Painted painted(const Estimate& estimate) {
  const TriangleMesh side =
      skin_side(estimate.setup, estimate.path.sheet, estimate.path.states.back().positions_m);
  SkinSurface skin(estimate.body.surface);
  SkinPoints worn = skin.nearest(side.vertices_m);
  return {estimate.body,
          estimate.setup,
          estimate.limit_inputs.bony_sites,
          estimate.wrap.outward,
          estimate.map.on_layout_pa,
          map_scene(estimate),
          std::move(skin),
          std::move(worn),
          layout_edges(estimate.setup.flat)};
}

Painted painted(const Body& body, const Prepared& prepared) {
  return {body,
          prepared.setup,
          prepared.bony_sites,
          prepared.wrap.outward,
          {},
          {},
          SkinSurface(body.surface),
          {prepared.wrap.worn_m, prepared.wrap.outward_at_worn},
          layout_edges(prepared.setup.flat)};
}

// The layout with a margin along the limb, both views at the same scale.
LimbView view_from(const Painted& painted, double side, int width, int height) {
  constexpr double kMargin_m = 0.035;
  LimbView view;
  view.rows = limb_view_rows(painted.body.axis.direction, side * painted.outward);
  view.width = width;
  view.height = height;
  const Points3 seen = painted.worn.points_m * view.rows.transpose();
  const Vec3 low = seen.colwise().minCoeff(), high = seen.colwise().maxCoeff();
  view.centre_m = view.rows.transpose() * (0.5 * (low + high));
  const Vec3 size = (high - low).array() + 2.0 * kMargin_m;
  view.pixels_per_m = std::min({height / size.y(), width / size.x(), width / size.z()});
  return view;
}

// The layout's own triangles, laid on the skin and lifted off it a little, so that its rim is sharp. None:
// not solved, so there is no limit's line.
std::optional<LimitContour> draw_pressure(const Painted& painted, const LimbView& view, Raster& raster) {
  const Triangles& triangles = painted.setup.flat.triangles;
  SeenSurface seen = seen_surface(painted.worn.points_m, painted.worn.normals, view, kLineLift);
  if (painted.pressure_pa.size() == 0) {
    draw_surface(triangles, seen, raster);
    return std::nullopt;
  }
  seen.pressure_pa = painted.pressure_pa;
  seen.load = painted.scene.share_of_limit;
  draw_surface(triangles, seen, raster);
  LimitContour contour(triangles, seen);
  contour.draw(raster, kLineLift);
  return contour;
}

void draw_edges(const Painted& painted, const LimbView& view, Raster& raster) {
  for (const LayoutEdge& edge : painted.edges)
    raster.line(view.project(painted.worn.points_m.row(edge.from)),
                view.project(painted.worn.points_m.row(edge.to)), edge.rim ? 1.8 : 1.1,
                edge.rim ? kWornRim : kWornEdge, 2.0 * kLineLift);
}

// Where a flat vertex is seen in the picture; none where it is not.
using SeenVertices = std::vector<std::optional<QPointF>>;

SeenVertices seen_vertices(const Painted& painted, const LimbView& view, const Raster& raster,
                           const QPointF& corner) {
  SeenVertices seen(static_cast<std::size_t>(painted.worn.points_m.rows()));
  for (Eigen::Index v = 0; v < painted.worn.points_m.rows(); ++v) {
    const RasterPoint at = view.project(painted.worn.points_m.row(v));
    if (raster.visible(at, 2.0 * kLineLift)) seen[static_cast<std::size_t>(v)] = corner + QPointF(at.x, at.y);
  }
  return seen;
}

// Where a chamber's name may stand: on what can be seen of it, deep inside first; none when that is less than
// two fifths of it: the other side shows it better.
std::vector<QPointF> places_for_name(const Painted& painted, std::size_t chamber,
                                     const SeenVertices& vertices) {
  const FlatMesh& flat = painted.setup.flat;
  const Polygon& boundary = painted.setup.layout.chambers[chamber].boundary_m;
  std::vector<std::pair<double, QPointF>> seen;  // depth inside the chamber, place
  int inside = 0;
  for (Eigen::Index v = 0; v < flat.vertices_m.rows(); ++v) {
    const Vec2 point = flat.vertices_m.row(v);
    if (!contains(boundary, point)) continue;
    ++inside;
    if (const auto& place = vertices[static_cast<std::size_t>(v)])
      seen.emplace_back(distance_to_loop_m(boundary, point), *place);
  }
  if (seen.empty() || static_cast<int>(seen.size()) * 5 < inside * 2) return {};
  QPointF middle;
  double deepest = 0.0;
  for (const auto& [depth, place] : seen) {
    middle += place / static_cast<double>(seen.size());
    deepest = std::max(deepest, depth);
  }
  const auto worse = [&](const auto& one) {
    return std::pair(one.first < 0.7 * deepest, QLineF(one.second, middle).length());
  };
  std::stable_sort(seen.begin(), seen.end(),
                   [&](const auto& a, const auto& b) { return worse(a) < worse(b); });
  std::vector<QPointF> places;
  for (const auto& [depth, place] : seen) places.push_back(place);
  return places;
}

// Places lie on vertices, half an edge inside what they belong to.
QPolygonF seen_box(const std::vector<QPointF>& places) {
  return QPolygonF(QPolygonF(QList<QPointF>(places.begin(), places.end()))
                       .boundingRect()
                       .adjusted(-kSpread, -kSpread, kSpread, kSpread));
}

struct NamedChamber {
  QStringList one_line, two_lines;  // the same where the name is one word
  std::vector<QPointF> places;      // best first
  QRectF box;                       // round what is seen of it
};

// Broken where both lines are the most alike in length.
QStringList in_two_lines(const QString& name) {
  qsizetype best = -1;
  for (qsizetype at = name.indexOf(' '); at >= 0; at = name.indexOf(' ', at + 1))
    if (best < 0 || std::abs(2 * at - name.size()) < std::abs(2 * best - name.size())) best = at;
  return best < 0 ? QStringList{name} : QStringList{name.left(best), name.mid(best + 1)};
}

std::vector<NamedChamber> named_chambers(const Painted& painted, const SeenVertices& vertices) {
  std::vector<NamedChamber> chambers;
  for (std::size_t c = 0; c < painted.setup.layout.chambers.size(); ++c) {
    const std::vector<QPointF> places = places_for_name(painted, c, vertices);
    if (places.empty()) continue;
    const QString name = QString::fromStdString(painted.setup.layout.chambers[c].name);
    chambers.push_back({{name}, in_two_lines(name), places, seen_box(places).boundingRect()});
  }
  return chambers;
}

// In one line inside its chamber, else beside the layout, where it hides no hatching; else in two lines
// inside, or over the rim of its chamber. A name for which there is no room is left out: over another chamber
// it would seem to be that one's.
void put_name(const NamedChamber& chamber, const std::vector<QRectF>& others, const QRectF& room,
              const QPolygonF& layout, int pixels, MapLabels& labels) {
  const QPolygonF part(chamber.box);
  const QPointF& best = chamber.places.front();
  if (labels.put_inside(part, best, chamber.one_line, {pixels})) return;
  for (const QStringList& lines : {chamber.one_line, chamber.two_lines})
    if (labels.put_beside(room, layout, best, lines, pixels)) return;
  if (labels.put_inside(part, best, chamber.two_lines, {pixels})) return;
  labels.put_over(room, others, chamber.places, chamber.two_lines, pixels);
}

void draw_words(const Painted& painted, const LimbView& view, const Raster& raster,
                const LimitContour* contour, QPainter& painter, const QPointF& corner, int pixels) {
  MapLabels labels(painter);
  const QRectF room(corner, QSizeF(view.width, view.height));
  const SeenVertices vertices = seen_vertices(painted, view, raster, corner);
  std::vector<QPointF> all;
  for (const auto& place : vertices)
    if (place) all.push_back(*place);
  const std::vector<NamedChamber> chambers = named_chambers(painted, vertices);
  std::vector<QPointF> names, pieces;
  for (const NamedChamber& chamber : chambers) {
    std::vector<QRectF> others;
    for (const NamedChamber& other : chambers)
      if (&other != &chamber) others.push_back(other.box);
    put_name(chamber, others, room, seen_box(all), pixels, labels);
    names.push_back(chamber.places.front());
  }
  if (!contour) return;
  for (const RasterPoint& piece : contour->middles())
    if (raster.visible(piece, kLineLift)) pieces.push_back(corner + QPointF(piece.x, piece.y));
  label_contour(labels, pieces, names);
}

// A number in a ring on each site that can be seen.
void draw_sites(const Painted& painted, const LimbView& view, const Raster& raster, QPainter& painter,
                const QPointF& corner, int pixels) {
  constexpr double kOnSkin = 12.0;  // pixels: a site lies on the skin or a little below it
  painter.setFont(picture_font(pixels, true));
  const double radius = 0.75 * pixels;
  for (std::size_t i = 0; i < painted.sites.size(); ++i) {
    const RasterPoint at = view.project(painted.skin.at(painted.sites[i].point_m).point_m);
    if (!raster.visible(at, kOnSkin)) continue;
    const QPointF centre = corner + QPointF(at.x, at.y);
    painter.setPen(QPen(kInk, 3.0));
    painter.setBrush(Qt::white);
    painter.drawEllipse(centre, radius, radius);
    painter.drawText(QRectF(centre - QPointF(radius, radius), QSizeF(2.0 * radius, 2.0 * radius)),
                     Qt::AlignCenter, QString::number(i + 1));
  }
  painter.setBrush(Qt::NoBrush);
}

// One side of the limb within `area`; returns its scale. Where sites are numbered, the contour has no name.
double draw_side(const Painted& painted, double side, const QRectF& area, int label_pixels, QPainter& painter,
                 bool with_sites = false) {
  const int width = static_cast<int>(area.width()), height = static_cast<int>(area.height());
  const LimbView view = view_from(painted, side, width, height);
  Raster raster(width, height, painted.scene.top_pa);
  draw_skin(painted.skin.mesh(), painted.skin.normals(), view, raster);
  const auto contour = draw_pressure(painted, view, raster);
  draw_edges(painted, view, raster);
  painter.drawImage(area.topLeft(), raster.image());
  draw_words(painted, view, raster, with_sites || !contour ? nullptr : &*contour, painter, area.topLeft(),
             label_pixels);
  if (with_sites) draw_sites(painted, view, raster, painter, area.topLeft(), label_pixels);
  return view.pixels_per_m;
}

void draw_panel(const Painted& painted, double side, const QPointF& corner, const QString& heading,
                QPainter& painter) {
  const double scale =
      draw_side(painted, side, {corner, QSizeF(kBodyPanelWidth, kBodyPanelHeight)}, 15, painter);
  painter.setPen(kInk);
  painter.setFont(picture_font(16, true));
  painter.drawText(QRectF(corner.x(), kBodyPanelTop - 28, kBodyPanelWidth, 24), Qt::AlignHCenter, heading);
  draw_scale_bar(painter, corner + QPointF(4, kBodyPanelHeight + 12), scale);
}

// From point to point, as laid on.
Points3 rim_of(const Painted& shown) {
  std::vector<int> ends;
  for (const LayoutEdge& edge : shown.edges)
    if (edge.rim) ends.insert(ends.end(), {edge.from, edge.to});
  return shown.worn.points_m(ends, Eigen::all);
}

// Looking at the anchor.
void draw_whole(const Painted& shown, const QRectF& area, QPainter& painter) {
  const LaidLayout worn{shown.worn.points_m, shown.worn.normals, shown.setup.flat.triangles,
                        shown.pressure_pa, rim_of(shown)};
  const Mat3 rows = limb_view_rows(shown.body.axis.direction, shown.outward);
  draw_whole_body(shown.skin, worn, rows, shown.scene.top_pa, area, painter);
}

// "looking at the anchor: front"
QString heading(const Painted& shown, double side) {
  const QString words = side > 0.0 ? "looking at the anchor" : "from the opposite side";
  const auto facing = facing_of(shown.body, side * shown.outward);
  return facing ? words + ": " + QString::fromStdString(english(facing_words(*facing))) : words;
}

void draw_inset(const Painted& shown, QPainter& painter) {
  painter.setPen(kInk);
  painter.setFont(picture_font(14, true));
  painter.drawText(QRectF(kInset.left(), kInset.top() - 24, kInset.width(), 20), Qt::AlignHCenter,
                   "whole body");
  draw_whole(shown, kInset, painter);
}

QImage empty_picture() {
  QImage image(kPictureWidth, kPictureHeight, QImage::Format_RGB32);
  image.fill(QColor(252, 252, 253));
  return image;
}

// Both sides and the whole body.
void draw_sides(const Painted& shown, const QString& title, const QString& subtitle, QPainter& painter) {
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  draw_title(painter, title, subtitle);
  draw_panel(shown, 1.0, {30, kBodyPanelTop}, heading(shown, 1.0), painter);
  draw_panel(shown, -1.0, {30 + kBodyPanelWidth + 20, kBodyPanelTop}, heading(shown, -1.0), painter);
  draw_inset(shown, painter);
}

}  // namespace

void draw_worn(const Estimate& estimate, double side, const QRectF& area, int label_pixels,
               QPainter& painter) {
  draw_side(painted(estimate), side, area, label_pixels, painter, true);
}

void draw_whole(const Estimate& estimate, const QRectF& area, QPainter& painter) {
  draw_whole(painted(estimate), area, painter);
}

QImage worn_picture(const Body& body, const Prepared& prepared, const QString& title) {
  QImage image = empty_picture();
  QPainter painter(&image);
  draw_sides(painted(body, prepared), title, "Fastened and deflated, before an estimate; proximal is up",
             painter);
  draw_caption(painter, {"Where the layout lies; nothing has been solved. Not a medical device."});
  painter.end();
  return image;
}

QImage body_picture(const Estimate& estimate, const QString& title) {
  QImage image = empty_picture();
  QPainter painter(&image);
  const Painted shown = painted(estimate);
  draw_sides(shown, title, "Predicted contact pressure on the skin; proximal is up", painter);
  draw_colour_bar(painter, {kColourBar.topLeft(), QSizeF(kColourBar.width(), kBarHeight)}, shown.scene);
  draw_caption(painter, {"Line: the mean over 1 cm² × model factor meets the limit of that place; hatched: "
                         "above it. Grey: not touched. Not a medical device." +
                         override_caption(estimate.limits)});
  painter.end();
  return image;
}

}  // namespace wrapgauge
