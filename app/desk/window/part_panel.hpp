#pragma once
// Which part of the person the body is, and of which side.

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class PartPanel : public StepForm {
  Q_OBJECT
 public:
  explicit PartPanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void add_side();

  QLabel* words_;
  FieldForm<Plan> rows_;
};

}  // namespace wrapgauge
