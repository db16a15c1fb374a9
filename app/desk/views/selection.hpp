#pragma once
// What is picked, shared by all areas of the window: a chamber, a place on the skin, a state of the load
// path, and the unit that comes first.

#include <QObject>
#include <optional>

#include "model/core/array.hpp"
#include "model/core/id.hpp"

namespace wrapgauge {

enum class PressureUnit { kKilopascal, kMillimetresOfMercury };

class Selection : public QObject {
  Q_OBJECT
 public:
  explicit Selection(QObject* parent = nullptr) : QObject(parent) {}

  std::optional<ChamberId> chamber() const { return chamber_; }
  std::optional<Vec3> place_m() const { return place_m_; }  // on the skin at rest
  int state() const { return state_; }                      // index into LoadPath::states
  // Where the filling stands, counted in states; between two of them `state` is the nearer one.
  double filling() const { return filling_; }
  PressureUnit unit() const { return unit_; }
  std::optional<double> cut_m() const {
    return cut_m_;
  }  // station of the section that is shown; none: none is

 public slots:
  // Each says nothing when nothing changes.
  void select_chamber(std::optional<ChamberId> chamber);
  void pick_place(std::optional<Vec3> place_m);
  void show_state(int state);
  void show_filling(double filling);
  void show_unit(PressureUnit unit);
  void show_cut(std::optional<double> station_m);

 signals:
  void chamberChanged();
  void placeChanged();
  void fillingChanged();  // before stateChanged, where that changes too
  void stateChanged();
  void unitChanged();
  void cutChanged();

 private:
  std::optional<ChamberId> chamber_;
  std::optional<Vec3> place_m_;
  int state_ = 0;
  double filling_ = 0.0;
  PressureUnit unit_ = PressureUnit::kKilopascal;
  std::optional<double> cut_m_;
};

}  // namespace wrapgauge
