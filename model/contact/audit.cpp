#include "model/contact/audit.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/contact/plane_cut.hpp"
#include "model/contact/skin_side.hpp"
#include "model/inflation/bending.hpp"

namespace wrapgauge {
namespace {

constexpr int kCuts = 6;

void add_sums(const Body& body, const EquilibriumState& state, Audit& result) {
  Vec3 sum = Vec3::Zero();
  double sizes = 0.0;
  for (Eigen::Index v = 0; v < state.contact_force_n.rows(); ++v) {
    sum += state.contact_force_n.row(v).transpose();
    sizes += state.contact_force_n.row(v).norm();
  }
  if (sizes <= 0.0) return;
  const double along = sum.dot(body.axis.direction);
  result.axial_balance = std::abs(along) / sizes;
  result.lateral_balance = (sum - along * body.axis.direction).norm() / sizes;
}

// Contact pressure acts along the outward normal of the body where the sheet touches it.
Force push_along(const Body& body, const InflationSetup& setup, const TriangleMesh& side,
                 const EquilibriumState& state) {
  if (!setup.body) return Force(0.0);
  const Eigen::VectorXd areas = vertex_areas_m2(side);
  double push = 0.0;
  for (Eigen::Index v = 0; v < areas.size(); ++v) {
    if (state.contact_pressure_pa[v] <= 0.0) continue;
    const Vec3 outward = setup.body->at(side.vertices_m.row(v)).gradient.normalized();
    push += state.contact_pressure_pa[v] * areas[v] * outward.dot(body.axis.direction);
  }
  return Force(push);
}

Points3 traction_pa(const TriangleMesh& side, const EquilibriumState& state) {
  const Eigen::VectorXd areas = vertex_areas_m2(side);
  Points3 traction = Points3::Zero(areas.size(), 3);
  for (Eigen::Index v = 0; v < areas.size(); ++v)
    if (areas[v] > 0.0) traction.row(v) = state.contact_force_n.row(v) / areas[v];
  return traction;
}

double edge_m(const TriangleMesh& side) {
  const double area =
      triangle_areas_m2(side).sum() / static_cast<double>(std::max<Eigen::Index>(side.faces.rows(), 1));
  return std::sqrt(4.0 / std::sqrt(3.0) * area);
}

// Smallest distance from the plane of the line where the two edges are tied; < 0 when the plane crosses it.
double clear_of_closure_m(const FlatMesh& flat, const TriangleMesh& side, const Plane& plane) {
  double low = 1e9, high = -1e9;
  for (const auto* line : {&flat.closing_from, &flat.closing_to})
    for (const int v : *line) {
      const double height = plane.height_m(side.vertices_m.row(v));
      low = std::min(low, height);
      high = std::max(high, height);
    }
  return std::max(low, -high);
}

// Planes through the limb's axis there, evenly turned, without those that come near the closure: the force
// across the tie between its two edges is not a sheet tension.
std::vector<Plane> cutting_planes(const Body& body, const FlatMesh& flat, const TriangleMesh& side) {
  constexpr int kCandidates = 36;
  const double clear_m = std::max(8e-3, 2.0 * edge_m(side));
  const Vec3 centre = side.vertices_m.colwise().mean();
  const Vec3 u = body.axis.direction.unitOrthogonal(), v = body.axis.direction.cross(u);
  std::vector<Plane> clear;
  for (int k = 0; k < kCandidates; ++k) {
    const double angle = std::numbers::pi * (k + 0.5) / kCandidates;
    const Plane plane{centre, std::cos(angle) * u + std::sin(angle) * v};
    if (clear_of_closure_m(flat, side, plane) > clear_m) clear.push_back(plane);
  }
  std::vector<Plane> planes;
  const std::size_t wanted = std::min<std::size_t>(kCuts, clear.size());
  for (std::size_t k = 0; k < wanted; ++k) planes.push_back(clear[(2 * k + 1) * clear.size() / (2 * wanted)]);
  return planes;
}

struct Cut {
  Vec3 contact_n = Vec3::Zero(), tension_n = Vec3::Zero(), push_n = Vec3::Zero();
};

// What the sheets carry: tension of their membranes, and what bending puts on every node (a layer at a weld
// shortens the sheet beside it, which its membrane answers with more tension than the sheet has).
struct SheetForces {
  SheetStress stress;
  Points3 bending_n;
};

// Strain is constant in each triangle, so the tension on a single plane jumps from one triangle to the next
// and balances only on average: the mean of parallel planes over two mesh edges is taken.
Cut mean_cut(const InflationSetup& setup, const LoadPath& path, const EquilibriumState& state,
             const SheetForces& sheets, const TriangleMesh& side, const Plane& plane) {
  constexpr int kParallel = 8;
  const Points3 traction = traction_pa(side, state);
  const double band = 2.0 * edge_m(side);
  Cut mean;
  for (int k = 0; k < kParallel; ++k) {
    const double offset = band * ((k + 0.5) / kParallel - 0.5);
    const Plane shifted{plane.point_m + offset * plane.normal, plane.normal};
    mean.contact_n += traction_on_half_n(side, traction, shifted) / kParallel;
    mean.tension_n += (tension_across_n(setup.flat, path.sheet, sheets.stress, state.positions_m, shifted) +
                       bending_across_n(sheets.bending_n, state.positions_m, shifted)) /
                      kParallel;
    mean.push_n += cavity_push_n(path.sheet, state, shifted) / kParallel;
  }
  return mean;
}

double cut_imbalance(const Cut& cut) {
  const double size = std::max({cut.contact_n.norm(), cut.tension_n.norm(), cut.push_n.norm()});
  return size > 0.0 ? (cut.contact_n + cut.tension_n + cut.push_n).norm() / size : 0.0;
}

}  // namespace

Audit audit(const Body& body, const InflationSetup& setup, const LoadPath& path,
            const EquilibriumState& state) {
  Audit result;
  result.residual_n = state.residual_n;
  const TriangleMesh side = skin_side(setup, path.sheet, state.positions_m);
  if (side.vertices_m.rows() == 0) return result;
  add_sums(body, state, result);
  result.push_along_axis = push_along(body, setup, side, state);
  if (setup.flat.closing_from.empty()) return result;

  const SheetForces sheets{sheet_stress(setup, path.sheet, state.positions_m),
                           path.bending ? bending_forces_n(setup, path.sheet, state.positions_m)
                                        : Points3(Points3::Zero(state.positions_m.rows(), 3))};
  for (const Plane& plane : cutting_planes(body, setup.flat, side)) {
    result.cut_balance =
        std::max(result.cut_balance, cut_imbalance(mean_cut(setup, path, state, sheets, side, plane)));
    ++result.cuts;
  }
  return result;
}

}  // namespace wrapgauge
