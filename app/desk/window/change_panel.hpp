#pragma once
// What to change: single changes that bring the plan within its limits or nearer to them, a card each. Made
// by a button, taken back by undo.

#include "app/desk/window/card_list.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class ChangeList : public CardList {
  Q_OBJECT
 public:
  explicit ChangeList(const QString& name, QWidget* parent = nullptr);
  void show_changes(const Advice& advice);

 signals:
  void pointedAt(int row);  // by mouse or keys; -1: at none any more

 protected:
  void leaveEvent(QEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
};

class ChangePanel : public StepForm {
  Q_OBJECT
 public:
  explicit ChangePanel(PlanSession& session, QWidget* parent = nullptr);

 signals:
  // One of the cards is pointed at: show the plan as it would be. Null: none is any more.
  void lookAsked(std::shared_ptr<const Plan> would_be, const QString& words);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void make_change();
  void look_at(int row);
  void show_cards(const SessionState& now);

  QLabel *verdict_, *rest_;
  ChangeList* list_;
  QPushButton *find_, *make_;
  std::shared_ptr<const Advice> shown_;
};

}  // namespace wrapgauge
