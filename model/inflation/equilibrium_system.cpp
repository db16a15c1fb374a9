#include "model/inflation/equilibrium_system.hpp"

#include <algorithm>

#include "model/core/both_at_once.hpp"
#include "model/inflation/cavity.hpp"

namespace wrapgauge {
namespace {

std::vector<bool> held_nodes(const InflationSetup& setup, const SheetMesh& sheet) {
  std::vector<bool> held(sheet.node_count, false);
  for (int vertex : setup.held) held[sheet.skin_node[vertex]] = held[sheet.outer_node[vertex]] = true;
  return held;
}

// The outer sheet starts where it just does not press on the skin sheet.
Points3 node_start(const InflationSetup& setup, const SheetMesh& sheet, const InflationOptions& options) {
  const bool on_body = setup.body != nullptr && options.contact_offset;
  const double lift = on_body ? 0.5 * setup.layout.skin_sheet.thickness.si() : 0.0;
  const double film = gap_law(setup, options.settings.sheets).film_m;
  Points3 start(sheet.node_count, 3);
  for (int node = 0; node < sheet.node_count; ++node) {
    const int vertex = sheet.flat_vertex[node];
    const double above = node == sheet.skin_node[vertex] ? lift : lift + film;
    start.row(node) = setup.start_m.row(vertex) + above * setup.start_outward.row(vertex);
  }
  return start;
}

BendingEdges edges_if(bool bending, const InflationSetup& setup, const SheetMesh& sheet,
                      const std::vector<SheetElement>& elements) {
  return bending ? bending_edges(setup.flat, sheet, elements) : BendingEdges{};
}

std::vector<std::pair<int, int>> coupled_pairs(const SheetMesh& sheet, const BendingEdges& edges,
                                               const std::vector<Stitch>& stitches,
                                               const std::vector<GapCell>& gap_cells_list) {
  std::vector<std::pair<int, int>> pairs;
  for (Eigen::Index t = 0; t < sheet.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner)
      pairs.emplace_back(sheet.triangles(t, corner), sheet.triangles(t, (corner + 1) % 3));
  for (std::size_t k = 0; k < edges.count(); ++k) Stencil<4>{edges.nodes(k), {}}.list_pairs(pairs);
  for (const Stitch& stitch : stitches) stitch.stencil.list_pairs(pairs);
  for (const GapCell& cell : gap_cells_list) cell.list_pairs(pairs);
  return pairs;
}

// 3 a node; empty where nothing weighs. Cloth weighs nothing.
Eigen::VectorXd weights_n(const InflationSetup& setup, const SheetMesh& sheet,
                          const std::vector<SheetElement>& elements) {
  if (setup.skin_weight_pa.isZero() && setup.outer_weight_pa.isZero()) return {};
  Eigen::VectorXd weight = Eigen::VectorXd::Zero(3 * sheet.node_count);
  for (std::size_t t = 0; t < elements.size(); ++t) {
    Vec3 of_area = Vec3::Zero();
    if (sheet.layer[t] == SheetLayer::kFused || sheet.layer[t] == SheetLayer::kSkin)
      of_area += setup.skin_weight_pa;
    if (sheet.layer[t] == SheetLayer::kFused || sheet.layer[t] == SheetLayer::kOuter)
      of_area += setup.outer_weight_pa;
    for (int corner = 0; corner < 3; ++corner)
      weight.segment<3>(3 * sheet.triangles(static_cast<Eigen::Index>(t), corner)) +=
          elements[t].flat_area_m2 / 3.0 * of_area;
  }
  return weight;
}

bool same_points(const Points3& a, const Points3& b) {
  return a.rows() == b.rows() && a == b;
}

}  // namespace

EquilibriumSystem::EquilibriumSystem(const InflationSetup& setup, const InflationOptions& options)
    : setup_(setup),
      options_(options),
      sheet_(make_sheet_mesh(setup.flat)),
      start_m_(node_start(setup, sheet_, options)),
      held_(held_nodes(setup, sheet_)),
      strap_laws_(strap_ground_laws(setup.layout, options.settings.sheets)),
      elements_(sheet_elements(setup, sheet_, strap_laws_)),
      edges_(edges_if(options.bending, setup, sheet_, elements_)),
      stitches_(closure_stitches(setup.flat, sheet_.skin_node, options.settings.sheets.stitch_pa)),
      cells_(gap_cells(setup.flat, sheet_)),
      gap_law_(gap_law(setup, options.settings.sheets)),
      tissue_(setup, sheet_, options, start_m_),
      plate_nodes_(wrapgauge::plate_nodes(setup, sheet_)),
      tangent_(sheet_.node_count, coupled_pairs(sheet_, edges_, stitches_, cells_), held_) {
  triangle_group_.assign(sheet_.layer.size(), -1);
  triangle_side_.assign(sheet_.layer.size(), 0.0);
  for (std::size_t group = 0; group < sheet_.cavities.size(); ++group) {
    for (int t : sheet_.cavities[group].outer_triangles) triangle_group_[t] = static_cast<int>(group);
    for (int t : sheet_.cavities[group].skin_triangles) triangle_group_[t] = static_cast<int>(group);
    for (int t : sheet_.cavities[group].outer_triangles) triangle_side_[t] = 1.0;
    for (int t : sheet_.cavities[group].skin_triangles) triangle_side_[t] = -1.0;
  }
  node_area_m2_ = Eigen::VectorXd::Zero(sheet_.node_count);
  for (Eigen::Index t = 0; t < sheet_.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner)
      node_area_m2_(sheet_.triangles(t, corner)) += elements_[t].flat_area_m2 / 3.0;
  weight_n_ = weights_n(setup, sheet_, elements_);
  terms_.resize(sheet_.layer.size());
  if (options.bending) tabulate_stiffness(elements_);
  bind_stencils();
}

void EquilibriumSystem::bind_stencils() {
  for (Eigen::Index t = 0; t < sheet_.triangles.rows(); ++t) {
    Stencil<3> stencil;
    for (int corner = 0; corner < 3; ++corner) stencil.nodes[corner] = sheet_.triangles(t, corner);
    stencil.bind(tangent_);
    triangle_stencils_.push_back(stencil);
  }
  for (GapCell& cell : cells_) cell.bind(tangent_);
  for (const ContactNode& contact : tissue_.nodes()) {
    Stencil<1> stencil{{contact.node}, {}};
    stencil.bind(tangent_);
    tissue_stencils_.push_back(stencil);
  }
  for (const PlateNode& at : plate_nodes_) {
    Stencil<1> stencil{{at.node}, {}};
    stencil.bind(tangent_);
    plate_stencils_.push_back(stencil);
  }
  for (std::size_t k = 0; k < edges_.count(); ++k) {
    Stencil<4> stencil{edges_.nodes(k), {}};
    stencil.bind(tangent_);
    edge_stencils_.push_back(stencil);
  }
  edge_terms_.resize(edge_stencils_.size());
  flexibilities_.resize(edge_stencils_.empty() ? 0 : elements_.size());
  for (Stitch& stitch : stitches_) {
    stitch.stencil.bind(tangent_);
    stitch.stencil.scatter(tangent_, [&](int i, int j) -> Mat3 {
      return stitch.stiffness_n_per_m * stitch.weights(i) * stitch.weights(j) * Mat3::Identity();
    });
  }
  constant_tangent_ = tangent_.values();
}

void EquilibriumSystem::set_triangle_terms(const Points3& x, int t, double pressure_pa, TangentKind kind) {
  TriangleTerms& terms = terms_[t];
  terms.energy = terms.volume = 0.0;
  for (Vec3& gradient : terms.gradient) gradient.setZero();
  if (kind != TangentKind::kNone)
    for (Mat3& block : terms.blocks) block.setZero();
  add_sheet_terms(x, t, kind, terms);
  if (triangle_group_[t] >= 0) add_cavity_terms(x, t, pressure_pa, kind, terms);
}

void EquilibriumSystem::add_sheet_terms(const Points3& x, int t, TangentKind kind,
                                        TriangleTerms& terms) const {
  const SheetElement& element = elements_[t];
  const auto add = [&](const auto& response, const Eigen::Matrix<double, 3, 2>& shape, double measure) {
    terms.energy += measure * response.energy;
    for (int i = 0; i < 3; ++i) terms.gradient[i] += measure * (response.stress * shape.row(i).transpose());
    if (kind == TangentKind::kNone) return;
    const auto between = [&](int i, int j) -> Mat3 {
      return response.tangent.between(measure * shape.row(i).transpose(), shape.row(j).transpose());
    };
    terms.blocks[2] += between(1, 1);
    terms.blocks[4] += between(2, 1);
    terms.blocks[5] += between(2, 2);
  };
  const MembraneOptions membrane{kind, options_.relaxed_compression};
  for (int k = 0; k < element.layer_count; ++k) {
    const SheetLayerRest& layer = element.layers[k];
    add(membrane_response(*layer.law, deformation_gradient(x, sheet_.triangles, t, layer.shape), membrane),
        layer.shape, layer.rest_area_m2 * layer.thickness_m);
  }
  if (element.cloth_along_n_per_m > 0.0 || element.cloth_across_n_per_m > 0.0)
    add(cloth_response(element.cloth_along_n_per_m, element.cloth_across_n_per_m,
                       deformation_gradient(x, sheet_.triangles, t, element.flat_shape),
                       kind != TangentKind::kNone),
        element.flat_shape, element.flat_area_m2);
  if (kind == TangentKind::kNone) return;
  // A triangle that is moved as a whole meets no resistance.
  terms.blocks[1] = -terms.blocks[2] - terms.blocks[4].transpose();
  terms.blocks[3] = -terms.blocks[4] - terms.blocks[5];
  terms.blocks[0] = -(terms.blocks[1] + terms.blocks[3]).transpose();
}

void EquilibriumSystem::add_cavity_terms(const Points3& x, int t, double pressure_pa, TangentKind kind,
                                         TriangleTerms& terms) const {
  const VolumeShare share =
      volume_share(x.row(sheet_.triangles(t, 0)).transpose(), x.row(sheet_.triangles(t, 1)).transpose(),
                   x.row(sheet_.triangles(t, 2)).transpose());
  const double side = triangle_side_[t];
  terms.volume = side * share.value;
  for (int c = 0; c < 3; ++c) terms.volume_gradient[c] = side * share.gradient[c];
  if (kind != TangentKind::kExact) return;
  terms.blocks[1] -= pressure_pa * side * share.block10;
  terms.blocks[3] -= pressure_pa * side * share.block20;
  terms.blocks[4] -= pressure_pa * side * share.block21;
}

// First the triangles' flexibilities: each belongs to three edges.
void EquilibriumSystem::evaluate_edges(const Points3& x, TangentKind kind) {
  in_halves(flexibilities_.size(), [&](std::size_t from, std::size_t to) {
    for (std::size_t t = from; t < to; ++t)
      flexibilities_[t] = plate_flexibility(elements_[t], sheet_, static_cast<Eigen::Index>(t), x);
  });
  in_halves(edge_terms_.size(), [&](std::size_t from, std::size_t to) {
    for (std::size_t k = from; k < to; ++k) set_edge_terms(x, k, kind);
  });
}

void EquilibriumSystem::set_edge_terms(const Points3& x, std::size_t edge, TangentKind kind) {
  const Dihedral at(edge_stencils_[edge].nodes, x);
  const DihedralEnergy energy = edge_energy(edges_, edge, at.measures, flexibilities_);
  EdgeTerms& terms = edge_terms_[edge];
  terms.energy = energy.value;
  for (int a = 0; a < 4; ++a) terms.gradient[a] = at.gradients[a] * energy.slope;
  if (kind == TangentKind::kExact) terms.blocks = node_hessian(at, energy);
  if (kind == TangentKind::kProjected) terms.blocks = positive_node_hessian(at, energy);
}

void EquilibriumSystem::evaluate_triangles(const Points3& x, const std::vector<CavityLoad>& loads,
                                           TangentKind kind) {
  std::vector<double> pressure(loads.size());
  for (std::size_t g = 0; g < loads.size(); ++g)
    pressure[g] = loads[g].pressure_at(
        loads[g].follows_volume() ? cavity_volume_m3(sheet_, static_cast<GroupId>(g), x) : 0.0);
  const bool has_kind = kind == TangentKind::kNone || kind == terms_key_.kind;
  if (has_kind && pressure == terms_key_.pressure_pa && same_points(x, terms_key_.positions_m)) return;
  terms_key_ = {x, pressure, kind};
  in_halves(terms_.size(), [&](std::size_t from, std::size_t to) {
    for (std::size_t t = from; t < to; ++t)
      set_triangle_terms(x, static_cast<int>(t), triangle_group_[t] < 0 ? 0.0 : pressure[triangle_group_[t]],
                         kind);
  });
  evaluate_edges(x, kind);
}

void EquilibriumSystem::set_tangent_of_sheets() {
  tangent_.set_values(constant_tangent_);
  for (std::size_t k = 0; k < edge_terms_.size(); ++k)
    for (int s = 0; s < 10; ++s) tangent_.add(edge_stencils_[k].slots[s], edge_terms_[k].blocks[s]);
  for (std::size_t t = 0; t < terms_.size(); ++t)
    for (int s = 0; s < 6; ++s) tangent_.add(triangle_stencils_[t].slots[s], terms_[t].blocks[s]);
}

void EquilibriumSystem::add_triangles(const std::vector<CavityLoad>& loads, TangentKind kind,
                                      Evaluation& out) {
  for (std::size_t t = 0; t < terms_.size(); ++t)
    if (triangle_group_[t] >= 0) out.group_volume_m3(triangle_group_[t]) += terms_[t].volume;
  std::vector<double> pressure(loads.size());
  for (std::size_t g = 0; g < loads.size(); ++g) {
    pressure[g] = loads[g].pressure_at(out.group_volume_m3(g));
    out.energy_j += loads[g].energy_at(out.group_volume_m3(g));
  }
  for (std::size_t t = 0; t < terms_.size(); ++t) {
    const TriangleTerms& terms = terms_[t];
    const Stencil<3>& stencil = triangle_stencils_[t];
    const int group = triangle_group_[t];
    out.energy_j += terms.energy;
    for (int c = 0; c < 3; ++c) {
      auto gradient = out.gradient_n.segment<3>(3 * stencil.nodes[c]);
      gradient += terms.gradient[c];
      if (group < 0) continue;
      gradient -= pressure[group] * terms.volume_gradient[c];
      if (kind != TangentKind::kNone)
        out.volume_gradient_m2.col(group).segment<3>(3 * stencil.nodes[c]) += terms.volume_gradient[c];
    }
  }
}

void EquilibriumSystem::add_bending_and_stitches(const Points3& x, Evaluation& out) const {
  for (std::size_t k = 0; k < edge_terms_.size(); ++k) {
    out.energy_j += edge_terms_[k].energy;
    for (int a = 0; a < 4; ++a)
      out.gradient_n.segment<3>(3 * edge_stencils_[k].nodes[a]) += edge_terms_[k].gradient[a];
  }
  for (const Stitch& stitch : stitches_) {
    const auto& nodes = stitch.stencil.nodes;
    Vec3 sum = Vec3::Zero();
    for (std::size_t a = 0; a < nodes.size(); ++a) sum += stitch.weights(a) * x.row(nodes[a]).transpose();
    out.energy_j += 0.5 * stitch.stiffness_n_per_m * sum.squaredNorm();
    for (std::size_t a = 0; a < nodes.size(); ++a)
      out.gradient_n.segment<3>(3 * nodes[a]) += stitch.stiffness_n_per_m * stitch.weights(a) * sum;
  }
}

void EquilibriumSystem::add_gap_cells(const Points3& x, TangentKind kind, Evaluation& out) {
  cell_terms_.resize(cells_.size());
  in_halves(cells_.size(), [&](std::size_t from, std::size_t to) {
    for (std::size_t k = from; k < to; ++k) cell_terms_[k] = gap_terms(cells_[k], gap_law_, x, kind);
  });
  for (std::size_t k = 0; k < cells_.size(); ++k) {
    if (!cell_terms_[k]) continue;
    const GapCell& cell = cells_[k];
    const GapTerms& terms = *cell_terms_[k];
    out.energy_j += terms.energy;
    for (std::size_t i = 0, slot = 0; i < cell.nodes.size(); ++i) {
      const auto row = static_cast<Eigen::Index>(i);
      out.gradient_n.segment<3>(3 * cell.nodes[i]) += terms.gradient.col(row);
      if (kind == TangentKind::kNone) continue;
      for (Eigen::Index column = 0; column <= row; ++column, ++slot)
        tangent_.add(cell.slots[slot], terms.hessian.block<3, 3>(3 * row, 3 * column));
    }
  }
}

void EquilibriumSystem::add_tissue(const Points3& x, TangentKind kind, Evaluation& out) {
  const std::vector<ContactNode>& nodes = tissue_.nodes();
  const SkinSamples& samples = skin_samples(x);
  tissue_terms_.resize(nodes.size());
  in_halves(nodes.size(), [&](std::size_t from, std::size_t to) {
    for (std::size_t k = from; k < to; ++k)
      tissue_terms_[k] = tissue_.term(nodes[k], x.row(nodes[k].node).transpose(), samples[k],
                                      kind == TangentKind::kProjected);
  });
  for (std::size_t k = 0; k < nodes.size(); ++k) {
    const FrictionTerm& term = tissue_terms_[k];
    out.energy_j += term.energy;
    out.gradient_n.segment<3>(3 * nodes[k].node) += term.gradient;
    if (kind != TangentKind::kNone) tangent_.add(tissue_stencils_[k].slots[0], term.hessian);
  }
}

void EquilibriumSystem::add_weight(const Points3& x, Evaluation& out) const {
  if (weight_n_.size() == 0) return;
  out.gradient_n -= weight_n_;
  out.energy_j -= weight_n_.dot(Eigen::Map<const Eigen::VectorXd>(x.data(), x.size()));
}

void EquilibriumSystem::add_plates(const Points3& x, TangentKind kind, Evaluation& out) {
  for (std::size_t k = 0; k < plate_nodes_.size(); ++k) {
    const PlateNode& at = plate_nodes_[k];
    const RigidPlate& plate = setup_.plates[at.plate];
    const double gap = at.gap_m(plate, x.row(at.node).transpose());
    if (gap >= 0.0) continue;
    out.energy_j += 0.5 * at.stiffness_n_per_m * gap * gap;
    out.gradient_n.segment<3>(3 * at.node) += at.stiffness_n_per_m * gap * plate.towards_device;
    if (kind != TangentKind::kNone)
      tangent_.add(plate_stencils_[k].slots[0],
                   at.stiffness_n_per_m * plate.towards_device * plate.towards_device.transpose());
  }
}

const SkinSamples& EquilibriumSystem::skin_samples(const Points3& positions_m) {
  if (!same_points(positions_m, sampled_at_m_)) {
    samples_ = tissue_.samples(positions_m);
    sampled_at_m_ = positions_m;
  }
  return samples_;
}

Evaluation EquilibriumSystem::evaluate(const Points3& positions_m, const std::vector<CavityLoad>& loads,
                                       TangentKind kind, TangentKind next) {
  Evaluation out;
  out.gradient_n = Eigen::VectorXd::Zero(3 * sheet_.node_count);
  out.group_volume_m3 = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(loads.size()));
  if (kind != TangentKind::kNone) {
    out.volume_gradient_m2 =
        Eigen::MatrixXd::Zero(3 * sheet_.node_count, static_cast<Eigen::Index>(loads.size()));
  }
  evaluate_triangles(positions_m, loads, kind == TangentKind::kNone ? next : kind);
  const auto add_sheets = [&] {
    add_triangles(loads, kind, out);
    add_bending_and_stitches(positions_m, out);
  };
  if (kind == TangentKind::kNone)
    add_sheets();
  else
    both_at_once(add_sheets, [&] { set_tangent_of_sheets(); });
  add_gap_cells(positions_m, kind, out);
  add_tissue(positions_m, kind, out);
  add_plates(positions_m, kind, out);
  add_weight(positions_m, out);
  for (int node = 0; node < sheet_.node_count; ++node) {
    if (!held_[node]) continue;
    out.gradient_n.segment<3>(3 * node).setZero();
    if (kind != TangentKind::kNone) out.volume_gradient_m2.middleRows<3>(3 * node).setZero();
  }
  return out;
}

void EquilibriumSystem::resist_sliding(const Points3& positions_m, double share) {
  const std::vector<ContactNode>& nodes = tissue_.nodes();
  for (std::size_t k = 0; k < nodes.size(); ++k)
    tangent_.add(tissue_stencils_[k].slots[0],
                 tissue_.sliding_resistance(nodes[k], positions_m.row(nodes[k].node).transpose(), share));
}

// A fused sheet beside no chamber counts as one of the first group's.
MostStretched EquilibriumSystem::most_stretched(const Points3& positions_m) const {
  MostStretched most;
  for (std::size_t t = 0; t < elements_.size(); ++t) {
    if (sheet_.layer[t] == SheetLayer::kStrap) continue;
    const SheetElement& element = elements_[t];
    for (int k = 0; k < element.layer_count; ++k) {
      const SheetLayerRest& layer = element.layers[k];
      const double stretch = principal_stretches(
          deformation_gradient(positions_m, sheet_.triangles, static_cast<Eigen::Index>(t), layer.shape))(0);
      const double limit =
          layer.law == &setup_.skin_law ? setup_.skin_stretch_limit : setup_.outer_stretch_limit;
      const double share = (stretch - 1.0) / (limit - 1.0);
      if (share > most.share) most = {share, std::max(triangle_group_[t], 0)};
    }
  }
  return most;
}

void EquilibriumSystem::refresh(const Points3& positions_m, double share) {
  tissue_.refresh(sheet_, positions_m, skin_samples(positions_m), share);
}

Eigen::VectorXd EquilibriumSystem::following(const Points3& positions_m, const Points3& way_m) {
  Eigen::VectorXd change = Eigen::VectorXd::Zero(3 * sheet_.node_count);
  if (setup_.body == nullptr) return change;
  tissue_.add_following(sheet_, positions_m, skin_samples(positions_m), way_m, change);
  for (int node = 0; node < sheet_.node_count; ++node)
    if (held_[node]) change.segment<3>(3 * node).setZero();
  return change;
}

}  // namespace wrapgauge
