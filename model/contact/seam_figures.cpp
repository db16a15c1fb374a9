#include "model/contact/seam_figures.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <tuple>

#include "model/layout/flat_places.hpp"

namespace wrapgauge {
namespace {

// A mesh edge of a weld line, seen from its open side.
struct WeldEdge {
  Vec2 middle_m, outward;  // from the open region into the weld, unit
  double length_m = 0.0;
  int open_triangle = 0, welded_triangle = 0;
};

std::vector<WeldEdge> weld_edges(const FlatMesh& flat) {
  std::map<std::pair<int, int>, std::vector<int>> sides;
  for (int t = 0; t < flat.triangles.rows(); ++t)
    for (int corner = 0; corner < 3; ++corner)
      sides[std::minmax(flat.triangles(t, corner), flat.triangles(t, (corner + 1) % 3))].push_back(t);
  std::vector<WeldEdge> edges;
  for (const auto& [ends, triangles] : sides) {
    if (triangles.size() != 2) continue;
    const bool first_open = is_open(flat.regions[triangles[0]]);
    if (first_open == is_open(flat.regions[triangles[1]])) continue;
    WeldEdge edge;
    edge.open_triangle = triangles[first_open ? 0 : 1];
    edge.welded_triangle = triangles[first_open ? 1 : 0];
    const Vec2 a = flat.vertices_m.row(ends.first).transpose(),
               b = flat.vertices_m.row(ends.second).transpose();
    edge.middle_m = 0.5 * (a + b);
    edge.length_m = (b - a).norm();
    edge.outward = Vec2((b - a).y(), -(b - a).x()) / edge.length_m;
    if (edge.outward.dot(edge.middle_m - middle_of(flat, edge.open_triangle)) < 0.0) edge.outward *= -1.0;
    edges.push_back(edge);
  }
  return edges;
}

double distance_to_path(const Polyline& path, const Vec2& point) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k + 1 < path.size(); ++k)
    least = std::min(least, distance_to_segment_m(point, path[k], path[k + 1]));
  return least;
}

// The inset seam that a welded place belongs to, in words; none: it is no inset seam of this chamber.
std::optional<Phrase> inset_name(const Chamber& chamber, const Vec2& welded) {
  const auto numbered = [](std::size_t k) { return figures_of(static_cast<int>(k + 1)); };
  for (std::size_t k = 0; k < chamber.inset_spots.size(); ++k)
    if ((welded - chamber.inset_spots[k].centre_m).norm() < chamber.inset_spots[k].radius.si())
      return Phrase::worded("inset spot %1 of chamber '%2'", {numbered(k), name_of(chamber.name)});
  for (std::size_t k = 0; k < chamber.inset_lines.size(); ++k)
    if (distance_to_path(chamber.inset_lines[k].path_m, welded) < 0.5 * chamber.inset_lines[k].width.si())
      return Phrase::worded("inset line %1 of chamber '%2'", {numbered(k), name_of(chamber.name)});
  return std::nullopt;
}

SeamFigures named_seam(const InflationSetup& setup, const WeldEdge& edge) {
  const FlatRegion& region = setup.flat.regions[edge.open_triangle];
  SeamFigures seam;
  if (region.kind == RegionKind::kChannel) {
    seam.seam = Phrase::worded("edge of channel '%1'", {name_of(setup.layout.channels[region.part].name)});
    return seam;
  }
  const Chamber& chamber = setup.layout.chambers[region.part];
  const auto inset = inset_name(chamber, middle_of(setup.flat, edge.welded_triangle));
  seam.inset = inset.has_value();
  seam.seam = inset.value_or(Phrase::worded("edge of chamber '%1'", {name_of(chamber.name)}));
  return seam;
}

// Tension of one sheet across the weld line, N/m as drawn.
double pull_n_per_m(const SheetStress& stress, int sheet_triangle, const Vec2& outward) {
  return (stress.nominal_tension_n_per_m.middleCols<2>(2 * sheet_triangle) * outward).norm();
}

struct OpenTriangles {
  std::vector<int> skin, outer;  // a flat triangle each: the sheet triangle above it, -1 where it is fused
};

OpenTriangles open_triangles(const SheetMesh& sheet, Eigen::Index flat_count) {
  OpenTriangles found{std::vector<int>(flat_count, -1), std::vector<int>(flat_count, -1)};
  for (std::size_t t = 0; t < sheet.layer.size(); ++t) {
    if (sheet.layer[t] == SheetLayer::kSkin) found.skin[sheet.flat_triangle[t]] = static_cast<int>(t);
    if (sheet.layer[t] == SheetLayer::kOuter) found.outer[sheet.flat_triangle[t]] = static_cast<int>(t);
  }
  return found;
}

void take_in(SeamFigures& seam, const WeldEdge& edge, double skin_n_per_m, double outer_n_per_m) {
  const double pull = std::max(skin_n_per_m, outer_n_per_m);
  if (seam.sheet == Phrase{} || pull > seam.largest.si()) {
    seam.largest = LineTension(pull);
    seam.at_flat_m = edge.middle_m;
    seam.sheet = skin_n_per_m >= outer_n_per_m ? Phrase::worded("skin") : Phrase::worded("outer");
  }
  // Sum of tension x length until the whole line is in.
  seam.mean = seam.mean + LineTension(pull * edge.length_m);
  seam.length = seam.length + Length(edge.length_m);
}

}  // namespace

std::vector<SeamFigures> seam_figures(const InflationSetup& setup, const SheetMesh& sheet,
                                      const SheetStress& stress) {
  const OpenTriangles open = open_triangles(sheet, setup.flat.triangles.rows());
  std::map<std::string, SeamFigures> seams;
  for (const WeldEdge& edge : weld_edges(setup.flat)) {
    const SeamFigures named = named_seam(setup, edge);
    SeamFigures& seam = seams.try_emplace(english(named.seam), named).first->second;
    take_in(seam, edge, pull_n_per_m(stress, open.skin[edge.open_triangle], edge.outward),
            pull_n_per_m(stress, open.outer[edge.open_triangle], edge.outward));
  }
  std::vector<SeamFigures> ranked;
  for (auto& [name, seam] : seams) {
    seam.mean = LineTension(seam.mean.si() / seam.length.si());
    if (seam.mean.si() > 0.0) seam.concentration = seam.largest / seam.mean;
    ranked.push_back(seam);
  }
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const SeamFigures& a, const SeamFigures& b) { return a.largest > b.largest; });
  return ranked;
}

}  // namespace wrapgauge
