#pragma once
#include <QImage>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The picture of the study note: worn, flat, and the peak on the skin while the device fills, with the limit.
// Its words can be read when it is printed 18 cm wide.
QImage note_picture(const Estimate& estimate);

}  // namespace wrapgauge
