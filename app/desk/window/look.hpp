#pragma once
// Light and dark palettes, contrast of words at least 4.5 : 1 (WCAG 2.1, 1.4.3; from memory).

#include <QPalette>
#include <QString>

class QApplication;

namespace wrapgauge {

enum class Look { kAsDesktop, kLight, kDark };

QPalette light_palette();
QPalette dark_palette();
void apply_look(Look look);  // to the running application
Look look_from_name(const QString& name);
QString look_name(Look look);  // as settings hold it

}  // namespace wrapgauge
