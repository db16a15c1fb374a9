#pragma once
// What a user's hand does: presses buttons, types into fields, chooses from lists, drops files, answers
// dialogs. Only what is visible, enabled and not covered can be reached; fields are found by the name that a
// screen reader says.

#include <QAbstractButton>
#include <QDialog>
#include <QWidget>
#include <filesystem>
#include <functional>
#include <vector>

class QMainWindow;

namespace wrapgauge::hand {

// A button by its words or its accessible name.
QAbstractButton* button(QWidget& in, const QString& words);
void press(QWidget& in, const QString& words);

// A field whose accessible name starts with `name`: the number is typed over the old one, then Enter.
void type(QWidget& in, const QString& name, const QString& text);
// An entry of a list, opened and gone through by keyboard.
void choose(QWidget& in, const QString& name, const QString& entry);
// Into a cell of the table of that name.
void type_in_cell(QWidget& in, const QString& table, int row, int column, const QString& text);

// A click on a place of the widget, with what may lie over it taken into account.
void click(QWidget& widget, const QPoint& at, Qt::KeyboardModifiers keys = {});
void drag(QWidget& widget, const QPoint& from, const QPoint& to, Qt::KeyboardModifiers keys = {});

void drop(QWidget& window, const std::filesystem::path& file);
// Through the menu bar, from menu to menu, by mouse.
void choose_in_menu(QMainWindow& window, const QStringList& words);
void key(QWidget& window, Qt::Key key, Qt::KeyboardModifiers keys = {});

// How often the hand did something of the above or gave an answer: a click, a number with its Enter, an entry
// of a list, a way through a menu and a dropped file are one each.
int actions();

// What is done with each dialog that comes up while `act` is done, in this order.
using Answer = std::function<void(QDialog&)>;
void with_answers(const std::function<void()>& act, const std::vector<Answer>& answers);
Answer give_file(const std::filesystem::path& file);
Answer say(const QString& button_words);

}  // namespace wrapgauge::hand
