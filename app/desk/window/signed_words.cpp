#include "app/desk/window/signed_words.hpp"

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

SignedWords::SignedWords(const QString& what, const QString& follows, const std::vector<Field>& fields,
                         QWidget* parent)
    : QWidget(parent),
      box_(new QCheckBox(what, this)),
      inside_(new QWidget(this)),
      refused_(refused_label(inside_)),
      confirm_(action_button(
          inside_, tr("Confirm"), [this] { emit given(typed()); }, tr("Confirm: %1").arg(what))) {
  QFormLayout* form = column_form(nullptr);
  for (const Field& field : fields) {
    auto* line = new LineField(field.spoken, inside_);
    line->setObjectName(QString::fromLatin1(field.object));
    line->setPlaceholderText(field.placeholder);
    line->setMaxLength(200);
    connect(line, &QLineEdit::textEdited, this, [this] {
      refused_->hide();
      fit();
    });
    form->addRow(field.title, line);
    fields_.push_back(line);
  }
  QVBoxLayout* opened = plain_column(inside_);
  opened->addWidget(words_label(follows, inside_));
  opened->addLayout(form);
  opened->addWidget(refused_);
  opened->addWidget(confirm_);
  QVBoxLayout* column = plain_column(this);
  column->addWidget(box_);
  column->addWidget(inside_);
  inside_->hide();
  connect(box_, &QCheckBox::clicked, this, &SignedWords::toggle);
}

QStringList SignedWords::typed() const {
  QStringList words;
  for (const LineField* field : fields_) words.push_back(field->text().trimmed());
  return words;
}

// There is something to confirm when it differs from what is said already.
void SignedWords::fit() {
  confirm_->setEnabled(!said_ || typed() != *said_);
}

void SignedWords::toggle(bool on) {
  inside_->setVisible(on);
  refused_->hide();
  if (on)
    fields_.front()->setFocus();
  else if (said_)
    emit takenBack();
}

void SignedWords::show_said(const std::optional<QStringList>& said) {
  if (said == said_) return fit();
  said_ = said;
  box_->setChecked(said.has_value());
  inside_->setVisible(said.has_value());
  for (std::size_t i = 0; i < fields_.size(); ++i)
    fields_[i]->show_text(said ? said->value(static_cast<qsizetype>(i)) : QString());
  refused_->hide();
  fit();
}

QLabel* refused_label(QWidget* parent) {
  QLabel* label = words_label({}, parent);
  label->setFrameShape(QFrame::StyledPanel);
  label->setMargin(4);
  label->setAutoFillBackground(true);
  label->setBackgroundRole(QPalette::ToolTipBase);
  label->setForegroundRole(QPalette::ToolTipText);
  label->hide();
  return label;
}

void SignedWords::show_refused(const QString& reason) {
  refused_->setText(reason);
  refused_->show();
}

}  // namespace wrapgauge
