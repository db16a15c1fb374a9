#pragma once
// A surface that a body is drawn on: by the graphics system, or by the software picture where that is no use.

#include <QImage>
#include <QWidget>
#include <memory>

#include "app/desk/views/body_scene.hpp"
#include "app/picture/limb_view.hpp"

namespace wrapgauge {

class BodyCanvas {
 public:
  virtual ~BodyCanvas() = default;
  virtual QWidget* widget() = 0;
  virtual void show_scene(std::shared_ptr<const BodyScene> scene) = 0;
  virtual void show_view(const LimbView& view) = 0;
  virtual void show_background(const QColor& colour) = 0;
  virtual QImage picture() = 0;  // as it is on the screen now
};

// Deletion is the parent's work. `why_software`: set to the reason when the graphics system is no use.
BodyCanvas* make_body_canvas(QWidget* parent, QString& why_software);

QColor surface_colour(double share, bool dimmed);  // of pressed skin
inline const QColor kBareSkin(205, 205, 205), kLayoutAlone(214, 208, 226);

}  // namespace wrapgauge
