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

  QString text() const;  // the cells as shown, separated by tabs
  QString csv() const;   // as the command line writes it

 private:
  void reload();
  QString cell(const ChamberFigures& figures, int column) const;

  const ShownPlan& shown_;
  const Selection& selection_;
  std::shared_ptr<const StateContact> contact_;
};

class ChamberTable : public QTableView {
  Q_OBJECT
 public:
  ChamberTable(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

 private:
  void take_selection();
  void fit_cells();

  ChamberTableModel model_;
  Selection& selection_;
};

}  // namespace wrapgauge
