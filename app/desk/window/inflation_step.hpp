#pragma once
// Step Inflation: what each inlet is asked for, its programme over the session, and what fills the device.

#include <QStackedWidget>

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

// One inlet: by pressure, by volume, or by air pushed in; and its steps over time.
class InletFields : public QWidget {
  Q_OBJECT
 public:
  explicit InletFields(const std::string& inlet, QWidget* parent = nullptr);

  void show_program(const InletProgram* program);  // null: asked for nothing yet
  InletProgram program() const;

 signals:
  void edited(const QString& merge);

 private:
  void make_amounts();
  void make_steps();
  void show_steps();
  void read_steps();

  std::string inlet_;
  std::vector<ProgrammeStep> steps_;
  Choice* by_;
  QStackedWidget* amounts_;
  PressureField* pressure_;
  NumberField *volume_, *pushed_, *dead_;
  QTableWidget* table_;
  QPushButton* remove_;
};

class InflationStep : public StepForm {
  Q_OBJECT
 public:
  explicit InflationStep(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void rebuild_inlets();

  QLabel* none_;
  QVBoxLayout* inlets_;
  FieldForm<Plan> supply_;
  std::vector<std::pair<std::string, InletFields*>> fields_;
};

}  // namespace wrapgauge
