#pragma once
// The tissue under the skin: row of the table, muscle, model, and what is changed about the row; friction.

#include "app/desk/window/step_form.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {

class TissuePanel : public StepForm {
  Q_OBJECT
 public:
  explicit TissuePanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void add_choices();
  void add_numbers();
  void add_fine_settings();
  std::size_t body_points() const;  // 0: the body is not known yet
  void take_depths_over();
  void show_depths();
  void show_several_depths();

  std::vector<TissueSite> sites_;
  OptionalNumber poisson_, depth_;
  QLabel *values_, *depths_;
  QPushButton* fit_depths_;
  FieldForm<Plan> rows_;
  QWidget* fine_;
  FieldForm<Plan> fine_rows_;  // on it
};

}  // namespace wrapgauge
