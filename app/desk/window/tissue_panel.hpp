#pragma once
// The tissue under the skin: row of the table, muscle, model, and what is changed about the row; friction.

#include <QLabel>
#include <QPushButton>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/optional_number.hpp"
#include "app/desk/window/step_form.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {

class TissuePanel : public StepForm {
  Q_OBJECT
 public:
  explicit TissuePanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_plan() override;
  void show_checked() override { show_plan(); }

 private:
  void make_choices(QFormLayout& form);
  void make_numbers(QFormLayout& form);
  void connect_choices();
  std::size_t body_points() const;  // 0: the body is not known yet
  void take_depth();
  void take_depths_over();
  void show_depth(std::optional<double> of_table_mm);
  void show_several_depths();

  std::vector<TissueSite> sites_;
  Choice *site_, *posture_, *model_;
  NumberField *stiffness_, *friction_;
  OptionalNumber poisson_, depth_;
  QLabel *values_, *depths_;
  QPushButton* fit_depths_;
};

}  // namespace wrapgauge
