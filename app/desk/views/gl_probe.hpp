#pragma once
#include <QString>

namespace wrapgauge {

// Whether the body can be drawn by the graphics system: empty, or the reason why not in words. Showing a GL
// widget where this is not empty would end the program. Asked once; the answer is kept.
QString why_no_graphics();

// Whether OpenGL is worked out by the processor. Only where why_no_graphics() is empty.
bool graphics_are_software();

// To be called before the QApplication is made.
void choose_graphics_format();

}  // namespace wrapgauge
