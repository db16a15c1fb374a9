#pragma once
// The device at one moment of the filling: a recorded state as it was solved, or between two of them, where
// shapes and pressures are interpolated in a straight line so that the filling is seen to move. Figures and
// findings are those of recorded states alone.

#include <optional>

#include "app/desk/views/shown_plan.hpp"

namespace wrapgauge {

struct Moment {
  SkinPoints on_skin;              // a flat vertex each: the worn layout brought to the skin at rest
  Eigen::VectorXd pressure_pa;     // a flat vertex each: on the skin
  Eigen::VectorXd share_of_limit;  // a flat vertex each: above 1 is hatched
  Points3 positions_m;             // a node of path.sheet each
  Eigen::VectorXd indentation_m;   // a flat vertex each: how far the skin is pressed in

  Length lowered() const {  // the most of it
    return Length(indentation_m.size() > 0 ? indentation_m.maxCoeff() : 0.0);
  }
};

// `filling`: 0 for the first recorded state, 1 for the second, and so on. None: contacts are still being
// read, or there is no such state.
std::optional<Moment> moment_at(const ShownPlan& shown, double filling);

// What is drawn of a solved shape: both faces of the device with a point a flat vertex each, which are the
// nodes of the skin's side and of the outer sheet, and the flat triangles between them.
struct DeviceFaces {
  Points3 skin_m, skin_normals, outer_m, outer_normals;
  Eigen::VectorXd air_m;  // between the sheets; 0 where they are one
};
DeviceFaces device_faces(const InflationSetup& setup, const SheetMesh& sheet, const Points3& positions_m);

}  // namespace wrapgauge
