#pragma once
// What the tissue is at distances from a point, as a table that can be typed into; empty: the same
// everywhere.

#include <QPushButton>
#include <QTableWidget>
#include <vector>

#include "model/body/skin_region.hpp"

namespace wrapgauge {

class DistanceTable : public QWidget {
  Q_OBJECT
 public:
  explicit DistanceTable(QWidget* parent = nullptr);

  void show_steps(const std::vector<TissueAtDistance>& steps);
  const std::vector<TissueAtDistance>& steps() const { return steps_; }

 signals:
  void edited();
  void refused(const QString& why);  // what was typed is not taken

 private:
  void fill();
  void take_cell(int row, int column);
  void add_row_below();
  void remove_row();

  std::vector<TissueAtDistance> steps_;
  QTableWidget* table_;
  QPushButton* remove_;
};

}  // namespace wrapgauge
