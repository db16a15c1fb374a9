#include "app/desk/window/message_bar.hpp"

#include <QHBoxLayout>
#include <QPushButton>

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
  row->addWidget(title_, 0, Qt::AlignTop);
  row->addWidget(words_, 1);
  row->addWidget(close, 0, Qt::AlignTop);
  connect(close, &QPushButton::clicked, this, &QWidget::hide);
  hide();
}

void MessageBar::say_problem(const QString& words) {
  say(tr("Please mend"), words);
}

void MessageBar::say_news(const QString& words) {
  say(tr("Note"), words);
}

void MessageBar::say(const QString& title, const QString& words) {
  title_->setText(title);
  words_->setText(words);
  setAccessibleName(title + QStringLiteral(": ") + words);
  show();
}

}  // namespace wrapgauge
