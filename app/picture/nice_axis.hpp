#pragma once
// Round numbers for axes and scales.

namespace wrapgauge {

// An axis from zero.
struct NiceAxis {
  double step = 0.2;  // 1, 2, 2.5 or 5 times a power of ten
  int steps = 5;
  int decimals = 1;  // as many as any number on the axis needs: all are written with so many

  double top() const { return step * steps; }
};

// The shortest one that reaches `least_top` (> 0) in at most `most_steps` (> 0).
NiceAxis nice_axis(double least_top, int most_steps);

// The shortest step of 1, 2 or 5 times a power of ten, `least` (such a power) or longer, that takes at most
// `most_steps` to `top`.
double round_step(double top, double most_steps, double least);

// A round length for a bar of at most `most_pixels`; 0.5 mm where even that is longer.
double scale_length_mm(double pixels_per_m, double most_pixels);

}  // namespace wrapgauge
