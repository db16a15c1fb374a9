#pragma once
// Step Limits: which limits hold, what is found, how high the device may be inflated, and what gives a wanted
// pressure.

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/findings_list.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class LimitsStep : public StepForm {
  Q_OBJECT
 public:
  explicit LimitsStep(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_plan() override;
  void show_solved() override;

 private:
  QWidget* make_limits();
  QWidget* make_ceiling();
  QWidget* make_aim();
  void ask_for_limits();
  void start_aim();
  void use_aim();
  void rebuild_wanted();

  Choice* use_;
  QLabel *set_, *status_, *plain_words_, *ceiling_, *aim_;
  QLineEdit* reason_;
  FindingsList* findings_;
  QTableWidget* wanted_;
  QPushButton *find_ceiling_, *find_aim_, *use_aim_;
};

}  // namespace wrapgauge
