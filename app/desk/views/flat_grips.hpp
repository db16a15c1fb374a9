#pragma once
// What can be gripped in the flat layout besides whole parts: the points of the chosen part and the closing
// lines. Dragged or stepped by key; the layout itself is not changed here.

#include <QGraphicsPathItem>
#include <QGraphicsScene>
#include <QObject>
#include <functional>
#include <optional>
#include <vector>

#include "app/desk/views/shown_plan.hpp"
#include "model/layout/layout_grip.hpp"

namespace wrapgauge {

class FlatGripItem;

class FlatGrips : public QObject {
  Q_OBJECT
 public:
  // Corrects a wished move of a box, both in metres.
  using Snap = std::function<Vec2(const Bounds2& box_m, const Vec2& wished_m)>;
  FlatGrips(const ShownPlan& shown, QGraphicsScene& scene, Snap snap, QObject* parent);

  void forget();  // the scene was cleared
  // The points of `part` and, when it closes, the closing lines. Points closer on the screen than can be told
  // apart are left out until they are zoomed in on.
  void show_for(const std::optional<LayoutPart>& part, double pixels_per_mm);

  void choose_next(int by);  // through all that are shown
  void unchoose();
  const std::optional<LayoutGrip>& chosen() const { return chosen_; }
  // Of what is chosen or dragged; empty when nothing is.
  QString words() const;

  std::vector<QRectF> line_boxes() const;  // what the closing lines cover of the scene, knobs included

  Layout moved_layout(const LayoutGrip& grip, const Vec2& by_m) const;

  bool dragging() const;
  void cancel_drag();
  // How far the drag that has just ended went; none when there was none.
  std::optional<Vec2> take_drag();

 private:
  friend class FlatGripItem;
  void add_points(const LayoutPart& part);
  void add_lines();
  void add(FlatGripItem* item, const QString& name);
  void grip(FlatGripItem& item);
  void drag(FlatGripItem& item, const Vec2& by_m);
  void show_preview();
  // Of a layout that was changed since it was laid on: the girth stays. None until it was.
  std::optional<Length> worn_length(const Layout& layout) const;

  const ShownPlan& shown_;
  QGraphicsScene& scene_;
  Snap snap_;
  std::vector<FlatGripItem*> items_;
  QGraphicsPathItem* preview_ = nullptr;
  FlatGripItem* dragged_ = nullptr;
  std::optional<LayoutGrip> chosen_;
  Vec2 by_m_ = Vec2::Zero();
  double scale_ = 1.0;  // pixels a millimetre
};

}  // namespace wrapgauge
