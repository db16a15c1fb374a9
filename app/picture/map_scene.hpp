#pragma once
// What all pictures of an estimate share: the scale of its colours, its limits, the edges of its layout.

#include <QColor>
#include <optional>
#include <vector>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// Pressures that the colour bar marks: predicted pressure at which a limit row is met.
struct BarMark {
  double pressure_pa = 0.0;
  double limit_pa = 0.0;
};

struct MapScene {
  double top_pa = 1e3;  // top of the colour bar, a round number
  double model_factor = 1.5;
  std::vector<BarMark> limits;          // lowest first
  Eigen::VectorXd share_of_limit;       // a flat vertex each, of the mean over 1 cm2: above 1 is hatched
  Eigen::VectorXd layout_threshold_pa;  // a flat vertex each: predicted pressure at which its limit is met
};

MapScene map_scene(const Estimate& estimate);
// The lowest round pressure for the top of a colour bar that holds this one.
double round_top(double pressure_pa);

// A flat vertex each: predicted pressure at which its limit is met in a state of the load path.
Eigen::VectorXd layout_threshold_pa(const Estimate& estimate, const EquilibriumState& state,
                                    const ContactFigures& figures);
// The same where the last state presses most; none: no limit is set there.
std::optional<Pressure> threshold_at_peak(const Estimate& estimate, const Eigen::VectorXd& threshold_pa);

// Edges between parts of the layout, and the layout's own rim.
struct LayoutEdge {
  int from = 0, to = 0;  // flat vertices
  bool rim = false;
};
inline const QColor kWornRim(60, 60, 66), kWornEdge(95, 92, 102);
std::vector<LayoutEdge> layout_edges(const FlatMesh& flat);

}  // namespace wrapgauge
