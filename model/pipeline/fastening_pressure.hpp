#pragma once
// What fastening alone presses with, before any solve: a stretched ring on an elastic foundation.

#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

// A ring of stiffness S (N/m: force a width for a strain of 1) that is shorter than the girth 2 pi R by the
// strain e sinks into a foundation K (Pa/m) by u until K u = S (e - u/R) / R; the pressure is
// S e / (R + S / (K R)). Plane balance, linear, no friction; of a strain below 0 nothing.
Pressure ring_pressure(double strain, LineTension stiffness, Length radius, double foundation_pa_per_m);

// Of a layout that closes, at its most stretched section, its middle surface half the skin sheet off the
// skin: backing and straps as cloth that stiffens, both sheets at four shear moduli times thickness (their
// width is held), on the mean foundation under the layout.
Pressure fastening_pressure(const Prepared& prepared);

}  // namespace wrapgauge
