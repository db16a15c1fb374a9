#include "app/desk/window/distance_table.hpp"

#include <QSignalBlocker>

#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

enum Column { kDistance, kDepth, kFactor, kColumns };

struct Range {
  double least, most;
};
constexpr Range kRanges[kColumns] = {{0.0, 500.0}, {0.5, 300.0}, {0.05, 20.0}};

QString number(double value) {
  return figures_text(number_text(value, 4));
}

QString cell_of(const TissueAtDistance& step, int column) {
  if (column == kDistance) return number(step.distance / mm);
  if (column == kDepth) return step.tissue_depth ? number(*step.tissue_depth / mm) : QString();
  return step.stiffness_factor ? number(*step.stiffness_factor) : QString();
}

// All rows name the same of depth and factor.
void set_value(std::vector<TissueAtDistance>& steps, std::size_t row, int column,
               std::optional<double> value) {
  if (column == kDistance) steps[row].distance = *value * mm;
  for (std::size_t k = 0; k < steps.size(); ++k) {
    TissueAtDistance& step = steps[k];
    if (column == kDepth && (k == row || !value || !step.tissue_depth))
      step.tissue_depth = value ? std::optional(*value * mm) : std::nullopt;
    if (column == kFactor && (k == row || !value || !step.stiffness_factor)) step.stiffness_factor = value;
  }
}

bool grow(const std::vector<TissueAtDistance>& steps) {
  for (std::size_t k = 1; k < steps.size(); ++k)
    if (steps[k].distance <= steps[k - 1].distance) return false;
  return true;
}

}  // namespace

DistanceTable::DistanceTable(QWidget* parent)
    : QWidget(parent),
      table_(words_table(this, tr("Tissue at distances from the point"),
                         {tr("At mm"), tr("Depth mm"), tr("Stiffness ×")})),
      remove_(action_button(
          this, tr("Remove it"), [this] { remove_row(); }, tr("Remove the chosen distance"))) {
  QPushButton* add = action_button(this, tr("Add a distance"), [this] { add_row_below(); });
  add->setToolTip(tr("Values in between are linear; the last distance is the radius of the region."));
  table_->setObjectName(QStringLiteral("distances"));
  QVBoxLayout* column = plain_column(this);
  column->addWidget(table_);
  add_row(*column, {add, remove_});
  connect(table_, &QTableWidget::cellChanged, this, &DistanceTable::take_cell);
}

void DistanceTable::show_steps(const std::vector<TissueAtDistance>& steps) {
  if (steps == steps_) return;
  steps_ = steps;
  fill();
}

void DistanceTable::fill() {
  const QSignalBlocker quiet(table_);
  table_->setRowCount(static_cast<int>(steps_.size()));
  for (int row = 0; row < table_->rowCount(); ++row)
    for (int column = 0; column < kColumns; ++column)
      table_->setItem(row, column,
                      new QTableWidgetItem(cell_of(steps_[static_cast<std::size_t>(row)], column)));
  table_->setVisible(!steps_.empty());
  remove_->setVisible(!steps_.empty());
  fit_height(*table_, 6);
}

void DistanceTable::take_cell(int row, int column) {
  const QString words = table_->item(row, column)->text().trimmed().replace(QChar(','), QChar('.'));
  bool is_number = false;
  const double value = words.toDouble(&is_number);
  const Range range = kRanges[column];
  std::vector<TissueAtDistance> changed = steps_;
  const bool left_out = words.isEmpty() && column != kDistance;
  const bool within = is_number && value >= range.least && value <= range.most;
  if (left_out || within)
    set_value(changed, static_cast<std::size_t>(row), column, left_out ? std::nullopt : std::optional(value));
  const bool says = changed.front().tissue_depth || changed.front().stiffness_factor;
  QString why;
  if (!left_out && !within)
    why = tr("'%1' is no number from %2 to %3: type another one.")
              .arg(words, number(range.least), number(range.most));
  else if (!grow(changed))
    why = tr("distances must grow from one row to the next: type another one.");
  else if (!says)
    why = tr("a row without depth and stiffness says nothing: keep one of the two.");
  if (why.isEmpty()) steps_ = std::move(changed);
  fill();
  if (why.isEmpty())
    emit edited();
  else
    emit refused(why);
}

// The first time two: one distance alone says nothing about what lies between.
void DistanceTable::add_row_below() {
  if (steps_.empty()) {
    steps_ = {{Length(), {}, 1.0}, {20.0 * mm, {}, 1.0}};
  } else {
    if (steps_.back().distance >= 490.0 * mm) return;
    steps_.push_back(steps_.back());
    steps_.back().distance = steps_.back().distance + 10.0 * mm;
  }
  fill();
  emit edited();
}

void DistanceTable::remove_row() {
  const int row = table_->currentRow() < 0 ? table_->rowCount() - 1 : table_->currentRow();
  if (steps_.size() <= 2)
    steps_.clear();
  else
    steps_.erase(steps_.begin() + row);
  fill();
  emit edited();
}

}  // namespace wrapgauge
