#include "app/desk/window/step_form.hpp"

#include <QFormLayout>
#include <QLabel>

namespace wrapgauge {

StepForm::StepForm(PlanSession& session, QWidget* parent) : QWidget(parent), session_(session) {
  // A form that is not seen is brought up to date when it is shown.
  connect(&session, &PlanSession::planChanged, this, [this] {
    if (isVisible()) show_plan();
  });
  connect(&session, &PlanSession::checkedChanged, this, [this] {
    if (isVisible()) show_checked();
  });
  const auto result = [this] {
    if (isVisible()) show_solved();
  };
  connect(&session, &PlanSession::solvedChanged, this, result);
  connect(&session, &PlanSession::statesChanged, this, result);
}

void StepForm::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  show_plan();
  show_checked();
  show_solved();
}

void StepForm::change(const QString& words, const QString& merge, const std::function<void(Plan&)>& edit) {
  Plan changed = plan();
  edit(changed);
  session_.edit(words, std::move(changed), merge);
}

QFormLayout* column_form(QWidget* parent) {
  auto* form = parent ? new QFormLayout(parent) : new QFormLayout;
  form->setContentsMargins(0, 0, 0, 0);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  form->setLabelAlignment(Qt::AlignLeft);
  return form;
}

QLabel* words_label(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  return label;
}

QLabel* heading_label(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  return label;
}

}  // namespace wrapgauge
