#include "app/desk/views/chamber_table.hpp"

#include <QScrollBar>
#include <QSignalSpy>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

QString cell(const ChamberTableModel& model, int row, int column) {
  return model.data(model.index(row, column), Qt::AccessibleTextRole).toString();
}

TEST(ChamberTable, HasARowForEachChamberWithTheFiguresOfTheShownState) {
  WithShown with;
  const ChamberTableModel model(with.shown, with.selection);
  EXPECT_EQ(model.rowCount(), 0);
  ASSERT_TRUE(with.show_all_states(two_chamber_estimate()));
  ASSERT_EQ(model.rowCount(), 2);
  for (int state = 0; state < with.shown.state_count(); ++state) {
    with.selection.show_state(state);
    for (int row = 0; row < 2; ++row) {
      const ChamberFigures& figures =
          with.shown.contact(state)->figures.chambers[static_cast<std::size_t>(row)];
      EXPECT_EQ(cell(model, row, ChamberTableModel::kChamber).toStdString(), figures.chamber);
      EXPECT_EQ(cell(model, row, ChamberTableModel::kForce).toStdString(),
                fixed_text(figures.force / newton, 1) + " N");
      EXPECT_EQ(cell(model, row, ChamberTableModel::kPeak).toStdString(), pressure_text(figures.peak));
    }
  }
}

TEST(ChamberTable, PutsTheChosenUnitFirstAndKeepsTheOther) {
  WithShown with;
  const ChamberTableModel model(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  // 2 kPa / (133.322 Pa a mmHg) = 15.0 mmHg.
  EXPECT_EQ(cell(model, 0, ChamberTableModel::kGauge), "2.0 kPa (15 mmHg)");
  with.selection.show_unit(PressureUnit::kMillimetresOfMercury);
  EXPECT_EQ(cell(model, 0, ChamberTableModel::kGauge), "15 mmHg (2.0 kPa)");
}

TEST(ChamberTable, ShowsNumbersUnderHeadsThatNameTheirUnits) {
  WithShown with;
  const ChamberTableModel model(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  const auto head = [&](int column) { return model.headerData(column, Qt::Horizontal).toString(); };
  const QString gauge = model.data(model.index(0, ChamberTableModel::kGauge)).toString();
  EXPECT_EQ(gauge, "2.0\n(15)");
  EXPECT_TRUE(head(ChamberTableModel::kGauge).endsWith("kPa\n(mmHg)"));
  EXPECT_TRUE(head(ChamberTableModel::kForce).endsWith("N"));
  with.selection.show_unit(PressureUnit::kMillimetresOfMercury);
  EXPECT_TRUE(head(ChamberTableModel::kGauge).endsWith("mmHg\n(kPa)"));
}

TEST(ChamberTable, NeedsNoSidewaysScrollingInANarrowWindow) {
  WithShown with;
  ChamberTable table(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  table.resize(450, 180);
  table.show();
  EXPECT_EQ(table.horizontalScrollBar()->maximum(), 0);
  const auto* model = static_cast<const ChamberTableModel*>(table.model());
  const QModelIndex finding = model->index(0, ChamberTableModel::kFinding);
  EXPECT_LT(model->data(finding).toString().size(), 14);
  EXPECT_GT(model->data(finding, Qt::AccessibleTextRole).toString().size(), 11);  // the whole sentence
}

TEST(ChamberTable, ShowsWholeFindingsWhereThereIsRoomForThem) {
  WithShown with;
  ChamberTable table(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  table.resize(900, 500);
  table.show();
  ASSERT_TRUE(wait_until_at_rest(table));
  const int column = ChamberTableModel::kFinding;
  for (int row = 0; row < 2; ++row) {
    const QModelIndex cell = table.model()->index(row, column);
    QFont drawn = table.font();
    drawn.setBold(cell.data(Qt::FontRole).isValid());
    const QRect needed = QFontMetrics(drawn).boundingRect(QRect(0, 0, table.columnWidth(column) - 8, 1000),
                                                          Qt::TextWordWrap, cell.data().toString());
    EXPECT_GE(table.rowHeight(row), needed.height());
  }
  const int tall = table.rowHeight(0) + table.rowHeight(1);
  EXPECT_LE(tall, table.viewport()->height());
  table.resize(900, 120);
  ASSERT_TRUE(wait_until_at_rest(table));
  EXPECT_LE(table.rowHeight(0) + table.rowHeight(1), tall);
}

TEST(ChamberTable, AChamberAboveALimitIsBoldButForItsSentence) {
  WithShown with;
  ChamberTableModel model(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  const auto bold = [&](int column) { return model.data(model.index(0, column), Qt::FontRole).isValid(); };
  const Finding* finding = finding_of(*with.shown.contact(with.selection.state()), "left");
  ASSERT_TRUE(finding);
  const bool above = finding->severity >= Severity::kAboveLimit;
  EXPECT_EQ(bold(ChamberTableModel::kPeak), above);
  EXPECT_FALSE(bold(ChamberTableModel::kFinding));
  model.show_findings_short(true);
  EXPECT_EQ(bold(ChamberTableModel::kFinding), above);
}

TEST(ChamberTable, CopiesALineForEachChamberUnderTheHeadings) {
  WithShown with;
  const ChamberTableModel model(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  const QStringList lines = model.text().split('\n', Qt::SkipEmptyParts);
  ASSERT_EQ(lines.size(), 3);
  EXPECT_EQ(lines[0].split('\t').size(), ChamberTableModel::kColumnCount);
  EXPECT_TRUE(lines[1].startsWith("left\t"));
  EXPECT_EQ(model.csv().count('\n'), 3);
}

TEST(ChamberTable, ChoosingARowChoosesTheChamberAndTheOtherWayRound) {
  WithShown with;
  ChamberTable table(with.shown, with.selection);
  with.shown.show_estimate(two_chamber_estimate());
  table.selectRow(1);
  table.setCurrentIndex(table.model()->index(1, 0));
  ASSERT_TRUE(with.selection.chamber());
  EXPECT_EQ(index_of(*with.selection.chamber()), 1U);
  with.selection.select_chamber(ChamberId(0));
  EXPECT_TRUE(table.selectionModel()->isRowSelected(0, {}));
}

}  // namespace
}  // namespace wrapgauge
