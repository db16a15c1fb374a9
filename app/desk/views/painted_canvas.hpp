#pragma once
// A canvas that paints a picture, which it keeps until something else is to be seen.

#include "app/desk/views/body_canvas.hpp"

namespace wrapgauge {

class PaintedCanvas : public QWidget, public BodyCanvas {
 public:
  explicit PaintedCanvas(QWidget* parent);

  QWidget* widget() override { return this; }
  void show_scene(std::shared_ptr<const BodyScene> scene) override;
  void show_view(const LimbView& view) override;
  void show_background(const QColor& colour) override;
  QImage picture() override;

 protected:
  // All of the widget in device pixels, background and all.
  virtual QImage drawn() = 0;
  QSize device_pixels() const;
  void paintEvent(QPaintEvent* event) override;

  std::shared_ptr<const BodyScene> scene_;  // null before the first one
  LimbView view_;
  QColor background_ = Qt::white;

 private:
  void forget();

  QImage kept_;  // null: to be drawn
};

}  // namespace wrapgauge
