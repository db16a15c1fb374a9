#include "app/desk/views/body_scene.hpp"

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>
#include <optional>
#include <set>

#include "app/desk/views/flat_items.hpp"
#include "app/desk/views/moment.hpp"
#include "app/picture/colour_map.hpp"
#include "app/picture/layout_lines.hpp"
#include "model/body/part_rules.hpp"
#include "model/geometry/innermost_point.hpp"

namespace wrapgauge {
namespace {

constexpr double kSurfaceLift_m = 0.8e-3;  // off the skin
constexpr double kOuterLift_m = 0.4e-3;    // off the skin's side where they are one, towards the eye
constexpr double kLineLift_m = 0.6e-3, kHaloLift_m = 0.9e-3, kMarkLift_m = 1.2e-3;  // towards the eye
constexpr double kCutLift_m = 12e-3;  // over a device that lies on the skin it cuts
const QColor kSite(0, 115, 138), kNoGo(150, 60, 0), kPicked(0, 110, 200), kCut(20, 120, 90),
    kAirLine(70, 62, 92);

// Gathers pieces from point to point.
class LineMaker {
 public:
  LineMaker(double width, const QColor& colour, double lift_m) : lines_{{}, width, colour, lift_m} {}
  void add(const Vec3& from, const Vec3& to) {
    for (const Vec3& end : {from, to}) ends_m_.insert(ends_m_.end(), end.begin(), end.end());
  }
  void put_into(ScenePart& part) {
    if (ends_m_.empty()) return;
    const auto count = static_cast<Eigen::Index>(ends_m_.size() / 3);
    lines_.ends_m = Eigen::Map<const Points3>(ends_m_.data(), count, 3);
    part.lines.push_back(std::move(lines_));
  }

 private:
  SceneLines lines_;
  std::vector<double> ends_m_;
};

// Where the sheet lies: a little off the skin, which its triangles would cut through elsewhere.
Points3 on_sheet(const SkinPoints& points) {
  return points.points_m + kSurfaceLift_m * points.normals;
}

Points3 on_sheet(const SkinSurface& skin) {
  return skin.mesh().vertices_m + kSurfaceLift_m * skin.normals();
}

enum class Ring { kWhole, kDashed };

// The face of the device that lines and colours lie on.
struct DrawnFace {
  Points3 points_m, normals;
  double lift_m = 0.0;
};

DrawnFace at_rest(const SkinPoints& on_skin) {
  return {on_sheet(on_skin), on_skin.normals, 0.0};
}

// As solved it lies below the skin at rest by what it presses that in.
DrawnFace as_solved(const DeviceFaces& faces, Length lowered) {
  return {faces.skin_m, faces.skin_normals, kSurfaceLift_m + lowered.si()};
}

// A closed line on the skin round a place.
void add_ring(const SkinSurface& skin, const Vec3& centre_m, double radius_m, const QColor& colour,
              ScenePart& part, Ring kind = Ring::kWhole) {
  constexpr int kPieces = 48;
  const SkinPoint at = skin.at(centre_m);
  const Vec3 along = at.normal.unitOrthogonal(), across = at.normal.normalized().cross(along);
  Points3 round(kPieces, 3);
  for (int k = 0; k < kPieces; ++k) {
    const double angle = 2.0 * std::numbers::pi * k / kPieces;
    round.row(k) = at.point_m + radius_m * (std::cos(angle) * along + std::sin(angle) * across);
  }
  const Points3 ring = on_sheet(skin.nearest(round));
  LineMaker lines(2.2, colour, kMarkLift_m);
  for (int k = 0; k < kPieces; ++k)
    if (kind == Ring::kWhole || k % 4 < 2) lines.add(ring.row(k), ring.row((k + 1) % kPieces));
  lines.put_into(part);
}

// What nobody has confirmed yet is dashed and asked.
void add_sites(const ShownPlan& shown, ScenePart& part) {
  const SkinSurface& skin = *shown.skin();
  for (const BonySite& site : shown.sites()) {
    const bool proposed = is_proposed(site);
    add_ring(skin, site.point_m, site.radius.si(), kSite, part, proposed ? Ring::kDashed : Ring::kWhole);
    const SkinPoint at = skin.at(site.point_m);
    const QString name = QString::fromStdString(site.name);
    part.labels.push_back({at.point_m, at.normal, proposed ? name + QChar('?') : name});
  }
}

// The border of what lies within a region, edge by edge of the skin's faces.
void add_no_go(const ShownPlan& shown, ScenePart& part) {
  const TriangleMesh& mesh = shown.skin()->mesh();
  const Points3 on = on_sheet(*shown.skin());
  for (const SkinRegion& region : shown.regions()) {
    if (!region.no_go) continue;
    Eigen::VectorXd outside(mesh.vertices_m.rows());
    for (Eigen::Index v = 0; v < outside.size(); ++v)
      outside[v] = distance_outside(region, shown.body()->axis, mesh.vertices_m.row(v)).si();
    LineMaker lines(2.6, kNoGo, kMarkLift_m);
    for (const LayoutLine& line : level_lines(mesh.faces, outside, 1e-6))
      lines.add(line[0].on(on), line[1].on(on));
    lines.put_into(part);
    Eigen::Index middle = 0;
    if (outside.size() > 0 && outside.minCoeff(&middle) <= 0.0)
      part.labels.push_back({mesh.vertices_m.row(middle), shown.skin()->normals().row(middle),
                             QObject::tr("no-go: %1").arg(QString::fromStdString(region.name))});
  }
}

void add_edges(const FlatMesh& flat, const DrawnFace& face, ScenePart& part) {
  const Points3& at = face.points_m;
  LineMaker rim(2.0, kWornRim, face.lift_m + kLineLift_m), inner(1.2, kWornEdge, face.lift_m + kLineLift_m);
  for (const LayoutEdge& edge : layout_edges(flat))
    (edge.rim ? rim : inner).add(at.row(edge.from), at.row(edge.to));
  inner.put_into(part);
  rim.put_into(part);
  if (part.surface) part.surface->rim_m = part.lines.back().ends_m;
}

// One chamber alone, its triangles still of the vertices of all.
FlatMesh chamber_alone(const FlatMesh& flat, int chamber) {
  std::vector<Eigen::Index> rows;
  for (Eigen::Index t = 0; t < flat.triangles.rows(); ++t) {
    const FlatRegion& region = flat.regions[static_cast<std::size_t>(t)];
    if (region.kind == RegionKind::kChamber && region.part == chamber) rows.push_back(t);
  }
  FlatMesh alone;
  alone.triangles = flat.triangles(rows, Eigen::all);
  alone.regions.assign(rows.size(), {});
  return alone;
}

void add_chosen_chamber(const FlatMesh& flat, int chamber, const DrawnFace& face, ScenePart& part) {
  const Points3& at = face.points_m;
  LineMaker lines(4.0, kPicked, face.lift_m + kMarkLift_m);
  for (const LayoutEdge& edge : layout_edges(chamber_alone(flat, chamber)))
    lines.add(at.row(edge.from), at.row(edge.to));
  lines.put_into(part);
}

SkinPoints area_of_chamber(const FlatMesh& flat, int chamber, const SkinPoints& on_skin) {
  const Triangles alone = chamber_alone(flat, chamber).triangles;
  const std::set<int> corners(alone.reshaped().begin(), alone.reshaped().end());
  const std::vector<int> rows(corners.begin(), corners.end());
  return {on_skin.points_m(rows, Eigen::all), on_skin.normals(rows, Eigen::all)};
}

void add_chamber_labels(const Layout& layout, const FlatMesh& flat, const SkinPoints& on_skin,
                        ScenePart& part) {
  if (flat.vertices_m.rows() == 0) return;
  for (std::size_t c = 0; c < layout.chambers.size(); ++c) {
    const Chamber& chamber = layout.chambers[c];
    const Vec2 middle = innermost_point_m(chamber.boundary_m);
    Eigen::Index nearest = 0;
    (flat.vertices_m.rowwise() - middle.transpose()).rowwise().squaredNorm().minCoeff(&nearest);
    part.labels.push_back({on_skin.points_m.row(nearest), on_skin.normals.row(nearest),
                           QString::fromStdString(chamber.name),
                           area_of_chamber(flat, static_cast<int>(c), on_skin)});
  }
}

void add_limit(const FlatMesh& flat, const Moment& moment, const DrawnFace& face, double top_pa,
               ScenePart& part) {
  constexpr double kHatch_m = 3.0e-3;
  const Eigen::VectorXd& load = moment.share_of_limit;
  const Points3& at = face.points_m;
  const double line_m = face.lift_m + kLineLift_m, halo_m = face.lift_m + kHaloLift_m;
  LineMaker on_dark(1.6, hatch_colour(true), line_m), on_pale(1.6, hatch_colour(false), line_m),
      halo(5.0, kLimitHalo, halo_m), contour(2.2, kLimitLine, face.lift_m + kMarkLift_m);
  const auto hatching = hatch_lines(flat.triangles, flat.vertices_m, load, kHatch_m);
  const auto pieces = static_cast<Eigen::Index>(hatching.size());
  part.hatched = {Points3(pieces, 3), Points3(pieces, 3)};
  for (Eigen::Index k = 0; k < pieces; ++k) {
    const LayoutLine& line = hatching[static_cast<std::size_t>(k)];
    part.hatched.points_m.row(k) = 0.5 * (line[0].on(at) + line[1].on(at));
    part.hatched.normals.row(k) = line[0].on(face.normals);
  }
  for (const LayoutLine& line : hatching) {
    const double share = line[0].on(moment.pressure_pa)[0] / top_pa;
    (map_is_dark(share) ? on_dark : on_pale).add(line[0].on(at), line[1].on(at));
  }
  for (const LayoutLine& line : level_lines(flat.triangles, load, 1.0)) {
    halo.add(line[0].on(at), line[1].on(at));
    contour.add(line[0].on(at), line[1].on(at));
  }
  on_dark.put_into(part);
  on_pale.put_into(part);
  halo.put_into(part);
  contour.put_into(part);
}

void add_hottest(const Moment& moment, const DrawnFace& face, ScenePart& part) {
  Eigen::Index most = 0;
  if (moment.pressure_pa.size() == 0 || moment.pressure_pa.maxCoeff(&most) <= 0.0) return;
  part.hottest = {face.points_m.row(most), face.normals.row(most)};
}

// Millimetres of air between two lines: the least round number that leaves six lines on the fullest chamber
// of the last state, so that it stays the same while the device fills.
std::optional<double> air_step_mm(const ShownPlan& shown) {
  constexpr double kMostLines = 6.0;
  const Estimate& estimate = *shown.estimate();
  const LoadPath& path = estimate.path;
  const double most_mm =
      1e3 * device_faces(estimate.setup, path.sheet, path.states.back().positions_m).air_m.maxCoeff();
  for (const double step_mm : {1.0, 2.0, 5.0, 10.0, 20.0})
    if (most_mm > step_mm && most_mm <= kMostLines * step_mm) return step_mm;
  return std::nullopt;
}

// The outer sheet, with lines of equal height over the skin's side: they show how far it bulges from any
// side.
void add_outer(const ShownPlan& shown, const DeviceFaces& faces, double lift_m, ScenePart& part) {
  const Triangles& triangles = shown.estimate()->setup.flat.triangles;
  part.outer = OuterSheet{faces.outer_m, faces.outer_normals, triangles, lift_m + kOuterLift_m};
  const auto step_mm = air_step_mm(shown);
  if (!step_mm) return;
  LineMaker lines(1.0, kAirLine, lift_m + kOuterLift_m + kLineLift_m);
  for (double level_m = 1e-3 * *step_mm; level_m < faces.air_m.maxCoeff(); level_m += 1e-3 * *step_mm)
    for (const LayoutLine& line : level_lines(triangles, faces.air_m, level_m))
      lines.add(line[0].on(faces.outer_m), line[1].on(faces.outer_m));
  lines.put_into(part);
  part.air_line = *step_mm * mm;
}

bool lies_alike(const Prepared& worn, const Estimate& estimate) {
  return worn.wrap.anchor_m == estimate.wrap.anchor_m &&
         worn.wrap.wrap_direction == estimate.wrap.wrap_direction &&
         worn.closing_length == estimate.closing_length &&
         same_shape(worn.setup.layout, estimate.setup.layout);
}

// Faces and vertices that a problem is about; those of another mesh are left out.
void add_marks(const ShownPlan& shown, ScenePart& part) {
  const TriangleMesh& mesh = shown.skin()->mesh();
  const Points3 at = on_sheet(*shown.skin());
  LineMaker lines(3.0, kNoGo, kMarkLift_m);
  for (const ProblemPlace& place : shown.marks()) {
    if (place.kind == ProblemPlace::Kind::kVertex && place.index < mesh.vertices_m.rows())
      add_ring(*shown.skin(), mesh.vertices_m.row(place.index), 3e-3, kNoGo, part);
    if (place.kind != ProblemPlace::Kind::kFace || place.index >= mesh.faces.rows()) continue;
    for (int k = 0; k < 3; ++k)
      lines.add(at.row(mesh.faces(place.index, k)), at.row(mesh.faces(place.index, (k + 1) % 3)));
  }
  lines.put_into(part);
}

// Where the section that is shown beside cuts the skin.
void add_cut(const ShownPlan& shown, double station_m, ScenePart& part) {
  const Axis& axis = shown.body()->axis;
  LineMaker lines(2.8, kCut, kCutLift_m);
  for (const SectionLine& line :
       shown.sections()->at(axis.origin_m + station_m * axis.direction, axis.direction)) {
    for (std::size_t k = 1; k < line.points_m.size(); ++k) lines.add(line.points_m[k - 1], line.points_m[k]);
    if (line.closed) lines.add(line.points_m.back(), line.points_m.front());
  }
  lines.put_into(part);
}

DrawnFace face_of(const Moment& moment, const DeviceFaces& faces, BodyLook look) {
  return look == BodyLook::kDevice ? as_solved(faces, moment.lowered()) : at_rest(moment.on_skin);
}

DeviceFaces faces_at(const ShownPlan& shown, const Moment& moment) {
  return device_faces(shown.estimate()->setup, shown.estimate()->path.sheet, moment.positions_m);
}

// Where the layout is shown now; none: nowhere.
std::optional<DrawnFace> shown_on(const ShownPlan& shown, const Selection& selection, BodyLook look) {
  const auto moment = moment_at(shown, selection.filling());
  if (shows_contact(shown, selection.state()) && moment)
    return face_of(*moment, faces_at(shown, *moment), look);
  if (!shown.worn()) return std::nullopt;
  return at_rest({shown.worn()->wrap.worn_m, shown.worn()->wrap.outward_at_worn});
}

}  // namespace

ScenePart sites_part(const ShownPlan& shown) {
  ScenePart part;
  if (!shown.skin()) return part;
  add_sites(shown, part);
  add_no_go(shown, part);
  return part;
}

bool shows_contact(const ShownPlan& shown, int state) {
  if (!shown.skin() || !shown.contact(state)) return false;
  if (shown.stale().isEmpty() || !shown.worn()) return true;
  return lies_alike(*shown.worn(), *shown.estimate());
}

ScenePart contact_part(const ShownPlan& shown, double filling, BodyLook look) {
  const InflationSetup& setup = shown.estimate()->setup;
  const double top_pa = shown.scale().top_pa;
  ScenePart part;
  const auto moment = moment_at(shown, filling);
  if (!moment) return part;
  const DeviceFaces faces = faces_at(shown, *moment);
  const DrawnFace face = face_of(*moment, faces, look);
  part.surface = WornSurface{face.points_m,
                             face.normals,
                             setup.flat.triangles,
                             moment->pressure_pa,
                             top_pa,
                             !shown.stale().isEmpty(),
                             {},
                             face.lift_m};
  add_limit(setup.flat, *moment, face, top_pa, part);
  add_edges(setup.flat, face, part);
  add_hottest(*moment, face, part);
  if (look == BodyLook::kDevice) add_outer(shown, faces, face.lift_m, part);
  add_chamber_labels(setup.layout, setup.flat, moment->on_skin, part);
  return part;
}

ScenePart layout_part(const ShownPlan& shown) {
  ScenePart part;
  if (!shown.skin() || !shown.worn()) return part;
  const Prepared& worn = *shown.worn();
  const SkinPoints on_skin{worn.wrap.worn_m, worn.wrap.outward_at_worn};
  const DrawnFace face = at_rest(on_skin);
  part.surface = WornSurface{face.points_m, face.normals, worn.setup.flat.triangles, {}};
  add_edges(worn.setup.flat, face, part);
  add_chamber_labels(worn.setup.layout, worn.setup.flat, on_skin, part);
  return part;
}

ScenePart picked_part(const ShownPlan& shown, const Selection& selection, BodyLook look) {
  ScenePart part;
  if (!shown.skin()) return part;
  const auto face = selection.chamber() ? shown_on(shown, selection, look) : std::nullopt;
  if (face) {
    const bool solved = shows_contact(shown, selection.state()) && moment_at(shown, selection.filling());
    const FlatMesh& flat = solved ? shown.estimate()->setup.flat : shown.worn()->setup.flat;
    add_chosen_chamber(flat, static_cast<int>(index_of(*selection.chamber())), *face, part);
  }
  if (selection.place_m()) add_ring(*shown.skin(), *selection.place_m(), 2.5e-3, kPicked, part);
  if (selection.cut_m()) add_cut(shown, *selection.cut_m(), part);
  if (!shown.marks().empty()) add_marks(shown, part);
  return part;
}

}  // namespace wrapgauge
