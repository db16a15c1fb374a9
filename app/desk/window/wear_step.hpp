#pragma once
// Step Wear: where the layout lies, which way it is turned, how it closes, and how well it then goes round.

#include "app/desk/window/fine_settings.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class WearStep : public StepForm {
  Q_OBJECT
 public:
  explicit WearStep(PlanSession& session, QWidget* parent = nullptr);

  void place_at(const Vec3& point_m);                    // on the skin
  void show_picked(const std::optional<Vec3>& point_m);  // what "place at the picked spot" takes

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void arrange();
  void add_anchor();
  void add_point();
  void add_closing();
  AnchorAtStation anchor_place() const;
  void take_closing(int closing);
  void show_lying(const CheckedPlan* checked);
  void show_quality(const Wrap& wrap);

  std::optional<Vec3> picked_m_;
  double last_stretch_ = 0.0;      // of a closure that was closed so
  Length last_length_ = 1.0 * mm;  // that a closure had, as given or from its stretch
  QPushButton* here_;
  QWidget* point_box_;
  FieldForm<Plan> anchor_, point_;
  FieldForm<Layout> closing_;  // which of its rows are there goes by how it closes
  Choice* closes_;
  QLabel *verdict_, *words_;
  FineSettings* why_;
  QLabel* lies_heading_;
  QTableWidget* quality_;
};

}  // namespace wrapgauge
