#pragma once

namespace wrapgauge {

inline constexpr double kZoomStep = 1.2;  // of a key press or a notch of the wheel, in every view

}  // namespace wrapgauge
