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
    return bad_input(Phrase::worded("'%1' is no standard place of this part; there are: %2.",
                                    {name_of(landmark.name), name_of(names)}));
  }
  const SurfacePoint nearest = skin.nearest().at(landmark.point_m);
  if (nearest.distance_m > 0.02)
    return bad_input(
        Phrase::worded("the landmark '%1' lies %2 mm off the skin: give it in the scan's own frame, in mm, "
                       "within 20 mm of the skin.",
                       {name_of(landmark.name), figures_of(fixed_text(1e3 * nearest.distance_m, 1))}));
  const auto at = station_and_angle(skin.sections(), skin.axis(), nearest.point_m);
  if (!at)
    return bad_input(Phrase::worded(
        "the landmark '%1' lies where the scan has no closed section: take one farther from its ends.",
        {name_of(landmark.name)}));
  return Mark{landmark.name, site->share, site->angle_deg, *at};
}

Result<std::vector<Mark>> marks_of(const std::vector<Landmark>& landmarks,
                                   const std::vector<StandardSite>& standard, const BodySurface& skin) {
  if (landmarks.empty() || landmarks.size() > 2)
    return bad_input(Phrase::worded("give one or two landmarks, not %1.",
                                    {figures_of(static_cast<int>(landmarks.size()))}));
  if (landmarks.size() == 2 && landmarks[0].name == landmarks[1].name)
    return bad_input(
        Phrase::worded("the landmark '%1' is given twice; keep one.", {name_of(landmarks[0].name)}));
  std::vector<Mark> marks;
  for (const Landmark& landmark : landmarks) {
    auto mark = mark_of(landmark, standard, skin);
    if (!mark) return mark.problem();
    marks.push_back(std::move(mark).value());
  }
  std::sort(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) { return a.share < b.share; });
  return marks;
}

Phrase both_marks(const std::vector<Mark>& marks) {
  return Phrase::worded("the landmarks '%1' and '%2'",
                        {name_of(marks.front().name), name_of(marks.back().name)});
}

Phrase on_the_other_side(const Phrase& both, BodySide said) {
  if (said == BodySide::kLeft)
    return Phrase::worded(
        "%1 lie as on a right part, not a left one: correct the side, the axis or the points.", {both});
  return Phrase::worded(
      "%1 lie as on a left part, not a right one: correct the side, the axis or the points.", {both});
}

// Both landmarks have to be turned alike; the other side is tried to say what is wrong.
Result<double> turn_of_all(const std::vector<Mark>& marks, std::optional<BodySide> side) {
  const double first = turn_of(marks.front(), side);
  if (marks.size() == 1) return first;
  const double apart = turn_between(turn_of(marks[1], side), first);
  if (std::abs(apart) <= kTurnsAgree) return first + 0.5 * apart;
  const Phrase both = both_marks(marks);
  if (side) {
    const BodySide other = *side == BodySide::kLeft ? BodySide::kRight : BodySide::kLeft;
    if (std::abs(turn_between(turn_of(marks[1], other), turn_of(marks[0], other))) <= kTurnsAgree)
      return bad_input(on_the_other_side(both, *side));
  }
  return bad_input(Phrase::worded(
      "%1 contradict each other by %2 degrees about the axis (%3 at most): correct a point.",
      {both, figures_of(fixed_text(std::abs(apart), 0)), figures_of(fixed_text(kTurnsAgree, 0))}));
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
    return bad_input(
        Phrase::worded("the front points along the axis: give the direction that the person's front faces."));
  const double off =
      std::abs(turn_between(angle_about_deg(axis.direction, across), angle_about_deg(axis.direction, found)));
  if (off <= kFrontAgrees) return std::nullopt;
  return bad_input(
      Phrase::worded("the landmark '%1' lies on the wrong side: it puts the front %2 degrees from the one "
                     "given (%3 at most): "
                     "correct the point, the front or the side.",
                     {name_of(marks.front().name), figures_of(fixed_text(off, 0)),
                      figures_of(fixed_text(kFrontAgrees, 0))}));
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
    return bad_input(Phrase::worded(
        "the landmark '%1' lies at station %2, which makes the part %3 long on a scan of %4: correct the "
        "points, or state the axis from hand or foot to trunk.",
        {name_of(low.name), millimetres_of(low.at.station), millimetres_of(along.length),
         millimetres_of(scan_length)}));
  const double off = std::abs(stations / along.length - shares);
  if (off > kStationsAgree)
    return bad_input(
        Phrase::worded("%1 contradict each other by %2 of the length along the axis: correct a point.",
                       {both_marks(marks), percent_of(off)}));
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
