#pragma once
// What stands round a map: title, colour bar in kPa and mmHg, scale bar, caption, names.

#include <QPainter>
#include <QPolygonF>
#include <vector>

#include "app/picture/map_scene.hpp"

namespace wrapgauge {

inline constexpr int kPictureWidth = 1400, kPictureHeight = 900;
inline const QColor kInk(28, 26, 34);
inline const QRectF kColourBar(1246, 200, 26, 520);

QFont picture_font(int pixels, bool bold = false);

// Whether it runs into none of `taken`.
bool keeps_clear(const QRectF& plate, const std::vector<QRectF>& taken);

// Words on a map: on a pale plate, so that they can be read on any colour and hatch. Remembers where words
// stand, so that the next ones keep clear of them.
class MapLabels {
 public:
  explicit MapLabels(QPainter& painter) : painter_(painter) {}

  // Lines centred round `centre`, moved sideways where they would run out of the picture; the first one bold.
  void put(const QPointF& centre, const QStringList& lines, int pixels);
  // Nothing is put over this from now on.
  void keep_off(const QRectF& plate) { taken_.push_back(plate); }
  // Lines at the largest of the sizes at which they lie inside `part`, as near to `centre` as can be, clear
  // of other words; false: there is no room for them, and nothing is put.
  bool put_inside(const QPolygonF& part, const QPointF& centre, const QStringList& lines,
                  const std::vector<int>& sizes);
  // The point of `part` nearest to `wanted` that no words cover; `wanted` if there is none.
  QPointF point_in_sight(const QPolygonF& part, const QPointF& wanted) const;
  // Lines off `whole`, within `room`, with a line to `target`; false: there is no room, and nothing is put.
  bool put_beside(const QRectF& room, const QPolygonF& whole, const QPointF& target, const QStringList& lines,
                  int pixels);
  // At the first of the places where it does not run into other words; nowhere if there is none.
  void put_where_free(const std::vector<QPointF>& places, const QString& text, int pixels);
  // At the first of the places where its plate lies within `room`, on none of `others`, of which it would
  // seem to be the name, and clear of other words; false: there is none, and nothing is put.
  bool put_over(const QRectF& room, const std::vector<QRectF>& others, const std::vector<QPointF>& places,
                const QStringList& lines, int pixels);

 private:
  QSizeF plate_size(const QStringList& lines, int pixels) const;
  QRectF plate(const QPointF& centre, const QStringList& lines, int pixels) const;

  QPainter& painter_;
  std::vector<QRectF> taken_;
};

// "limit" beside its contour, at the piece of it that lies farthest from `others`.
void label_contour(MapLabels& labels, const std::vector<QPointF>& contour,
                   const std::vector<QPointF>& others);

void draw_title(QPainter& painter, const QString& title, const QString& subtitle);
void draw_caption(QPainter& painter, const QStringList& lines);
// The reason why limits were overridden, cut to what a caption holds; empty when they were not.
QString override_caption(const LimitSet& limits);
void draw_colour_bar(QPainter& painter, const QRectF& bar, const MapScene& scene);
// A bar of a round length that is about 120 pixels long.
void draw_scale_bar(QPainter& painter, const QPointF& left, double pixels_per_m);

}  // namespace wrapgauge
