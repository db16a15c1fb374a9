#pragma once
// Words of the flat view: names and pressures over its chambers, lengths.

#include <QStringList>
#include <optional>

#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {

// Name, then peak, in lines that fit the width of the chamber: a name is broken between its words, a pressure
// loses first the second unit, then the first. What still does not fit ends in dots.
QStringList chamber_lines(const QString& name, std::optional<Pressure> peak, PressureUnit first,
                          const QFontMetricsF& metrics, double width);

// Broken between words where a line would be wider, and at its line ends; millimetres stay with their number.
QStringList broken_lines(const QString& words, const QFontMetricsF& metrics, double width);

QString millimetres(double length_m);  // "12.3", without the unit

}  // namespace wrapgauge
