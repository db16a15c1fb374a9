#pragma once
#include <QImage>

#include "model/bench/sensor_map.hpp"

namespace wrapgauge {

// Read beside predicted at one scale, and the difference with its sign, on the layout's chambers.
QImage map_comparison_picture(const Layout& layout, const SensorMap& map, const MapComparison& comparison);

}  // namespace wrapgauge
