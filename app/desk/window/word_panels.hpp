#pragma once
// Two words that change what limits hold: that a body has no other sites, and that a clinician allows a
// device all round. Each is offered only where it means something.

#include "app/desk/window/signed_words.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class NoOtherSitesPanel : public StepForm {
  Q_OBJECT
 public:
  explicit NoOtherSitesPanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  SignedWords* words_;
};

class ClearancePanel : public StepForm {
  Q_OBJECT
 public:
  explicit ClearancePanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  SignedWords* words_;
};

}  // namespace wrapgauge
