#include "model/body/mend.hpp"

#include <algorithm>
#include <cmath>

#include "model/body/body_axis.hpp"
#include "model/body/rim_trim.hpp"
#include "model/body/vertex_weld.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

Result<Mended> take(const Scan& scan, const DropTable& step) {
  return drop_table(scan, step);
}
Result<Mended> take(const Scan& scan, const DropCrumbs& step) {
  return drop_crumbs(scan, step);
}
Result<Mended> take(const Scan& scan, const FillHoles& step) {
  return fill_holes(scan, step);
}
Result<Mended> take(const Scan& scan, const Smooth& step) {
  return smooth(scan, step);
}
Result<Mended> take(const Scan& scan, const Decimate& step) {
  return decimate(scan, step);
}
Result<Mended> take(const Scan& scan, const CutLimb& step) {
  return cut_limb(scan, step);
}
Result<Mended> take(const Scan& scan, const PoseLimb& step) {
  return pose_limb(scan, step);
}
Result<Mended> take(const Scan& scan, const MirrorLimb&) {
  return mirror_limb(scan);
}

bool works_on_soup(const MendStep& step) {
  return std::holds_alternative<DropTable>(step) || std::holds_alternative<DropCrumbs>(step);
}

// Manifold, one piece, outward, and nothing hanging at its rims.
Result<Mended> repaired(const Scan& scan) {
  TriangleMesh mesh = scan.surface;
  const int trimmed = trim_rims(mesh.faces);
  auto result = repair_surface(std::move(mesh.vertices_m), std::move(mesh.faces));
  if (!result) return result.problem();
  std::vector<Phrase> sentences;
  if (trimmed > 0)
    sentences.push_back(
        trimmed == 1 ? Phrase::worded("Trimmed 1 face hanging loosely at the rims of holes and ends.")
                     : Phrase::worded("Trimmed %1 faces hanging loosely at the rims of holes and ends.",
                                      {figures_of(trimmed)}));
  for (const Repair& repair : result->repairs) sentences.push_back(repair.sentence);
  if (sentences.empty()) sentences.push_back(Phrase::worded("Nothing to repair."));
  MendReport report{
      MendKind::kRepair, in_a_row(std::move(sentences)), {{"faces_trimmed", static_cast<double>(trimmed)}}};
  RepairedSurface surface = std::move(result).value();
  return Mended{with_surface(scan, {std::move(surface.vertices), std::move(surface.faces)}),
                std::move(report)};
}

Problem at_step(std::size_t index, Problem problem) {
  problem.places.push_back({ProblemPlace::Kind::kMendStep, static_cast<int>(index)});
  return problem;
}

// The scan as it stands in the file, in metres, with copies of vertices joined.
Scan first_scan(const RawMesh& raw, double scale, const std::optional<Vec3>& axis) {
  Scan scan{{scale * raw.vertices, raw.faces}, {}, axis.has_value()};
  weld_vertices(scan.surface.vertices_m, scan.surface.faces);
  if (axis) scan.axis.direction = axis->normalized();
  return with_surface(scan, scan.surface);
}

// Takes the steps; `scan` goes from the raw one to the mended one.
std::optional<Problem> take_steps(const std::vector<MendStep>& steps, Scan& scan,
                                  std::vector<MendReport>& reports) {
  bool manifold = false;
  const auto take_over = [&](Result<Mended> mended) -> std::optional<Problem> {
    if (!mended) return mended.problem();
    Mended value = std::move(mended).value();
    scan = std::move(value.scan);
    reports.push_back(std::move(value.report));
    return std::nullopt;
  };
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (!manifold && !works_on_soup(steps[i])) {
      if (auto problem = take_over(repaired(scan))) return problem;
      manifold = true;
    }
    auto taken = std::visit([&](const auto& step) { return take(scan, step); }, steps[i]);
    if (auto problem = take_over(std::move(taken))) return at_step(i, *problem);
    if (scan.surface.faces.rows() == 0)
      return at_step(i, bad_input("nothing of the scan is left after this step."));
  }
  return std::nullopt;
}

FileExtent extent_of(const Scan& scan, double scale) {
  const Vec3 extents = extents_about(scan.surface, scan.axis.direction) / scale;
  return {extents[0], extents[1]};
}

// What is left of the scan, taken in `unit`, when table and crumbs are gone; none: nothing.
std::optional<FileExtent> extent_left(const RawMesh& raw, const BodyOptions& options,
                                      const std::vector<MendStep>& steps, LengthUnit unit) {
  const double scale = length_of(unit).si();
  Scan scan = first_scan(raw, scale, options.axis_direction);
  for (const MendStep& step : steps) {
    if (!works_on_soup(step)) break;
    auto taken = std::visit([&](const auto& each) { return take(scan, each); }, step);
    if (!taken || taken->scan.surface.faces.rows() == 0) return std::nullopt;
    scan = std::move(taken->scan);
  }
  return extent_of(scan, scale);
}

// A unit is guessed from the limb, not from the table under it or the crumbs round it. But how thick a table
// is depends on the unit: so the first one, the likeliest of the whole scan ahead, with which what is left
// says the same.
Result<UnitChoice> unit_of_scan(const RawMesh& raw, const BodyOptions& options,
                                const std::vector<MendStep>& steps) {
  const auto whole = unit_of_mesh(raw, extent_of(first_scan(raw, 1.0, options.axis_direction), 1.0), options);
  if (steps.empty() || !works_on_soup(steps.front())) return whole;
  std::vector<LengthUnit> candidates;
  if (whole) candidates.push_back(whole->unit);
  for (const LengthUnit unit :
       {LengthUnit::kMillimetre, LengthUnit::kCentimetre, LengthUnit::kMetre, LengthUnit::kInch})
    if (!whole || (whole->guessed && unit != whole->unit)) candidates.push_back(unit);
  for (const LengthUnit unit : candidates) {
    const auto extent = extent_left(raw, options, steps, unit);
    if (!extent) continue;
    auto choice = unit_of_mesh(raw, *extent, options);
    if (choice && choice->unit == unit) return choice;
  }
  return whole;
}

}  // namespace

MendKind kind_of(const MendStep& step) {
  return static_cast<MendKind>(step.index());
}

std::string step_name(MendKind kind) {
  constexpr const char* names[] = {"drop table", "drop crumbs", "fill holes", "smooth", "decimate",
                                   "cut",        "pose",        "mirror",     "repair"};
  return names[static_cast<std::size_t>(kind)];
}

std::optional<std::size_t> failed_step(const Problem& problem) {
  for (const ProblemPlace& place : problem.places)
    if (place.kind == ProblemPlace::Kind::kMendStep) return static_cast<std::size_t>(place.index);
  return std::nullopt;
}

Problem with_step_named(Problem problem, const std::vector<MendStep>& steps) {
  if (const auto step = failed_step(problem); step && *step < steps.size())
    problem.message = "Step " + std::to_string(*step + 1) + " (" + step_name(kind_of(steps[*step])) +
                      "): " + problem.message;
  return problem;
}

Scan with_surface(const Scan& scan, TriangleMesh surface) {
  Scan out{std::move(surface), scan.axis, scan.axis_stated};
  if (out.surface.faces.rows() == 0) return out;
  Vec3 direction = scan.axis.direction;
  if (!scan.axis_stated) direction = find_axis_direction(out.surface);
  out.axis = place_axis(out.surface, direction);
  return out;
}

std::vector<MendStep> usual_steps() {
  return {DropTable{}, DropCrumbs{}, FillHoles{}, Smooth{}, PoseLimb{}, Decimate{}};
}

Result<MendedBody> mend_body(RawMesh raw, const BodyOptions& options, const std::vector<MendStep>& steps) {
  MendedBody result;
  BodyOptions check = options;
  std::optional<UnitChoice> unit;
  const bool readable = raw.faces.rows() > 0 && raw.vertices.allFinite();
  if (!steps.empty() && readable) {
    auto chosen = unit_of_scan(raw, options, steps);
    if (!chosen) return with_stray_named(chosen.problem(), find_stray_vertices(raw));
    unit = *chosen;
    const double scale = length_of(unit->unit).si();
    Scan scan = first_scan(raw, scale, options.axis_direction);
    if (auto problem = take_steps(steps, scan, result.reports)) return *problem;
    raw.vertices = scan.surface.vertices_m / scale;
    raw.faces = scan.surface.faces;
    check.unit = unit->unit;
    if (scan.axis_stated) check.axis_direction = scan.axis.direction;
  }
  auto checked = check_body(std::move(raw), check);
  if (!checked) return checked.problem();
  result.checked = std::move(checked).value();
  if (unit) {
    auto& notes = result.checked.report.notes;
    std::replace(notes.begin(), notes.end(), result.checked.report.unit.sentence, unit->sentence);
    result.checked.report.unit = *unit;
  }
  return result;
}

}  // namespace wrapgauge
