#pragma once
// A drawing as it was read, each shape in the look of the part that it becomes. A click chooses a shape, Page
// Up and Page Down go through them; wheel, + and - zoom, a drag shifts, Home shows all.

#include <QPainterPath>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "app/desk/views/drawing_look.hpp"
#include "model/layout/drawing.hpp"
#include "model/layout/drawing_parts.hpp"

namespace wrapgauge {

// What is shown of a drawing besides its lines; places in the drawing's own frame.
struct DrawingMarks {
  std::vector<DrawnAs> parts;         // a shape each
  std::vector<std::size_t> wrong;     // shapes that keep it from becoming a layout
  std::vector<Vec2> faults_m;         // where
  std::vector<std::size_t> no_inlet;  // chambers that no inlet reaches
  std::vector<Vec2> added_inlets_m;   // by hand
  std::optional<std::size_t> chosen;  // shape; those added come after the shapes
};

class DrawingView : public QWidget {
  Q_OBJECT
 public:
  explicit DrawingView(QWidget* parent = nullptr);

  void show_drawing(std::shared_ptr<const Drawing> drawing);  // and all of it
  void show_marks(DrawingMarks marks);
  // The next click, or Enter for the middle of the chosen shape, gives a place; Escape gives it up.
  void ask_for_place(bool asked);
  bool asks_for_place() const { return asked_; }

  QPointF on_view(const Vec2& drawn_m) const;
  Vec2 on_page(const QPointF& at) const;
  std::optional<std::size_t> shape_at(const QPointF& at) const;
  QImage picture();
  QSize sizeHint() const override { return {560, 420}; }
  QSize minimumSizeHint() const override { return {260, 200}; }

 signals:
  void shapeChosen(std::size_t shape);
  void placeGiven(const Vec2& drawn_m);
  void placeGivenUp();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void show_all();
  void zoom(double factor, const QPointF& about);
  void step(int by);
  std::size_t things() const;
  QPainterPath path_of(const DrawnShape& shape) const;
  void draw(QPainter& painter) const;
  void draw_shapes(QPainter& painter) const;
  void draw_shape(QPainter& painter, std::size_t shape) const;
  void draw_chosen(QPainter& painter) const;
  void draw_doubts(QPainter& painter) const;
  void draw_legend(QPainter& painter) const;
  double legend_height() const;
  std::vector<std::pair<std::optional<DrawnPart>, QString>> legend() const;

  std::shared_ptr<const Drawing> drawing_;
  DrawingMarks marks_;
  bool asked_ = false, fitted_ = true, moved_ = false;
  double scale_ = 4000.0;  // pixels a metre
  QPointF origin_;         // of the page, on the view
  QPointF pressed_at_, last_at_;
};

}  // namespace wrapgauge
