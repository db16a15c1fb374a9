#pragma once
// How fine the layout is meshed and how it is solved.

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class SolvingPanel : public StepForm {
  Q_OBJECT
 public:
  explicit SolvingPanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState&) override { rows_.show(*now.plan); }

 private:
  void add_mesh();
  void add_solver();

  FieldForm<Plan> rows_;
};

}  // namespace wrapgauge
