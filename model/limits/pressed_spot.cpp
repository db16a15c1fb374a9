#include "model/limits/pressed_spot.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>
#include <utility>

#include "model/limits/limit_share.hpp"

namespace wrapgauge {
namespace {

// Two means over 1 cm2 share skin when their discs overlap.
bool overlap(const PressedSpot& a, const PressedSpot& b) {
  const double diameter_m = 2.0 * std::sqrt(Area(1.0 * cm2).si() / std::numbers::pi);
  return (a.at_m - b.at_m).norm() < diameter_m;
}

bool share_a_site(const PressedSpot& a, const PressedSpot& b) {
  return a.part == b.part && std::any_of(a.sites.begin(), a.sites.end(), [&](const BonySite* site) {
           return std::find(b.sites.begin(), b.sites.end(), site) != b.sites.end();
         });
}

// The stricter of the two stands, and both name their sites.
void merge(PressedSpot& known, PressedSpot other) {
  if (other.share() > known.share()) std::swap(known, other);
  for (const BonySite* site : other.sites)
    if (std::find(known.sites.begin(), known.sites.end(), site) == known.sites.end())
      known.sites.push_back(site);
}

// A chamber keeps its own card: only what is no chamber's, or lies over a site, joins another.
void add_spot(std::vector<PressedSpot>& spots, PressedSpot spot, bool of_chamber) {
  if (!spot.place.row) return;
  const auto known = std::find_if(spots.begin(), spots.end(), [&](const PressedSpot& other) {
    return !of_chamber && other.peak > Pressure() && (overlap(other, spot) || share_a_site(other, spot));
  });
  if (known == spots.end())
    spots.push_back(std::move(spot));
  else
    merge(*known, std::move(spot));
}

// Row and sites at the spot, which knows where it is.
PressedSpot judged(PressedSpot spot, const LimitPlaces& places, Area pressed,
                   const BonySite* looked_at = nullptr) {
  spot.place = places.at(spot.at_m, pressed);
  if (const BonySite* site = looked_at ? looked_at : spot.place.bony_site) spot.sites = {site};
  return spot;
}

Pressure deflated_at(const PressedState& pressed, Eigen::Index vertex) {
  return vertex >= 0 && vertex < pressed.deflated_1cm2_pa.size() ? pressed.deflated_1cm2_pa[vertex] * Pa
                                                                 : Pressure();
}

Eigen::Index vertex_at(const FlatMesh& flat, const Vec2& flat_m) {
  if (flat.vertices_m.rows() == 0) return -1;
  Eigen::Index at = 0;
  (flat.vertices_m.rowwise() - flat_m.transpose()).rowwise().squaredNorm().minCoeff(&at);
  return at;
}

PressedSpot chamber_spot(const PressedState& pressed, const LimitPlaces& places,
                         const ChamberFigures& chamber) {
  PressedSpot spot{.part = {PressedKind::kChamber, chamber.chamber},
                   .sites = {},
                   .peak = chamber.peak,
                   .deflated = deflated_at(pressed, vertex_at(pressed.setup.flat, chamber.peak_at_flat_m)),
                   .at_m = chamber.peak_at_m,
                   .place = {}};
  return judged(std::move(spot), places, chamber.contact_area);
}

constexpr Area kUnknownArea{1.0};  // a square metre: rows for small pads do not hold

PressedSpot highest_spot(const PressedState& pressed, const LimitPlaces& places) {
  Eigen::Index vertex = -1;
  if (pressed.map.mean_1cm2_pa.size() > 0) pressed.map.mean_1cm2_pa.maxCoeff(&vertex);
  PressedSpot spot{.part = part_called(pressed.setup.layout, pressed.figures.peak_part),
                   .sites = {},
                   .peak = pressed.figures.peak_anywhere,
                   .deflated = deflated_at(pressed, vertex),
                   .at_m = pressed.figures.peak_at_m,
                   .place = {}};
  return judged(std::move(spot), places, kUnknownArea);
}

// None: nothing presses on the site.
std::optional<PressedSpot> site_spot(const PressedState& pressed, const LimitPlaces& places,
                                     const BonySite& site) {
  std::optional<PressedSpot> spot;
  int vertex = -1;
  for (std::size_t v = 0; v < pressed.path.sheet.skin_node.size(); ++v) {
    const Vec3 skin_point = pressed.state.positions_m.row(pressed.path.sheet.skin_node[v]);
    const Pressure mean = pressed.map.mean_1cm2_pa[static_cast<Eigen::Index>(v)] * Pa;
    if (!lies_on(site, skin_point) || mean <= (spot ? spot->peak : Pressure())) continue;
    vertex = static_cast<int>(v);
    spot = PressedSpot{.part = {},
                       .sites = {},
                       .peak = mean,
                       .deflated = deflated_at(pressed, vertex),
                       .at_m = skin_point,
                       .place = {}};
  }
  if (!spot) return std::nullopt;
  spot->part = part_under(pressed.setup, vertex);
  return judged(std::move(*spot), places, kUnknownArea, &site);
}

// Flat vertices above their limit after the model factor, in stretches that hang together.
class AboveLimit {
 public:
  // `share`: of its limit, a flat vertex each.
  AboveLimit(const FlatMesh& flat, Eigen::VectorXd share)
      : flat_(flat), share_(std::move(share)), head_(static_cast<std::size_t>(share_.size())) {
    std::iota(head_.begin(), head_.end(), std::size_t{0});
    for (Eigen::Index t = 0; t < flat_.triangles.rows(); ++t)
      for (int corner = 0; corner < 3; ++corner) join(vertex(t, corner), vertex(t, (corner + 1) % 3));
  }

  bool is_above(std::size_t vertex) const { return share_[at(vertex)] > 1.0; }
  std::size_t stretch_of(std::size_t vertex) const {
    while (head_[vertex] != vertex) vertex = head_[vertex];
    return vertex;
  }
  // The worst vertex of each stretch that is not in `covered`.
  std::vector<std::size_t> worst_outside(const std::vector<bool>& covered) const {
    std::map<std::size_t, std::size_t> worst;  // of a stretch, in the order of stretches
    for (std::size_t v = 0; v < head_.size(); ++v) {
      if (!is_above(v) || covered[stretch_of(v)]) continue;
      const auto found = worst.try_emplace(stretch_of(v), v).first;
      if (share_[at(v)] > share_[at(found->second)]) found->second = v;
    }
    std::vector<std::size_t> out;
    for (const auto& [stretch, highest] : worst) out.push_back(highest);
    return out;
  }

 private:
  static Eigen::Index at(std::size_t vertex) { return static_cast<Eigen::Index>(vertex); }
  std::size_t vertex(Eigen::Index triangle, int corner) const {
    return static_cast<std::size_t>(flat_.triangles(triangle, corner));
  }
  void join(std::size_t a, std::size_t b) {
    if (is_above(a) && is_above(b)) head_[stretch_of(a)] = stretch_of(b);
  }

  const FlatMesh& flat_;
  Eigen::VectorXd share_;
  std::vector<std::size_t> head_;
};

Vec3 skin_at(const PressedState& pressed, std::size_t vertex) {
  return pressed.state.positions_m.row(pressed.path.sheet.skin_node[vertex]);
}

std::size_t nearest_vertex(const PressedState& pressed, const Vec3& point_m) {
  std::size_t nearest = 0;
  for (std::size_t v = 1; v < pressed.path.sheet.skin_node.size(); ++v)
    if ((skin_at(pressed, v) - point_m).squaredNorm() < (skin_at(pressed, nearest) - point_m).squaredNorm())
      nearest = v;
  return nearest;
}

// A stretch of skin above its limit gets a spot of its own when none lies in it.
void add_uncovered(const LimitSet& limits, const LimitInputs& inputs, const PressedState& pressed,
                   std::vector<PressedSpot>& spots) {
  const std::size_t count = pressed.path.sheet.skin_node.size();
  if (count == 0 || pressed.map.mean_1cm2_pa.size() != static_cast<Eigen::Index>(count)) return;
  const auto rows =
      rows_on_layout(limits, inputs, pressed.setup, pressed.state, pressed.path.sheet, pressed.figures);
  const AboveLimit above(pressed.setup.flat,
                         share_of_limit(limits, inputs, pressed.setup, pressed.state, pressed.path.sheet,
                                        pressed.figures, pressed.map.mean_1cm2_pa));
  std::vector<bool> covered(count, false);
  for (const PressedSpot& spot : spots)
    if (spot.share() * limits.model_factor > 1.0)
      covered[above.stretch_of(nearest_vertex(pressed, spot.at_m))] = true;
  const LimitPlaces places(limits, inputs, pressed.figures.share_of_girth);
  for (const std::size_t v : above.worst_outside(covered)) {
    PressedSpot spot{.part = part_under(pressed.setup, static_cast<int>(v)),
                     .sites = {},
                     .peak = pressed.map.mean_1cm2_pa[static_cast<Eigen::Index>(v)] * Pa,
                     .deflated = deflated_at(pressed, static_cast<Eigen::Index>(v)),
                     .at_m = skin_at(pressed, v),
                     .place = {}};
    spot.place = places.at(spot.at_m, kUnknownArea);
    spot.place.row = rows[v];
    if (spot.place.bony_site) spot.sites = {spot.place.bony_site};
    spots.push_back(std::move(spot));
  }
}

}  // namespace

std::vector<PressedSpot> pressed_spots(const LimitSet& limits, const LimitInputs& inputs,
                                       const PressedState& pressed) {
  const LimitPlaces places(limits, inputs, pressed.figures.share_of_girth);
  std::vector<PressedSpot> spots;
  for (const ChamberFigures& chamber : pressed.figures.chambers)
    add_spot(spots, chamber_spot(pressed, places, chamber), true);
  PressedSpot highest = highest_spot(pressed, places);
  if (highest.peak > Pressure() && highest.part.kind != PressedKind::kChamber)
    add_spot(spots, std::move(highest), false);
  for (const BonySite& site : inputs.bony_sites)
    if (auto spot = site_spot(pressed, places, site)) add_spot(spots, std::move(*spot), false);
  add_uncovered(limits, inputs, pressed, spots);
  return spots;
}

}  // namespace wrapgauge
