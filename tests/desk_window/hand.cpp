#include "tests/desk_window/hand.hpp"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDropEvent>
#include <QLineEdit>
#include <QListView>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QPointer>
#include <QScrollArea>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

#include "tests/desk_session/wait_until.hpp"

namespace wrapgauge::hand {
namespace {

int done = 0;

QString without_mark(QString words) {
  return words.remove(QChar('&'));
}

template <class Widget>
Widget* called(QWidget& in, const QString& name) {
  for (Widget* widget : in.findChildren<Widget*>())
    if (widget->isVisible() && widget->accessibleName().startsWith(name)) return widget;
  ADD_FAILURE() << "nothing to be seen is called '" << name.toStdString() << "'";
  return nullptr;
}

bool lies_open(QWidget& widget, const QPoint& at) {
  const QWidget* top = widget.window()->childAt(widget.mapTo(widget.window(), at));
  return top && (top == &widget || widget.isAncestorOf(top));
}

// By scrolling, again where a column has grown in between.
void reveal(QWidget& widget, const QPoint& at) {
  wait_until([&] {
    for (QWidget* around = widget.parentWidget(); around; around = around->parentWidget())
      if (auto* area = qobject_cast<QScrollArea*>(around)) {
        const QPoint in_area = widget.mapTo(area->widget(), at);
        area->ensureVisible(in_area.x(), in_area.y(), 0, 40);
      }
    return lies_open(widget, at);
  });
}

QWidget* field_to_type_in(QWidget& in, const QString& name) {
  for (QWidget* found : in.findChildren<QWidget*>())
    if (found->isVisible() && found->accessibleName().startsWith(name) &&
        (qobject_cast<QAbstractSpinBox*>(found) || qobject_cast<QLineEdit*>(found)))
      return found;
  return nullptr;
}

}  // namespace

int actions() {
  return done;
}

QAbstractButton* button(QWidget& in, const QString& words) {
  for (QAbstractButton* found : in.findChildren<QAbstractButton*>())
    if (found->isVisible() && (without_mark(found->text()) == words || found->accessibleName() == words))
      return found;
  ADD_FAILURE() << "no button to be seen says '" << words.toStdString() << "'";
  return nullptr;
}

void press(QWidget& in, const QString& words) {
  QAbstractButton* found = button(in, words);
  if (!found) return;
  EXPECT_TRUE(found->isEnabled()) << words.toStdString();
  click(*found, {std::min(10, found->width() / 2), found->height() / 2});
}

void click(QWidget& widget, const QPoint& at, Qt::KeyboardModifiers keys) {
  ++done;
  reveal(widget, at);
  EXPECT_TRUE(lies_open(widget, at)) << "something lies over " << widget.accessibleName().toStdString();
  QTest::mouseClick(&widget, Qt::LeftButton, keys, at);
}

void drag(QWidget& widget, const QPoint& from, const QPoint& to, Qt::KeyboardModifiers keys) {
  ++done;
  EXPECT_TRUE(lies_open(widget, from)) << "something lies over " << widget.accessibleName().toStdString();
  constexpr int kSteps = 6;
  QTest::mousePress(&widget, Qt::LeftButton, keys, from);
  for (int step = 1; step <= kSteps; ++step) {
    const QPoint at = from + (to - from) * step / kSteps;
    QMouseEvent move(QEvent::MouseMove, at, widget.mapToGlobal(QPointF(at)), Qt::NoButton, Qt::LeftButton,
                     keys);
    QApplication::sendEvent(&widget, &move);
    QCoreApplication::processEvents();
  }
  QTest::mouseRelease(&widget, Qt::LeftButton, keys, to);
}

void type(QWidget& in, const QString& name, const QString& text) {
  ++done;
  QWidget* field = nullptr;
  // Rows that have just been made are shown in a later turn of the event loop.
  wait_until([&] { return (field = field_to_type_in(in, name)) != nullptr; }, kNeverComes_ms);
  ASSERT_TRUE(field) << "no field to be seen is called '" << name.toStdString() << "'";
  ASSERT_TRUE(field->isEnabled()) << name.toStdString();
  reveal(*field, field->rect().center());
  field->setFocus(Qt::TabFocusReason);
  QTest::keyClick(field, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(field, text);
  QTest::keyClick(field, Qt::Key_Return);
}

void choose(QWidget& in, const QString& name, const QString& entry) {
  ++done;
  auto* list = called<QComboBox>(in, name);
  ASSERT_TRUE(list);
  ASSERT_TRUE(list->isEnabled()) << name.toStdString();
  const int at = list->findText(entry);
  ASSERT_GE(at, 0) << name.toStdString() << " has no '" << entry.toStdString() << "'";
  reveal(*list, list->rect().center());
  list->setFocus(Qt::TabFocusReason);
  const QPointer<QWidget> open = list->view();
  QTest::keyClick(list, Qt::Key_F4);
  EXPECT_TRUE(wait_until([&] { return open->isVisible(); })) << name.toStdString();
  QTest::keyClick(open, Qt::Key_Home);
  for (int step = 0; step < at; ++step) QTest::keyClick(open, Qt::Key_Down);
  QTest::keyClick(open, Qt::Key_Return);
  EXPECT_TRUE(wait_until([&] { return !open || !open->isVisible(); })) << name.toStdString();
}

void type_in_cell(QWidget& in, const QString& name, int row, int column, const QString& text) {
  auto* table = called<QTableWidget>(in, name);
  ASSERT_TRUE(table);
  reveal(*table, {4, 4});
  const QPoint at = table->visualItemRect(table->item(row, column)).center();
  click(*table->viewport(), at);
  QTest::mouseDClick(table->viewport(), Qt::LeftButton, {}, at);
  auto* cell = table->viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(cell) << "the cell cannot be written into";
  cell->selectAll();
  QTest::keyClicks(cell, text);
  QTest::keyClick(cell, Qt::Key_Return);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // the cell's editor is gone
}

void drop(QWidget& window, const std::filesystem::path& file) {
  ++done;
  QMimeData files;
  files.setUrls({QUrl::fromLocalFile(QString::fromStdString(file.string()))});
  const QPoint at = window.rect().center();
  QDragEnterEvent enter(at, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&window, &enter);
  EXPECT_TRUE(enter.isAccepted());
  QDropEvent let_go(at, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&window, &let_go);
  // The file is opened in the next turn of the event loop, before what is asked for after it.
  bool opened = false;
  QTimer::singleShot(0, &window, [&] { opened = true; });
  EXPECT_TRUE(wait_until([&] { return opened; }));
}

void choose_in_menu(QMainWindow& window, const QStringList& words) {
  ++done;
  QWidget* shown = window.menuBar();
  for (const QString& word : words) {
    QAction* found = nullptr;
    for (QAction* action : shown->actions())
      if (without_mark(action->text()) == word) found = action;
    ASSERT_TRUE(found) << "no menu says '" << word.toStdString() << "'";
    ASSERT_TRUE(found->isEnabled()) << word.toStdString();
    const auto* bar = qobject_cast<QMenuBar*>(shown);
    const QRect at = bar ? bar->actionGeometry(found) : qobject_cast<QMenu*>(shown)->actionGeometry(found);
    QTest::mouseClick(shown, Qt::LeftButton, {}, at.center());
    if (!found->menu()) return;
    shown = found->menu();
    EXPECT_TRUE(wait_until([shown] { return shown->isVisible(); })) << word.toStdString();
  }
}

void key(QWidget& window, Qt::Key key, Qt::KeyboardModifiers keys) {
  ++done;
  window.activateWindow();
  EXPECT_TRUE(QTest::qWaitForWindowActive(&window, kNeverComes_ms)) << "keys do not reach the window";
  QWidget* focus = window.focusWidget();
  QTest::keyClick(focus ? focus : &window, key, keys);
  QCoreApplication::processEvents();
}

void with_answers(const std::function<void()>& act, const std::vector<Answer>& answers) {
  std::size_t next = 0;
  QWidget* answered = nullptr;
  QTimer look;
  QObject::connect(&look, &QTimer::timeout, [&] {
    auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    if (!dialog || !dialog->isVisible() || dialog == answered) return;
    answered = dialog;
    if (next < answers.size()) return answers[next++](*dialog);
    ADD_FAILURE() << "asked once too often: " << dialog->windowTitle().toStdString();
    dialog->reject();
  });
  look.start(20);
  act();
  wait_until([&] { return next == answers.size() && !QApplication::activeModalWidget(); });
  EXPECT_EQ(next, answers.size()) << "fewer dialogs came up than expected";
}

// The path is pasted, as from a file manager.
Answer give_file(const std::filesystem::path& file) {
  return [file](QDialog& dialog) {
    ++done;
    auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
    if (!name) {
      ADD_FAILURE() << "no dialog for a file came up but " << dialog.windowTitle().toStdString();
      return dialog.reject();
    }
    QGuiApplication::clipboard()->setText(QString::fromStdString(file.string()));
    QTest::keyClick(name, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(name, Qt::Key_V, Qt::ControlModifier);
    QTest::keyClick(name, Qt::Key_Return);
    if (dialog.isVisible()) QTest::keyClick(name, Qt::Key_Return);  // the first ended a list of proposals
  };
}

Answer say(const QString& button_words) {
  return [button_words](QDialog& dialog) { press(dialog, button_words); };
}

}  // namespace wrapgauge::hand
