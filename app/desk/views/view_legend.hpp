#pragma once
// What stands over a view: colour bar with both units and the limits, scale bar, words on plates.

#include <QPainter>
#include <vector>

#include "app/desk/views/selection.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/picture/map_scene.hpp"

namespace wrapgauge {

struct LegendLook {
  ViewColours colours;
  QFont font;
  PressureUnit first = PressureUnit::kKilopascal;
  bool dimmed = false;
};

// Along the right edge of `area`, smaller where that is narrow; returns what it covers.
QRectF draw_pressure_legend(QPainter& painter, const QRectF& area, const MapScene& scale,
                            const LegendLook& look);
int legend_width(const QFont& font, double view_width);
// In the lower left corner: a round length of about 100 pixels; returns what it covers.
QRectF draw_length_scale(QPainter& painter, const QRectF& area, double pixels_per_m, const LegendLook& look);
// Leaves the painter with the ink for what is written on it.
void draw_bare_plate(QPainter& painter, const QRectF& plate, const ViewColours& colours);
// Words on a plate round `centre`; returns the plate.
QRectF draw_plate(QPainter& painter, const QPointF& centre, const QString& words, const LegendLook& look);
QSizeF plate_size(const QString& words, const QFontMetricsF& metrics);
inline constexpr double kPlateRim = 10.0;  // how much wider a plate is than its words

}  // namespace wrapgauge
