#pragma once
#include "app/desk/views/body_canvas.hpp"

namespace wrapgauge {

// Draws with the software picture of the command line: the same everywhere, without a graphics system.
class RasterCanvas : public QWidget, public BodyCanvas {
 public:
  explicit RasterCanvas(QWidget* parent);

  QWidget* widget() override { return this; }
  void show_scene(std::shared_ptr<const BodyScene> scene) override;
  void show_view(const LimbView& view) override;
  void show_background(const QColor& colour) override;
  QImage picture() override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QImage drawn() const;

  std::shared_ptr<const BodyScene> scene_;
  LimbView view_;
  QColor background_ = Qt::white;
  QImage cached_;
};

}  // namespace wrapgauge
