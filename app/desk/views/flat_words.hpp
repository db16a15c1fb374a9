#pragma once
// Names and pressures written over the chambers of the flat view.

#include <QStringList>
#include <optional>

#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {

// Name, then peak, in lines that fit the width of the chamber: a name is broken between its words, a pressure
// loses first the second unit, then the first. What still does not fit ends in dots.
QStringList chamber_lines(const QString& name, std::optional<Pressure> peak, PressureUnit first,
                          const QFontMetricsF& metrics, double width);

}  // namespace wrapgauge
