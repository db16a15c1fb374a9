#include "model/inflation/coupled_layer.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "model/core/in_parallel.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/nearest_among_points.hpp"

namespace wrapgauge {

namespace {

constexpr double kRounded = 1.0 + 1e-9;  // on a distance that must not come out too small

}  // namespace

double surface_distance_m(const Vec3& a_m, const Vec3& normal_a, const Vec3& b_m, const Vec3& normal_b) {
  const Vec3 chord = b_m - a_m, turn = normal_b - normal_a;
  const double straight = chord.squaredNorm(), half_sine = 0.5 * turn.norm();  // sin(angle / 2)
  if (half_sine < 1e-6) return std::sqrt(straight);
  // Only the part of the chord along the turn bends with the surface.
  const double along = chord.dot(turn) / (2.0 * half_sine), half = std::asin(std::min(1.0, half_sine));
  const double stretch = half / half_sine;
  return std::sqrt(straight + along * along * (stretch * stretch - 1.0));
}

std::optional<Problem> tissue_layer_problem(const TissueLayer& layer) {
  if (!(layer.young_pa > 0.0) || !std::isfinite(layer.young_pa))
    return bad_input(Phrase::worded(
        "A tissue layer with a Young's modulus of %1 kPa cannot carry pressure; give a value above 0 kPa.",
        {figures_of(number_text(layer.young_pa / 1000.0))}));
  if (!(layer.poisson >= 0.0 && layer.poisson <= 0.5))
    return bad_input(
        Phrase::worded("A Poisson ratio of %1 is outside 0 to 0.5; give a tissue layer one inside.",
                       {figures_of(number_text(layer.poisson))}));
  const Eigen::VectorXd& factor = layer.stiffness_factor;
  if (factor.size() > 0 &&
      (factor.size() != layer.depth_m.size() || !(factor.minCoeff() > 0.0) || !factor.allFinite()))
    return bad_input(Phrase::worded(
        "A tissue layer has %1 stiffness factors for %2 places, or one that is not above 0; give one above 0 "
        "a "
        "place, or none.",
        {figures_of(std::to_string(factor.size())), figures_of(std::to_string(layer.depth_m.size()))}));
  const double least = layer.depth_m.size() > 0 ? layer.depth_m.minCoeff() : 1.0;
  if (!(least > 0.0) || !layer.depth_m.allFinite())
    return bad_input(Phrase::worded("A tissue depth of %1 mm is not a layer; give values above 0 mm.",
                                    {figures_of(number_text(least * 1000.0))}));
  return std::nullopt;
}

CoupledLayer::CoupledLayer(TissueLayer layer)
    : layer_(std::move(layer)),
      contact_modulus_pa_(layer_.young_pa / (1.0 - layer_.poisson * layer_.poisson)),
      compliance_(std::make_shared<LayerCompliance>(layer_.poisson)) {}

double CoupledLayer::spring_pa_per_m(Eigen::Index i) const {
  return stiffness_factor(i) * contact_modulus_pa_ / (2.0 * layer_.depth_m(i) * compliance_->softest());
}

double CoupledLayer::stiffness_factor(Eigen::Index i) const {
  return layer_.stiffness_factor.size() > 0 ? layer_.stiffness_factor(i) : 1.0;
}

// Mean of the point response over a disc of the node's area, seen from its middle.
double CoupledLayer::own_m_per_n(double area_m2, double depth_m) const {
  const double radius = std::sqrt(area_m2 / M_PI);
  const double correction = depth_m * compliance_->depth_correction_moment(radius / depth_m);
  return 2.0 * (radius - correction) / (contact_modulus_pa_ * area_m2);
}

// The same seen from outside the disc: the value at its middle and radius^2 / 8 times the Laplacian.
double CoupledLayer::at_distance_m_per_n(double distance_m, double area_m2, double depth_m) const {
  const double q = distance_m / depth_m;
  if (q >= LayerCompliance::kReach) return 0.0;
  const double spread = area_m2 / (8.0 * M_PI * depth_m * depth_m);
  const double value = 1.0 / q - compliance_->depth_correction(q) +
                       spread * (1.0 / (q * q * q) + compliance_->depth_correction_bend(q));
  return value / (M_PI * contact_modulus_pa_ * depth_m);
}

double CoupledLayer::between_m_per_n(const SkinPlaces& places, Eigen::Index i, Eigen::Index j) const {
  const double depth = std::sqrt(layer_.depth_m(i) * layer_.depth_m(j));
  const double area = 0.5 * (places.area_m2(i) + places.area_m2(j));
  const double distance =
      surface_distance_m(places.points_m.row(i).transpose(), places.normals.row(i).transpose(),
                         places.points_m.row(j).transpose(), places.normals.row(j).transpose());
  // Places on two lines that are stitched together lie on each other, each with half a disc: as far apart as
  // the middles of the halves.
  const double halves = 1.2 * std::sqrt(area / M_PI);
  return at_distance_m_per_n(std::max(distance, halves), area, depth) /
         std::sqrt(stiffness_factor(i) * stiffness_factor(j));
}

Eigen::VectorXd CoupledLayer::lowering_m(const SkinPlaces& places, const Eigen::VectorXd& force_n) const {
  Eigen::VectorXd lowering(force_n.size());
  if (force_n.size() == 0) return lowering;
  std::vector<Eigen::Index> loaded;
  for (Eigen::Index j = 0; j < force_n.size(); ++j)
    if (force_n(j) != 0.0) loaded.push_back(j);
  const NearestAmongPoints tree(places.points_m(loaded, Eigen::all));
  const double deepest_m = layer_.depth_m.maxCoeff();
  // A force is not felt beyond the reach along the skin, which is never shorter than straight across.
  const auto row = [&](Eigen::Index i) {
    const double reach_m = kRounded * LayerCompliance::kReach * std::sqrt(layer_.depth_m(i) * deepest_m);
    double sum = 0.0;
    for (const FoundPoint& near : tree.within(places.points_m.row(i).transpose(), reach_m)) {
      const Eigen::Index j = loaded[static_cast<std::size_t>(near.index)];
      sum += force_n(j) * (j == i ? own_m_per_n(places.area_m2(i), layer_.depth_m(i)) / stiffness_factor(i)
                                  : between_m_per_n(places, i, j));
    }
    return sum;
  };
  in_parallel(tbb::blocked_range<Eigen::Index>(0, force_n.size(), 64), [&](const auto& range) {
    for (Eigen::Index i = range.begin(); i < range.end(); ++i) lowering(i) = row(i);
  });
  return lowering;
}

}  // namespace wrapgauge
