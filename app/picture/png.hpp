#pragma once
#include <QImage>
#include <string>

#include "model/core/result.hpp"

namespace wrapgauge {

// The picture as the bytes of a PNG file. Problem: nothing drawn, or no PNG support.
Result<std::string> png_bytes(const QImage& image);

}  // namespace wrapgauge
