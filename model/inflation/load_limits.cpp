// Where a load path ends before its last waypoint, and what that is called.
#include <algorithm>

#include "model/inflation/load_stepper.hpp"
#include "model/inflation/parabola.hpp"

namespace wrapgauge {

// Through the last two states before the step and the one beyond it. A maximum that lies nearer than the
// states tell apart is where the last of them is.
void LoadStepper::name_maximum(GroupId group, const NewtonResult& beyond) {
  const auto g = static_cast<Eigen::Index>(index_of(group));
  const double past_m3 = beyond.group_volume_m3(g), past_pa = beyond.group_pressure_pa(g);
  double volume = last_.volume_m3(g), pressure = last_.pressure_pa(g);
  if (before_last_.volume_m3.size() && before_last_.volume_m3(g) < volume &&
      before_last_.pressure_pa(g) < pressure) {
    const auto [top_m3, top_pa] = parabola_top({before_last_.volume_m3(g), volume, past_m3},
                                               {before_last_.pressure_pa(g), pressure, past_pa});
    volume = top_m3;
    pressure = std::max(pressure, top_pa);
  }
  path_.limit_point =
      LimitPoint{group, Pressure(pressure), Volume(volume), Pressure(past_pa), Volume(past_m3)};
}

void LoadStepper::name_overstretch() {
  const auto g = static_cast<Eigen::Index>(stretched_group_);
  path_.limit_point = LimitPoint{static_cast<GroupId>(stretched_group_),
                                 Pressure(last_.pressure_pa(g)),
                                 Volume(last_.volume_m3(g)),
                                 {},
                                 {},
                                 LimitKind::kOverstretched};
}

Result<bool> LoadStepper::about_to_fold() {
  system_.tissue() = last_tissue_;
  const Result<bool> keeps =
      keeps_its_shape(system_, *factorisation_, loads_at(last_.level), last_.positions_m);
  if (!keeps) return keeps;
  return !*keeps;
}

// A fold belongs to the whole sheet; the group that was filled the fastest stands for it.
void LoadStepper::name_fold() {
  const Eigen::VectorXd growth = last_growth_m3();
  Eigen::Index g = 0;
  growth.maxCoeff(&g);
  path_.limit_point =
      LimitPoint{static_cast<GroupId>(g), Pressure(last_.pressure_pa(g)), Volume(last_.volume_m3(g)), {}, {},
                 LimitKind::kFolds};
}

}  // namespace wrapgauge
