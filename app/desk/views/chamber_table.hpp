#pragma once
// One row a chamber at the selected state: pressures in both units, volume, contact, share of limit, finding.

#include <QAbstractTableModel>
#include <QTableView>

#include "app/desk/views/shown_plan.hpp"

namespace wrapgauge {

class ChamberTableModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column {
    kChamber,
    kGauge,
    kVolume,
    kMean,
    kPeak,
    kContactArea,
    kForce,
    kShareOfLimit,
    kFinding,
    kColumnCount
  };

  ChamberTableModel(const ShownPlan& shown, const Selection& selection, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

  // Where there is no room for a sentence: how bad it is, in two words at most.
  void show_findings_short(bool is_short);

  QString text() const;  // a line for each chamber, cells with their units, separated by tabs
  QString csv() const;   // as the command line writes it

 private:
  struct Cell {
    QString shown;  // under a head that says the unit
    QString whole;  // with its unit
  };
  void reload();
  Cell cell(const ChamberFigures& figures, int column) const;

  const ShownPlan& shown_;
  const Selection& selection_;
  std::shared_ptr<const StateContact> contact_;
  bool short_findings_ = false;
};

class ChamberTable : public QTableView {
  Q_OBJECT
 public:
  ChamberTable(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void take_selection();
  int wanted_width(int column) const;
  void fit_cells();
  void fit_findings();
  void fit_rows();
  int finding_lines(int row) const;  // of its sentence, in the width there is

  ChamberTableModel model_;
  Selection& selection_;
};

}  // namespace wrapgauge
