// A drawing comes in by hand: what each shape is is said on the drawing itself.

#include <QCheckBox>
#include <QComboBox>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QTableWidget>
#include <QTranslator>

#include "app/desk/window/drawing_dialog.hpp"
#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

std::filesystem::path drawing_file(const char* name) {
  return std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing" / name;
}

QStringList words_of(const QWidget& dialog) {
  QStringList words;
  for (const QLabel* label : dialog.findChildren<QLabel*>()) words += label->text();
  for (const QAbstractButton* button : dialog.findChildren<QAbstractButton*>()) words += button->text();
  for (const QListWidget* list : dialog.findChildren<QListWidget*>())
    for (int row = 0; row < list->count(); ++row) words += list->item(row)->text();
  for (const QTableWidget* table : dialog.findChildren<QTableWidget*>())
    for (int row = 0; row < table->rowCount(); ++row)
      for (int column = 0; column < table->columnCount(); ++column)
        if (const auto* item = table->item(row, column)) words += item->text() + ' ' + item->toolTip();
  return words;
}

class DrawingInWindow : public JobTest {
 protected:
  void click_drawing(DrawingDialog& dialog, double x_mm, double y_mm) {
    hand::click(dialog.view(), dialog.view().on_view({1e-3 * x_mm, 1e-3 * y_mm}).toPoint());
  }
  void read_drawing_by_hand(const char* name, const std::function<void(DrawingDialog&)>& act) {
    hand::with_answers([&] { hand::drop(window_, drawing_file(name)); }, {[&](QDialog& dialog) {
                         wait_until_at_rest(dialog);
                         act(dynamic_cast<DrawingDialog&>(dialog));
                       }});
  }
  QComboBox& parts() { return *named<QComboBox>(QStringLiteral("parts")); }
};

TEST_F(DrawingInWindow, AFirstDrawingWithoutInletsGetsThemByAClickAndItsPartsAreListed) {
  window_.start({});
  hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  read_drawing_by_hand("no_inlet.svg", [&](DrawingDialog& dialog) {
    EXPECT_TRUE(words_of(dialog).join(u'\n').contains(QStringLiteral("“chamber 1” has no inlet")));
    click_drawing(dialog, 30.0, 20.0);
    hand::press(dialog, QStringLiteral("Add an inlet"));
    click_drawing(dialog, 3.0, 3.0);  // on the seam
    EXPECT_TRUE(words_of(dialog).join(u'\n').contains(QStringLiteral("no chamber and no channel there")));
    click_drawing(dialog, 30.0, 20.0);
    hand::press(dialog, QStringLiteral("Add an inlet"));
    click_drawing(dialog, 90.0, 40.0);
    EXPECT_FALSE(words_of(dialog).join(u'\n').contains(QStringLiteral("has no inlet")));
    hand::press(dialog, QStringLiteral("The guesses are right"));
    take_picture(dialog, QStringLiteral("drawing-inlets-added"));
    hand::press(dialog, QStringLiteral("Use this drawing"));
  });
  const Layout& layout = window_.session().plan().layout;
  ASSERT_EQ(layout.inlets.size(), 2U);
  EXPECT_LT((layout.inlets[0].point_m - Vec2(0.030, 0.040)).norm(), 0.5e-3);
  EXPECT_EQ(layout.name, "no_inlet") << "a guess that was confirmed is none";
  EXPECT_TRUE(parts().isVisible());
  EXPECT_EQ(parts().count(), 5) << "outline, chambers and inlets";
  ASSERT_TRUE(wait_for_checks());
  EXPECT_TRUE(window_.session().checked()->layout_problems.empty());
  picture(QStringLiteral("drawing-parts-listed"));
}

TEST_F(DrawingInWindow, WhatWasSaidOfADrawingHoldsWhenItIsReadAgain) {
  window_.start({});
  hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  read_drawing_by_hand("no_inlet.svg", [&](DrawingDialog& dialog) {
    click_drawing(dialog, 90.0, 30.0);
    hand::choose(dialog, QStringLiteral("The chosen shape is"), QStringLiteral("left out"));
    hand::press(dialog, QStringLiteral("Use this drawing"));
  });
  ASSERT_EQ(window_.session().plan().layout.chambers.size(), 1U);
  Layout closed = window_.session().plan().layout;
  closed.closure = Closure{0.0, 100.0 * mm, std::nullopt};
  window_.session().edit_layout(QStringLiteral("Closing"), closed);
  read_drawing_by_hand("no_inlet.svg", [&](DrawingDialog& dialog) {
    hand::press(dialog, QStringLiteral("Use this drawing"));
  });
  EXPECT_EQ(window_.session().plan().layout.chambers.size(), 1U);
  EXPECT_EQ(window_.session().plan().layout.closure, closed.closure);
  // In another plan too.
  window_.session().edit_layout(QStringLiteral("Gone"), Layout{});
  read_drawing_by_hand("no_inlet.svg", [&](DrawingDialog& dialog) {
    hand::press(dialog, QStringLiteral("Use this drawing"));
  });
  EXPECT_EQ(window_.session().plan().layout.chambers.size(), 1U);
}

TEST_F(DrawingInWindow, AGapIsClosedByTheButtonThatNamesIt) {
  window_.start({});
  DrawingDialog dialog(drawing_file("faults.svg"), window_.session().plan(), {}, &window_);
  dialog.show();
  wait_until_at_rest(dialog);
  auto& problems = *dialog.findChild<QListWidget*>();
  ASSERT_EQ(problems.count(), 2);
  hand::click(*problems.viewport(), problems.visualItemRect(problems.item(0)).center());
  EXPECT_EQ(dialog.findChild<QTableWidget*>()->currentRow(), 1) << "the shape is not gone to";
  take_picture(dialog, QStringLiteral("drawing-gap"));
  hand::press(dialog, QStringLiteral("Join line ends up to 0.5 mm apart"));
  EXPECT_EQ(problems.count(), 1);
  ASSERT_TRUE(dialog.map().reading.join);
  EXPECT_NEAR(*dialog.map().reading.join / mm, 0.5, 1e-9);
}

TEST_F(DrawingInWindow, AnUnknownUnitIsAskedForInTheDialog) {
  window_.start({});
  const auto file = root() / "parsec.dxf";
  std::string text = read_file(drawing_file("cuff.dxf"), 1u << 20).value();
  const auto at = text.find("$INSUNITS");
  ASSERT_NE(at, std::string::npos);
  const auto value = text.find_first_of("0123456789", text.find("70", at) + 2);
  text.replace(value, 1, "20");
  ASSERT_TRUE(write_file_atomically(file, text).ok());
  DrawingDialog dialog(file, window_.session().plan(), {}, &window_);
  EXPECT_FALSE(dialog.problem()) << "it is only to be told";
  dialog.show();
  wait_until_at_rest(dialog);
  EXPECT_FALSE(hand::button(dialog, QStringLiteral("Use this drawing"))->isEnabled());
  hand::choose(dialog, QStringLiteral("Unit of the drawing"), QStringLiteral("mm"));
  EXPECT_TRUE(hand::button(dialog, QStringLiteral("Use this drawing"))->isEnabled());
}

TEST_F(DrawingInWindow, NoWordOfItIsAnOptionOfTheCommandLine) {
  window_.start({});
  QTranslator german;
  const QFileInfo program(QStringLiteral(WRAPGAUGE_DESK_PROGRAM));
  ASSERT_TRUE(german.load(QStringLiteral("wrapgauge-desk_de"), program.absolutePath()));
  for (const bool in_german : {false, true}) {
    if (in_german) QApplication::installTranslator(&german);
    for (const char* file : {"cuff.svg", "guess.svg", "faults.svg", "pieces.svg", "cuff.dxf", "paper.dxf"}) {
      DrawingDialog dialog(drawing_file(file), window_.session().plan(), {}, &window_);
      for (const QString& words : words_of(dialog)) {
        EXPECT_FALSE(words.contains(QStringLiteral("--"))) << words.toStdString();
        EXPECT_FALSE(in_german && words.contains(QStringLiteral(" the "))) << words.toStdString();
      }
    }
  }
  QApplication::removeTranslator(&german);
}

}  // namespace
}  // namespace wrapgauge
