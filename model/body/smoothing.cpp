#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/body/girth.hpp"
#include "model/body/mend_step.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/mesh_topology.hpp"

namespace wrapgauge {
namespace {

// One step in, one a little further out: features longer than the pass band of 0.1 keep their size.
constexpr double kIn = 0.33, kOut = -0.34;

// Neighbours of each vertex; of a vertex on the rim only those along the rim, so that it does not draw in.
std::vector<std::vector<int>> neighbours_of(const TriangleMesh& mesh) {
  const MeshTopology topology(mesh);
  std::vector<std::vector<int>> neighbours(static_cast<std::size_t>(mesh.vertices_m.rows()));
  for (int f = 0; f < mesh.faces.rows(); ++f)
    for (int k = 0; k < 3; ++k) {
      const int a = mesh.faces(f, k), b = mesh.faces(f, (k + 1) % 3);
      const bool rim = !topology.across(f, k);
      if (rim || !topology.on_boundary(a)) neighbours[a].push_back(b);
      if (rim || !topology.on_boundary(b)) neighbours[b].push_back(a);
    }
  for (auto& list : neighbours) {
    std::sort(list.begin(), list.end());
    list.erase(std::unique(list.begin(), list.end()), list.end());
  }
  return neighbours;
}

void relax(const std::vector<std::vector<int>>& neighbours, double factor, Points3& points) {
  const Points3 before = points;
  for (std::size_t v = 0; v < neighbours.size(); ++v) {
    if (neighbours[v].empty()) continue;
    Vec3 mean = Vec3::Zero();
    for (const int n : neighbours[v]) mean += before.row(n).transpose();
    mean /= static_cast<double>(neighbours[v].size());
    points.row(static_cast<Eigen::Index>(v)) +=
        factor * (mean.transpose() - before.row(static_cast<Eigen::Index>(v)));
  }
}

// Radius of the circle with the area of the closed section of largest area.
double section_radius_m(const PlaneSections& sections, const Vec3& point, const Vec3& normal) {
  double largest_m2 = 0.0;
  for (const SectionLine& line : sections.at(point, normal)) {
    if (!line.closed) continue;
    double twice = 0.0;
    for (std::size_t i = 0; i < line.points_m.size(); ++i)
      twice +=
          (line.points_m[i] - point).cross(line.points_m[(i + 1) % line.points_m.size()] - point).dot(normal);
    largest_m2 = std::max(largest_m2, 0.5 * std::abs(twice));
  }
  return std::sqrt(largest_m2 / std::numbers::pi);
}

struct Change {
  double radius_mean = 0.0, radius_most = 0.0;  // relative, largest by size
  double girth_mean = 0.0, girth_most = 0.0;
};

void take_over(double change, int count, double& mean, double& most) {
  mean += change / count;
  if (std::abs(change) > std::abs(most)) most = change;
}

Change change_of_sections(const Scan& scan, const TriangleMesh& smoothed) {
  const Body before{"", scan.surface, scan.axis, "", {}, {}}, after{"", smoothed, scan.axis, "", {}, {}};
  const PlaneSections sections_before(scan.surface), sections_after(smoothed);
  struct Pair {
    double radius, girth;
  };
  std::vector<Pair> changes;
  const Length length = body_length(before);
  for (double share = 0.1; share < 0.95; share += 0.1) {
    const Length station = share * length;
    const Vec3 point = scan.axis.origin_m + station.si() * scan.axis.direction;
    const double old_radius = section_radius_m(sections_before, point, scan.axis.direction),
                 new_radius = section_radius_m(sections_after, point, scan.axis.direction);
    const Girth old_girth = girth_at(before, station), new_girth = girth_at(after, station);
    if (old_girth.kind != SectionKind::kOneLoop || new_girth.kind != SectionKind::kOneLoop) continue;
    changes.push_back({new_radius / old_radius - 1.0, new_girth.girth / old_girth.girth - 1.0});
  }
  Change change;
  for (const Pair& pair : changes) {
    const int count = static_cast<int>(changes.size());
    take_over(pair.radius, count, change.radius_mean, change.radius_most);
    take_over(pair.girth, count, change.girth_mean, change.girth_most);
  }
  return change;
}

Phrase fine_percent(double share) {
  return figures_of(fixed_text(100.0 * share, 2) + " %");
}

}  // namespace

Result<Mended> smooth(const Scan& scan, const Smooth& options) {
  TriangleMesh smoothed = scan.surface;
  const auto neighbours = neighbours_of(smoothed);
  for (int pass = 0; pass < options.passes; ++pass) {
    relax(neighbours, kIn, smoothed.vertices_m);
    relax(neighbours, kOut, smoothed.vertices_m);
  }
  const Change change = change_of_sections(scan, smoothed);
  const double moved_m =
      std::sqrt((smoothed.vertices_m - scan.surface.vertices_m).rowwise().squaredNorm().mean());
  MendReport report{
      MendKind::kSmooth,
      Phrase::worded(
          "Smoothed in %1 passes: vertices moved by %2 (root mean square); girths, as circles of "
          "the same area, changed by %3 on average and %4 at most; the rough section lines themselves by "
          "%5 on average.",
          {figures_of(options.passes), millimetres_of(Length(moved_m), 2), fine_percent(change.radius_mean),
           fine_percent(change.radius_most), fine_percent(change.girth_mean)}),
      {{"moved_rms_mm", 1e3 * moved_m},
       {"section_line_change_mean_percent", 100.0 * change.girth_mean},
       {"section_line_change_most_percent", 100.0 * change.girth_most},
       {"girth_change_mean_percent", 100.0 * change.radius_mean},
       {"girth_change_most_percent", 100.0 * change.radius_most}}};
  return Mended{with_surface(scan, std::move(smoothed)), std::move(report)};
}

}  // namespace wrapgauge
