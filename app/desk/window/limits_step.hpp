#pragma once
// Step Limits: which limits hold, what is found, how high the device may be inflated, and what gives a wanted
// pressure.

#include "app/desk/window/change_panel.hpp"
#include "app/desk/window/findings_list.hpp"
#include "app/desk/window/fine_settings.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class LimitsStep : public StepForm {
  Q_OBJECT
 public:
  explicit LimitsStep(PlanSession& session, QWidget* parent = nullptr);

  ChangePanel& changes() { return *changes_; }

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void add_limits();
  void ask_for_limits();
  void take_limits(const std::optional<std::filesystem::path>& file);  // none: the program's own set
  void start_aim();
  void use_aim();
  void rebuild_wanted();

  void show_findings(const SessionState& now);

  FieldForm<Plan> limits_;
  ChangePanel* changes_;
  QLabel *set_, *status_, *plain_words_, *ceiling_, *aim_;
  FindingsList *findings_, *notes_;
  FineSettings* notes_drawer_;
  QTableWidget* wanted_;
  QPushButton *find_ceiling_, *find_aim_, *use_aim_;
};

}  // namespace wrapgauge
