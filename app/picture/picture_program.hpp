#pragma once
#include <variant>

#include "model/core/result.hpp"

namespace wrapgauge {

// Pictures need Qt's text engine, which needs a QGuiApplication: starts one without a display if none runs
// yet. Problem: no font is installed, so that pictures would have no words.
Result<std::monostate> start_picture_program();

}  // namespace wrapgauge
