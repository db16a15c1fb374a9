#pragma once
// The body with the layout on it. Camera by mouse (drag turns, with Shift or the middle button shifts, wheel
// zooms), keyboard (arrows turn, with Shift shift, + and - zoom, Home shows all) and buttons.

#include <QWidget>
#include <map>
#include <memory>

#include "app/desk/views/body_canvas.hpp"
#include "app/desk/views/gl_probe.hpp"
#include "app/desk/views/skin_probe.hpp"
#include "app/desk/views/turntable.hpp"

class QGridLayout;
class QHBoxLayout;
class QToolButton;

namespace wrapgauge {

class BodyOverlay;

class BodyView : public QWidget {
  Q_OBJECT
 public:
  BodyView(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

  // While placing, a click anchors the layout, a drag moves it along and round the body and a drag with Ctrl
  // turns it; the camera is then moved with the right or middle button and the keyboard.
  void set_placing(bool placing);
  bool placing() const { return placing_; }

  // Until a place of the body is clicked or Esc is pressed, `hint` stands over the body; empty ends it.
  void ask_for_click(const QString& hint);

  // Only a solved state has a device to show; without one the layout lies on the skin in either look.
  void show_look(BodyLook look);
  BodyLook look() const { return look_; }

  void look_from(ViewSide side);
  // Comes round to where this points, level.
  void look_from_direction(const Vec3& outward);
  void show_all();
  void show_place(const Vec3& place_m);  // turned so that it faces the eye
  QImage picture();                      // with legend and words, as on the screen
  static QString why_software() { return why_no_graphics(); }
  const Turntable& turntable() const { return turntable_; }
  QSize sizeHint() const override { return {560, 480}; }

 signals:
  // Where the user puts the anchor; `finished` with the last of a drag.
  void anchorMoved(const AnchorAtStation& anchor, const Vec3& point_m, bool finished);
  void turned(double by_deg, bool finished);  // since the drag began, right-handed about the outward normal
  void placingChanged(bool placing);
  void ringMoved(double station_m);  // the ring of the cut, dragged along the body
  void eyeMoved(const Vec3& towards_eye);
  void clickGiven(const Vec3& place_m);  // on the skin, as ask_for_click wanted
  void clickGivenUp();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  enum class Drag { kNone, kTurnTable, kShift, kAnchor, kTurnLayout, kRing };

  void add_buttons();
  void mark_look(BodyLook look);
  void add_look_buttons(QHBoxLayout& line);
  QToolButton* small_button(const QString& words, const QString& help);
  void look_at_layout();
  void look_at_worst();
  void look_at_gap();
  void chamber_chosen();
  std::shared_ptr<const ScenePart> layout_shown();
  void take_size();
  void body_changed();
  void forget_states();
  void rebuild_scene();
  void show_view();
  void press(QMouseEvent* event);
  void move(QMouseEvent* event);
  void release(QMouseEvent* event);
  void click(const QPointF& at);
  void turn_to(const Vec3& place_m, const Vec3& outward);
  void bring_clear(const Vec3& place_m);
  void give_click(const Vec3& place_m);
  std::optional<Vec3> place_under(const QPointF& at) const;
  bool is_on_ring(const QPointF& at) const;
  void move_ring(const QPointF& at);
  void move_anchor(const QPointF& at, bool finished);
  void turn_layout(const QPointF& at, bool finished);
  const Wrap* wrap() const;  // as worn now, else as estimated; null: nowhere
  Points3 points_to_fit() const;

  const ShownPlan& shown_;
  Selection& selection_;
  BodyCanvas* canvas_;
  BodyOverlay* overlay_;
  std::vector<QToolButton*> buttons_;
  QToolButton *place_button_ = nullptr, *front_button_ = nullptr;
  std::map<BodyLook, QToolButton*> look_buttons_;
  BodyLook look_ = BodyLook::kDevice;
  QGridLayout* row_ = nullptr;
  Turntable turntable_;
  std::shared_ptr<const BodyScene> scene_;
  std::shared_ptr<const ScenePart> sites_;
  std::map<int, std::shared_ptr<const ScenePart>> states_;  // recorded ones; -1: the layout alone
  std::shared_ptr<const SkinSurface> framed_;               // whom the eye was last set for
  bool framed_worn_ = false;
  bool eye_is_ours_ = true;  // nobody has turned to anything yet
  bool placing_ = false;
  QString asked_;  // hint of the click that is asked for; empty: none is
  Drag drag_ = Drag::kNone;
  QPointF pressed_at_, last_at_;
  bool moved_ = false;
  bool clicked_here_ = false;  // what is chosen was chosen on the body itself
};

}  // namespace wrapgauge
