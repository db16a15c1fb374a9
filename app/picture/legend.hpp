#pragma once
// What stands round a map: title, colour bar in kPa and mmHg, scale bar, caption, names.

#include <QPainter>

#include "app/picture/map_scene.hpp"

namespace wrapgauge {

inline constexpr int kPictureWidth = 1400, kPictureHeight = 900;
inline const QColor kInk(28, 26, 34);

QFont picture_font(int pixels, bool bold = false);
// White halo, so that it can be read on any colour. `centre`: middle of the text.
void draw_text_over_map(QPainter& painter, const QPointF& centre, const QString& text, int pixels,
                        bool bold = false);

void draw_title(QPainter& painter, const QString& title, const QString& subtitle);
void draw_caption(QPainter& painter, const QStringList& lines);
void draw_colour_bar(QPainter& painter, const QRectF& bar, const MapScene& scene);
// A bar of a round length that is about 120 pixels long.
void draw_scale_bar(QPainter& painter, const QPointF& left, double pixels_per_m);

}  // namespace wrapgauge
