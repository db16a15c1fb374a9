#include <QActionGroup>
#include <QFileDialog>
#include <QMenuBar>
#include <QMessageBox>
#include <QSettings>
#include <functional>

#include "app/desk/window/body_step.hpp"
#include "app/desk/window/go_to_field.hpp"
#include "app/desk/window/layout_step.hpp"
#include "app/desk/window/main_window.hpp"
#include "app/desk/window/message_bar.hpp"
#include "app/desk/window/note_step.hpp"
#include "app/desk/window/plan_column.hpp"
#include "app/desk/window/recent_plans.hpp"
#include "app/desk/window/view_area.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

// Entries of which one holds.
template <class Value>
void add_one_of(QMenu& menu, const std::vector<std::pair<QString, Value>>& entries, const Value& holds,
                const std::function<void(const Value&)>& take) {
  auto* group = new QActionGroup(&menu);
  for (const auto& [words, value] : entries) {
    QAction* action = group->addAction(words);
    action->setCheckable(true);
    action->setChecked(value == holds);
    QObject::connect(action, &QAction::triggered, &menu, [take, value = value] { take(value); });
    menu.addAction(action);
  }
}

}  // namespace

void MainWindow::add_plan_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Plan"));
  menu->addAction(tr("&New"), QKeySequence::New, this, [this] {
    if (may_leave()) start_new();
  });
  menu->addAction(tr("Start pa&ge…"), this, &MainWindow::show_start_page);
  menu->addAction(tr("&Open…"), QKeySequence::Open, this, [this] {
    const QString file = QFileDialog::getOpenFileName(this, tr("Open a plan"), {}, tr("Plans (*.json)"));
    if (!file.isEmpty()) open_plan(file.toStdString());
  });
  QMenu* recent = menu->addMenu(tr("&Recent plans"));
  connect(recent, &QMenu::aboutToShow, this, [this, recent] { fill_recent(*recent); });
  menu->addAction(tr("Worked &demo"), this, &MainWindow::open_demo);
  menu->addSeparator();
  menu->addAction(tr("&Save"), QKeySequence::Save, this, &MainWindow::save);
  menu->addAction(tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")), this, [this] { save_as(); });
  menu->addSeparator();
  menu->addAction(tr("Open a &mesh…"), QKeySequence(tr("Ctrl+M")), this, [this] {
    column_->open_step(PlanStep::kBody);
    body_->ask_for_mesh();
  });
  menu->addAction(tr("Open a dra&wing…"), QKeySequence(tr("Ctrl+D")), this, [this] {
    column_->open_step(PlanStep::kLayout);
    layout_->ask_for_layout();
  });
  menu->addAction(tr("Save &results…"), this, &MainWindow::save_results);
  menu->addAction(tr("Save the fillin&g as pictures…"), this, &MainWindow::save_filling);
  menu->addAction(tr("Save the filling as a &film…"), this, &MainWindow::save_film);
  menu->addAction(tr("Save the no&te…"), QKeySequence(tr("Ctrl+Shift+N")), this, [this] {
    column_->open_step(PlanStep::kNote);
    note_->ask_where_to_save();
  });
  menu->addAction(tr("&Print what is shown…"), QKeySequence::Print, this, &MainWindow::print);
  menu->addSeparator();
  menu->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);
}

void MainWindow::fill_recent(QMenu& menu) {
  menu.clear();
  for (const QString& file : recent_plans())
    menu.addAction(file, this, [this, file] { open_plan(file.toStdString()); });
  if (menu.isEmpty()) menu.addAction(tr("None yet"))->setEnabled(false);
}

void MainWindow::add_edit_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Edit"));
  QAction* undo = session_.undo_stack().createUndoAction(this, tr("Undo"));
  undo->setShortcut(QKeySequence::Undo);
  QAction* redo = session_.undo_stack().createRedoAction(this, tr("Redo"));
  redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
  menu->addAction(undo);
  menu->addAction(redo);
}

void MainWindow::add_estimate_menu() {
  QMenu* menu = menuBar()->addMenu(tr("E&stimate"));
  menu->addAction(tr("&Final estimate"), QKeySequence(tr("Ctrl+E")), &session_,
                  &PlanSession::estimate_standard);
  menu->addAction(tr("Find the &highest inflation"), this, [this] {
    column_->open_step(PlanStep::kLimits);
    session_.find_ceiling();
  });
  menu->addSeparator();
  QAction* cancel = menu->addAction(tr("&Cancel"), &session_, &PlanSession::cancel);
  cancel->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Period));
}

void MainWindow::add_view_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&View"));
  int key = Qt::Key_1;
  for (const PlanStep step : kPlanSteps)
    menu->addAction(tr("Step %1").arg(step_name(step)), QKeySequence(Qt::CTRL | static_cast<Qt::Key>(key++)),
                    this, [this, step] { column_->open_step(step); });
  menu->addAction(tr("&Go to a field…"), QKeySequence(tr("Ctrl+K")), this,
                  [this] { GoToField(*column_, this).exec(); });
  menu->addSeparator();
  const std::pair<QString, QWidget*> areas[] = {{tr("To the plan"), column_},
                                                {tr("To the &body"), &views_->body()},
                                                {tr("To the &flat layout"), &views_->flat()},
                                                {tr("To the &inflation strip"), &views_->strip()}};
  key = Qt::Key_1;
  for (const auto& [words, area] : areas)
    menu->addAction(words, QKeySequence(Qt::ALT | static_cast<Qt::Key>(key++)), area,
                    [area = area] { area->setFocus(Qt::ShortcutFocusReason); });
  menu->addSeparator();
  add_one_of<PressureUnit>(
      *menu,
      {{tr("kPa first"), PressureUnit::kKilopascal}, {tr("mmHg first"), PressureUnit::kMillimetresOfMercury}},
      views_->selection().unit(), [this](PressureUnit unit) { views_->selection().show_unit(unit); });
  menu->addSeparator();
  add_look_menu(*menu->addMenu(tr("&Colours")));
  add_language_menu(*menu->addMenu(tr("&Language")));
}

void MainWindow::add_look_menu(QMenu& menu) {
  add_one_of<Look>(
      menu,
      {{tr("As the desktop"), Look::kAsDesktop}, {tr("Light"), Look::kLight}, {tr("Dark"), Look::kDark}},
      look_from_name(QSettings().value(QStringLiteral("look")).toString()), [](Look look) {
        QSettings().setValue(QStringLiteral("look"), look_name(look));
        apply_look(look);
      });
}

void MainWindow::add_language_menu(QMenu& menu) {
  add_one_of<QString>(menu,
                      {{tr("As the desktop"), QString()},
                       {QStringLiteral("English"), QStringLiteral("en")},
                       {QStringLiteral("Deutsch"), QStringLiteral("de")}},
                      QSettings().value(QStringLiteral("language")).toString(), [this](const QString& code) {
                        QSettings().setValue(QStringLiteral("language"), code);
                        message_->say_news(tr("The language changes when the program is started again."));
                      });
}

void MainWindow::add_help_menu() {
  QMenu* menu = menuBar()->addMenu(tr("&Help"));
  menu->addAction(tr("&First steps"), QKeySequence::HelpContents, this, [this] {
    QMessageBox::information(
        this, tr("First steps"),
        tr("1. Body: open a mesh of the limb, or make one from measures.\n"
           "2. Layout: open a drawing and say what each shape is, or make a layout.\n"
           "3. Wear: place it on the body and say how it closes.\n"
           "4. Inflation: give every inlet a pressure or a volume.\n"
           "5. Limits: read what is found; each sentence jumps to its place.\n"
           "6. Note: make the final estimate, then save the note for the study's reviewers.\n\n"
           "A preview follows every change. Ctrl+1 to Ctrl+7 open the steps, Alt+1 to Alt+4 go to the areas, "
           "Ctrl+E "
           "estimates, Esc cancels."));
  });
  menu->addAction(tr("&About Wrapgauge"), this, [this] {
    QMessageBox::about(
        this, tr("About Wrapgauge"),
        tr("Wrapgauge %1\n\nPredicts, before anyone wears it, how hard an inflatable silicone wearable "
           "presses on a body.\n\nPredictions only: not a medical device; ask a clinician before "
           "anyone wears it.\n\nLicence: GPL-3.0-or-later.")
            .arg(QString::fromUtf8(program_version().data())));
  });
}

}  // namespace wrapgauge
