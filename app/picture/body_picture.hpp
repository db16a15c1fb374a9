#pragma once
#include <QImage>
#include <QPainter>

#include "model/pipeline/pipeline.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

// The body round the layout from two sides: looking at the anchor, and from behind. Proximal is up.
QImage body_picture(const Estimate& estimate, const QString& title);

// The same before an estimate: where the layout lies, fastened and deflated.
QImage worn_picture(const Body& body, const Prepared& prepared, const QString& title);

// For a picture of another layout: one side (1: looking at the anchor, -1: from behind), its bony and nerve
// sites numbered from 1 where they can be seen.
void draw_worn(const Estimate& estimate, double side, const QRectF& area, int label_pixels,
               QPainter& painter);

// The whole body as small as it must be, with the layout where it sits, looking at the anchor.
void draw_whole(const Estimate& estimate, const QRectF& area, QPainter& painter);

}  // namespace wrapgauge
