#pragma once
// Who wears it, who watches, and the date of the note. What is not said is printed as a cell to fill.

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class WearersPanel : public StepForm {
  Q_OBJECT
 public:
  explicit WearersPanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void add_answers();
  void add_date();
  void take_date();

  FieldForm<Plan> rows_;
  LineField* date_;
  QLabel *refused_, *missing_;
};

}  // namespace wrapgauge
