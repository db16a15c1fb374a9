#pragma once
#include <QImage>

#include "model/study/people.hpp"

namespace wrapgauge {

// Share of the limit against girth at the anchor: a dot for each person within the limits, a cross for each
// who is not, a mark on the axis for those without figures; the limit as a line, what exceeds it hatched, and
// the girths that may be accepted shaded and named.
QImage people_picture(const People& people);

}  // namespace wrapgauge
