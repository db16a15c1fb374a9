#pragma once
#include <QImage>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The body round the layout from two sides: looking at the anchor, and from behind. Proximal is up.
QImage body_picture(const Estimate& estimate, const QString& title);

}  // namespace wrapgauge
