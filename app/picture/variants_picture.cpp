#include <algorithm>
#include <cmath>

#include "app/picture/flat_sheet.hpp"
#include "app/picture/legend.hpp"
#include "app/picture/png.hpp"
#include "app/picture/svg_picture.hpp"
#include "app/picture/variant_pictures.hpp"

namespace wrapgauge {
namespace {

constexpr double kTilesLeft = 36.0, kTilesTop = 104.0, kTilesWidth = 1090.0, kTileGap = 22.0;
constexpr double kWordsAbove = 24.0, kWordsBelow = 26.0, kRowGap = 26.0;
constexpr double kFoot = 150.0;         // scale bar and caption
constexpr double kLeastHeight = 560.0;  // of a page: the colour bar needs room
constexpr int kWordPixels = 15;

struct TileGrid {
  double width = 0.0, map_height = 0.0, pixels_per_m = 1.0;
  int columns = 1, rows = 1;

  double row_height() const { return kWordsAbove + map_height + kWordsBelow + kRowGap; }
  QRectF map(std::size_t tile) const {
    const auto column = static_cast<int>(tile) % columns, row = static_cast<int>(tile) / columns;
    return {kTilesLeft + column * (width + kTileGap), kTilesTop + row * row_height() + kWordsAbove, width,
            map_height};
  }
  double bottom() const { return kTilesTop + rows * row_height(); }
};

Vec2 low_of(const FlatMesh& flat) {
  return flat.vertices_m.colwise().minCoeff();
}
Vec2 extent_of(const FlatMesh& flat) {
  const Vec2 high = flat.vertices_m.colwise().maxCoeff();
  return (high - low_of(flat)).cwiseMax(1e-3);
}

TileGrid grid_of(const VariantsPage& page) {
  constexpr double kHighest = 420.0;
  TileGrid grid;
  grid.columns = std::max(1, page.columns);
  grid.rows = (static_cast<int>(page.tiles.size()) + grid.columns - 1) / grid.columns;
  grid.width = (kTilesWidth - (grid.columns - 1) * kTileGap) / grid.columns;
  Vec2 largest(1e-3, 1e-3);
  for (const VariantTile& tile : page.tiles)
    if (tile.flat) largest = largest.cwiseMax(extent_of(*tile.flat));
  grid.pixels_per_m = std::min((grid.width - 4.0) / largest.x(), (kHighest - 4.0) / largest.y());
  grid.map_height = std::max(60.0, std::ceil(grid.pixels_per_m * largest.y() + 4.0));
  return grid;
}

// As a map of one estimate has it: the highest pressure and the lowest limit lie on the bar.
MapScene scene_of(const VariantsPage& page) {
  MapScene scene;
  scene.model_factor = page.model_factor;
  double highest_pa = 100.0;
  std::optional<std::vector<int>> limits;
  bool same_limits = true;
  for (const VariantTile& tile : page.tiles) {
    if (!tile.flat) continue;
    if (tile.pressure_pa.size() > 0) highest_pa = std::max(highest_pa, tile.pressure_pa.maxCoeff());
    if (limits && *limits != tile.limits_pa) same_limits = false;
    limits = tile.limits_pa;
  }
  if (limits && same_limits)
    for (const int pa : *limits) scene.limits.push_back({pa / scene.model_factor, static_cast<double>(pa)});
  if (!scene.limits.empty()) highest_pa = std::max(highest_pa, 1.15 * scene.limits.front().pressure_pa);
  scene.top_pa = round_top(highest_pa);
  return scene;
}

void draw_map(const VariantTile& tile, const TileGrid& grid, const QRectF& at, double top_pa,
              QPainter& painter) {
  constexpr double kSharper = 2.0;  // pixels of the map a pixel of the page
  const Vec2 size = extent_of(*tile.flat);
  const double scale = kSharper * grid.pixels_per_m;
  const FlatSheet sheet{low_of(*tile.flat), size, scale, 0.5 * (kSharper * at.width() - scale * size.x()),
                        0.5 * (kSharper * at.height() - scale * size.y())};
  Raster raster(static_cast<int>(kSharper * at.width()), static_cast<int>(kSharper * at.height()), top_pa,
                kSharper);
  draw_flat_map(*tile.flat, tile.pressure_pa, tile.share_of_limit, sheet, raster);
  for (const LayoutEdge& edge : layout_edges(*tile.flat))
    raster.line(sheet.project(tile.flat->vertices_m.row(edge.from)),
                sheet.project(tile.flat->vertices_m.row(edge.to)), edge.rim ? 3.0 : 1.8,
                edge.rim ? QColor(50, 50, 56) : QColor(85, 80, 95), kFlatLift);
  const QImage image = raster.image();
  painter.drawImage(at, image, QRectF(image.rect()));
}

void put_line(QPainter& painter, const QRectF& box, const QString& words, bool bold) {
  painter.setPen(kInk);
  painter.setFont(picture_font(kWordPixels, bold));
  const QFontMetricsF metrics(painter.font());
  painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                   metrics.elidedText(words, Qt::ElideRight, box.width()));
}

void draw_reason(const VariantTile& tile, const QRectF& at, QPainter& painter) {
  painter.setPen(QPen(QColor(150, 148, 156), 1.2, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(at);
  painter.setPen(kInk);
  painter.setFont(picture_font(14));
  const QRectF box = at.adjusted(10, 8, -10, -8);
  QString words = "No figures. " + tile.reason;
  const QFontMetricsF metrics(painter.font());
  constexpr int kHow = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
  while (words.size() > 20 && metrics.boundingRect(box, kHow, words).height() > box.height())
    words = words.left(words.size() * 9 / 10).trimmed() + "…";
  painter.drawText(box, kHow, words);
}

}  // namespace

QSize size_of(const VariantsPage& page) {
  const double height = std::max(kLeastHeight, grid_of(page).bottom()) + kFoot;
  return {kPictureWidth, static_cast<int>(std::ceil(height))};
}

void draw_variants(const VariantsPage& page, QPainter& painter) {
  const TileGrid grid = grid_of(page);
  const MapScene scene = scene_of(page);
  const QSize size = size_of(page);
  draw_title(painter, page.title, page.subtitle);
  for (std::size_t t = 0; t < page.tiles.size(); ++t) {
    const VariantTile& tile = page.tiles[t];
    const QRectF map = grid.map(t);
    put_line(painter, {map.left(), map.top() - kWordsAbove, map.width(), kWordsAbove}, tile.name, true);
    put_line(painter, {map.left(), map.bottom() + 2.0, map.width(), kWordsBelow - 2.0}, tile.verdict, false);
    if (tile.flat)
      draw_map(tile, grid, map, scene.top_pa, painter);
    else
      draw_reason(tile, map, painter);
  }
  draw_scale_bar(painter, {kTilesLeft, size.height() - kFoot + 22.0}, grid.pixels_per_m);
  draw_colour_bar(painter, QRectF(kColourBar.left(), 170.0, kColourBar.width(), 360.0), scene);
  painter.save();
  painter.translate(0.0, size.height() - kPictureHeight);
  draw_caption(painter, page.caption);
  painter.restore();
}

Result<std::string> page_png(const QSize& size, const DrawPage& draw) {
  QImage image(size, QImage::Format_RGB32);
  image.fill(QColor(252, 252, 253));
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing |
                         QPainter::SmoothPixmapTransform);
  draw(painter);
  painter.end();
  return png_bytes(image);
}

std::string page_svg(const QSize& size, const DrawPage& draw) {
  SvgPicture picture(size);
  QPainter painter(&picture);
  draw(painter);
  painter.end();
  return picture.bytes();
}

}  // namespace wrapgauge
