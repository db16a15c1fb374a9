#include "app/picture/png.hpp"

#include <QBuffer>
#include <QByteArray>

namespace wrapgauge {

Result<std::string> png_bytes(const QImage& image) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  if (image.isNull() || !buffer.open(QIODevice::WriteOnly) || !image.save(&buffer, "PNG"))
    return bad_input(Phrase::worded("the picture could not be drawn: no memory or no PNG support."));
  return bytes.toStdString();
}

}  // namespace wrapgauge
