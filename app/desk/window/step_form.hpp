#pragma once
// What all forms of the plan column share: they show the session's plan and edit it.

#include <QWidget>
#include <functional>

#include "app/desk/session/plan_session.hpp"

class QFormLayout;
class QLabel;

namespace wrapgauge {

class StepForm : public QWidget {
  Q_OBJECT
 public:
  explicit StepForm(PlanSession& session, QWidget* parent = nullptr);

 signals:
  void problemMet(const Problem& problem);  // for the window to say
  void chamberAsked(int chamber);           // a finding was clicked: show this chamber
  void placeAsked(const Vec3& point_m);     // or this place on the skin

 protected:
  virtual void show_plan() = 0;   // the plan changed
  virtual void show_checked() {}  // checks are there
  virtual void show_solved() {}   // a result is there, gone or stale
  void showEvent(QShowEvent* event) override;

  // Changes a copy of the plan and hands it over as one edit. Same `merge` in a row: one step of undo.
  void change(const QString& words, const QString& merge, const std::function<void(Plan&)>& edit);
  PlanSession& session() { return session_; }
  const PlanSession& session() const { return session_; }
  const Plan& plan() const { return session_.plan(); }

 private:
  PlanSession& session_;
};

// A form of labels above or beside their fields that stays readable in a narrow column.
QFormLayout* column_form(QWidget* parent);
QLabel* words_label(const QString& text, QWidget* parent);  // wraps, can be selected by keyboard and mouse
QLabel* heading_label(const QString& text, QWidget* parent);

}  // namespace wrapgauge
