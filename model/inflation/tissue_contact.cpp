#include "model/inflation/tissue_contact.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "model/core/both_at_once.hpp"
#include "model/geometry/polygon.hpp"
#include "model/layout/flat_places.hpp"

namespace wrapgauge {
namespace {

bool in_a_chamber(const InflationSetup& setup, const Vec2& point) {
  return std::any_of(setup.layout.chambers.begin(), setup.layout.chambers.end(),
                     [&](const Chamber& chamber) { return contains(chamber.boundary_m, point); });
}

}  // namespace

// By whole triangles: a point on a chamber's edge lies neither inside nor outside of it.
std::vector<bool> glued_vertices(const InflationSetup& setup, const SheetMesh& sheet) {
  const FlatMesh& flat = setup.flat;
  std::vector<bool> glued(sheet.skin_node.size(), false);
  if (!setup.layout.rim_bonded) return glued;
  const std::vector<bool> on_edge = vertices_on_edge(flat);
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const RegionKind kind = flat.regions[static_cast<std::size_t>(t)].kind;
    if (kind == RegionKind::kStrap) continue;
    const bool rim = kind == RegionKind::kWeld && !in_a_chamber(setup, middle_of(flat, t));
    for (int corner = 0; corner < 3; ++corner)
      if (const int vertex = flat.triangles(t, corner); rim || on_edge[vertex]) glued[vertex] = true;
  }
  return glued;
}

TissueContact::TissueContact(const InflationSetup& setup, const SheetMesh& sheet,
                             const InflationOptions& options, const Points3& start_m)
    : body_(setup.body.get()),
      friction_(setup.friction),
      elastic_slip_m_(options.settings.tissue.elastic_slip_m),
      bond_pa_(options.settings.tissue.bond_pa) {
  if (body_ == nullptr) return;
  if (setup.coupled_tissue) layer_.emplace(*setup.coupled_tissue);
  const double offset = options.contact_offset ? 0.5 * setup.layout.skin_sheet.thickness.si() : 0.0;
  const std::vector<bool> glued = glued_vertices(setup, sheet);
  for (int vertex = 0; vertex < static_cast<int>(sheet.skin_node.size()); ++vertex) {
    ContactNode contact;
    contact.node = sheet.skin_node[vertex];
    contact.flat_vertex = vertex;
    contact.foundation_pa_per_m =
        layer_ ? layer_->spring_pa_per_m(vertex) : setup.foundation_pa_per_m(vertex);
    contact.offset_m = offset + (setup.between_m.size() > 0 ? setup.between_m(vertex) : 0.0);
    contact.bonded = glued[vertex];
    contact.grip_m = start_m.row(contact.node).transpose();
    contact.normal = body_->at(contact.grip_m).gradient.normalized();
    nodes_.push_back(contact);
  }
  const Eigen::VectorXd area_m2 = areas_m2(sheet, start_m);
  for (std::size_t k = 0; k < nodes_.size(); ++k) {
    nodes_[k].area_m2 = area_m2(static_cast<Eigen::Index>(k));
    nodes_[k].friction_limit_n = friction_ * options.settings.tissue.first_pressure_pa * nodes_[k].area_m2;
  }
}

Eigen::VectorXd TissueContact::areas_m2(const SheetMesh& sheet, const Points3& positions_m) const {
  Eigen::VectorXd area_m2 = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(nodes_.size()));
  for (Eigen::Index t = 0; t < sheet.triangles.rows(); ++t) {
    if (sheet.layer[t] == SheetLayer::kOuter) continue;
    const Vec3 a = positions_m.row(sheet.triangles(t, 0)), b = positions_m.row(sheet.triangles(t, 1)),
               c = positions_m.row(sheet.triangles(t, 2));
    const double third = (b - a).cross(c - a).norm() / 6.0;
    // Contact nodes are listed by flat vertex.
    for (int corner = 0; corner < 3; ++corner)
      area_m2(sheet.flat_vertex[sheet.triangles(t, corner)]) += third;
  }
  return area_m2;
}

Eigen::VectorXd TissueContact::area_change(const SheetMesh& sheet, const Points3& positions_m,
                                           const Points3& way_m) const {
  Eigen::VectorXd change = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(nodes_.size()));
  for (Eigen::Index t = 0; t < sheet.triangles.rows(); ++t) {
    if (sheet.layer[t] == SheetLayer::kOuter) continue;
    const auto edge = [&](const Points3& of, int corner) -> Vec3 {
      return (of.row(sheet.triangles(t, corner)) - of.row(sheet.triangles(t, 0))).transpose();
    };
    const Vec3 p = edge(positions_m, 1), q = edge(positions_m, 2);
    const Vec3 normal = p.cross(q).normalized();
    const double third = normal.dot(edge(way_m, 1).cross(q) + p.cross(edge(way_m, 2))) / 6.0;
    for (int corner = 0; corner < 3; ++corner) change(sheet.flat_vertex[sheet.triangles(t, corner)]) += third;
  }
  return change;
}

void TissueContact::add_following(const SheetMesh& sheet, const Points3& positions_m,
                                  const SkinSamples& samples, const Points3& way_m,
                                  Eigen::VectorXd& change_n) const {
  const Eigen::VectorXd area = area_change(sheet, positions_m, way_m);
  for (std::size_t k = 0; k < nodes_.size(); ++k) {
    const ContactNode& contact = nodes_[k];
    const Vec3 position = positions_m.row(contact.node).transpose();
    const DistanceSample& sample = samples[k];
    const double gap = gap_m(contact, sample);
    const Vec3 way = way_m.row(contact.node).transpose();
    const double grown_m2 = area(static_cast<Eigen::Index>(k));
    auto change = change_n.segment<3>(3 * contact.node);
    if (gap < 0.0 || contact.bonded) change += contact.foundation_pa_per_m * gap * grown_m2 * sample.gradient;
    const double limit = friction_limit_n(contact);
    if (!(limit > 0.0)) continue;
    const double grown_limit = contact.bonded ? limit * grown_m2 / contact.area_m2
                               : gap < 0.0    ? -friction_ * contact.foundation_pa_per_m *
                                                 (sample.gradient.dot(way) * contact.area_m2 + gap * grown_m2)
                                           : 0.0;
    change += grown_limit / limit * friction_of(contact, position).gradient;
    change += friction_turned(position, contact.grip_m, contact.normal, limit, elastic_slip_m_,
                              normal_change(sample, way));
  }
}

double TissueContact::friction_limit_n(const ContactNode& contact) const {
  return contact.bonded ? bond_pa_ * contact.area_m2 : contact.friction_limit_n;
}

FrictionTerm TissueContact::friction_of(const ContactNode& contact, const Vec3& position_m) const {
  const double limit = friction_limit_n(contact);
  if (!(limit > 0.0)) return {};
  return friction_term(position_m, contact.grip_m, contact.normal, limit, elastic_slip_m_);
}

SkinSamples TissueContact::samples(const Points3& positions_m) const {
  SkinSamples samples(nodes_.size());
  in_halves(nodes_.size(), [&](std::size_t from, std::size_t to) {
    for (std::size_t k = from; k < to; ++k)
      samples[k] = body_->at(positions_m.row(nodes_[k].node).transpose());
  });
  return samples;
}

FrictionTerm TissueContact::term(const ContactNode& contact, const Vec3& position_m, bool projected) const {
  return term(contact, position_m, body_->at(position_m), projected);
}

FrictionTerm TissueContact::term(const ContactNode& contact, const Vec3& position_m,
                                 const DistanceSample& sample, bool projected) const {
  FrictionTerm term = friction_of(contact, position_m);
  const double gap = gap_m(contact, sample);
  const double stiffness = contact.foundation_pa_per_m * contact.area_m2;
  if (gap < 0.0 || contact.bonded) {
    term.energy += 0.5 * stiffness * gap * gap;
    term.gradient += stiffness * gap * sample.gradient;
    term.hessian += stiffness * sample.gradient * sample.gradient.transpose();
    if (!projected) term.hessian += stiffness * gap * sample.hessian_per_m;
  }
  return term;
}

Mat3 TissueContact::sliding_resistance(const ContactNode& contact, const Vec3& position_m,
                                       double share) const {
  const double limit = friction_limit_n(contact);
  if (!(limit > 0.0)) return Mat3::Zero();
  return wrapgauge::sliding_resistance(position_m, contact.grip_m, contact.normal, limit, elastic_slip_m_,
                                       share);
}

Vec3 TissueContact::force_on_sheet(const ContactNode& contact, const Vec3& position_m) const {
  return -term(contact, position_m, true).gradient;
}

double TissueContact::compression_m(const ContactNode& contact, const Vec3& position_m) const {
  return std::max(0.0, -gap_m(contact, body_->at(position_m)));
}

double TissueContact::indentation_m(const ContactNode& contact, const Vec3& position_m) const {
  return std::max(0.0, compression_m(contact, position_m) + contact.lowering_m);
}

Eigen::VectorXd TissueContact::lowering_m() const {
  Eigen::VectorXd lowering(static_cast<Eigen::Index>(nodes_.size()));
  for (std::size_t k = 0; k < nodes_.size(); ++k)
    lowering(static_cast<Eigen::Index>(k)) = nodes_[k].lowering_m;
  return lowering;
}

void TissueContact::set_lowering_m(const Eigen::VectorXd& lowering_m) {
  for (std::size_t k = 0; k < nodes_.size(); ++k)
    nodes_[k].lowering_m = lowering_m(static_cast<Eigen::Index>(k));
}

SkinPlaces TissueContact::places(const Points3& positions_m) const {
  const auto count = static_cast<Eigen::Index>(nodes_.size());
  SkinPlaces places{Points3(count, 3), Points3(count, 3), Eigen::VectorXd(count)};
  for (Eigen::Index k = 0; k < count; ++k) {
    const ContactNode& contact = nodes_[static_cast<std::size_t>(k)];
    const Vec3 position = positions_m.row(contact.node).transpose();
    const DistanceSample sample = body_->at(position);
    places.normals.row(k) = sample.gradient.normalized().transpose();
    places.points_m.row(k) = positions_m.row(contact.node) - sample.distance_m * places.normals.row(k);
    places.area_m2(k) = contact.area_m2;
  }
  return places;
}

CoupledFit TissueContact::coupled_fit(const Points3& positions_m) const {
  const auto count = static_cast<Eigen::Index>(nodes_.size());
  Eigen::VectorXd force(count), compression(count);
  for (Eigen::Index k = 0; k < count; ++k) {
    const ContactNode& contact = nodes_[static_cast<std::size_t>(k)];
    const Vec3 position = positions_m.row(contact.node).transpose();
    compression(k) = contact.bonded ? -gap_m(contact, body_->at(position)) : compression_m(contact, position);
    force(k) = contact.foundation_pa_per_m * contact.area_m2 * compression(k);
  }
  const Eigen::VectorXd skin = layer_->lowering_m(places(positions_m), force);
  CoupledFit fit{skin - compression, 0.0, skin.lpNorm<Eigen::Infinity>()};
  fit.worst_misfit_m = (fit.lowering_m - lowering_m()).lpNorm<Eigen::Infinity>();
  return fit;
}

void TissueContact::refresh(const SheetMesh& sheet, const Points3& positions_m, const SkinSamples& samples,
                            double share) {
  if (nodes_.empty()) return;
  const Eigen::VectorXd area_m2 = areas_m2(sheet, positions_m);
  for (std::size_t k = 0; k < nodes_.size(); ++k) {
    ContactNode& contact = nodes_[k];
    const Vec3 normal = samples[k].gradient.normalized();
    contact.normal = ((1.0 - share) * contact.normal + share * normal).normalized();
    contact.area_m2 = std::lerp(contact.area_m2, area_m2(static_cast<Eigen::Index>(k)), share);
    const double limit_n = friction_ * contact.foundation_pa_per_m *
                           std::max(0.0, -gap_m(contact, samples[k])) * contact.area_m2;
    contact.friction_limit_n = std::lerp(contact.friction_limit_n, limit_n, share);
  }
}

void TissueContact::drag_grips(const Points3& positions_m) {
  for (ContactNode& contact : nodes_) {
    if (contact.bonded) continue;
    const Vec3 position = positions_m.row(contact.node).transpose();
    contact.grip_m = contact.friction_limit_n > 0.0
                         ? dragged_grip(position, contact.grip_m, contact.normal, elastic_slip_m_)
                         : position;
  }
}

}  // namespace wrapgauge
