#pragma once
#include <QImage>

namespace wrapgauge {

// The picture made as small as fills `size`, and the middle of it.
inline QImage thumbnail(const QImage& picture, const QSize& size) {
  const QImage filled = picture.scaled(size, Qt::KeepAspectRatioByExpanding, Qt::SmoothTransformation);
  QRect middle(QPoint(), size);
  middle.moveCenter(filled.rect().center());
  return filled.copy(middle);
}

}  // namespace wrapgauge
