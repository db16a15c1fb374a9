#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "model/body/girth.hpp"
#include "model/body/mend_step.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

// Girths of the thirds next to both ends, added up; open sections count too.
struct EndGirths {
  Length low, high;
};

EndGirths end_girths(const Scan& scan) {
  const Body body{"", scan.surface, scan.axis, "", {}, {}};
  const Length length = body_length(body);
  EndGirths sum;
  for (const double share : {0.1, 0.15, 0.2, 0.25, 0.3}) {
    sum.low = sum.low + girth_at(body, share * length).girth / 5.0;
    sum.high = sum.high + girth_at(body, (1.0 - share) * length).girth / 5.0;
  }
  return sum;
}

// Ends that differ by less say nothing about which is which: trunks differ by a per cent or two, forearms,
// calves and thighs by 20 % and more (judgement).
constexpr double kAlike = 0.05;

bool ends_are_alike(const EndGirths& girths) {
  const double low = girths.low.si(), high = girths.high.si();
  return std::abs(high - low) < kAlike * std::max(low, high);
}

// From here on a body may be a trunk, whose waist is thinner than its hips and its chest (judgement: trunks
// of adults measured 740 mm and more, thighs up to 620).
constexpr Length kTrunkGirth = 650.0 * mm;

bool thick_as_a_trunk(const EndGirths& girths) {
  return 0.5 * (girths.low + girths.high) >= kTrunkGirth;
}

// Which end was taken as distal, and why.
enum class Chosen { kThinner, kThicker, kScansOwn, kAlikeSoScansOwn, kTrunkSoScansOwn, kTurned };

Chosen choose_end(DistalEnd distal, const EndGirths& girths) {
  switch (distal) {
    case DistalEnd::kAsItIs:
      return Chosen::kScansOwn;
    case DistalEnd::kTurned:
      return Chosen::kTurned;
    case DistalEnd::kThin:
    case DistalEnd::kThick:
      break;
  }
  if (ends_are_alike(girths)) return Chosen::kAlikeSoScansOwn;
  if (distal == DistalEnd::kThin && thick_as_a_trunk(girths)) return Chosen::kTrunkSoScansOwn;
  return distal == DistalEnd::kThin ? Chosen::kThinner : Chosen::kThicker;
}

// The axis as it came from the scan points along +z, or whichever of x, y and z it is nearest.
Vec3 proximal_direction(const Scan& scan, Chosen chosen, const EndGirths& girths) {
  const bool thin_is_low = girths.low <= girths.high;
  const bool turned = chosen == Chosen::kTurned || (chosen == Chosen::kThinner && !thin_is_low) ||
                      (chosen == Chosen::kThicker && thin_is_low);
  return turned ? Vec3(-scan.axis.direction) : scan.axis.direction;
}

// Area-weighted moments of the surface's shape across the axis, about its mean.
struct AcrossMoments {
  Vec3 centre = Vec3::Zero();
  double xx = 0.0, xy = 0.0, yy = 0.0;
};

template <class Use>
void for_each_face(const TriangleMesh& mesh, const Use& use) {
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f) {
    const Vec3 a = mesh.vertices_m.row(mesh.faces(f, 0)), b = mesh.vertices_m.row(mesh.faces(f, 1)),
               c = mesh.vertices_m.row(mesh.faces(f, 2));
    use(Vec3((a + b + c) / 3.0), 0.5 * (b - a).cross(c - a).norm());
  }
}

AcrossMoments moments_of(const TriangleMesh& mesh) {
  AcrossMoments moments;
  double area = 0.0;
  for_each_face(mesh, [&](const Vec3& centre, double weight) {
    moments.centre += weight * centre;
    area += weight;
  });
  moments.centre /= area;
  for_each_face(mesh, [&](const Vec3& centre, double weight) {
    const Vec3 from = centre - moments.centre;
    moments.xx += weight * from.x() * from.x();
    moments.xy += weight * from.x() * from.y();
    moments.yy += weight * from.y() * from.y();
  });
  return moments;
}

// Angle of the longer axis of the mean section, on the side that reaches out further (third moment).
double zero_angle(const TriangleMesh& mesh, const AcrossMoments& moments) {
  const double angle = 0.5 * std::atan2(2.0 * moments.xy, moments.xx - moments.yy);
  const Vec3 along(std::cos(angle), std::sin(angle), 0.0);
  double third = 0.0;
  for_each_face(mesh, [&](const Vec3& centre, double weight) {
    const double x = (centre - moments.centre).dot(along);
    third += weight * x * x * x;
  });
  return third < 0.0 ? angle + std::numbers::pi : angle;
}

Points3 turned(const Points3& points, const Mat3& rotation) {
  return points * rotation.transpose();
}

Phrase posed_words(Chosen chosen, Length distal, Length proximal) {
  const std::vector<Phrase> girths = {millimetres_of(distal), millimetres_of(proximal)};
  switch (chosen) {
    case Chosen::kThinner:
      return Phrase::worded(
          "Posed with the axis along +z and the distal end at z = 0; mean girth %1 in the distal third and "
          "%2 in the proximal one (the thinner end was taken as distal).",
          girths);
    case Chosen::kThicker:
      return Phrase::worded(
          "Posed with the axis along +z and the distal end at z = 0; mean girth %1 in the distal third and "
          "%2 in the proximal one (the thicker end was taken as distal).",
          girths);
    case Chosen::kAlikeSoScansOwn:
      return Phrase::worded(
          "Posed with the axis along +z, the scan's own way up: mean girths of %1 and %2 differ by less than "
          "5 %, which does not tell the distal end. Check that it is at z = 0; if it is not, turn the body "
          "over (distal end: turned).",
          girths);
    case Chosen::kTrunkSoScansOwn:
      return Phrase::worded(
          "Posed with the axis along +z, the scan's own way up: mean girths of %1 and %2 may be a trunk's, "
          "whose thinner end is not always the distal one. Check that the distal end is at z = 0; if it is "
          "not, turn the body over (distal end: turned).",
          girths);
    case Chosen::kTurned:
      return Phrase::worded(
          "Posed with the axis along +z and turned over against the scan; mean girth %1 in the distal third "
          "and %2 in the proximal one.",
          girths);
    case Chosen::kScansOwn:
      break;
  }
  return Phrase::worded(
      "Posed with the axis along +z and the distal end at z = 0; mean girth %1 in the distal third and %2 in "
      "the proximal one.",
      girths);
}

}  // namespace

Result<Mended> pose_limb(const Scan& scan, const PoseLimb& options) {
  const EndGirths girths = end_girths(scan);
  const Chosen chosen = choose_end(options.distal, girths);
  const Vec3 up = proximal_direction(scan, chosen, girths);
  TriangleMesh posed = scan.surface;
  posed.vertices_m.rowwise() -= scan.axis.origin_m.transpose();
  posed.vertices_m =
      turned(posed.vertices_m, Eigen::Quaterniond::FromTwoVectors(up, Vec3::UnitZ()).toRotationMatrix());
  const AcrossMoments moments = moments_of(posed);
  const double turn = options.turn_deg * std::numbers::pi / 180.0 - zero_angle(posed, moments);
  posed.vertices_m.rowwise() -=
      Eigen::RowVector3d(moments.centre.x(), moments.centre.y(), posed.vertices_m.col(2).minCoeff());
  posed.vertices_m = turned(posed.vertices_m, Eigen::AngleAxisd(turn, Vec3::UnitZ()).toRotationMatrix());
  const bool flipped = up.dot(scan.axis.direction) < 0.0;
  const Length distal = flipped ? girths.high : girths.low, proximal = flipped ? girths.low : girths.high;
  MendReport report{
      MendKind::kPose,
      posed_words(chosen, distal, proximal),
      {{"distal_mean_girth_mm", distal / mm},
       {"proximal_mean_girth_mm", proximal / mm},
       {"axis_turned_deg", std::acos(std::clamp(up.z(), -1.0, 1.0)) * 180.0 / std::numbers::pi}}};
  Scan out{std::move(posed), {Vec3::Zero(), Vec3::UnitZ()}, true};
  return Mended{std::move(out), std::move(report)};
}

Result<Mended> mirror_limb(const Scan& scan) {
  Scan out = scan;
  out.surface.vertices_m.col(0) *= -1.0;
  out.surface.faces.col(1).swap(out.surface.faces.col(2));  // normals stay outward
  out.axis.origin_m.x() *= -1.0;
  out.axis.direction.x() *= -1.0;
  MendReport report{
      MendKind::kMirror,
      Phrase::worded("Mirrored at x = 0: a left limb became a right one, or a right one a left one."),
      {}};
  return Mended{std::move(out), std::move(report)};
}

}  // namespace wrapgauge
