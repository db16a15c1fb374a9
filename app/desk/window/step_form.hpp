#pragma once
// What all forms of the plan column share: they show the session's state and edit its plan.

#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <functional>

#include "app/desk/session/plan_session.hpp"
#include "app/desk/window/field_form.hpp"

namespace wrapgauge {

class StepForm : public QWidget {
  Q_OBJECT
 public:
  explicit StepForm(PlanSession& session, QWidget* parent = nullptr);

  void bring_up_to_date();  // though it is not seen: which of its fields are there

 signals:
  void problemMet(const Problem& problem);  // for the window to say
  void chamberAsked(int chamber);           // a finding was clicked: show this chamber
  void placeAsked(const Vec3& point_m);     // or this place on the skin

 protected:
  // Called with each new state while the form is seen, and when it comes to be seen: then all of it is new.
  virtual void show_state(const SessionState& now, const SessionState& before) = 0;
  void showEvent(QShowEvent* event) override;

  // Changes a copy of the plan, or of its layout, and hands it over as one edit. Same `merge` in a row: one
  // step of undo.
  void change(const QString& words, const QString& merge, const std::function<void(Plan&)>& edit);
  void change_layout(const QString& words, const QString& merge, const std::function<void(Layout&)>& edit);
  // Rows for values of the plan, or of its layout.
  FieldForm<Plan> plan_rows(QFormLayout* form, bool hides = false);
  FieldForm<Layout> layout_rows(QFormLayout* form, bool hides = false);

  PlanSession& session() { return session_; }
  const SessionState& now() const { return session_.now(); }
  const Plan& plan() const { return *now().plan; }

 private:
  void show_refused(const std::function<void()>& edit);

  PlanSession& session_;
};

// --- what forms are put together from ---

// Below one another, without a margin; it becomes the layout of `parent`.
QVBoxLayout* plain_column(QWidget* parent);
// Side by side, as wide as one another, added below what is in the column.
void add_row(QBoxLayout& column, std::initializer_list<QWidget*> widgets);
// A form of labels above or beside their fields that stays readable in a narrow column.
QFormLayout* column_form(QWidget* parent);
QLabel* words_label(const QString& text, QWidget* parent);  // wraps, can be selected by keyboard and mouse
QLabel* heading_label(const QString& text, QWidget* parent);
// `spoken`: for a screen reader, where the words alone do not say it.
QPushButton* action_button(QWidget* parent, const QString& words, std::function<void()> action,
                           const QString& spoken = {});
// `name`: for a screen reader.
QTableWidget* words_table(QWidget* parent, const QString& name, const QStringList& heads);
// Takes its height and scrolls within it.
QWidget* in_scroll(QWidget* inside, QWidget* parent);
// Cancel, and the button that ends the dialog well.
QPushButton* add_dialog_buttons(QDialog& dialog, QBoxLayout& column, const QString& take);
void fit_height(QTableWidget& table, int most_rows);  // to its rows

}  // namespace wrapgauge
