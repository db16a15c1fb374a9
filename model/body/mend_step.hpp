#pragma once
// The steps from a raw scan to a body ready to wear something, each a free function from a scan to a new scan
// and a report with numbers. Nothing is changed in place and the scan's file stays untouched, so a plan that
// lists its steps gives the body before any of them by leaving them out.

#include <string>
#include <variant>
#include <vector>

#include "model/body/body.hpp"
#include "model/core/phrase.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct Scan {
  TriangleMesh surface;      // metres; a soup until the first step that needs a manifold
  Axis axis;                 // station 0 at the distal-most vertex
  bool axis_stated = false;  // by the user or by a pose; otherwise found anew after each step
};

// One number of a step's report; the unit is part of the name ("area_dropped_mm2").
struct MendFigure {
  std::string name;
  double value = 0.0;
};
// The steps below, in their order, and the repair that some of them need (see repair_surface).
enum class MendKind {
  kDropTable,
  kDropCrumbs,
  kFillHoles,
  kSmooth,
  kDecimate,
  kCut,
  kPose,
  kMirror,
  kRepair
};

struct MendReport {
  MendKind step = MendKind::kRepair;
  Phrase sentence;
  std::vector<MendFigure> figures;
};
struct Mended {
  Scan scan;
  MendReport report;
};

// The same scan with another surface, its axis placed or found on it.
Scan with_surface(const Scan& scan, TriangleMesh surface);

// --- parameters; defaults are judgement, tried on synthetic scans with 0.6 mm noise ---

struct DropTable {
  Length tolerance = 3.0 * mm;  // faces nearer the plane than this, or beyond it, belong to the table
  double least_share = 0.2;     // of the scan's area: smaller planes are no table
  bool operator==(const DropTable&) const = default;
};
struct DropCrumbs {
  double below_share = 0.1;  // pieces with less than this share of the largest piece's area
  bool operator==(const DropCrumbs&) const = default;
};
struct FillHoles {
  Length up_to = 60.0 * mm;  // straight across the hole at its widest; the open ends are never filled
  bool operator==(const FillHoles&) const = default;
};
struct Smooth {
  int passes = 10;
  bool operator==(const Smooth&) const = default;
};
struct Decimate {
  Length edge = 4.0 * mm;
  bool operator==(const Decimate&) const = default;
};
struct CutLimb {
  Length from, to;  // stations
  bool operator==(const CutLimb&) const = default;
};
// Which end of the limb is distal. Thin and thick keep the scan's own way up where the mean girths of both
// end thirds differ by less than 5 %, and the report asks to check it.
enum class DistalEnd { kThin, kThick, kAsItIs, kTurned };
struct PoseLimb {
  DistalEnd distal = DistalEnd::kThin;
  double turn_deg = 0.0;  // about the axis, after the shape's own zero angle
  bool operator==(const PoseLimb&) const = default;
};
struct MirrorLimb {
  bool operator==(const MirrorLimb&) const = default;
};

using MendStep =
    std::variant<DropTable, DropCrumbs, FillHoles, Smooth, Decimate, CutLimb, PoseLimb, MirrorLimb>;

MendKind kind_of(const MendStep& step);

// As plans and the terminal call it: "drop table", "drop crumbs", "fill holes", "smooth", "decimate", "cut",
// "pose", "mirror", "repair".
std::string step_name(MendKind kind);

// --- the steps ---

// A plane with at least `least_share` of the area that has nearly everything else on one side. Nothing is
// dropped when there is none, and the report says so. Problem: nothing but the table is there.
Result<Mended> drop_table(const Scan& scan, const DropTable& options);
Result<Mended> drop_crumbs(const Scan& scan, const DropCrumbs& options);
// The rest want a manifold surface in one piece (see repair_surface).
// Holes are triangulated, refined and faired so that the patch goes on smoothly from the rim.
Result<Mended> fill_holes(const Scan& scan, const FillHoles& options);
// Two-step low-pass filter that does not shrink (G. Taubin, "A signal processing approach to fair surface
// design", SIGGRAPH 1995; from memory). Noise makes a section line longer without making the limb larger, so
// the report gives the change of girth as that of a circle of the section's area, and of the line itself.
Result<Mended> smooth(const Scan& scan, const Smooth& options);
// Remeshed to near-equilateral triangles; the report gives the distance between both surfaces.
Result<Mended> decimate(const Scan& scan, const Decimate& options);
// Keeps what lies between two stations and moves it along the axis to where the distal end was. Problems:
// stations in the wrong order or outside the limb; nothing or no closed section there.
Result<Mended> cut_limb(const Scan& scan, const CutLimb& options);
// Axis along +z, distal end at z = 0, sections' mean centre on the z axis, and +x where the shape says:
// along the longer axis of its mean section, on the side that reaches out further. So two poses of one limb
// end in the same one; on a round limb +x means little.
Result<Mended> pose_limb(const Scan& scan, const PoseLimb& options);
// Left becomes right: x turns its sign.
Result<Mended> mirror_limb(const Scan& scan);

}  // namespace wrapgauge
