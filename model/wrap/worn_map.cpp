#include "model/wrap/worn_map.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace wrapgauge {
namespace {

constexpr double kSectionSpacing_m = 2e-3;
constexpr int kMostSections = 2000;
constexpr double kSameHeight_m = 1e-9;

struct Level {
  SectionLoop loop;
  double meridian_arc_m;  // where the meridian crosses it
  Length station;         // of that place

  Vec3 at(double share_of_girth) const {
    return loop.at(meridian_arc_m + share_of_girth * loop.girth().si());
  }
};

// Why no closed section passes through a point of the meridian: how far it lies beyond the open end, along
// the section normal.
Problem open_section_problem(const BodySurface& body, const AnchorFrame& anchor, const Vec3& meridian_m) {
  const double anchor_station_m = body.station_m(anchor.place.point_m);
  const bool proximal = body.station_m(meridian_m) > anchor_station_m;
  const double beyond_is_up = proximal == anchor.across_is_proximal(body.axis().direction) ? 1.0 : -1.0;
  double beyond_m = 0.0;
  for (const Vec3& rim_m : body.open_rim_m()) {
    if ((body.station_m(rim_m) > anchor_station_m) != proximal) continue;
    const double height_m = (meridian_m - rim_m).dot(anchor.section_normal) * beyond_is_up;
    beyond_m = std::max(beyond_m, height_m);
  }
  if (beyond_m > 0.0) {
    RunOff run_off;
    run_off.include(beyond_m, proximal);
    return run_off_problem(run_off);
  }
  return closed_section(body, meridian_m, anchor.section_normal).problem();
}

Result<std::vector<Level>> cut_levels(const BodySurface& body, const AnchorFrame& anchor, double low_m,
                                      double spacing_m, int count) {
  const double high_m = low_m + (count - 1) * spacing_m;
  const TwoWayPath meridian =
      two_way_path(body, anchor.place, anchor.across, std::max(0.0, -low_m), std::max(0.0, high_m));
  RunOff run_off;
  for (double end_m : {low_m, high_m})
    if (const double missing_m = meridian.missing_m(end_m); missing_m > kSameHeight_m)
      run_off.include(missing_m,
                      body.station_m(meridian.end_m(end_m >= 0.0)) > body.station_m(anchor.place.point_m));
  if (run_off.any()) return run_off_problem(run_off);
  std::vector<Level> levels;
  for (int i = 0; i < count; ++i) {
    const Vec3 meridian_m = meridian.at(low_m + i * spacing_m);
    auto loop = loop_near(body, meridian_m, anchor.section_normal);
    if (!loop) return open_section_problem(body, anchor, meridian_m);
    const double arc_m = loop->arc_near(meridian_m);
    levels.push_back({*std::move(loop), arc_m, Length(body.station_m(meridian_m))});
  }
  return levels;
}

// Both closing lines carry the same y wherever both exist; rounding of a full turn must not open them.
void close_exactly(const FlatMesh& mesh, Points3& worn_m) {
  std::size_t to = 0;
  for (int from_vertex : mesh.closing_from) {
    const double height_m = mesh.vertices_m(from_vertex, 1);
    while (to < mesh.closing_to.size() && mesh.vertices_m(mesh.closing_to[to], 1) < height_m - kSameHeight_m)
      ++to;
    if (to == mesh.closing_to.size()) return;
    if (mesh.vertices_m(mesh.closing_to[to], 1) <= height_m + kSameHeight_m)
      worn_m.row(mesh.closing_to[to]) = worn_m.row(from_vertex);
  }
}

std::vector<GirthSection> girth_sections(const std::vector<Level>& levels, double low_y_m, double spacing_m,
                                         const ClosingLines& lines, bool distal_first) {
  std::vector<GirthSection> sections;
  for (std::size_t i = 0; i < levels.size(); ++i)
    sections.push_back({levels[i].station, levels[i].loop.girth(),
                        lines.length_at(low_y_m + static_cast<double>(i) * spacing_m)});
  if (!distal_first) std::reverse(sections.begin(), sections.end());
  return sections;
}

}  // namespace

Result<WornMap> put_on(const BodySurface& body, const AnchorFrame& anchor, const FlatMesh& mesh,
                       const Vec2& layout_point_m, const ClosingLines& lines) {
  const Points2 from_anchor_m = mesh.vertices_m.rowwise() - layout_point_m.transpose();
  const double low_m = from_anchor_m.col(1).minCoeff();
  const double height_m = std::max(from_anchor_m.col(1).maxCoeff() - low_m, kSameHeight_m);
  const int count =
      1 + static_cast<int>(std::clamp(std::ceil(height_m / kSectionSpacing_m), 1.0, kMostSections - 1.0));
  const double spacing_m = height_m / (count - 1);
  const auto levels = cut_levels(body, anchor, low_m, spacing_m, count);
  if (!levels) return levels.problem();
  Points3 worn_m(from_anchor_m.rows(), 3);
  const double anchor_share = lines.share_at(layout_point_m);
  for (int vertex = 0; vertex < from_anchor_m.rows(); ++vertex) {
    const double place = (from_anchor_m(vertex, 1) - low_m) / spacing_m;
    const int below = std::clamp(static_cast<int>(place), 0, count - 2);
    const double share = place - below;
    const double turn = lines.share_at(mesh.vertices_m.row(vertex)) - anchor_share;
    worn_m.row(vertex) =
        body.project((1.0 - share) * levels->at(below).at(turn) + share * levels->at(below + 1).at(turn));
  }
  close_exactly(mesh, worn_m);
  auto sections = girth_sections(*levels, low_m + layout_point_m.y(), spacing_m, lines,
                                 anchor.across_is_proximal(body.axis().direction));
  return WornMap{std::move(worn_m), std::move(sections)};
}

}  // namespace wrapgauge
