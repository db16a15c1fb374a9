#include "app/desk/window/step_form.hpp"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QScrollArea>
#include <algorithm>

namespace wrapgauge {

StepForm::StepForm(PlanSession& session, QWidget* parent) : QWidget(parent), session_(session) {
  connect(&session, &PlanSession::changed, this, [this](const SessionState& before) {
    if (isVisible() && now().differs_in_work(before)) show_state(now(), before);
  });
}

void StepForm::bring_up_to_date() {
  show_state(now(), {});
  for (StepForm* part : findChildren<StepForm*>()) part->show_state(now(), {});
}

void StepForm::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  show_state(now(), {});
}

void StepForm::change(const QString& words, const QString& merge, const std::function<void(Plan&)>& edit) {
  Plan changed = plan();
  edit(changed);
  show_refused([&] { session_.edit(words, std::move(changed), merge); });
}

void StepForm::change_layout(const QString& words, const QString& merge,
                             const std::function<void(Layout&)>& edit) {
  Layout changed = plan().layout;
  edit(changed);
  show_refused([&] { session_.edit_layout(words, std::move(changed), merge); });
}

// What was typed and not taken gives way to what the plan says.
void StepForm::show_refused(const std::function<void()>& edit) {
  const auto before = now().plan;
  edit();
  if (now().plan == before && isVisible()) show_state(now(), {});
}

FieldForm<Plan> StepForm::plan_rows(QFormLayout* form, bool hides) {
  return {this, form, std::bind_front(&StepForm::change, this), hides};
}

FieldForm<Layout> StepForm::layout_rows(QFormLayout* form, bool hides) {
  return {this, form, std::bind_front(&StepForm::change_layout, this), hides};
}

QVBoxLayout* plain_column(QWidget* parent) {
  auto* column = new QVBoxLayout(parent);
  column->setContentsMargins(0, 0, 0, 0);
  return column;
}

void add_row(QBoxLayout& column, std::initializer_list<QWidget*> widgets) {
  auto* row = new QHBoxLayout;
  for (QWidget* widget : widgets) row->addWidget(widget, 1);
  column.addLayout(row);
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
  QSizePolicy as_tall_as_its_lines(QSizePolicy::Ignored, QSizePolicy::Preferred);
  as_tall_as_its_lines.setHeightForWidth(true);
  label->setSizePolicy(as_tall_as_its_lines);
  return label;
}

QLabel* heading_label(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  QFont font = label->font();
  font.setBold(true);
  label->setFont(font);
  return label;
}

QPushButton* action_button(QWidget* parent, const QString& words, std::function<void()> action,
                           const QString& spoken) {
  auto* button = new QPushButton(words, parent);
  if (!spoken.isEmpty()) button->setAccessibleName(spoken);
  QObject::connect(button, &QPushButton::clicked, parent, std::move(action));
  return button;
}

QTableWidget* words_table(QWidget* parent, const QString& name, const QStringList& heads) {
  auto* table = new QTableWidget(parent);
  table->setAccessibleName(name);
  table->setColumnCount(static_cast<int>(heads.size()));
  table->setHorizontalHeaderLabels(heads);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table->verticalHeader()->hide();
  table->setTabKeyNavigation(false);
  return table;
}

QWidget* in_scroll(QWidget* inside, QWidget* parent) {
  auto* scroll = new QScrollArea(parent);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(inside);
  return scroll;
}

QPushButton* add_dialog_buttons(QDialog& dialog, QBoxLayout& column, const QString& take) {
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, &dialog);
  QPushButton* button = buttons->addButton(take, QDialogButtonBox::AcceptRole);
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  column.addWidget(buttons);
  return button;
}

void fit_height(QTableWidget& table, int most_rows) {
  table.setFixedHeight(table.horizontalHeader()->sizeHint().height() + 4 +
                       std::min(table.rowCount(), most_rows) * table.verticalHeader()->defaultSectionSize());
}

}  // namespace wrapgauge
