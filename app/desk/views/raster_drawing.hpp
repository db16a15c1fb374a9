#pragma once
#include <QImage>

#include "app/desk/views/body_frame.hpp"

namespace wrapgauge {

// Drawn by the software picture of the command line: the same everywhere, without a graphics system.
QImage raster_picture(const BodyFrame& frame);

}  // namespace wrapgauge
