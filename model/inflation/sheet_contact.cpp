#include "model/inflation/sheet_contact.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <map>

#include "model/inflation/cross_matrix.hpp"

namespace wrapgauge {
namespace {

double flat_area_m2(const FlatMesh& flat, Eigen::Index t) {
  const Vec2 a = flat.vertices_m.row(flat.triangles(t, 0));
  const Vec2 p = flat.vertices_m.row(flat.triangles(t, 1)).transpose() - a,
             q = flat.vertices_m.row(flat.triangles(t, 2)).transpose() - a;
  return 0.5 * (p.x() * q.y() - p.y() * q.x());
}

// The vertices round one that lies inside the layout, in order: each triangle leads from one to the next.
std::vector<int> ring_in_order(const std::map<int, int>& next) {
  std::vector<int> ring;
  int at = next.begin()->first;
  do {
    ring.push_back(at);
    at = next.at(at);
  } while (at != ring.front());
  return ring;
}

// Mean and half the difference of outer and skin sheet.
struct Halves {
  Vec3 mean, half;
};

Halves halves_at(const Points3& x, int skin, int outer) {
  const Vec3 s = x.row(skin).transpose(), o = x.row(outer).transpose();
  return {0.5 * (s + o), 0.5 * (o - s)};
}

std::vector<Halves> ring_of(const GapCell& cell, const Points3& x) {
  std::vector<Halves> ring;
  ring.reserve(cell.ring.size());
  for (const GapCell::RingPlace& place : cell.ring)
    ring.push_back(halves_at(x, cell.nodes[place.skin], cell.nodes[place.outer]));
  return ring;
}

// About the middle of the cell, so that no digits are lost far from the origin.
Vec3 area_vector(const std::vector<Halves>& ring, const Vec3& middle) {
  Vec3 sum = Vec3::Zero();
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Halves &at = ring[i], &next = ring[i + 1 < ring.size() ? i + 1 : 0];
    sum += (at.mean - middle).cross(next.mean - middle) + at.half.cross(next.half) / 3.0;
  }
  return sum / 6.0;
}

// The volume's gradient and curvature, in means and halves of the ring and half the vertex's difference.
class CellShape {
 public:
  CellShape(const GapCell& cell, const Points3& x)
      : cell_(cell), ring_(ring_of(cell, x)), vertex_(halves_at(x, cell.nodes[0], cell.nodes[1])) {
    area_ = area_vector(ring_, vertex_.mean);
  }

  double volume_m3() const { return 2.0 * vertex_.half.dot(area_); }

  Eigen::Matrix3Xd gradient() const {
    Eigen::Matrix3Xd gradient = Eigen::Matrix3Xd::Zero(3, static_cast<Eigen::Index>(cell_.nodes.size()));
    gradient.col(0) = -area_;
    gradient.col(1) = area_;
    for (std::size_t i = 0; i < ring_.size(); ++i) {
      const Vec3 of_mean = (next(i).mean - last(i).mean).cross(vertex_.half) / 3.0,
                 of_half = (next(i).half - last(i).half).cross(vertex_.half) / 9.0;
      gradient.col(cell_.ring[i].skin) += 0.5 * (of_mean - of_half);
      gradient.col(cell_.ring[i].outer) += 0.5 * (of_mean + of_half);
    }
    return gradient;
  }

  void add_curvature(double factor, Eigen::MatrixXd& hessian) const {
    const Mat3 turned = -factor / 3.0 * cross_matrix(vertex_.half);
    for (std::size_t i = 0; i < ring_.size(); ++i) {
      const GapCell::RingPlace here = cell_.ring[i], there = cell_.ring[i + 1 < ring_.size() ? i + 1 : 0];
      const GapCell::RingPlace vertex{0, 1};
      const Vec3 across = next(i).mean - last(i).mean, opening = next(i).half - last(i).half;
      add_block(vertex, kHalf, here, kMean, -factor / 3.0 * cross_matrix(across), hessian);
      add_block(vertex, kHalf, here, kHalf, -factor / 9.0 * cross_matrix(opening), hessian);
      add_block(here, kMean, there, kMean, turned, hessian);
      add_block(here, kHalf, there, kHalf, turned / 3.0, hessian);
    }
  }

 private:
  // What a mean or half a difference is of its two nodes.
  struct Shares {
    double skin, outer;
  };
  static constexpr Shares kMean{0.5, 0.5}, kHalf{-0.5, 0.5};

  const Halves& next(std::size_t i) const { return ring_[i + 1 < ring_.size() ? i + 1 : 0]; }
  const Halves& last(std::size_t i) const { return ring_[i > 0 ? i - 1 : ring_.size() - 1]; }

  static void add_block(const GapCell::RingPlace& row, const Shares& of_row, const GapCell::RingPlace& column,
                        const Shares& of_column, const Mat3& block, Eigen::MatrixXd& hessian) {
    const auto add = [&](int i, int j, double share) {
      hessian.block<3, 3>(3 * i, 3 * j) += share * block;
      hessian.block<3, 3>(3 * j, 3 * i) += share * block.transpose();
    };
    add(row.skin, column.skin, of_row.skin * of_column.skin);
    add(row.skin, column.outer, of_row.skin * of_column.outer);
    add(row.outer, column.skin, of_row.outer * of_column.skin);
    add(row.outer, column.outer, of_row.outer * of_column.outer);
  }

  const GapCell& cell_;
  std::vector<Halves> ring_;
  Halves vertex_;
  Vec3 area_;
};

}  // namespace

void GapCell::list_pairs(std::vector<std::pair<int, int>>& pairs) const {
  for (std::size_t i = 0; i < nodes.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) pairs.emplace_back(nodes[i], nodes[j]);
}

void GapCell::bind(const BlockMatrix& matrix) {
  slots.clear();
  for (std::size_t i = 0; i < nodes.size(); ++i)
    for (std::size_t j = 0; j <= i; ++j) slots.push_back(matrix.slot(nodes[i], nodes[j]));
}

std::vector<GapCell> gap_cells(const FlatMesh& flat, const SheetMesh& sheet) {
  const std::size_t count = sheet.skin_node.size();
  const auto doubled = [&](int vertex) { return sheet.skin_node[vertex] != sheet.outer_node[vertex]; };
  std::vector<std::map<int, int>> next(count);
  std::vector<double> area_m2(count, 0.0);
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner) {
      const int vertex = flat.triangles(t, corner);
      if (!doubled(vertex)) continue;
      next[vertex][flat.triangles(t, (corner + 1) % 3)] = flat.triangles(t, (corner + 2) % 3);
      area_m2[vertex] += flat_area_m2(flat, t) / 3.0;
    }
  std::vector<GapCell> cells;
  for (int vertex = 0; vertex < static_cast<int>(count); ++vertex) {
    if (!doubled(vertex)) continue;
    GapCell cell;
    cell.nodes = {sheet.skin_node[vertex], sheet.outer_node[vertex]};
    cell.rest_area_m2 = area_m2[vertex];
    const auto place = [&](int node) {
      cell.nodes.push_back(node);
      return static_cast<int>(cell.nodes.size()) - 1;
    };
    for (int near : ring_in_order(next[vertex])) {
      const int skin = place(sheet.skin_node[near]);
      cell.ring.push_back({skin, doubled(near) ? place(sheet.outer_node[near]) : skin});
    }
    cells.push_back(std::move(cell));
  }
  return cells;
}

double gap_volume_m3(const GapCell& cell, const Points3& positions_m) {
  return CellShape(cell, positions_m).volume_m3();
}

double GapLaw::energy_n_per_m(double gap_m) const {
  const double u = 1.0 - gap_m / film_m;
  if (u <= 0.0) return 0.0;
  return pressure_pa * film_m * (u <= 1.0 ? u * u * u / 3.0 : u * u - u + 1.0 / 3.0);
}

double GapLaw::pressure_at(double gap_m) const {
  const double u = 1.0 - gap_m / film_m;
  if (u <= 0.0) return 0.0;
  return pressure_pa * (u <= 1.0 ? u * u : 2.0 * u - 1.0);
}

double GapLaw::stiffness_at(double gap_m) const {
  const double u = 1.0 - gap_m / film_m;
  return 2.0 * pressure_pa / film_m * std::clamp(u, 0.0, 1.0);
}

GapLaw gap_law(const InflationSetup& setup, const SheetSettings& settings) {
  const double stiffer_pa =
      std::max(initial_shear_modulus(setup.skin_law).si(), initial_shear_modulus(setup.outer_law).si());
  const double thinner_m =
      std::min(setup.layout.skin_sheet.thickness.si(), setup.layout.outer_sheet.thickness.si());
  return {settings.film_share * thinner_m, settings.film_pressure * stiffer_pa};
}

std::optional<GapTerms> gap_terms(const GapCell& cell, const GapLaw& law, const Points3& positions_m,
                                  TangentKind kind) {
  const CellShape shape(cell, positions_m);
  const double area_m2 = cell.rest_area_m2, gap_m = shape.volume_m3() / area_m2;
  if (gap_m >= law.film_m) return std::nullopt;
  const double pressure_pa = law.pressure_at(gap_m);
  const Eigen::Matrix3Xd of_volume = shape.gradient();
  GapTerms terms;
  terms.energy = area_m2 * law.energy_n_per_m(gap_m);
  terms.gradient = -pressure_pa * of_volume;
  if (kind == TangentKind::kNone) return terms;
  const Eigen::Map<const Eigen::VectorXd> column(of_volume.data(), of_volume.size());
  terms.hessian = law.stiffness_at(gap_m) / area_m2 * column * column.transpose();
  if (kind == TangentKind::kExact) shape.add_curvature(-pressure_pa, terms.hessian);
  return terms;
}

}  // namespace wrapgauge
