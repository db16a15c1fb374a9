#pragma once
// Body, flat layout and inflation strip side by side; hands the session's values to them and their edits
// back.

#include <QSplitter>

#include "app/desk/session/plan_session.hpp"
#include "app/desk/views/body_view.hpp"
#include "app/desk/views/chamber_table.hpp"
#include "app/desk/views/cut_view.hpp"
#include "app/desk/views/flat_view.hpp"
#include "app/desk/views/path_strip.hpp"
#include "app/desk/views/probe_panel.hpp"

class QTabWidget;

namespace wrapgauge {

class ViewArea : public QWidget {
  Q_OBJECT
 public:
  explicit ViewArea(PlanSession& session, QWidget* parent = nullptr);

  Selection& selection() { return selection_; }
  const ShownPlan& shown() const { return shown_; }
  BodyView& body() { return *body_; }
  FlatView& flat() { return *flat_; }
  PathStrip& strip() { return *strip_; }

  // What the plan would be, shown in its place until null is given or the plan or its result changes. Nothing
  // of it is kept. `words`: what would be changed.
  void look_at(std::shared_ptr<const Plan> would_be, const QString& words);

  void show_chamber(int chamber);
  void show_place(const Vec3& place_m);
  QByteArray save_state() const;
  void restore_state(const QByteArray& state);

 signals:
  void problemMet(const Problem& problem);

 private:
  void arrange();
  void connect_edits();
  void take_grip(const LayoutGrip& grip, const Layout& changed);
  void move_part(const LayoutPart& part, const Vec2& by_m);
  void begin_look();
  void end_look();
  void take_look(const RunResult& result);
  void show_state(const SessionState& now, const SessionState& before);
  void forget_plan();
  void show_plan(const Plan& plan);
  void show_checked(const CheckedPlan& checked);
  void show_result(const SessionState& now, const SessionState& before);
  void show_in_hand(const Plan& moved);
  void take_anchor(const AnchorAtStation& anchor, const Vec3& point_m, bool finished);
  void take_turn(double by_deg, bool finished);

  PlanSession& session_;
  Selection selection_;
  ShownPlan shown_;
  BodyView* body_;
  FlatView* flat_;
  PathStrip* strip_;
  QSplitter *across_, *down_, *below_;
  std::optional<double> turn_before_;
  std::shared_ptr<const Plan> would_be_;  // null: the plan itself is shown
  QString would_be_words_;
  QTimer look_timer_;                       // a hand that only passes over asks for nothing
  std::unique_ptr<EstimateRunner> looker_;  // made when it is first needed
};

}  // namespace wrapgauge
