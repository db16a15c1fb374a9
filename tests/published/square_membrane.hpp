#pragma once
// A clamped square neo-Hookean membrane under pressure, solved apart from the program: a quarter of it in
// bilinear quadrilaterals, its energy minimised by damped motion. Lengths over the half side a, load P = p a
// / (mu t).

namespace wrapgauge::published {

struct SquareMembrane {
  double rise = 0.0;    // of the middle, over a
  double volume = 0.0;  // under the whole sheet, over a^3
};

// On a quarter of cells x cells.
SquareMembrane square_membrane(double load, int cells);
// From meshes of 10, 20 and 40 cells, extrapolated with the square of the cell; the first two foretell the
// third.
struct ExtrapolatedSquare {
  SquareMembrane limit, coarse_limit;
};
ExtrapolatedSquare extrapolated_square_membrane(double load);

}  // namespace wrapgauge::published
