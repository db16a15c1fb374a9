#pragma once
// A widget that paints a picture of a body, which it keeps until something else is to be seen. Nothing of the
// window is put together by OpenGL: where that is software, each blink of a cursor would cost 30 ms.

#include <QImage>
#include <QWidget>
#include <memory>

#include "app/desk/views/body_scene.hpp"
#include "app/desk/views/vtk_drawing.hpp"

namespace wrapgauge {

class BodyCanvas : public QWidget {
 public:
  explicit BodyCanvas(QWidget* parent);

  void show_scene(std::shared_ptr<const BodyScene> scene);
  void show_view(const LimbView& view);
  void show_background(const QColor& colour);
  QImage picture();  // as it is on the screen now

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void forget();

  std::unique_ptr<VtkDrawing> vtk_;  // null: drawn without a graphics system
  BodyFrame frame_;
  QImage kept_;  // null: to be drawn
};

}  // namespace wrapgauge
