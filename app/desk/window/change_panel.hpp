#pragma once
// What to change: single changes that bring the plan within its limits or nearer to them, a card each. Made
// by a button, taken back by undo.

#include "app/desk/window/card_list.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class ChangeList : public CardList {
  Q_OBJECT
 public:
  using CardList::CardList;
  void show_changes(const Advice& advice);
};

class ChangePanel : public StepForm {
  Q_OBJECT
 public:
  explicit ChangePanel(PlanSession& session, QWidget* parent = nullptr);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void make_change();
  void show_cards(const SessionState& now);

  QLabel *verdict_, *rest_;
  ChangeList* list_;
  QPushButton *find_, *make_;
  std::shared_ptr<const Advice> shown_;
};

}  // namespace wrapgauge
