#include "app/desk/window/go_to_field.hpp"

#include <QAbstractButton>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/window/fine_settings.hpp"
#include "app/desk/window/plan_column.hpp"

namespace wrapgauge {
namespace {

// As a screen reader says it.
QString name_of(const QWidget& widget) {
  if (!widget.accessibleName().isEmpty()) return widget.accessibleName();
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  return button ? button->text().remove(QChar('&')) : QString();
}

// The inner line of a number or a list is named with what is around it.
bool is_inner(const QWidget& widget) {
  const QWidget* around = widget.parentWidget();
  return around && (around->inherits("QAbstractSpinBox") || around->inherits("QComboBox"));
}

// What a drawer hides while it is closed is there; what the plan has no value for is not.
bool is_there(const QWidget& widget, const QWidget& form) {
  for (const QWidget* at = &widget; at && at != &form; at = at->parentWidget())
    if (at->isHidden() && !qobject_cast<const FineSettings*>(at->parentWidget())) return false;
  return widget.isEnabledTo(&form);
}

bool can_be_gone_to(const QWidget& widget, const QWidget& form) {
  return (widget.focusPolicy() & Qt::TabFocus) && !is_inner(widget) && !name_of(widget).isEmpty() &&
         is_there(widget, form);
}

bool holds_every_word(const QString& words, const QString& typed) {
  const QStringList wanted = typed.split(QChar(' '), Qt::SkipEmptyParts);
  return std::all_of(wanted.begin(), wanted.end(),
                     [&](const QString& word) { return words.contains(word, Qt::CaseInsensitive); });
}

}  // namespace

std::vector<FieldPlace> field_places(const PlanColumn& column) {
  std::vector<FieldPlace> places;
  for (const PlanStep step : kPlanSteps) {
    StepForm& form = column.form(step);
    form.bring_up_to_date();
    for (QWidget* widget : form.findChildren<QWidget*>())
      if (can_be_gone_to(*widget, form))
        places.push_back({step, step_name(step) + QStringLiteral(": ") + name_of(*widget), widget});
  }
  return places;
}

std::vector<FieldPlace> matching(const std::vector<FieldPlace>& places, const QString& typed) {
  std::vector<FieldPlace> found;
  for (const FieldPlace& place : places)
    if (holds_every_word(place.words, typed)) found.push_back(place);
  const QString begins = typed.trimmed();
  std::stable_partition(found.begin(), found.end(), [&](const FieldPlace& place) {
    const QString name = place.words.section(QStringLiteral(": "), 1);
    return name.startsWith(begins, Qt::CaseInsensitive) ||
           place.words.startsWith(begins, Qt::CaseInsensitive);
  });
  return found;
}

GoToField::GoToField(PlanColumn& column, QWidget* parent)
    : QDialog(parent),
      column_(column),
      all_(field_places(column)),
      typed_(new QLineEdit(this)),
      list_(new QListWidget(this)) {
  setWindowTitle(tr("Go to a field"));
  typed_->setPlaceholderText(tr("part of its name, such as pressure"));
  typed_->setAccessibleName(tr("Part of a field's name"));
  typed_->installEventFilter(this);
  list_->setAccessibleName(tr("Fields of that name"));
  auto* box = new QVBoxLayout(this);
  box->addWidget(typed_);
  box->addWidget(list_);
  resize(30 * fontMetrics().averageCharWidth() + 200, 20 * fontMetrics().height());
  connect(typed_, &QLineEdit::textChanged, this, &GoToField::show_matching);
  connect(typed_, &QLineEdit::returnPressed, this, &GoToField::go);
  connect(list_, &QListWidget::itemActivated, this, &GoToField::go);
  connect(list_, &QListWidget::itemClicked, this, &GoToField::go);
  show_matching();
}

// Arrows go through the list while the letters stay where they are typed.
bool GoToField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == typed_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const int by = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
    if (by != 0) {
      list_->setCurrentRow(std::clamp(list_->currentRow() + by, 0, std::max(0, list_->count() - 1)));
      return true;
    }
  }
  return QDialog::eventFilter(watched, event);
}

void GoToField::show_matching() {
  shown_ = matching(all_, typed_->text());
  list_->clear();
  for (const FieldPlace& place : shown_) list_->addItem(place.words);
  if (list_->count() > 0)
    list_->setCurrentRow(0);
  else
    list_->addItem(tr("No field has this in its name."));
  list_->setEnabled(!shown_.empty());
}

void GoToField::go() {
  const int row = list_->currentRow();
  if (row < 0 || static_cast<std::size_t>(row) >= shown_.size()) return;
  const FieldPlace place = shown_[static_cast<std::size_t>(row)];
  accept();
  column_.show_field(place.step, *place.field);
}

}  // namespace wrapgauge
