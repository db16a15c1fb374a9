#pragma once
// The verdict, always at the same place: what is worst, how much of its limit it takes, how far the device
// may be inflated within the limits, and one button.

#include <QFrame>
#include <QPushButton>

#include "app/desk/session/plan_session.hpp"
#include "app/desk/session/verdict_line.hpp"
#include "app/desk/window/brief_label.hpp"

namespace wrapgauge {

class VerdictBar : public QFrame {
  Q_OBJECT
 public:
  explicit VerdictBar(PlanSession& session, QWidget* parent = nullptr);

  const VerdictLine& line() const { return line_; }

 signals:
  void stepAsked(PlanStep step);

 private:
  class Bar;
  void arrange();
  void show_line();
  void act();

  PlanSession& session_;
  VerdictLine line_;
  Bar* bar_;
  BriefLabel *words_, *made_of_, *highest_;
  QLabel* highest_name_;
  QPushButton* button_;
};

}  // namespace wrapgauge
