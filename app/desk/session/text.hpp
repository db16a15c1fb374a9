#pragma once
#include <QString>
#include <string>

namespace wrapgauge {

// Words of the model as the window shows them.
inline QString text(const std::string& words) {
  return QString::fromStdString(words);
}

}  // namespace wrapgauge
