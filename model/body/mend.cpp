#include "model/body/mend.hpp"

#include <algorithm>
#include <cmath>

#include "model/body/body_axis.hpp"
#include "model/body/rim_trim.hpp"
#include "model/body/vertex_weld.hpp"
#include "model/core/number_text.hpp"
#include "model/core/said_problem.hpp"

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

// The scan as it stands in the file, copies of vertices joined.
Scan drawn_scan(const RawMesh& raw, const std::optional<Vec3>& axis) {
  Scan scan{{raw.vertices, raw.faces}, {}, axis.has_value()};
  weld_vertices(scan.surface.vertices_m, scan.surface.faces);
  if (axis) scan.axis.direction = axis->normalized();
  return with_surface(scan, scan.surface);
}

Scan scaled(Scan scan, double scale) {
  scan.surface.vertices_m *= scale;
  scan.axis.origin_m *= scale;
  return scan;
}

// A scan on its way through the steps.
struct Taken {
  Scan scan;
  std::vector<MendReport> reports;
  std::size_t next = 0;  // step
  bool manifold = false;

  std::optional<Problem> over(Result<Mended> mended) {
    if (!mended) return mended.problem();
    Mended value = std::move(mended).value();
    scan = std::move(value.scan);
    reports.push_back(std::move(value.report));
    return std::nullopt;
  }

  // Takes the steps that come next, up to the first one that needs a manifold; or, where the scan is one, to
  // the last.
  std::optional<Problem> take_steps(const std::vector<MendStep>& steps) {
    for (; next < steps.size() && (manifold || works_on_soup(steps[next])); ++next) {
      auto taken = std::visit([&](const auto& step) { return take(scan, step); }, steps[next]);
      if (auto problem = over(std::move(taken))) return at_step(next, *problem);
      if (scan.surface.faces.rows() == 0)
        return at_step(next, bad_input(Phrase::worded("nothing of the scan is left after this step.")));
    }
    return std::nullopt;
  }
};

// A scan in metres, without its table and crumbs where steps drop them.
struct InMetres {
  UnitChoice unit;
  Taken taken;
};

FileExtent extent_of(const Scan& scan, double scale) {
  const Vec3 extents = extents_about(scan.surface, scan.axis.direction) / scale;
  return {extents[0], extents[1]};
}

std::vector<LengthUnit> likeliest_first(const Result<UnitChoice>& whole) {
  std::vector<LengthUnit> units;
  if (whole) units.push_back(whole->unit);
  for (const LengthUnit unit : kLengthUnits)
    if (!whole || (whole->guessed && unit != whole->unit)) units.push_back(unit);
  return units;
}

// A unit is guessed from the limb, not from the table under it or the crumbs round it. But how thick a table
// is depends on the unit: so the first one, the likeliest of the whole scan ahead, with which what is left
// says the same; else that of the whole.
Result<InMetres> in_metres(const RawMesh& raw, const BodyOptions& options,
                           const std::vector<MendStep>& steps) {
  const Scan drawn = drawn_scan(raw, options.axis_direction);
  const auto whole = unit_of_mesh(raw, extent_of(drawn, 1.0), options);
  for (const LengthUnit unit : likeliest_first(whole)) {
    const double scale = length_of(unit).si();
    Taken taken{scaled(drawn, scale), {}};
    if (taken.take_steps(steps)) continue;
    auto choice = unit_of_mesh(raw, extent_of(taken.scan, scale), options);
    if (choice && choice->unit == unit) return InMetres{std::move(choice).value(), std::move(taken)};
  }
  if (!whole) return with_stray_named(whole.problem(), find_stray_vertices(raw));
  InMetres as_whole{*whole, {scaled(drawn, length_of(whole->unit).si()), {}}};
  if (auto problem = as_whole.taken.take_steps(steps)) return *problem;
  return as_whole;
}

// The steps that need a manifold.
std::optional<Problem> take_rest(const std::vector<MendStep>& steps, Taken& taken) {
  if (taken.next == steps.size()) return std::nullopt;
  if (auto problem = taken.over(repaired(taken.scan))) return problem;
  taken.manifold = true;
  return taken.take_steps(steps);
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
    return reworded(problem, Phrase::worded("Step %1 (%2): %3",
                                            {figures_of(static_cast<int>(*step) + 1),
                                             name_of(step_name(kind_of(steps[*step]))), phrase_of(problem)}));
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
    auto ready = in_metres(raw, options, steps);
    if (!ready) return ready.problem();
    unit = ready->unit;
    Taken taken = std::move(ready).value().taken;
    if (auto problem = take_rest(steps, taken)) return *problem;
    result.reports = std::move(taken.reports);
    const Scan& scan = taken.scan;
    const double scale = length_of(unit->unit).si();
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
