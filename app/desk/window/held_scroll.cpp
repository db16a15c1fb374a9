#include "app/desk/window/held_scroll.hpp"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>
#include <algorithm>
#include <utility>

namespace wrapgauge {

HeldScroll::HeldScroll(QWidget* parent) : QScrollArea(parent) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFrameShape(QFrame::NoFrame);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { take_focus(now); });
  connect(verticalScrollBar(), &QScrollBar::valueChanged, this, [this] {
    if (!asked_) remember();
  });
}

void HeldScroll::let_go() {
  take_focus(nullptr);
  add_above(0);
  verticalScrollBar()->setValue(0);
}

// A window that comes to the front gives the keyboard back to the same field.
void HeldScroll::take_focus(QWidget* field) {
  const bool inside = field && widget() && widget()->isAncestorOf(field);
  if (!inside && !field && !isActiveWindow() && field_) return;
  watch(false);
  field_ = inside ? field : nullptr;
  watch(true);
  remember();
}

// What moves is the field or a part of the form around it.
void HeldScroll::watch(bool on) {
  for (QWidget* part = field_; part && part != widget(); part = part->parentWidget())
    on ? part->installEventFilter(this) : part->removeEventFilter(this);
}

void HeldScroll::remember() {
  if (field_) top_ = field_->mapTo(viewport(), QPoint()).y();
}

bool HeldScroll::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Move && watched != widget() && !std::exchange(asked_, true))
    QMetaObject::invokeMethod(this, &HeldScroll::hold, Qt::QueuedConnection);  // before it is painted
  return QScrollArea::eventFilter(watched, event);
}

void HeldScroll::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  if (!asked_) remember();
}

// The range of the scroll bar follows the layout, so that is finished first.
void HeldScroll::hold() {
  if (field_ && widget() && field_->isVisible()) {
    widget()->layout()->activate();
    QApplication::sendPostedEvents(widget(), QEvent::LayoutRequest);
    int by = field_->mapTo(viewport(), QPoint()).y() - top_;
    const int taken = std::clamp(by, 0, added_);
    if (taken > 0) add_above(added_ - taken);
    by -= taken;
    const int wanted = verticalScrollBar()->value() + by;
    if (wanted < 0) add_above(added_ - wanted);
    verticalScrollBar()->setValue(std::max(0, wanted));
  }
  asked_ = false;
}

void HeldScroll::add_above(int pixels) {
  added_ = pixels;
  if (!widget() || !widget()->layout()) return;
  QMargins margins = widget()->layout()->contentsMargins();
  margins.setTop(pixels);
  widget()->layout()->setContentsMargins(margins);
  widget()->layout()->activate();
}

}  // namespace wrapgauge
