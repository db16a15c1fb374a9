#include "app/desk/window/reading_table.hpp"

#include <QHeaderView>
#include <QSignalBlocker>

#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/bench/bench_sheet.hpp"
#include "model/bench/slip_check.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

enum ReadingTableColumn { kSet, kRead, kPredicted, kRatio, kColumnCount };

QString three_digits(std::optional<double> value) {
  return value ? figures_text(number_text(*value, 3)) : QString();
}

QTableWidgetItem* fixed_item(const QString& words, const QString& hint = {}) {
  auto* item = new QTableWidgetItem(words);
  item->setFlags(Qt::ItemIsEnabled);
  item->setToolTip(hint);
  return item;
}

}  // namespace

ReadingTable::ReadingTable(QWidget* parent)
    : QWidget(parent),
      table_(
          words_table(this, tr("Readings of this kind"), {tr("Set"), tr("Read"), tr("Predicted"), tr("×")})) {
  table_->setObjectName(QStringLiteral("readings"));
  table_->setWordWrap(true);
  table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  table_->horizontalHeader()->setSectionResizeMode(kSet, QHeaderView::Stretch);
  for (const int column : {kRead, kPredicted, kRatio})
    table_->horizontalHeader()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
  plain_column(this)->addWidget(table_);
  // Once the cell's editor is closed: what was typed fills the whole table anew.
  connect(table_, &QTableWidget::cellChanged, this, &ReadingTable::take_cell, Qt::QueuedConnection);
}

void ReadingTable::fill_row(int at, const ReadingsSheet& sheet, std::size_t row,
                            std::optional<double> fitted) {
  const Reading& reading = sheet.readings().rows[row];
  table_->setItem(at, kSet, fixed_item(text(conditions_of(reading)), text(reading.id)));
  const auto read = sheet.read_value(row);
  auto* typed = new QTableWidgetItem(read ? figures_text(number_text(*read, 6)) : QString());  // as typed
  typed->setToolTip(tr("What you read, in %1; empty: not read.").arg(text(sheet.read_unit(row))));
  table_->setItem(at, kRead, typed);
  auto predicted = sheet.predicted_value(row);
  if (fitted && predicted && reading.predicted) predicted = *predicted * *fitted / *reading.predicted;
  table_->setItem(
      at, kPredicted,
      fixed_item(three_digits(predicted), fitted ? tr("After the fit.") : tr("As the sheet has it.")));
  QTableWidgetItem* ratio =
      fixed_item(read && predicted ? three_digits(*read / *predicted) : QString(), tr("Read over predicted"));
  if (read && predicted && (reading.confirmed || is_far_off(*read / *predicted))) {
    ratio->setFlags(Qt::ItemIsEnabled | Qt::ItemIsUserCheckable);
    ratio->setCheckState(reading.confirmed ? Qt::Checked : Qt::Unchecked);
    ratio->setToolTip(tr("Far from the prediction: look again, then tick it."));
  }
  table_->setItem(at, kRatio, ratio);
}

void ReadingTable::show_rows(const ReadingsSheet& sheet, ReadingKind kind,
                             const std::vector<std::optional<double>>& fitted) {
  const QSignalBlocker quiet(table_);
  rows_.clear();
  const auto& all = sheet.readings().rows;
  for (std::size_t row = 0; row < all.size(); ++row)
    if (all[row].kind == kind) rows_.push_back(row);
  table_->setRowCount(static_cast<int>(rows_.size()));
  for (std::size_t at = 0; at < rows_.size(); ++at)
    fill_row(static_cast<int>(at), sheet, rows_[at],
             rows_[at] < fitted.size() ? fitted[rows_[at]] : std::nullopt);
  const QString unit = rows_.empty() ? QString() : text(sheet.read_unit(rows_.front()));
  table_->setHorizontalHeaderLabels({tr("Set"), tr("Read, %1").arg(unit), tr("Predicted"), tr("×")});
  fit_rows();
}

// All rows are in sight: the column scrolls, not the table in it.
void ReadingTable::fit_rows() {
  table_->resizeRowsToContents();
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                         table_->verticalHeader()->length() + 2 * table_->frameWidth());
}

void ReadingTable::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_rows();
}

void ReadingTable::take_cell(int at, int column) {
  const QTableWidgetItem* item = table_->item(at, column);
  if (!item) return;  // another kind is shown by now
  const std::size_t row = rows_[static_cast<std::size_t>(at)];
  if (column == kRead) emit typed(row, item->text().trimmed());
  if (column == kRatio) emit confirmed(row, item->checkState() == Qt::Checked);
}

}  // namespace wrapgauge
