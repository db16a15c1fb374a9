#pragma once
#include <QImage>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The same map mirrored on the flat layout as drawn, outer sheet towards the reader, proximal up.
QImage flat_picture(const Estimate& estimate, const QString& title);

}  // namespace wrapgauge
