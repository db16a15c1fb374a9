#include "app/picture/body_picture.hpp"

#include <algorithm>

#include "app/picture/legend.hpp"
#include "app/picture/limb_view.hpp"
#include "model/contact/skin_side.hpp"
#include "model/geometry/mesh_topology.hpp"
#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {
namespace {

constexpr int kBodyPanelWidth = 560, kBodyPanelHeight = 690, kBodyPanelTop = 116;

// The skin, and the worn layout laid onto it.
struct Painted {
  const Estimate& estimate;
  MapScene scene;
  Points3 normals;            // a skin vertex each
  Points3 on_skin_m;          // a flat vertex each: the worn layout brought to the skin at rest
  Points3 normals_on_layout;  // a flat vertex each
  std::vector<LayoutEdge> edges;
};

Painted painted(const Estimate& estimate) {
  const TriangleMesh& surface = estimate.body.surface;
  Painted result{estimate, map_scene(estimate), vertex_normals(surface), {}, {}, {}};
  const TriangleMesh side =
      skin_side(estimate.setup, estimate.path.sheet, estimate.path.states.back().positions_m);
  const NearestPoint skin(surface);
  result.on_skin_m = result.normals_on_layout = side.vertices_m;
  for (Eigen::Index v = 0; v < side.vertices_m.rows(); ++v) {
    const SurfacePoint found = skin.at(side.vertices_m.row(v));
    Vec3 normal = Vec3::Zero();
    for (int k = 0; k < 3; ++k)
      normal += found.barycentric[k] * result.normals.row(surface.faces(found.face, k)).transpose();
    result.on_skin_m.row(v) = found.point_m;
    result.normals_on_layout.row(v) = normal;
  }
  result.edges = layout_edges(estimate.setup.flat);
  return result;
}

// The layout with a margin along the limb, both views at the same scale.
LimbView view_from(const Painted& painted, double side, int width, int height) {
  constexpr double kMargin_m = 0.035;
  LimbView view;
  view.rows = limb_view_rows(painted.estimate.body.axis.direction, side * painted.estimate.wrap.outward);
  view.width = width;
  view.height = height;
  const Points3 seen = painted.on_skin_m * view.rows.transpose();
  const Vec3 low = seen.colwise().minCoeff(), high = seen.colwise().maxCoeff();
  view.centre_m = view.rows.transpose() * (0.5 * (low + high));
  const Vec3 size = (high - low).array() + 2.0 * kMargin_m;
  view.pixels_per_m = std::min({height / size.y(), width / size.x(), width / size.z()});
  return view;
}

// The layout's own triangles, laid on the skin and lifted off it a little, so that its rim is sharp.
LimitContour draw_pressure(const Painted& painted, const LimbView& view, Raster& raster) {
  const Triangles& faces = painted.estimate.setup.flat.triangles;
  const auto vertex = [&](int v) {
    const double pressure = painted.estimate.map.on_layout_pa[v],
                 threshold = painted.scene.layout_threshold_pa[v];
    const Vec3 normal = view.rows * painted.normals_on_layout.row(v).transpose();
    RasterVertex shown{view.project(painted.on_skin_m.row(v)), shade_of(normal), pressure,
                       threshold > 0.0 ? pressure / threshold : 0.0};
    shown.at.z += normal.z() > 0.0 ? kLineLift : 0.0;
    return shown;
  };
  LimitContour contour;
  for (Eigen::Index t = 0; t < faces.rows(); ++t) {
    const std::array corner{vertex(faces(t, 0)), vertex(faces(t, 1)), vertex(faces(t, 2))};
    raster.triangle(corner[0], corner[1], corner[2]);
    contour.add(corner);
  }
  contour.draw(raster, kLineLift);
  return contour;
}

void draw_edges(const Painted& painted, const LimbView& view, Raster& raster) {
  for (const LayoutEdge& edge : painted.edges)
    raster.line(view.project(painted.on_skin_m.row(edge.from)), view.project(painted.on_skin_m.row(edge.to)),
                edge.rim ? 1.8 : 1.1, edge.rim ? QColor(60, 60, 66) : QColor(95, 92, 102), 2.0 * kLineLift);
}

// Middle of what can be seen of a chamber, if that is a fair part of it.
std::optional<QPointF> seen_middle(const Painted& painted, std::size_t chamber, const LimbView& view,
                                   const Raster& raster) {
  const FlatMesh& flat = painted.estimate.setup.flat;
  const Polygon& boundary = painted.estimate.setup.layout.chambers[chamber].boundary_m;
  QPointF sum;
  int inside = 0, seen = 0;
  for (Eigen::Index v = 0; v < flat.vertices_m.rows(); ++v) {
    if (!contains(boundary, flat.vertices_m.row(v))) continue;
    ++inside;
    const RasterPoint at = view.project(painted.on_skin_m.row(v));
    if (!raster.visible(at, 2.0 * kLineLift)) continue;
    ++seen;
    sum += QPointF(at.x, at.y);
  }
  if (seen == 0 || seen * 4 < inside) return std::nullopt;
  return sum / seen;
}

void draw_words(const Painted& painted, const LimbView& view, const Raster& raster,
                const LimitContour& contour, QPainter& painter, const QPointF& corner, int pixels) {
  MapLabels labels(painter);
  std::vector<QPointF> names, pieces;
  for (std::size_t c = 0; c < painted.estimate.setup.layout.chambers.size(); ++c)
    if (const auto middle = seen_middle(painted, c, view, raster)) {
      names.push_back(corner + *middle);
      std::vector<QPointF> places;
      for (double down = 0.0; down <= 90.0; down += 6.0) places.push_back(names.back() + QPointF(0.0, down));
      labels.put_where_free(places, QString::fromStdString(painted.estimate.setup.layout.chambers[c].name),
                            pixels);
    }
  for (const RasterPoint& piece : contour.middles())
    if (raster.visible(piece, kLineLift)) pieces.push_back(corner + QPointF(piece.x, piece.y));
  label_contour(labels, pieces, names);
}

// One side of the limb within `area`; returns its scale.
double draw_side(const Painted& painted, double side, const QRectF& area, int label_pixels,
                 QPainter& painter) {
  const int width = static_cast<int>(area.width()), height = static_cast<int>(area.height());
  const LimbView view = view_from(painted, side, width, height);
  Raster raster(width, height, painted.scene.top_pa);
  draw_skin(painted.estimate.body.surface, painted.normals, view, raster);
  const LimitContour contour = draw_pressure(painted, view, raster);
  draw_edges(painted, view, raster);
  painter.drawImage(area.topLeft(), raster.image());
  draw_words(painted, view, raster, contour, painter, area.topLeft(), label_pixels);
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

}  // namespace

void draw_worn(const Estimate& estimate, const QRectF& area, int label_pixels, QPainter& painter) {
  draw_side(painted(estimate), 1.0, area, label_pixels, painter);
}

QImage body_picture(const Estimate& estimate, const QString& title) {
  QImage image(kPictureWidth, kPictureHeight, QImage::Format_RGB32);
  image.fill(QColor(252, 252, 253));
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  const Painted shown = painted(estimate);
  draw_title(painter, title, "Predicted contact pressure on the skin; proximal is up");
  draw_panel(shown, 1.0, {30, kBodyPanelTop}, "looking at the anchor", painter);
  draw_panel(shown, -1.0, {30 + kBodyPanelWidth + 20, kBodyPanelTop}, "from the opposite side", painter);
  draw_colour_bar(painter, kColourBar, shown.scene);
  draw_caption(painter, {"Line: predicted pressure × model factor meets the limit; hatched: above it. Grey: "
                         "not touched. Not a medical device." +
                         override_caption(estimate.limits)});
  painter.end();
  return image;
}

}  // namespace wrapgauge
