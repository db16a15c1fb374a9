#pragma once
// Pressure as colour: one hue family from a pale lilac (low) to a deep violet (high).
//
// Lightness (CIE 1976 L*) falls in a straight line from 95 to 22, so equal steps of pressure look equally
// large, in print without colour and for people who confuse colours alike; hue only drifts from 300 to 315
// degrees and chroma rises and falls once. CIE Lab after ISO/CIE 11664-4, sRGB after IEC 61966-2-1 (both from
// memory).

#include <QColor>

namespace wrapgauge {

inline const QColor kBareSkin(205, 205, 205);
inline const QColor kLimitLine(20, 10, 25), kLimitHalo(255, 255, 255);  // where the limit is met

// 0 = no pressure .. 1 = top of the scale; clamped. `dimmed`: in pale greys, for what no longer holds.
QColor map_colour(double share, bool dimmed = false);
bool map_is_dark(double share);             // marks on it are pale
QColor hatch_colour(bool on_dark);          // of what is above its limit
double map_lightness(double share);         // L* that was aimed at
double lightness_of(const QColor& colour);  // L* of an sRGB colour

}  // namespace wrapgauge
