#include "model/contact/area_average.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "model/geometry/nearest_point.hpp"

namespace wrapgauge {
namespace {

struct Corners {
  Vec3 a, b, c;  // points
  double pa, pb, pc;
  int triangle;
};

int steps_along(const Corners& t, double spacing_m) {
  constexpr double kMostSteps = 64.0;  // a triangle larger than 64 spacings is no contact mesh any more
  const double longest = std::max({(t.b - t.a).norm(), (t.c - t.b).norm(), (t.a - t.c).norm()});
  return static_cast<int>(std::clamp(std::ceil(longest / spacing_m), 1.0, kMostSteps));
}

// The centres of the n*n equal sub-triangles of one triangle; exact for a linear pressure.
void sample_triangle(const Corners& t, double spacing_m, std::vector<PressureSample>& samples) {
  const int n = steps_along(t, spacing_m);
  const double area = 0.5 * (t.b - t.a).cross(t.c - t.a).norm() / (n * n);
  const auto add = [&](double i, double j) {
    const double u = i / n, v = j / n, w = 1.0 - u - v;
    samples.push_back({w * t.a + u * t.b + v * t.c, area, w * t.pa + u * t.pb + v * t.pc, t.triangle});
  };
  for (int i = 0; i < n; ++i)
    for (int j = 0; i + j < n; ++j) {
      add(i + 1.0 / 3.0, j + 1.0 / 3.0);
      if (i + j < n - 1) add(i + 2.0 / 3.0, j + 2.0 / 3.0);
    }
}

struct Push {
  double force_n = 0.0, area_m2 = 0.0;

  void operator+=(const Push& other) {
    force_n += other.force_n;
    area_m2 += other.area_m2;
  }
  void operator+=(const PressureSample& sample) {
    *this += {sample.pressure_pa * sample.area_m2, sample.area_m2};
  }
};

// Triangles about a place are found first: those wholly within the ball are taken at once, the others sample
// by sample.
class SampledSurface {
 public:
  SampledSurface(const TriangleMesh& surface, const Eigen::VectorXd& pressure_pa, double spacing_m)
      : surface_(surface),
        faces_(surface),
        samples_(pressure_samples(surface, pressure_pa, spacing_m)),
        whole_(static_cast<std::size_t>(surface.faces.rows())),
        end_(whole_.size()) {
    for (std::size_t s = 0; s < samples_.size(); ++s) {
      whole_[static_cast<std::size_t>(samples_[s].triangle)] += samples_[s];
      end_[static_cast<std::size_t>(samples_[s].triangle)] = s + 1;
    }
  }

  Push within(const Vec3& centre_m, double radius_m) const {
    std::vector<int> near = faces_.near(centre_m, radius_m);
    std::sort(near.begin(), near.end());  // the same order of summing on every machine
    Push push;
    for (const int face : near) add_within(face, centre_m, radius_m, push);
    return push;
  }

 private:
  void add_within(int face, const Vec3& centre_m, double radius_m, Push& push) const {
    const double most = radius_m * radius_m;
    int corners = 0;
    for (int k = 0; k < 3; ++k)
      corners +=
          (surface_.vertices_m.row(surface_.faces(face, k)).transpose() - centre_m).squaredNorm() < most;
    const auto t = static_cast<std::size_t>(face);
    if (corners == 3) return void(push += whole_[t]);
    for (std::size_t s = t > 0 ? end_[t - 1] : 0; s < end_[t]; ++s)
      if ((samples_[s].point_m - centre_m).squaredNorm() < most) push += samples_[s];
  }

  const TriangleMesh& surface_;
  NearestPoint faces_;
  std::vector<PressureSample> samples_;  // triangle by triangle
  std::vector<Push> whole_;              // a triangle each
  std::vector<std::size_t> end_;         // of each triangle's samples
};

}  // namespace

std::vector<PressureSample> pressure_samples(const TriangleMesh& surface, const Eigen::VectorXd& pressure_pa,
                                             double spacing_m) {
  std::vector<PressureSample> samples;
  for (int t = 0; t < surface.faces.rows(); ++t) {
    const auto face = surface.faces.row(t);
    sample_triangle(
        {surface.vertices_m.row(face[0]), surface.vertices_m.row(face[1]), surface.vertices_m.row(face[2]),
         pressure_pa[face[0]], pressure_pa[face[1]], pressure_pa[face[2]], t},
        spacing_m, samples);
  }
  return samples;
}

Eigen::VectorXd disc_average_pa(const TriangleMesh& surface, const Eigen::VectorXd& pressure_pa,
                                double radius_m, double spacing_m) {
  Eigen::VectorXd average = Eigen::VectorXd::Zero(surface.vertices_m.rows());
  if (surface.faces.rows() == 0) return average;
  const SampledSurface sampled(surface, pressure_pa, spacing_m);
  for (Eigen::Index v = 0; v < average.size(); ++v) {
    const Push push = sampled.within(surface.vertices_m.row(v), radius_m);
    if (push.area_m2 > 0.0) average[v] = push.force_n / push.area_m2;
  }
  return average;
}

}  // namespace wrapgauge
