#pragma once
// The steps of the work one below the other, each with its state in words; one of them is open.

#include <QAbstractButton>
#include <QScrollArea>
#include <map>

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class StepHeader : public QAbstractButton {
  Q_OBJECT
 public:
  StepHeader(PlanStep step, QWidget* parent = nullptr);
  void show_state(const StepState& state);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return sizeHint(); }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

 private:
  QRect words_rect(int width) const;

  QString name_;
  StepState state_;
};

class PlanColumn : public QScrollArea {
  Q_OBJECT
 public:
  explicit PlanColumn(PlanSession& session, QWidget* parent = nullptr);

  void add_step(PlanStep step, StepForm* form);
  void open_step(PlanStep step);
  PlanStep opened() const { return opened_; }

 signals:
  void stepOpened(PlanStep step);

 private:
  struct Step {
    StepHeader* header;
    StepForm* form;
  };
  void show_states();

  PlanSession& session_;
  std::map<PlanStep, Step> steps_;
  PlanStep opened_ = PlanStep::kNote;
};

}  // namespace wrapgauge
