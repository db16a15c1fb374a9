#pragma once
// A plan is the whole job in one text file: body, layout, wear, inflation, limits.

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/body/length_unit.hpp"
#include "model/body/mend_step.hpp"
#include "model/body/person.hpp"
#include "model/body/skin_region.hpp"
#include "model/core/result.hpp"
#include "model/inflation/load_path.hpp"
#include "model/layout/drawing_map.hpp"
#include "model/layout/flat_mesh.hpp"
#include "model/layout/layout.hpp"
#include "model/limits/limit_set.hpp"
#include "model/limits/people.hpp"
#include "model/limits/programme.hpp"
#include "model/limits/supply.hpp"
#include "model/material/posture.hpp"
#include "model/material/tissue.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

struct BodyFile {
  std::filesystem::path file;          // as written; relative to the plan file
  std::optional<LengthUnit> unit;      // none: guessed from size, and said
  std::optional<Vec3> axis_direction;  // none: found
  std::optional<Vec3> front;           // towards the person's front; none: the file's own, or not said
  std::optional<BodySide> side;        // none: the file's own, or not said
  std::vector<MendStep> mend;          // taken in order each time the file is read; the file stays as it is
  bool operator==(const BodyFile&) const = default;
};
struct BodyForm {
  std::string form;                          // a bodyforms name, e.g. "tapered-limb"
  std::map<std::string, double> parameters;  // mm and mm girths, as documented by the form
  Person person;                             // whose measures fill what is not given
  bool operator==(const BodyForm&) const = default;
};

// A layout that stands in a drawing: which, and how it is mapped (in a mapping file, or in the plan itself).
struct DrawnLayout {
  std::filesystem::path file;  // as written; relative to the plan file
  std::variant<std::filesystem::path, DrawingMap> map;
  bool operator==(const DrawnLayout&) const = default;
};

struct InletProgram {
  std::string inlet;
  InflationTarget target;
  std::vector<ProgrammeStep> steps;  // over time, repeated; empty: as the session says
  bool operator==(const InletProgram&) const = default;
};

struct Plan {
  std::string name;
  std::filesystem::path folder;  // where the plan file lies; relative paths start here
  std::variant<BodyFile, BodyForm> body;
  std::optional<BodyPart> part;  // none: the form's or the file's own
  std::vector<BonySite> bony_sites;
  std::optional<SitesConfirmed> sites_confirmed;  // that the body has no other sites than those known
  std::vector<Landmark> landmarks;
  std::vector<SkinRegion> regions;  // a later one holds over an earlier one, bony sites over both
  std::string tissue_site;
  std::optional<Posture> posture;  // none: as the tissue row is
  std::optional<double> tissue_stiffness_factor;
  std::optional<double> tissue_poisson;  // instead of the row's
  TissueModel tissue_model = TissueModel::kFoundation;
  std::vector<double> tissue_depth_mm;  // one for the whole body, or a body vertex each; usually empty
  Layout layout;
  // Set when the layout stands in a file of its own, as written, relative to the plan file. write_plan then
  // writes the reference and not the layout: clear it after changing the layout.
  std::optional<std::filesystem::path> layout_file;
  std::optional<DrawnLayout> layout_drawing;  // the same for a layout from a drawing
  Placement placement;
  double friction = 0.5;
  std::vector<InletProgram> inflation;
  UsePattern use = UsePattern::kSustained;
  std::optional<std::filesystem::path> limits_file;   // a set of one's own, relative to the plan file
  std::optional<std::string> limits_override_reason;  // why that set may be laxer than the program's
  std::optional<std::filesystem::path> calibration;   // of readings of this device, relative to the plan file
  std::optional<Session> session;
  std::optional<Clearance> cleared_by;  // a clinician who lets it go all round chest, abdomen or head
  Wearers wearers;
  std::string date;  // of the note, "2026-11-29"; empty: given when it is made, or left to fill
  Supply supply;
  Filling filling;
  Length mesh_edge = 4.0 * mm;
  std::optional<Length> mesh_seam_edge;  // beside seams, at most mesh_edge; none: as everywhere
  std::optional<Length> mesh_seam_band;  // how far from a seam that holds; none: FlatMeshOptions
  InflationOptions solver;
  bool compare_wrinkled =
      false;  // solve again with compression carried the other way, and say the difference
  bool operator==(const Plan&) const = default;
};

// The mesh the plan asks for, every length times `factor`; the band beside seams stays.
FlatMeshOptions mesh_of_plan(const Plan& plan, double factor = 1.0);

// Reads, checks every field (unknown keys are refused by name) and fills defaults. Described in
// docs/plan-file.md. Whether the drawing makes sense, the body is there and the materials are known is asked
// later.
Result<Plan> read_plan(const std::filesystem::path& file);
// Relative files are named anew from the folder of `file`. Written to a temporary name, flushed and renamed.
std::string plan_bytes(const Plan& plan, const std::filesystem::path& file);
Result<std::monostate> write_plan(const Plan& plan, const std::filesystem::path& file);

}  // namespace wrapgauge
