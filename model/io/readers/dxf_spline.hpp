#pragma once
// Rational B-splines as DXF gives them: degree, knots, control points, weights.
// Evaluated by de Boor's algorithm on homogeneous points [Piegl & Tiller, The NURBS Book, 1997, chapter 4;
// from memory].

#include <optional>
#include <string>

#include "model/layout/drawing.hpp"

namespace wrapgauge {

struct Spline {
  int degree = 0;
  std::vector<double> knots;
  std::vector<Vec2> control_m;
  std::vector<double> weights;
};

Vec2 spline_point(const Spline& spline, double parameter);  // of a spline that spline_fault passes

// Why it is no spline: half a sentence; none when it is one.
std::optional<std::string> spline_fault(const Spline& spline);

// Each stretch between knots is divided until the middle of every chord is within the tolerance of the curve.
std::optional<DrawnPath> trace_spline(const Spline& spline, std::string& fault);

}  // namespace wrapgauge
