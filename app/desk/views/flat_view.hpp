#pragma once
// The layout flat, outer sheet towards the reader, proximal up, with the contact pressure of the shown state.
// Parts are chosen by mouse or Page Up and Page Down, moved by dragging or the arrow keys (1 mm, with Shift
// 5 mm, with Ctrl 0.1 mm); so are the points of the chosen part and the closing lines, which Ctrl with Page
// Up and Page Down goes through. Escape ends a drag where it began; wheel, + and - zoom, Home shows all.

#include <QGraphicsView>
#include <QTimer>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "app/desk/views/angle_axis.hpp"
#include "app/desk/views/flat_grips.hpp"
#include "app/desk/views/flat_items.hpp"
#include "app/desk/views/flat_labels.hpp"
#include "app/desk/views/shown_plan.hpp"

namespace wrapgauge {

class FlatView : public QGraphicsView {
  Q_OBJECT
 public:
  FlatView(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);
  ~FlatView() override;

  // Parts can be moved; on from the start.
  void set_editable(bool editable);
  void choose_part(std::optional<LayoutPart> part);
  std::optional<LayoutPart> chosen_part() const;
  void show_all();
  // From where the body is looked at, marked on the axis round the limb.
  void show_eye(const Vec3& towards_eye);
  const std::vector<AngleAtX>& angles() const;  // empty without a body
  double axis_y() const;                        // of that axis, in the viewport
  double pixel_at(double x_m) const;
  QImage picture();
  // The words of the chambers, clear of what is `taken`; pixels of the viewport.
  std::vector<FlatLabel> labels(std::vector<QRectF> taken = {}) const;
  QSize sizeHint() const override { return {560, 480}; }

 signals:
  void partChosen(const std::optional<LayoutPart>& part);
  // A drag has ended or an arrow key was pressed; the layout itself is not changed here. What lies in a
  // chamber is meant to go with it.
  void chamberMoved(ChamberId chamber, const Vec2& by_m);
  void partMoved(const LayoutPart& part, const Vec2& by_m);  // any other part
  void gripMoved(const LayoutGrip& grip, const Layout& changed);
  void lookAsked(const Vec3& outward);  // a hand on the axis: the body is to be looked at from there

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void drawForeground(QPainter* painter, const QRectF& rect) override;

 private:
  void rebuild();
  void show_map();
  void rescale_maps();
  void take_marks();
  void take_chamber();
  void scene_selection_changed();
  void zoom(double factor);
  void step_part(int by);
  void step_grip(int by);
  void tell_moved(const LayoutPart& part, const Vec2& by_m);
  void move_chosen(const Vec2& by_m);
  bool cancel_drag();
  bool leave_chosen();
  void show_grips();
  Vec2 snapped(const FlatPartItem& item, const Vec2& wished_m);
  Vec2 snapped(const Bounds2& box_m, const FlatPartItem* except, const Vec2& wished_m);
  void draw_words(QPainter& painter);
  QRectF parts_box() const;
  void forget_angles();
  bool ask_for_look(const QPointF& at);
  LabelledShape labelled(const FlatPartItem& chamber) const;
  QRectF on_view(const QRectF& scene) const;
  QString readout() const;
  FlatPartItem* chosen_item() const;

  const ShownPlan& shown_;
  Selection& selection_;
  QGraphicsScene scene_;
  FlatGrips grips_;
  QGraphicsPixmapItem* map_ = nullptr;
  std::vector<FlatPartItem*> items_;
  std::map<int, std::pair<QPixmap, QRectF>> maps_;  // a state each, drawn once
  double map_scale_ = 4.0;                          // pixels a millimetre
  QTimer scaled_;
  bool editable_ = true, fitted_ = true, rebuilding_ = false;
  mutable std::optional<std::vector<AngleAtX>> angles_;  // none: to be found
  std::optional<double> eye_deg_;
  bool rolling_ = false;  // a hand is on the axis
  std::optional<double> guide_x_m_, guide_y_m_;
};

}  // namespace wrapgauge
