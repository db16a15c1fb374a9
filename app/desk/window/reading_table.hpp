#pragma once
// The readings of one kind: what is set, what is read, what was predicted and their ratio. Read is typed
// into.

#include <QTableWidget>

#include "app/desk/window/step_form.hpp"
#include "model/bench/readings_sheet.hpp"

namespace wrapgauge {

class ReadingTable : public QWidget {
  Q_OBJECT
 public:
  explicit ReadingTable(QWidget* parent = nullptr);

  // `fitted`: of the rows of a fit, SI, in the place of what the sheet predicted.
  void show_rows(const ReadingsSheet& sheet, ReadingKind kind,
                 const std::vector<std::optional<double>>& fitted);

 signals:
  void typed(std::size_t row, const QString& words);   // the value that was read of a row
  void confirmed(std::size_t row, bool is_confirmed);  // a value far off was looked at again

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void take_cell(int at, int column);
  void fit_rows();
  void fill_row(int at, const ReadingsSheet& sheet, std::size_t row, std::optional<double> fitted);

  QTableWidget* table_;
  std::vector<std::size_t> rows_;
};

}  // namespace wrapgauge
