#include "model/body/check_body.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <utility>

#include "model/body/body_axis.hpp"
#include "model/body/section_middles.hpp"
#include "model/body/self_crossing.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

// Judgement: the thinnest limb is far thicker than this against its longest extent; plates and drawings are
// not.
constexpr double kFlat = 0.02;

std::string vector_words(const Vec3& v, const char* format) {
  char text[120];
  std::snprintf(text, sizeof text, format, v[0], v[1], v[2]);
  return text;
}

std::optional<Problem> input_fault(const RawMesh& raw, const BodyOptions& options) {
  if (raw.faces.rows() == 0 || raw.vertices.rows() == 0)
    return bad_input(Phrase::worded("The mesh has no faces; it is not a body surface."));
  if (raw.faces.minCoeff() < 0 || raw.faces.maxCoeff() >= raw.vertices.rows())
    return bad_input(Phrase::worded("A face names a vertex that is not there; the mesh is damaged."));
  if (!raw.vertices.allFinite())
    return bad_input(Phrase::worded("A vertex has a coordinate that is not a finite number."));
  if (options.axis_direction &&
      !(options.axis_direction->allFinite() && options.axis_direction->norm() > 1e-12))
    return bad_input(
        Phrase::worded("The axis direction must be three finite numbers that are not all zero."));
  return std::nullopt;
}

std::optional<Problem> flat_fault(const Points3& vertices, int face_count) {
  const Eigen::Matrix<double, Eigen::Dynamic, 3> moved = vertices.rowwise() - vertices.colwise().mean();
  const Eigen::SelfAdjointEigenSolver<Mat3> solver(moved.transpose() * moved);
  const Eigen::Matrix<double, Eigen::Dynamic, 3> turned = moved * solver.eigenvectors();
  const Vec3 extent = turned.colwise().maxCoeff() - turned.colwise().minCoeff();
  if (extent.minCoeff() > kFlat * extent.maxCoeff()) return std::nullopt;
  return bad_input(Phrase::worded(
      "The surface (%1) is flat: %2 by %3 by %4 units; that is not a limb.",
      {face_count == 1 ? Phrase::worded("1 face") : Phrase::worded("%1 faces", {figures_of(face_count)}),
       figures_of(number_text(extent[2], 4)), figures_of(number_text(extent[1], 4)),
       figures_of(number_text(extent[0], 4))}));
}

Phrase section_note(const Girth& girth) {
  if (girth.kind == SectionKind::kOpen)
    return Phrase::worded(
        "At station %1 the section crosses an opening: its girth of %2 bridges %3 straight, so "
        "the true girth is larger.",
        {millimetres_of(girth.station), millimetres_of(girth.girth), millimetres_of(girth.bridged)});
  return Phrase::worded(
      "At station %1 the section is %2 loops; the girth given (%3) is of the longest.",
      {millimetres_of(girth.station), figures_of(girth.loops), millimetres_of(girth.girth)});
}

Phrase opening_note(const OpenEnd& end) {
  const Phrase length = millimetres_of(end.length);
  if (end.kind == OpenEndKind::kDistal) return Phrase::worded("The distal end is open, %1 round.", {length});
  if (end.kind == OpenEndKind::kProximal)
    return Phrase::worded("The proximal end is open, %1 round.", {length});
  return Phrase::worded("There is a hole in the surface, %1 round, between stations %2 and %3.",
                        {length, millimetres_of(end.station_low), millimetres_of(end.station_high)});
}

// Far from the origin, small numbers are lost; said when it matters for a girth (0.01 mm on a limb of 200
// mm).
void note_place(const RawMesh& raw, const Body& body, double scale, std::vector<Phrase>& notes) {
  const double size = body_length(body).si(), far = body.axis.origin_m.norm();
  if (far > 20.0 * size)
    notes.push_back(Phrase::worded(
        "The body lies %1 from the origin of its file; points named in a plan are meant there too.",
        {figures_of(number_text(far, 4) + " m")}));
  if (raw.coordinate_step * scale > 5e-5 * size)
    notes.push_back(Phrase::worded(
        "That far from the origin the file's numbers are rounded to %1; move the body to the origin before "
        "saving it.",
        {figures_of(number_text(raw.coordinate_step * scale * 1e3, 2) + " mm")}));
}

Phrase crossing_note(const SelfCrossing& crossing) {
  const Phrase pairs = crossing.pairs >= 1000
                           ? Phrase::worded("%1 pairs of faces or more", {figures_of(crossing.pairs)})
                           : Phrase::worded("%1 pairs of faces", {figures_of(crossing.pairs)});
  return Phrase::worded(
      "The surface passes through itself: %1, first near %2; girths and contact there are not to be trusted.",
      {pairs, figures_of(vector_words(crossing.at_m * 1e3, "(%.1f, %.1f, %.1f) mm"))});
}

void note_findings(const Body& body, BodyReport& report) {
  for (const OpenEnd& end : report.open_ends) report.notes.push_back(opening_note(end));
  if (report.open_ends.empty())
    report.notes.push_back(Phrase::worded("The surface is closed: it has no open ends."));
  const SelfCrossing crossing = find_self_crossing(body.surface);
  report.self_crossings = crossing.pairs;
  if (crossing.pairs > 0) report.notes.push_back(crossing_note(crossing));
  for (const Girth& girth : report.girths)
    if (girth.kind == SectionKind::kOpen || girth.kind == SectionKind::kSeveralLoops)
      report.notes.push_back(section_note(girth));
}

// The model takes a straight, resting limb. Judgement: forearms, arms, calves and thighs of people who hold
// them straight measure up to 7 degrees, trunks up to 13.
constexpr double kBent_deg = 15.0;

void note_bend(const Body& body, const PlaneSections& cuts, BodyReport& report) {
  if (report.self_crossings > 0) return;  // its sections say nothing
  const SectionMiddles sections = section_middles(body, cuts);
  const std::optional<double> bend = bend_deg(sections);
  if (bend && *bend > kBent_deg)
    report.notes.push_back(
        Phrase::worded("The limb is bent: its two halves run %1 degrees apart, so stations and girths hold "
                       "for neither. Scan it "
                       "straight, or cut off the part that the device goes on.",
                       {figures_of(fixed_text(*bend, 0))}));
  if (!bend)
    report.notes.push_back(Phrase::worded(
        "Only %1 of %2 sections across the axis go all round: the limb is bent, or the axis is not its own. "
        "State the axis, or cut off the part that the device goes on.",
        {figures_of(static_cast<int>(sections.middles_m.size())), figures_of(sections.planes)}));
}

void note_axis(const Body& body, BodyReport& report) {
  const std::vector<Phrase> direction = {figures_of(vector_words(body.axis.direction, "(%.3f, %.3f, %.3f)"))};
  report.notes.push_back(
      report.axis_found
          ? Phrase::worded(
                "The long axis was found: %1, taken as pointing from distal to proximal; state it if "
                "that is wrong.",
                direction)
          : Phrase::worded("The long axis was stated: %1, taken as pointing from distal to proximal.",
                           direction));
  // Judgement: limbs are thinner at their distal end, by more than this from one tenth to nine tenths.
  const Girth &distal = report.girths[1], &proximal = report.girths[9];
  if (report.axis_found && distal.girth > 1.1 * proximal.girth)
    report.notes.push_back(
        Phrase::worded("The girth falls from %1 at the end taken as distal to %2; limbs mostly grow towards "
                       "the trunk, so the "
                       "axis may point the wrong way.",
                       {millimetres_of(distal.girth), millimetres_of(proximal.girth)}));
}

// Of a scan on a table the largest piece may be the table.
Problem with_table_named(Problem problem, const std::vector<Repair>& repairs) {
  for (const Repair& repair : repairs)
    if (repair.what == RepairKind::kOtherPieces)
      problem = reworded(
          problem,
          in_a_row(
              {phrase_of(problem),
               Phrase::worded("It is the largest of several pieces: if it is a table under a limb, drop it "
                              "with 'wrapgauge body repair'.")}));
  return problem;
}

}  // namespace

Result<UnitChoice> unit_of_mesh(const RawMesh& raw, const FileExtent& extent, const BodyOptions& options) {
  if (options.unit || !raw.unit) return choose_unit(extent, options.unit);
  return choose_unit(extent, raw.unit, true);
}

Problem with_stray_named(Problem problem, const std::optional<StrayVertices>& stray) {
  return stray ? reworded(problem, in_a_row({phrase_of(problem), stray_words(*stray)})) : problem;
}

Result<CheckedBody> check_body(RawMesh raw, const BodyOptions& options) {
  if (auto problem = input_fault(raw, options)) return *problem;
  const std::optional<StrayVertices> stray = find_stray_vertices(raw);
  Result<RepairedSurface> repaired = repair_surface(std::move(raw.vertices), std::move(raw.faces));
  if (!repaired) return repaired.problem();
  RepairedSurface surface = std::move(repaired).value();
  if (auto problem = flat_fault(surface.vertices, static_cast<int>(surface.faces.rows())))
    return with_table_named(with_stray_named(*problem, stray), surface.repairs);
  CheckedBody checked;
  Body& body = checked.body;
  BodyReport& report = checked.report;
  body.name = options.name;
  body.surface = {std::move(surface.vertices), std::move(surface.faces)};
  report.axis_found = !options.axis_direction;
  const Vec3 direction =
      report.axis_found ? find_axis_direction(body.surface) : options.axis_direction->normalized();
  const Vec3 extents = extents_about(body.surface, direction);
  const Result<UnitChoice> unit = unit_of_mesh(raw, {extents[0], extents[1]}, options);
  if (!unit) return with_stray_named(unit.problem(), stray);
  const double scale = length_of(unit->unit).si();
  body.surface.vertices_m *= scale;
  body.axis = place_axis(body.surface, direction);
  report.unit = *unit;
  report.length = Length(extents[0] * scale);
  report.width_most = Length(extents[1] * scale);
  report.width_least = Length(extents[2] * scale);
  report.repairs = std::move(surface.repairs);
  report.open_ends = find_open_ends(body.surface, body.axis);
  const PlaneSections cuts(body.surface);
  report.girths = girth_profile(body, cuts);
  report.notes = std::move(raw.notes);
  report.notes.push_back(unit->sentence);
  if (stray) report.notes.push_back(stray_words(*stray));
  note_axis(body, report);
  note_place(raw, body, scale, report.notes);
  note_findings(body, report);
  note_bend(body, cuts, report);
  return checked;
}

}  // namespace wrapgauge
