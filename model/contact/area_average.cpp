#include "model/contact/area_average.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <nanoflann.hpp>

namespace wrapgauge {
namespace {

struct SampleCloud {
  const std::vector<PressureSample>& samples;
  std::size_t kdtree_get_point_count() const { return samples.size(); }
  double kdtree_get_pt(std::size_t i, std::size_t dimension) const {
    return samples[i].point_m[static_cast<Eigen::Index>(dimension)];
  }
  template <class Box>
  bool kdtree_get_bbox(Box&) const {
    return false;
  }
};
using SampleTree = nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, SampleCloud>,
                                                       SampleCloud, 3, std::size_t>;

struct Corners {
  Vec3 a, b, c;  // points
  double pa, pb, pc;
  int triangle;
};

// The centres of the n*n equal sub-triangles of one triangle; exact for a linear pressure.
void sample_triangle(const Corners& t, int n, std::vector<PressureSample>& samples) {
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

}  // namespace

std::vector<PressureSample> pressure_samples(const TriangleMesh& surface, const Eigen::VectorXd& pressure_pa,
                                             double spacing_m) {
  constexpr double kMostSteps = 64.0;  // a triangle larger than 64 spacings is no contact mesh any more
  std::vector<PressureSample> samples;
  for (int t = 0; t < surface.faces.rows(); ++t) {
    const auto face = surface.faces.row(t);
    const Corners corners{surface.vertices_m.row(face[0]),
                          surface.vertices_m.row(face[1]),
                          surface.vertices_m.row(face[2]),
                          pressure_pa[face[0]],
                          pressure_pa[face[1]],
                          pressure_pa[face[2]],
                          t};
    const double longest = std::max(
        {(corners.b - corners.a).norm(), (corners.c - corners.b).norm(), (corners.a - corners.c).norm()});
    sample_triangle(corners, static_cast<int>(std::clamp(std::ceil(longest / spacing_m), 1.0, kMostSteps)),
                    samples);
  }
  return samples;
}

Eigen::VectorXd disc_average_pa(const TriangleMesh& surface, const std::vector<PressureSample>& samples,
                                double radius_m) {
  Eigen::VectorXd average = Eigen::VectorXd::Zero(surface.vertices_m.rows());
  if (samples.empty()) return average;
  const SampleCloud cloud{samples};
  const SampleTree tree(3, cloud);
  std::vector<std::pair<std::size_t, double>> near;  // index, distance squared
  nanoflann::SearchParams parameters;
  parameters.sorted = true;  // the same order of summing on every machine
  for (Eigen::Index v = 0; v < average.size(); ++v) {
    const Vec3 centre = surface.vertices_m.row(v);
    near.clear();
    tree.radiusSearch(centre.data(), radius_m * radius_m, near, parameters);
    double force = 0.0, area = 0.0;
    for (const auto& item : near) {
      force += samples[item.first].pressure_pa * samples[item.first].area_m2;
      area += samples[item.first].area_m2;
    }
    if (area > 0.0) average[v] = force / area;
  }
  return average;
}

}  // namespace wrapgauge
