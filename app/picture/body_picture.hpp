#pragma once
#include <QImage>
#include <QPainter>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The body round the layout from two sides: looking at the anchor, and from behind. Proximal is up.
QImage body_picture(const Estimate& estimate, const QString& title);

// One view alone, looking at the anchor, for a picture of another layout.
void draw_worn(const Estimate& estimate, const QRectF& area, int label_pixels, QPainter& painter);

}  // namespace wrapgauge
