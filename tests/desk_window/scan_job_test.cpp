#include <QCheckBox>
#include <QListWidget>
#include <QScrollBar>
#include <QTabBar>
#include <QTableWidget>

#include "app/desk/window/drawing_dialog.hpp"
#include "app/desk/window/verdict_bar.hpp"
#include "bodyforms/form.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/body/scan_like.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

// The walk of docs/11-first-use.md, whose pictures are taken here.
class ScanJob : public JobTest {
 protected:
  // As a scanner's program saves it: noise, holes, crumbs, a table, lying anyhow.
  std::filesystem::path scan_file() {
    const Body clean = make_form("forearm", {{"edge", 5.0}}).value();
    RawMesh limb;
    limb.vertices = 1e3 * clean.surface.vertices_m;
    limb.faces = clean.surface.faces;
    const RawMesh scan = shapes::scan_of_limb(std::move(limb), 0.4, true);
    const auto file = root() / "forearm-scan.ply";
    EXPECT_TRUE(write_mesh({1e-3 * scan.vertices, scan.faces}, file).ok());
    return file;
  }

  void bring_scan() {
    hand::drop(window_, scan_file());
    EXPECT_EQ(window_.column().opened(), PlanStep::kBody);
    ASSERT_TRUE(wait_for_checks());
    picture(QStringLiteral("walk-1-raw-scan"));
    hand::press(window_, QStringLiteral("Raw scan: repair it"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(state(PlanStep::kBody), "needs the part of the person");
    hand::choose(window_, QStringLiteral("Part of the person"), QStringLiteral("forearm"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(state(PlanStep::kBody), "ready");
    EXPECT_TRUE(is_said(QStringLiteral("Loose crumbs: Dropped"))) << "what the repair did is not said";
    EXPECT_FALSE(is_said(QStringLiteral("decimate"))) << "a step is called as it is inside the program";
    EXPECT_GT(named<QTableWidget>(QStringLiteral("girths"))->rowCount(), 5);
    picture(QStringLiteral("walk-2-repaired"));
  }

  // Says what the shapes are that the window can only guess, once for their group.
  void bring_drawing() {
    const auto answer = [this](QDialog& dialog) {
      auto& view = *dialog.findChild<DrawingView*>();
      wait_until_at_rest(dialog);
      hand::click(view, view.on_view({0.060, 0.020}).toPoint());
      EXPECT_TRUE(hand::button(dialog, QStringLiteral("All of “cells” too: 1 more"))->isChecked());
      hand::choose(dialog, QStringLiteral("The chosen shape is"), QStringLiteral("chamber"));
      take_picture(dialog, QStringLiteral("walk-3-drawing"));
      for (const QLabel* label : dialog.findChildren<QLabel*>())
        EXPECT_FALSE(label->text().contains(QStringLiteral("Guessed, please check")));
      auto& tabs = *dialog.findChild<QTabBar*>();
      hand::click(tabs, tabs.tabRect(2).center());
      wait_until_at_rest(dialog);
      hand::press(dialog, QStringLiteral("Goes round and closes, stretched by"));
      wait_until_at_rest(dialog);
      hand::press(dialog, QStringLiteral("Use this drawing"));
    };
    hand::with_answers(
        [this] {
          hand::drop(window_, std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing/cuff.svg");
        },
        {answer});
    ASSERT_EQ(window_.session().plan().layout.chambers.size(), 2U);
  }

  void wear_it() {
    open(PlanStep::kWear);
    ASSERT_TRUE(wait_for_checks());
    place_by_click();
    hand::type(window_, QStringLiteral("Stretch of the closure"), QStringLiteral("3"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(state(PlanStep::kWear), "ready")
        << window_.session().state(PlanStep::kWear).findings.join(" ").toStdString();
    EXPECT_TRUE(is_said(QStringLiteral("closing length")));
    picture(QStringLiteral("walk-4-worn"));
  }

  void inflate_it() {
    open(PlanStep::kInflation);
    EXPECT_EQ(state(PlanStep::kInflation), "needs a pressure or volume for pump");
    hand::type(window_, QStringLiteral("Pressure of inlet pump"), QStringLiteral("2"));
    ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
    picture(QStringLiteral("walk-5-inflated"));
  }

  void read_findings() {
    open(PlanStep::kLimits);
    auto* findings = named<QListWidget>(QStringLiteral("findings"));
    int row = 0;
    while (row < findings->count() && !findings->item(row)->text().contains("Chamber 'right'")) ++row;
    ASSERT_LT(row, findings->count()) << "no finding is about a chamber";
    hand::click(*findings->viewport(), findings->visualItemRect(findings->item(row)).center());
    EXPECT_EQ(window_.views().selection().chamber(), ChamberId(1));
    EXPECT_TRUE(is_said(QStringLiteral("Model factor: predicted pressures are multiplied")));
    picture(QStringLiteral("walk-6-findings"));
  }
};

// From the mesh and the drawing to the note. Two more coarsen the mesh, which only a test has to.
constexpr int kMostActions = 25, kForQuickness = 2;

TEST_F(ScanJob, AForearmCuffGoesFromARawScanAndADrawingToANote) {
  const int before = hand::actions();
  window_.start({});
  hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  EXPECT_EQ(state(PlanStep::kBody), "needs a body");
  picture(QStringLiteral("walk-0-new"));
  bring_scan();
  bring_drawing();
  wear_it();
  inflate_it();
  read_findings();
  estimate_on(QStringLiteral("9"));
  EXPECT_TRUE(window_.verdict().line().made_of.contains(QStringLiteral("9 mm: as coarse as a preview's")));
  picture(QStringLiteral("walk-7-note"));
  EXPECT_EQ(named<QTextBrowser>(QStringLiteral("note preview"))->verticalScrollBar()->maximum(), 0)
      << "the note scrolls inside the column that scrolls";
  save_note("cuff");
  const int actions = hand::actions() - before - kForQuickness;
  EXPECT_LE(actions, kMostActions);
  RecordProperty("actions", actions);
}

}  // namespace
}  // namespace wrapgauge
