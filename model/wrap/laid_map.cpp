#include "model/wrap/laid_map.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

constexpr double kStationSpacing_m = 1.5e-3;
constexpr int kMostStations = 4000;
constexpr double kRounding_m = 1e-9;

// Evenly spaced places along the centre line, arc lengths from the anchor.
struct Stations {
  double first_m = 0.0, spacing_m = 1.0;
  int count = 2;

  Stations(double low_m, double high_m) : first_m(low_m) {
    const double length_m = std::max(high_m - low_m, kRounding_m);
    count =
        1 + static_cast<int>(std::clamp(std::ceil(length_m / kStationSpacing_m), 1.0, kMostStations - 1.0));
    spacing_m = length_m / (count - 1);
  }
  double at(int station) const { return first_m + station * spacing_m; }
  int before(double arc_m) const {
    return std::clamp(static_cast<int>((arc_m - first_m) / spacing_m), 0, count - 2);
  }
};

// How far across the centre line each station has to reach.
struct Reach {
  double back_m = 0.0, ahead_m = 0.0;
};

std::vector<Reach> reaches(const Stations& stations, const Points2& from_anchor_m) {
  std::vector<Reach> result(stations.count);
  for (int vertex = 0; vertex < from_anchor_m.rows(); ++vertex) {
    const int before = stations.before(from_anchor_m(vertex, 0));
    const double across_m = from_anchor_m(vertex, 1);
    for (int station : {before, before + 1}) {
      result[station].ahead_m = std::max(result[station].ahead_m, across_m);
      result[station].back_m = std::max(result[station].back_m, -across_m);
    }
  }
  return result;
}

// The line across the centre line at one station; none when the centre line itself ends before.
struct AcrossLine {
  std::optional<TwoWayPath> path;
  double centre_missing_m = 0.0;
  bool proximal = false;  // the end that the centre line ran off
};

AcrossLine across_line(const BodySurface& body, const AnchorFrame& anchor, double arc_m, const Reach& reach) {
  const double way = arc_m >= 0.0 ? 1.0 : -1.0;
  const auto centre = body.geodesics().trace(anchor.place, way * anchor.wrap, std::abs(arc_m));
  if (centre.missing_m > kRounding_m) {
    const bool proximal = body.station_m(centre.end.point_m) > body.station_m(anchor.place.point_m);
    return {std::nullopt, centre.missing_m, proximal};
  }
  const Vec3 normal = body.geodesics().face_normal(centre.end.face);
  return {
      two_way_path(body, centre.end, normal.cross(way * centre.end_direction), reach.back_m, reach.ahead_m)};
}

// Records what a line is too short for, the end by where the line ends.
void note_missing(const BodySurface& body, const AnchorFrame& anchor, const AcrossLine& line, double across_m,
                  RunOff& run_off) {
  if (!line.path) return run_off.include(line.centre_missing_m, line.proximal);
  const double missing_m = line.path->missing_m(across_m);
  if (missing_m <= kRounding_m) return;
  const Vec3& end = line.path->end_m(across_m >= 0.0);
  run_off.include(missing_m, body.station_m(end) > body.station_m(anchor.place.point_m));
}

}  // namespace

Problem run_off_problem(const RunOff& run_off) {
  const Phrase distal = millimetres_of(Length(run_off.distal_m));
  const Phrase proximal = millimetres_of(Length(run_off.proximal_m));
  if (!(run_off.proximal_m > 0.0))
    return bad_input(
        Phrase::worded("The layout runs %1 past the distal end of the body, measured along the skin; move "
                       "the anchor at least "
                       "that far towards the proximal end, or use a body that reaches further.",
                       {distal}));
  if (!(run_off.distal_m > 0.0))
    return bad_input(Phrase::worded(
        "The layout runs %1 past the proximal end of the body, measured along the skin; move the anchor at "
        "least that far towards the distal end, or use a body that reaches further.",
        {proximal}));
  return bad_input(Phrase::worded(
      "The layout runs %1 past the distal end of the body and %2 past the proximal end of the body, measured "
      "along the skin; shorten the layout or use a body that reaches further.",
      {distal, proximal}));
}

double TwoWayPath::missing_m(double arc_m) const {
  return std::max(0.0, std::abs(arc_m) - (arc_m >= 0.0 ? forward : backward).length_m());
}

TwoWayPath two_way_path(const BodySurface& body, const SurfacePoint& from, const Vec3& direction,
                        double back_m, double ahead_m) {
  return {body.geodesics().trace(from, direction, ahead_m), body.geodesics().trace(from, -direction, back_m)};
}

namespace {

// All that there is skin for; what it is too short for goes into `run_off`.
std::vector<std::optional<Vec3>> lay_rows(const BodySurface& body, const AnchorFrame& anchor,
                                          const Points2& flat_m, const Vec2& layout_point_m,
                                          RunOff& run_off) {
  const Points2 from_anchor_m = flat_m.rowwise() - layout_point_m.transpose();
  const Stations stations(from_anchor_m.col(0).minCoeff(), from_anchor_m.col(0).maxCoeff());
  const auto reach = reaches(stations, from_anchor_m);
  std::vector<AcrossLine> lines;
  for (int station = 0; station < stations.count; ++station)
    lines.push_back(across_line(body, anchor, stations.at(station), reach[station]));
  std::vector<std::optional<Vec3>> laid(static_cast<std::size_t>(flat_m.rows()));
  for (int vertex = 0; vertex < flat_m.rows(); ++vertex) {
    const double along_m = from_anchor_m(vertex, 0), across_m = from_anchor_m(vertex, 1);
    const int before = stations.before(along_m);
    const AcrossLine &low = lines[before], &high = lines[before + 1];
    RunOff here;
    note_missing(body, anchor, low, across_m, here);
    note_missing(body, anchor, high, across_m, here);
    run_off.distal_m = std::max(run_off.distal_m, here.distal_m);
    run_off.proximal_m = std::max(run_off.proximal_m, here.proximal_m);
    if (here.any()) continue;
    const double share = (along_m - stations.at(before)) / stations.spacing_m;
    laid[static_cast<std::size_t>(vertex)] =
        body.project((1.0 - share) * low.path->at(across_m) + share * high.path->at(across_m));
  }
  return laid;
}

}  // namespace

Result<Points3> lay_out(const BodySurface& body, const AnchorFrame& anchor, const Points2& flat_m,
                        const Vec2& layout_point_m) {
  RunOff run_off;
  const auto laid = lay_rows(body, anchor, flat_m, layout_point_m, run_off);
  if (run_off.any()) return run_off_problem(run_off);
  Points3 laid_m(flat_m.rows(), 3);
  for (int vertex = 0; vertex < flat_m.rows(); ++vertex)
    laid_m.row(vertex) = *laid[static_cast<std::size_t>(vertex)];
  return laid_m;
}

std::vector<std::optional<Vec3>> lay_out_in_part(const BodySurface& body, const AnchorFrame& anchor,
                                                 const Points2& flat_m, const Vec2& layout_point_m) {
  RunOff run_off;
  return lay_rows(body, anchor, flat_m, layout_point_m, run_off);
}

}  // namespace wrapgauge
