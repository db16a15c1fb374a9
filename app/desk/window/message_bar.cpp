#include "app/desk/window/message_bar.hpp"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

namespace wrapgauge {

MessageBar::MessageBar(QWidget* parent) : QFrame(parent), title_(new QLabel(this)), words_(new QLabel(this)) {
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::ToolTipBase);
  for (QLabel* label : {title_, words_}) label->setForegroundRole(QPalette::ToolTipText);
  QFont bold = title_->font();
  bold.setBold(true);
  title_->setFont(bold);
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::PlainText);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* close = new QPushButton(tr("Close"), this);
  close->setAccessibleName(tr("Close this message"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(10, 4, 6, 4);
  // The first line stands on the height of the button's words, however many follow.
  const int above = std::max(0, (close->sizeHint().height() - title_->fontMetrics().height()) / 2);
  for (QLabel* label : {title_, words_}) {
    label->setContentsMargins(0, above, 0, 0);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  }
  row->addWidget(title_, 0, Qt::AlignTop);
  row->addWidget(words_, 1);
  row->addWidget(close, 0, Qt::AlignTop);
  connect(close, &QPushButton::clicked, this, &QWidget::hide);
  hide();
}

void MessageBar::say_problem(const QString& words) {
  say(tr("Please correct"), words);
  problem_ = true;
}

void MessageBar::take_back_problem() {
  if (problem_) hide();
}

void MessageBar::say_news(const QString& words) {
  say(tr("Note"), words);
}

void MessageBar::say(const QString& title, const QString& words) {
  problem_ = false;
  title_->setText(title);
  words_->setText(words);
  setAccessibleName(title + QStringLiteral(": ") + words);
  show();
}

}  // namespace wrapgauge
