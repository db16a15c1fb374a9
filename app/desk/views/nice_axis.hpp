#pragma once
// An axis from zero whose numbers are round.

namespace wrapgauge {

struct NiceAxis {
  double step = 0.2;  // 1, 2, 2.5 or 5 times a power of ten
  int steps = 5;
  int decimals = 1;  // as many as any number on the axis needs: all are written with so many

  double top() const { return step * steps; }
};

// The shortest one that reaches `least_top` (> 0) in at most `most_steps` (> 0).
NiceAxis nice_axis(double least_top, int most_steps);

}  // namespace wrapgauge
