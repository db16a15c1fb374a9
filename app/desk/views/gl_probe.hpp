#pragma once
#include <QString>

namespace wrapgauge {

// Whether a body can be drawn by OpenGL, be it by a graphics card or in software: empty, or the reason why
// not in words. Asked once; the answer is kept.
QString why_no_graphics();

}  // namespace wrapgauge
