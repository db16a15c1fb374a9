#include "app/desk/window/menu_keys.hpp"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace wrapgauge {
namespace {

const QLineEdit* field_of(QObject* watched) {
  if (const auto* number = qobject_cast<QAbstractSpinBox*>(watched)) return number->findChild<QLineEdit*>();
  return qobject_cast<QLineEdit*>(watched);
}

// On some desktops fields take the first two for "end of the line" and "delete".
bool is_for_menu(const QKeyEvent& key, bool typed_in) {
  if (key.modifiers() == Qt::ControlModifier && (key.key() == Qt::Key_E || key.key() == Qt::Key_D))
    return true;
  const bool redo =
      key.matches(QKeySequence::Redo) || (key.modifiers() == Qt::ControlModifier && key.key() == Qt::Key_Y);
  return !typed_in && (redo || key.matches(QKeySequence::Undo));
}

}  // namespace

MenuKeys::MenuKeys(QObject* parent) : QObject(parent) {
  QApplication::instance()->installEventFilter(this);
}

// A field says by this event that it wants the key; what is held back here goes to the menus.
bool MenuKeys::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride) return false;
  const QLineEdit* field = field_of(watched);
  return field && is_for_menu(*static_cast<QKeyEvent*>(event), field->isModified());
}

}  // namespace wrapgauge
