#pragma once
// How fine the layout is meshed and how it is solved.

#include "app/desk/window/optional_number.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class SolvingPanel : public StepForm {
  Q_OBJECT
 public:
  explicit SolvingPanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_plan() override;

 private:
  void make_mesh(QFormLayout& form);
  void make_solver(QFormLayout& form);
  void take_mesh();

  NumberField *edge_, *steps_;
  OptionalNumber seam_edge_, seam_band_;
  QCheckBox *bending_, *slack_, *compare_;
};

}  // namespace wrapgauge
