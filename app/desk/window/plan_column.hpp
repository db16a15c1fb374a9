#pragma once
// The steps of the work in a rail, all of them always seen, each with a mark of where it stands; beside it
// the form of the one that is open, which scrolls by itself.

#include <QAbstractButton>
#include <QLabel>
#include <map>

#include "app/desk/window/held_scroll.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

// One stop of the rail. The words of where it stands are its hint and what a screen reader says.
class StepMark : public QAbstractButton {
  Q_OBJECT
 public:
  StepMark(PlanStep step, QWidget* parent = nullptr);
  void show_state(const StepState& state);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QRectF mark_box() const;
  void draw_thread(QPainter& painter, const QColor& ink) const;

  PlanStep step_;
  QString name_;
  StepState state_;
};

class PlanColumn : public QWidget {
  Q_OBJECT
 public:
  explicit PlanColumn(PlanSession& session, QWidget* parent = nullptr);

  void add_step(PlanStep step, StepForm* form);
  void open_step(PlanStep step);
  StepForm& form(PlanStep step) const { return *steps_.at(step).form; }
  // Its step and the drawers it lies in are opened; it is scrolled to and has the keyboard.
  void show_field(PlanStep step, QWidget& field);
  PlanStep opened() const { return opened_; }
  QString state_words() const { return words_->text(); }  // of the step that is open

 signals:
  void stepOpened(PlanStep step);

 private:
  struct Step {
    StepMark* mark;
    StepForm* form;
  };
  void show_states();
  QVBoxLayout* rail_layout();

  PlanSession& session_;
  QWidget* rail_;
  QLabel *name_, *words_;
  HeldScroll* scroll_;
  std::map<PlanStep, Step> steps_;
  PlanStep opened_ = PlanStep::kNote;
};

}  // namespace wrapgauge
