#pragma once
// The axis round the limb that the flat layout lies along: which x lies at which angle, which side of the
// body that is, and from where the body is looked at. Drawn below the layout; a hand on it turns the body.

#include <QPainter>
#include <functional>
#include <vector>

#include "app/desk/views/shown_plan.hpp"
#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {

struct AngleAtX {
  double x_m = 0.0;
  double angle_deg = 0.0;  // about the body's axis (axis_angle.hpp), counted on past 360
};

// Along the middle of the layout as it is worn, else as it was estimated; x rising, angles falling or rising
// throughout. Empty: it lies nowhere, or goes round no closed section.
std::vector<AngleAtX> angles_along_layout(const ShownPlan& shown);

// In a straight line between two of them; none: outside of them.
std::optional<double> angle_at(const std::vector<AngleAtX>& angles, double x_m);
// Where the layout lies at an angle, which may be given a turn or more off; none: it does not reach there.
std::optional<double> x_at(const std::vector<AngleAtX>& angles, double angle_deg);

// Away from the body's axis, at an angle about it.
Vec3 outward_at(const Axis& axis, double angle_deg);

struct AngleAxisLook {
  double y = 0.0;                    // of the line, in the view's pixels
  std::function<double(double)> at;  // pixel of an x in metres
  std::optional<double> eye_deg;     // from where the body is looked at
  LegendLook look;
};
void draw_angle_axis(QPainter& painter, const std::vector<AngleAtX>& angles, const Body& body,
                     const AngleAxisLook& how);

}  // namespace wrapgauge
