#pragma once
// Where the derived figures of tests/published come from: membranes of revolution and strips, integrated as
// ordinary differential equations. Nothing here uses the program's sheets, laws or solver.
// Dimensionless: lengths over the disc's radius or the strip's half width a, tensions over shear modulus
// times thickness, so that the load is P = p a / (mu t).

#include <array>
#include <functional>

namespace wrapgauge::published {

// A membrane's energy W(l1, l2) over mu t, as what is needed of it: nominal tensions and their derivatives.
struct Tensions {
  double s1, s2, s11, s12;  // dW/dl1, dW/dl2, d2W/dl1^2, d2W/dl1 dl2
};
using MembraneLaw = std::function<Tensions(double l1, double l2)>;

// W = x/2 + b/2 y + c x^2 + d x^3 over mu t, with x = I1 - 3, y = I2 - 3 and the third stretch from
// incompressibility. Neo-Hookean {1}, Mooney-Rivlin {1 / 1.1, 0.1 / 1.1}, Yeoh {1, 0, 0.01, 0.00025}.
struct InvariantLaw {
  double a = 1.0, b = 0.0, c = 0.0, d = 0.0;
  Tensions operator()(double l1, double l2) const;
};

// The deformed disc: clamped at r = 1, pressed by P, free but for a flat patch in its middle.
struct DiscShape {
  double load = 0.0, pole_stretch = 1.0, height = 0.0, volume = 0.0;
  double patch_radius = 0.0, force = 0.0;  // of the patch, in the deformed shape; force over mu t a
};

// The free disc whose pole is stretched by `pole_stretch`: the problem of Adkins and Rivlin 1952.
DiscShape disc_of_stretch(const MembraneLaw& law, double pole_stretch);
// The free disc at load P, on the branch of pole stretches between the two given ones.
DiscShape disc_of_load(const MembraneLaw& law, double load, double least_stretch, double most_stretch);
// The load at which the free disc is as high as `distance`.
DiscShape disc_of_height(const MembraneLaw& law, double distance);
// The free disc of the highest load between two pole stretches.
DiscShape disc_at_limit(const MembraneLaw& law, double least_stretch, double most_stretch);
// Pressed at load P on a rigid frictionless plate at `distance` from the clamped rim: in the patch the
// stretch is uniform and the contact pressure equals the load.
DiscShape disc_on_plate(const MembraneLaw& law, double load, double distance);

// Hencky's problem: height and volume of a disc of linear material under a small load, w0/a = c (pa/Et)^1/3
// and V/a^3 = cV (pa/Et)^1/3.
struct HenckyConstants {
  double height, volume;
};
HenckyConstants hencky_constants(double poisson);

// A neo-Hookean strip in plane strain, tension l - l^-3, clamped at x = -1 and 1.
struct StripShape {
  double height = 0.0, area = 0.0;           // of the bulge
  double patch = 0.0, force = 0.0;           // half width of the flat patch; force over mu t, both halves
  double stretch = 1.0, largest_push = 0.0;  // in the middle; the foundation's push over the load
};
StripShape free_strip(double load);
StripShape strip_on_plate(double load, double distance);
// Touching at distance 0 a foundation that pushes by K times the depth: along the sheet's own normal, or
// along the normal of the plane that it stands on. `force` is its push over 2 P.
enum class Push { kAlongSheetNormal, kAlongPlaneNormal };
StripShape strip_on_foundation(double load, double k, Push push);

}  // namespace wrapgauge::published
