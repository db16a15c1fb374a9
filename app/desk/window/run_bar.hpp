#pragma once
// What is being worked out, how far it is, and a way to stop it.

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>

#include "app/desk/session/plan_session.hpp"

namespace wrapgauge {

// Stages of the model in the window's language.
QString stage_words(const QString& stage);

class RunBar : public QWidget {
  Q_OBJECT
 public:
  explicit RunBar(PlanSession& session, QWidget* parent = nullptr);

 private:
  void take_running(const SessionState& before);
  void show_progress();

  PlanSession& session_;
  QTimer shown_;  // runs while what is shown is still fresh
  QLabel* stage_;
  QProgressBar* progress_;
  QPushButton* cancel_;
};

}  // namespace wrapgauge
