#include "tests/published/membrane_profile.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace wrapgauge::published {
namespace {

constexpr int kSteps = 1000;
constexpr double kFirstRadius = 1e-4;  // the equations are singular in the very middle

// Fourth-order Runge-Kutta from `from` to `to`.
template <int N>
std::array<double, N> integrate(
    const std::function<std::array<double, N>(double, const std::array<double, N>&)>& slope,
    std::array<double, N> y, double from, double to, int steps = kSteps) {
  const double h = (to - from) / steps;
  const auto moved = [](const std::array<double, N>& a, const std::array<double, N>& b, double by) {
    std::array<double, N> sum;
    for (int k = 0; k < N; ++k) sum[k] = a[k] + by * b[k];
    return sum;
  };
  for (int step = 0; step < steps; ++step) {
    const double at = from + step * h;
    const auto k1 = slope(at, y), k2 = slope(at + 0.5 * h, moved(y, k1, 0.5 * h)),
               k3 = slope(at + 0.5 * h, moved(y, k2, 0.5 * h)), k4 = slope(at + h, moved(y, k3, h));
    for (int k = 0; k < N; ++k) y[k] += h / 6.0 * (k1[k] + 2.0 * k2[k] + 2.0 * k3[k] + k4[k]);
  }
  return y;
}

// Where `f` changes its sign between `low` and `high`.
double root(const std::function<double(double)>& f, double low, double high) {
  const bool rising = f(low) < 0.0;
  for (int k = 0; k < 60; ++k) {
    const double middle = 0.5 * (low + high);
    ((f(middle) < 0.0) == rising ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

// State over the rest radius: deformed radius, height lost, angle of the meridian to the plane, stretch along
// it, volume.
using Meridian = std::array<double, 5>;

Meridian meridian_slope(const MembraneLaw& law, double load, double rest, const Meridian& y) {
  const double r = y[0], angle = y[2], l1 = y[3], l2 = r / rest;
  const Tensions t = law(l1, l2);
  const double l2_slope = (l1 * std::cos(angle) - l2) / rest;
  const double s1_slope = (t.s2 * std::cos(angle) - t.s1) / rest;
  return {l1 * std::cos(angle), l1 * std::sin(angle),
          l1 * (load - t.s2 / l1 * std::sin(angle) / r) / (t.s1 / l2), (s1_slope - t.s12 * l2_slope) / t.s11,
          M_PI * r * r * l1 * std::sin(angle)};
}

// From the rim of a flat patch of rest radius `patch`, stretched alike both ways, to the clamp.
Meridian from_patch(const MembraneLaw& law, double load, double stretch, double patch) {
  return integrate<5>([&](double rest, const Meridian& y) { return meridian_slope(law, load, rest, y); },
                      {stretch * patch, 0.0, 0.0, stretch, 0.0}, patch, 1.0);
}

// Newton's method for two unknowns, the derivatives from small differences, steps of at most a fifth.
Eigen::Vector2d solve_two(const std::function<Eigen::Vector2d(const Eigen::Vector2d&)>& miss,
                          Eigen::Vector2d at) {
  for (int round = 0; round < 80; ++round) {
    const Eigen::Vector2d now = miss(at);
    Eigen::Matrix2d tangent;
    for (int c = 0; c < 2; ++c) {
      Eigen::Vector2d moved = at;
      const double by = 1e-6 * std::abs(at(c));
      moved(c) += by;
      tangent.col(c) = (miss(moved) - now) / by;
    }
    Eigen::Vector2d step = -tangent.inverse() * now;
    step *= std::min({1.0, 0.2 * at(0) / std::abs(step(0)), 0.2 * at(1) / std::abs(step(1))});
    at += step;
    if (step.norm() < 1e-12) break;
  }
  return at;
}

}  // namespace

Tensions InvariantLaw::operator()(double l1, double l2) const {
  // First and second derivatives of I1 and I2 with l3 = 1 / (l1 l2).
  const double q = 1.0 / (l1 * l1 * l2 * l2);
  const double x = l1 * l1 + l2 * l2 + q - 3.0;
  const double x1 = 2.0 * l1 - 2.0 * q / l1, x2 = 2.0 * l2 - 2.0 * q / l2;
  const double x11 = 2.0 + 6.0 * q / (l1 * l1), x12 = 4.0 * q / (l1 * l2);
  const double i1 = 1.0 / (l1 * l1), i2 = 1.0 / (l2 * l2), m = l1 * l1 * l2 * l2;  // I2 = i1 + i2 + m
  const double y1 = 2.0 * m / l1 - 2.0 * i1 / l1, y2 = 2.0 * m / l2 - 2.0 * i2 / l2;
  const double y11 = 2.0 * m / (l1 * l1) + 6.0 * i1 / (l1 * l1), y12 = 4.0 * m / (l1 * l2);
  const double first = 0.5 * a + 2.0 * c * x + 3.0 * d * x * x, second = 2.0 * c + 6.0 * d * x;
  return {first * x1 + 0.5 * b * y1, first * x2 + 0.5 * b * y2,
          first * x11 + second * x1 * x1 + 0.5 * b * y11, first * x12 + second * x1 * x2 + 0.5 * b * y12};
}

// The equations know no length: under a load of 1 the disc ends where the hoop stretch has come down to 1,
// and the rest radius there is the load that a disc of radius 1 needs.
DiscShape disc_of_stretch(const MembraneLaw& law, double pole_stretch) {
  constexpr double kFirst = 1e-5, kStep = 2e-4;
  const auto slope = [&](double rest, const Meridian& y) { return meridian_slope(law, 1.0, rest, y); };
  const Tensions t = law(pole_stretch, pole_stretch);
  double rest = kFirst;
  Meridian y{pole_stretch * rest, 0.0, 0.5 * rest * pole_stretch * pole_stretch / t.s1, pole_stretch, 0.0};
  while (true) {
    const Meridian next = integrate<5>(slope, y, rest, rest + kStep, 1);
    if (next[0] < rest + kStep) break;
    y = next;
    rest += kStep;
  }
  const auto over = [&](double by) { return integrate<5>(slope, y, rest, rest + by, 1)[0] - rest - by; };
  const double last = root(over, 0.0, kStep);
  y = integrate<5>(slope, y, rest, rest + last, 1);
  const double radius = rest + last;
  return {radius, pole_stretch, y[1] / radius, y[4] / std::pow(radius, 3)};
}

DiscShape disc_of_load(const MembraneLaw& law, double load, double least_stretch, double most_stretch) {
  const auto over = [&](double stretch) { return disc_of_stretch(law, stretch).load - load; };
  return disc_of_stretch(law, root(over, least_stretch, most_stretch));
}

DiscShape disc_of_height(const MembraneLaw& law, double distance) {
  const auto over = [&](double stretch) { return disc_of_stretch(law, stretch).height - distance; };
  return disc_of_stretch(law, root(over, 1.001, 1.5));
}

DiscShape disc_at_limit(const MembraneLaw& law, double least_stretch, double most_stretch) {
  for (int k = 0; k < 60; ++k) {
    const double third = (most_stretch - least_stretch) / 3.0;
    if (disc_of_stretch(law, least_stretch + third).load < disc_of_stretch(law, most_stretch - third).load)
      least_stretch += third;
    else
      most_stretch -= third;
  }
  return disc_of_stretch(law, 0.5 * (least_stretch + most_stretch));
}

DiscShape disc_on_plate(const MembraneLaw& law, double load, double distance) {
  // From where it just touches, the load raised bit by bit: stretch and rest radius of the patch.
  constexpr int kLoads = 40;
  const DiscShape touching = disc_of_height(law, distance);
  Eigen::Vector2d found(touching.pole_stretch, 0.05);
  for (int k = 1; k <= kLoads; ++k) {
    const double now = touching.load + (load - touching.load) * k / kLoads;
    found = solve_two(
        [&](const Eigen::Vector2d& u) {
          const Meridian end = from_patch(law, now, u(0), u(1));
          return Eigen::Vector2d(end[0] - 1.0, end[1] - distance);
        },
        found);
  }
  const Meridian end = from_patch(law, load, found(0), found(1));
  const double radius = found(0) * found(1);
  return {load, found(0), end[1], end[4], radius, M_PI * radius * radius * load};
}

HenckyConstants hencky_constants(double poisson) {
  // n'' + 3 n'/x + 1/(8 n^2) = 0 for the radial tension n; held at the rim: (1 - nu) n + n' = 0 there.
  using State = std::array<double, 4>;  // n, n', height, volume
  const auto at_rim = [](double middle) {
    const double from = kFirstRadius, slope = -from / (32.0 * middle * middle);
    return integrate<4>(
        [](double x, const State& y) {
          return State{y[1], -3.0 * y[1] / x - 1.0 / (8.0 * y[0] * y[0]), 0.5 * x / y[0],
                       M_PI * x * x * 0.5 * x / y[0]};
        },
        {middle, slope, 0.0, 0.0}, from, 1.0);
  };
  const double middle = root(
      [&](double n) {
        const State y = at_rim(n);
        return (1.0 - poisson) * y[0] + y[1];
      },
      0.3, 1.0);
  const State end = at_rim(middle);
  return {end[2], end[3]};
}

namespace {

double strip_tension(double stretch) {
  return stretch - std::pow(stretch, -3);
}

}  // namespace

StripShape free_strip(double load) {
  const auto over = [&](double angle) {
    return strip_tension(angle / std::sin(angle)) * std::sin(angle) - load;
  };
  const double angle = root(over, 1e-3, 2.8), sine = std::sin(angle);
  StripShape shape;
  shape.height = std::tan(0.5 * angle);
  shape.area = (angle - sine * std::cos(angle)) / (sine * sine);
  shape.stretch = angle / sine;
  return shape;
}

StripShape strip_on_plate(double load, double distance) {
  // The free arc of radius rho leaves the plate tangentially and ends at the clamp.
  const auto patch_of = [&](double angle) {
    return 1.0 - distance / (1.0 - std::cos(angle)) * std::sin(angle);
  };
  const auto over = [&](double angle) {
    const double radius = distance / (1.0 - std::cos(angle));
    return load * radius - strip_tension(patch_of(angle) + radius * angle);
  };
  // From the angle at which the patch is a line to a steep one: the radius falls, the tension rises.
  const double angle = root(over, 2.0 * std::atan(distance), 3.0);
  StripShape shape;
  shape.patch = patch_of(angle);
  shape.force = 2.0 * shape.patch * load;
  return shape;
}

namespace {

// Over the rest coordinate: x, depth, angle of descent towards the clamp, tension, vertical push.
using Arc = std::array<double, 5>;

double stretch_of_tension(double tension) {
  return root([&](double stretch) { return strip_tension(stretch) - tension; }, 1.0, 6.0);
}

// To the clamp from rest coordinate `from`, up to which the strip lies flat at `depth`, a little less than
// where the push balances the load.
Arc arc_at_clamp(double load, double k, Push push, double from, double depth, double tension) {
  const auto slope = [&](double, const Arc& y) {
    const double stretch = stretch_of_tension(y[3]), angle = y[2], q = k * std::max(0.0, y[1]);
    const double sine = std::sin(angle), cosine = std::cos(angle);
    if (push == Push::kAlongSheetNormal)
      return Arc{stretch * cosine, -stretch * sine, stretch * (load - q) / y[3], 0.0, stretch * q * cosine};
    return Arc{stretch * cosine, -stretch * sine, stretch * (load - q * cosine) / y[3], -stretch * q * sine,
               stretch * q};
  };
  const double stretch = stretch_of_tension(tension);
  return integrate<5>(slope, {stretch * from, depth, 0.0, tension, stretch * from * k * depth}, from, 1.0,
                      1000);
}

}  // namespace

StripShape strip_on_foundation(double load, double k, Push push) {
  // Soft foundations: depth and tension of the middle. On a hard one the middle is flat, and how far is
  // sought.
  constexpr double kFlat = 1.0 - 1e-6;
  const double tension = strip_tension(free_strip(load).stretch);
  const bool flat = load / k < 0.1;
  const auto arc = [&](const Eigen::Vector2d& u) {
    return flat ? arc_at_clamp(load, k, push, u(0), kFlat * load / k, u(1))
                : arc_at_clamp(load, k, push, 0.0, u(0), u(1));
  };
  const auto miss = [&](const Eigen::Vector2d& u) {
    const Arc end = arc(u);
    return Eigen::Vector2d(end[0] - 1.0, end[1]);
  };
  const Eigen::Vector2d first =
      flat ? Eigen::Vector2d(0.2, 0.1 * tension)
           : Eigen::Vector2d(std::min(0.999 * load / k, 0.8 * free_strip(load).height), tension);
  const Eigen::Vector2d found = solve_two(miss, first);
  StripShape shape;
  shape.height = flat ? kFlat * load / k : found(0);
  shape.largest_push = k * shape.height / load;
  shape.force = arc(found)[4] / load;
  shape.stretch = stretch_of_tension(found(1));
  return shape;
}

}  // namespace wrapgauge::published
