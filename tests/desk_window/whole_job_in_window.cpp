#include <QCheckBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QPushButton>
#include <QTableWidget>
#include <QTimer>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/layout_step.hpp"
#include "app/desk/window/note_step.hpp"
#include "bodyforms/form.hpp"
#include "model/core/file.hpp"
#include "model/io/mesh_writer.hpp"
#include "model/layout/drawing_map.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

class WholeJobTest : public WindowTest {
 protected:
  // A mesh file as a scanner's program would save it.
  std::filesystem::path forearm_file() {
    const Body body = make_form("forearm", {{"edge", 5.0}}).value();
    const auto file = root() / "forearm.stl";
    EXPECT_TRUE(write_mesh(body.surface, file).ok());
    return file;
  }

  // What a user does in the dialog of a drawing, once it is open.
  static void take_drawing() {
    auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    auto* shapes = dialog->findChild<QTableWidget*>();
    for (int row = 0; row < shapes->rowCount(); ++row) {
      auto* choice = static_cast<Choice*>(shapes->cellWidget(row, 3));
      if (choice->currentData().toInt() >= 0) continue;
      choice->setCurrentIndex(choice->findData(int(DrawnPart::kChamber)));
      emit choice->activated(choice->currentIndex());
      settle(20);
      break;  // its rule holds for the group it is in
    }
    const auto boxes = dialog->findChildren<QCheckBox*>();
    for (QCheckBox* box : boxes)
      if (box->text().contains(QStringLiteral("closes"))) box->setChecked(true);
    take_picture(*dialog, QStringLiteral("job-drawing"));
    const auto buttons = dialog->findChildren<QPushButton*>();
    for (QPushButton* button : buttons)
      if (button->text() == QStringLiteral("Take over")) {
        EXPECT_TRUE(button->isEnabled());
        return button->click();
      }
    dialog->reject();
    ADD_FAILURE() << "no button takes the drawing over";
  }
};

TEST_F(WholeJobTest, AMeshAndADrawingBecomeANoteWithoutATerminal) {
  window_.session().start_new();
  window_.open_dropped(forearm_file());
  EXPECT_EQ(window_.column().opened(), PlanStep::kBody);
  QTimer::singleShot(800, &take_drawing);
  window_.open_dropped(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing/cuff.svg");
  ASSERT_EQ(window_.session().plan().layout.chambers.size(), 2U);

  window_.column().open_step(PlanStep::kWear);
  named<QDoubleSpinBox>(QStringLiteral("station"))->setValue(100.0);
  window_.column().open_step(PlanStep::kInflation);
  named<QDoubleSpinBox>(QStringLiteral("pressure of pump"))->setValue(2.0);
  window_.column().open_step(PlanStep::kNote);
  named<QDoubleSpinBox>(QStringLiteral("mesh edge"))->setValue(9.0);
  ASSERT_TRUE(wait_until([&] { return window_.session().checked() != nullptr; }));
  for (const PlanStep step : {PlanStep::kBody, PlanStep::kWear, PlanStep::kInflation})
    EXPECT_EQ(window_.session().state(step).words, "ready")
        << window_.session().state(step).findings.join(" ").toStdString();
  window_.session().estimate_standard();
  ASSERT_TRUE(wait_until([&] { return window_.session().state(PlanStep::kNote).words == "ready"; }))
      << window_.message().words().toStdString();
  ASSERT_TRUE(window_.session().save(root() / "cuff.json").ok());
  picture(QStringLiteral("job-note"));
  const auto saved = window_.note().save_note(root() / "note.pdf");
  ASSERT_TRUE(saved.ok()) << saved.problem().message;
  EXPECT_EQ(read_file(root() / "note.pdf")->substr(0, 5), "%PDF-");
}

TEST_F(WholeJobTest, ABadFileIsSaidInTheTerminalsWordsAndThePlanStays) {
  window_.session().start_new();
  const auto file = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/mesh/nan_vertex.obj";
  window_.open_dropped(file);
  ASSERT_TRUE(wait_until([&] { return window_.session().checked() != nullptr; }));
  Plan plan = window_.session().plan();
  const auto terminal = read_body(plan);
  ASSERT_FALSE(terminal.ok());
  const StepState state = window_.session().state(PlanStep::kBody);
  ASSERT_EQ(state.findings.size(), 1);
  EXPECT_EQ(state.findings[0].toStdString(), terminal.problem().message);
  picture(QStringLiteral("bad-file"));
  window_.open_dropped(root() / "holiday.txt");
  EXPECT_TRUE(window_.message().words().contains(QStringLiteral("holiday.txt")));
  window_.session().undo_stack().undo();
  EXPECT_FALSE(has_body(window_.session().plan()));
}

TEST_F(WholeJobTest, AnEstimateNeverKeepsTheWindowFromAnsweringForLong) {
  window_.start({});
  QElapsedTimer since;
  qint64 longest_ms = 0;
  QTimer beat;
  QObject::connect(&beat, &QTimer::timeout, [&] { longest_ms = std::max(longest_ms, since.restart()); });
  ASSERT_TRUE(wait_for_result());
  window_.session().estimate_standard();
  since.start();
  beat.start(5);
  // Long enough to meet every stage but the longest, then cancelled as a user would.
  wait_until([&] { return !window_.session().runner().busy(); }, 4000);
  named<QPushButton>(QStringLiteral("cancel"))->click();
  EXPECT_FALSE(window_.session().runner().busy());
  beat.stop();
  RecordProperty("longest_stall_ms", static_cast<int>(longest_ms));
  std::cout << "longest stall during an estimate: " << longest_ms << " ms\n";
  // Not a matter of speed: solved on the window's own thread it would be the whole four seconds.
  EXPECT_LT(longest_ms, 2000);
}

}  // namespace
}  // namespace wrapgauge
