#pragma once
#include <QImage>
#include <QPainter>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The same map mirrored on the flat layout as drawn, outer sheet towards the reader, proximal up.
QImage flat_picture(const Estimate& estimate, const QString& title);

// The map alone with the chambers' names, for a picture of another layout.
void draw_flat(const Estimate& estimate, const QRectF& area, int label_pixels, QPainter& painter);

}  // namespace wrapgauge
