#pragma once
#include <QColor>
#include <QSize>
#include <memory>

#include "app/desk/views/body_scene.hpp"
#include "app/picture/limb_view.hpp"

namespace wrapgauge {

// One picture to be drawn of a body.
struct BodyFrame {
  std::shared_ptr<const BodyScene> scene;  // null or without skin: the background alone
  LimbView view;                           // in pixels of the widget
  QColor background = Qt::white;
  QSize pixels{1, 1};        // of the screen
  double pixel_ratio = 1.0;  // of them, one pixel of the widget
};

}  // namespace wrapgauge
