#pragma once
// Whole jobs, from a file to a saved note, by hand only.

#include "app/desk/window/note_step.hpp"
#include "model/core/file.hpp"
#include "tests/desk_window/hand.hpp"
#include "tests/desk_window/window_fixture.hpp"

class QTableWidget;

namespace wrapgauge {

class JobTest : public WindowTest {
 protected:
  // Steps are opened by Ctrl+1 to Ctrl+7, as is said in the Help menu.
  void open(PlanStep step) {
    hand::key(window_, static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(step)), Qt::ControlModifier);
    EXPECT_EQ(window_.column().opened(), step);
  }
  std::string state(PlanStep step) { return window_.session().state(step).words.toStdString(); }
  bool wait_for_checks() {
    return wait_until([&] { return window_.session().checked() != nullptr; });
  }
  // The sentences under the step that is open, the way they are read.
  bool is_said(const QString& part);
  QWidget& canvas() { return *window_.views().body().findChild<QWidget*>(QStringLiteral("canvas")); }

  // An anchor by a click on the middle of the body as it is seen now.
  void place_by_click();
  void open_fine_settings(const QString& of_what);
  void estimate_on(const QString& edge_mm);
  // Saves the plan when asked, then the note as PDF, and looks into both.
  void save_note(const std::string& plan_name);
};

}  // namespace wrapgauge
