#include <QAbstractButton>
#include <QComboBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QTranslator>

#include "app/desk/window/drawing_dialog.hpp"
#include "app/desk/window/layout_dialog.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

// The window speaks German, whose words are the longest, until the test ends.
class GermanDialogs : public WindowTest {
 protected:
  void SetUp() override {
    const QFileInfo program(QStringLiteral(WRAPGAUGE_DESK_PROGRAM));
    ASSERT_TRUE(german_.load(QStringLiteral("wrapgauge-desk_de"), program.absolutePath()));
    QApplication::installTranslator(&german_);
    window_.start({});
    ASSERT_TRUE(wait_for_result());
  }
  void TearDown() override { QApplication::removeTranslator(&german_); }

  QTranslator german_;
};

std::string described(const QWidget& widget, const QString& words) {
  return std::string(widget.metaObject()->className()) + " '" + words.toStdString() + "' is " +
         std::to_string(widget.width()) + " x " + std::to_string(widget.height());
}

void expect_label_whole(const QLabel& label) {
  const QSize needed = label.wordWrap() ? QSize(0, label.heightForWidth(label.width())) : label.sizeHint();
  EXPECT_LE(needed.width(), label.width()) << described(label, label.text());
  EXPECT_LE(needed.height(), label.height()) << described(label, label.text());
}

void expect_headings_whole(const QTableWidget& table) {
  const QHeaderView& heads = *table.horizontalHeader();
  for (int column = 0; column < table.columnCount(); ++column) {
    const QString words = table.horizontalHeaderItem(column)->text();
    EXPECT_LE(heads.fontMetrics().horizontalAdvance(words), heads.sectionSize(column) - 4)
        << described(table, words);
  }
  for (int row = 0; row < table.rowCount(); ++row)
    for (int column = 0; column < table.columnCount(); ++column) {
      const QTableWidgetItem* item = table.item(row, column);
      if (!item) continue;
      const QRect cell = table.visualItemRect(item);
      const QRect needed = table.fontMetrics().boundingRect(QRect(0, 0, cell.width() - 6, 10000),
                                                            Qt::TextWordWrap, item->text());
      EXPECT_LE(needed.width(), cell.width()) << described(table, item->text());
      EXPECT_LE(needed.height(), cell.height()) << described(table, item->text());
    }
}

void expect_words_whole(const QWidget& dialog) {
  for (const QLabel* label : dialog.findChildren<QLabel*>())
    if (label->isVisible() && !label->text().isEmpty()) expect_label_whole(*label);
  for (const QAbstractButton* button : dialog.findChildren<QAbstractButton*>())
    if (button->isVisible() && !button->text().isEmpty()) {
      EXPECT_LE(button->sizeHint().width(), button->width()) << described(*button, button->text());
    }
  for (const QComboBox* choice : dialog.findChildren<QComboBox*>())
    if (choice->isVisible()) {
      EXPECT_LE(choice->fontMetrics().horizontalAdvance(choice->currentText()) + 24, choice->width())
          << described(*choice, choice->currentText());
    }
  for (const QTableWidget* table : dialog.findChildren<QTableWidget*>())
    if (table->isVisible()) expect_headings_whole(*table);
}

TEST_F(GermanDialogs, CutOffNoWordOfADrawing) {
  for (const char* file : {"cuff.svg", "guess.svg", "faults.svg"}) {
    DrawingDialog dialog(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/drawing" / file,
                         window_.session().plan(), {}, &window_);
    dialog.show();
    take_picture(dialog,
                 QStringLiteral("german-drawing-") + QString::fromLatin1(file).section(QChar('.'), 0, 0));
    expect_words_whole(dialog);
  }
}

// The demo's anchor lies too near the elbow for a sleeve: its girths are those of no body.
TEST_F(GermanDialogs, SayThatGirthsWereNotMeasured) {
  LayoutDialog dialog(window_.session(), &window_);
  dialog.show();
  const auto is_said = [&] {
    for (const QLabel* label : dialog.findChildren<QLabel*>())
      if (label->text().contains(QStringLiteral("Die Umfänge sind nicht von diesem Körper"))) return true;
    return false;
  };
  EXPECT_FALSE(is_said());
  auto* kinds = dialog.findChild<QComboBox*>();
  kinds->setCurrentIndex(kinds->findData(QStringLiteral("sleeve")));
  emit kinds->activated(kinds->currentIndex());
  EXPECT_TRUE(is_said());
}

TEST_F(GermanDialogs, CutOffNoWordOfALayoutThatIsMade) {
  LayoutDialog dialog(window_.session(), &window_);
  dialog.show();
  auto* kinds = dialog.findChild<QComboBox*>();
  for (int kind = 0; kind < kinds->count(); ++kind) {
    kinds->setCurrentIndex(kind);
    emit kinds->activated(kind);
    take_picture(dialog, QStringLiteral("german-make-%1").arg(kind));
    expect_words_whole(dialog);
  }
}

}  // namespace
}  // namespace wrapgauge
