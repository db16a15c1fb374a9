#include "app/desk/window/field_remark.hpp"

#include <QAccessible>
#include <QEvent>
#include <QTimer>
#include <algorithm>

namespace wrapgauge {
namespace {

constexpr int kSeconds = 12, kMargin = 8;

}  // namespace

FieldRemark::FieldRemark(QWidget& field) : QLabel(field.window()) {
  setObjectName(QStringLiteral("remark"));
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAttribute(Qt::WA_DeleteOnClose);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::ToolTipBase);
  setForegroundRole(QPalette::ToolTipText);
  setFrameShape(QFrame::StyledPanel);
  setMargin(kMargin);
  setWordWrap(true);
  setTextFormat(Qt::PlainText);
  field.installEventFilter(this);
  QTimer::singleShot(1000 * kSeconds, this, &QWidget::close);
}

void FieldRemark::say(QWidget& field, const QString& words) {
  for (FieldRemark* old : field.window()->findChildren<FieldRemark*>()) old->close();
  auto* remark = new FieldRemark(field);
  remark->setText(words);
  remark->stand_beside(field);
  remark->show();
  remark->raise();
  field.setAccessibleDescription(words);
  QAccessibleEvent said(&field, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&said);
}

void FieldRemark::stand_beside(const QWidget& field) {
  constexpr int kMost = 320;
  const QWidget& window = *field.window();
  resize(std::min(kMost, window.width()), 10);
  resize(width(), heightForWidth(width()));
  const QPoint below = field.mapTo(&window, QPoint(0, field.height() + 2));
  const int above = field.mapTo(&window, QPoint()).y() - height() - 2;
  move(std::clamp(below.x(), 0, std::max(0, window.width() - width())),
       below.y() + height() <= window.height() ? below.y() : std::max(0, above));
}

bool FieldRemark::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress || event->type() == QEvent::FocusOut ||
      event->type() == QEvent::Hide || event->type() == QEvent::Move)
    close();
  return QLabel::eventFilter(watched, event);
}

}  // namespace wrapgauge
