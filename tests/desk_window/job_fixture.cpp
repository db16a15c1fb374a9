#include "tests/desk_window/job_fixture.hpp"

#include <QLabel>
#include <QListWidget>

#include "model/plan/plan.hpp"

namespace wrapgauge {

bool JobTest::is_said(const QString& part) {
  for (const QLabel* label : window_.findChildren<QLabel*>())
    if (label->isVisible() && label->text().contains(part)) return true;
  for (const QListWidget* list : window_.findChildren<QListWidget*>())
    for (int row = 0; list->isVisible() && row < list->count(); ++row)
      if (list->item(row)->text().contains(part)) return true;
  return false;
}

void JobTest::place_by_click() {
  hand::press(window_, QStringLiteral("Place the layout: click to anchor it, drag to move it along and round "
                                      "the body, drag with Ctrl to turn it"));
  EXPECT_TRUE(window_.views().body().placing());
  hand::click(canvas(), canvas().rect().center());
  hand::key(window_, Qt::Key_Escape);
  EXPECT_FALSE(window_.views().body().placing());
}

void JobTest::open_fine_settings(const QString& of_what) {
  const QString name = QStringLiteral("Fine settings: ") + of_what;
  if (!hand::button(window_, name)->isChecked()) hand::press(window_, name);
}

void JobTest::estimate_on(const QString& edge_mm) {
  open(PlanStep::kNote);
  open_fine_settings(QStringLiteral("Mesh and solving"));
  hand::type(window_, QStringLiteral("Edge of the final mesh"), edge_mm);
  ASSERT_TRUE(wait_for_checks());
  hand::key(window_, Qt::Key_E, Qt::ControlModifier);
  ASSERT_TRUE(wait_until([&] { return state(PlanStep::kNote) == "ready"; }))
      << window_.message().words().toStdString();
}

void JobTest::save_note(const std::string& plan_name) {
  const auto plan = root() / (plan_name + ".json"), note = root() / (plan_name + "-note.pdf");
  hand::with_answers([&] { hand::press(window_, QStringLiteral("Save the note…")); },
                     {hand::give_file(plan), hand::give_file(note)});
  EXPECT_TRUE(wait_until([&] {
    return window_.message().words().contains(QString::fromStdString(note.filename().string()));
  })) << window_.message().words().toStdString();
  const auto saved = read_file(note);
  ASSERT_TRUE(saved.ok());
  EXPECT_EQ(saved->substr(0, 5), "%PDF-");
  const auto read = read_plan(plan);
  ASSERT_TRUE(read.ok()) << read.problem().message;
  EXPECT_EQ(read->layout.chambers.size(), window_.session().plan().layout.chambers.size());
}

}  // namespace wrapgauge
