#include "app/desk/views/selection.hpp"

#include <cmath>
#include <utility>

namespace wrapgauge {

void Selection::select_chamber(std::optional<ChamberId> chamber) {
  if (chamber == chamber_) return;
  chamber_ = chamber;
  emit chamberChanged();
}

void Selection::pick_place(std::optional<Vec3> place_m) {
  if (place_m == place_m_) return;
  place_m_ = place_m;
  emit placeChanged();
}

void Selection::show_state(int state) {
  show_filling(state);
}

void Selection::show_filling(double filling) {
  if (filling == filling_) return;
  filling_ = filling;
  const int nearest = static_cast<int>(std::lround(filling));
  const bool other = std::exchange(state_, nearest) != nearest;
  emit fillingChanged();
  if (other) emit stateChanged();
}

void Selection::show_unit(PressureUnit unit) {
  if (unit == unit_) return;
  unit_ = unit;
  emit unitChanged();
}

void Selection::show_cut(std::optional<double> station_m) {
  if (station_m == cut_m_) return;
  cut_m_ = station_m;
  emit cutChanged();
}

}  // namespace wrapgauge
