#include "model/wrap/carry_sites.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/body/axis_angle.hpp"
#include "model/body/part_rules.hpp"
#include "model/core/number_text.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

// All judgement.
constexpr double kApart = 0.3;           // landmarks nearer than this share of the length say nothing of it
constexpr double kTurnsAgree = 40.0;     // degrees between the turns that two landmarks give
constexpr double kFrontAgrees = 60.0;    // degrees between the front given and that of the landmarks
constexpr double kStationsAgree = 0.15;  // of the length, between two landmarks that lie side by side
constexpr double kLeastOfScan = 0.5;     // a part shorter than this share of its scan was turned end to end
constexpr double kMostOfScan = 3.0;

// A landmark on the scan beside the place it stands for.
struct Mark {
  std::string name;
  double share = 0.0, standard_deg = 0.0;  // as on a right part
  AnchorAtStation at;
};

double turn_between(double to_deg, double from_deg) {
  return std::remainder(to_deg - from_deg, 360.0);
}

double on_side(double angle_deg, std::optional<BodySide> side) {
  return side == BodySide::kLeft ? 180.0 - angle_deg : angle_deg;
}

// Of the scan's zero angle against the standard's.
double turn_of(const Mark& mark, std::optional<BodySide> side) {
  return turn_between(mark.at.angle_deg, on_side(mark.standard_deg, side));
}

Result<Mark> mark_of(const Landmark& landmark, const std::vector<StandardSite>& standard,
                     const BodySurface& skin) {
  const auto site = std::find_if(standard.begin(), standard.end(),
                                 [&](const StandardSite& known) { return known.name == landmark.name; });
  if (site == standard.end()) {
    std::string names;
    for (const StandardSite& known : standard) names.append(names.empty() ? "" : ", ").append(known.name);
    return bad_input("'" + landmark.name + "' is no standard place of this part; there are: " + names + ".");
  }
  const SurfacePoint nearest = skin.nearest().at(landmark.point_m);
  if (nearest.distance_m > 0.02)
    return bad_input("the landmark '" + landmark.name + "' lies " + fixed_text(1e3 * nearest.distance_m, 1) +
                     " mm off the skin: give it in the scan's own frame, in mm, within 20 mm of the skin.");
  const auto at = station_and_angle(skin.sections(), skin.axis(), nearest.point_m);
  if (!at)
    return bad_input("the landmark '" + landmark.name +
                     "' lies where the scan has no closed section: take one farther from its ends.");
  return Mark{landmark.name, site->share, site->angle_deg, *at};
}

Result<std::vector<Mark>> marks_of(const std::vector<Landmark>& landmarks,
                                   const std::vector<StandardSite>& standard, const BodySurface& skin) {
  if (landmarks.empty() || landmarks.size() > 2)
    return bad_input("give one or two landmarks, not " + std::to_string(landmarks.size()) + ".");
  if (landmarks.size() == 2 && landmarks[0].name == landmarks[1].name)
    return bad_input("the landmark '" + landmarks[0].name + "' is given twice; keep one.");
  std::vector<Mark> marks;
  for (const Landmark& landmark : landmarks) {
    auto mark = mark_of(landmark, standard, skin);
    if (!mark) return mark.problem();
    marks.push_back(std::move(mark).value());
  }
  std::sort(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) { return a.share < b.share; });
  return marks;
}

// Both landmarks have to be turned alike; the other side is tried to say what is wrong.
Result<double> turn_of_all(const std::vector<Mark>& marks, std::optional<BodySide> side) {
  const double first = turn_of(marks.front(), side);
  if (marks.size() == 1) return first;
  const double apart = turn_between(turn_of(marks[1], side), first);
  if (std::abs(apart) <= kTurnsAgree) return first + 0.5 * apart;
  const std::string both = "the landmarks '" + marks[0].name + "' and '" + marks[1].name + "'";
  if (side) {
    const BodySide other = *side == BodySide::kLeft ? BodySide::kRight : BodySide::kLeft;
    if (std::abs(turn_between(turn_of(marks[1], other), turn_of(marks[0], other))) <= kTurnsAgree)
      return bad_input(both + " lie as on a " + std::string(side_name(other)) + " part, not a " +
                       std::string(side_name(*side)) + " one: correct the side, the axis or the points.");
  }
  return bad_input(both + " contradict each other by " + fixed_text(std::abs(apart), 0) +
                   " degrees about the axis (" + fixed_text(kTurnsAgree, 0) + " at most): correct a point.");
}

Vec3 direction_at(const Axis& axis, double angle_deg) {
  const Eigen::AngleAxisd turn(angle_deg * std::numbers::pi / 180.0, axis.direction);
  return turn * zero_angle_direction(axis.direction);
}

std::optional<Problem> against_front(const Axis& axis, const std::optional<Vec3>& front, const Vec3& found,
                                     const std::vector<Mark>& marks) {
  if (!front) return std::nullopt;
  const Vec3 across = *front - front->dot(axis.direction) * axis.direction;
  if (across.norm() < 0.5 * front->norm())
    return bad_input("the front points along the axis: give the direction that the person's front faces.");
  const double off =
      std::abs(turn_between(angle_about_deg(axis.direction, across), angle_about_deg(axis.direction, found)));
  if (off <= kFrontAgrees) return std::nullopt;
  return bad_input("the landmark '" + marks.front().name + "' lies on the wrong side: it puts the front " +
                   fixed_text(off, 0) + " degrees from the one given (" + fixed_text(kFrontAgrees, 0) +
                   " at most): correct the point, the front or the side.");
}

struct Along {
  Length length, from;
  std::string words;
};

Along along_from(const Mark& mark, Length length, std::string words) {
  return {length, mark.at.station - mark.share * length, std::move(words)};
}

// One landmark: the scan is taken to end where the part does, at the end farther from the landmark.
Along along_scan(const Mark& mark, Length scan_length) {
  if (mark.share < 0.5)
    return along_from(mark, (scan_length - mark.at.station) / (1.0 - mark.share),
                      "the scan's proximal end, taken as the end of the part");
  return along_from(mark, mark.at.station / mark.share,
                    "the scan's distal end, taken as the end of the part");
}

Result<Along> along_of(const std::vector<Mark>& marks, const std::optional<Length>& by_tape,
                       Length scan_length) {
  const Mark &low = marks.front(), &high = marks.back();
  const double shares = high.share - low.share;
  const Length stations = high.at.station - low.at.station;
  Along along = by_tape ? along_from(low, *by_tape, "the length given")
                : shares < kApart
                    ? along_scan(low, scan_length)
                    : along_from(low, stations / shares, "the distance between the two landmarks");
  const double of_scan = along.length / scan_length;
  if (of_scan < kLeastOfScan || of_scan > kMostOfScan)
    return bad_input("the landmark '" + low.name + "' lies at station " + fixed_text(low.at.station / mm, 1) +
                     " mm, which makes the part " + fixed_text(along.length / mm, 1) +
                     " mm long on a scan of " + fixed_text(scan_length / mm, 1) +
                     " mm: correct the points, or state the axis from hand or foot to trunk.");
  const double off = std::abs(stations / along.length - shares);
  if (off > kStationsAgree)
    return bad_input("the landmarks '" + low.name + "' and '" + high.name + "' contradict each other by " +
                     fixed_text(100.0 * off, 0) + " % of the length along the axis: correct a point.");
  return along;
}

std::string rests_on(const std::vector<Mark>& marks, const Along& along) {
  std::string words = "turn from '" + marks[0].name + "'";
  if (marks.size() == 2) words += " and '" + marks[1].name + "'";
  return words + ", length from " + along.words + " (judgement)";
}

}  // namespace

Result<CarriedSites> carry_sites(const Body& scan, const std::vector<StandardSite>& standard,
                                 const std::vector<Landmark>& landmarks, const CarryOptions& options) {
  const BodySurface skin(scan);
  const auto marks = marks_of(landmarks, standard, skin);
  if (!marks) return marks.problem();
  const auto turn = turn_of_all(*marks, options.side);
  if (!turn) return turn.problem();
  CarriedSites carried;
  carried.front = direction_at(scan.axis, *turn + 90.0);
  if (auto problem = against_front(scan.axis, options.front, carried.front, *marks)) return *problem;
  const auto along = along_of(*marks, options.length, Length(skin.last_station_m()));
  if (!along) return along.problem();
  carried.length = along->length;
  carried.from = along->from;
  carried.rests_on = rests_on(*marks, *along);
  for (const StandardSite& site : standard) {
    const AnchorAtStation place{
        along->from + site.share * along->length,
        std::remainder(*turn + on_side(site.angle_deg, options.side) - 180.0, 360.0) + 180.0};
    const auto point = skin_point_at(skin, place);
    if (!point) {
      carried.beyond.push_back(site.name);
      continue;
    }
    carried.proposals.push_back({{site.name, point->point_m, site.radius_mm * mm, site.depth_mm * mm,
                                  site.kind, kProposedSite, site.words},
                                 place,
                                 site.share});
  }
  return carried;
}

}  // namespace wrapgauge
