#pragma once
// One estimate as data, ready to be written down: the same value becomes the one-page text and summary.json.

#include <string>
#include <vector>

#include "model/contact/figures_difference.hpp"
#include "model/contact/mesh_error.hpp"
#include "model/limits/hazard.hpp"
#include "model/limits/people.hpp"
#include "model/limits/skin_exposure.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

struct InputFile {
  std::string role;    // "plan", "body", "limits"
  std::string name;    // file name without folders, so that the same input gives the same bytes anywhere
  std::string sha256;  // hexadecimal
};

struct InflatedInlet {
  std::string inlet;
  std::string asked;                      // "6.0 kPa (45 mmHg)" or "42 mL"
  Pressure gauge;                         // reached
  Volume volume;                          // enclosed between the sheets
  std::vector<ProgrammeStep> steps = {};  // over time; empty: as the session says
};

struct MeshSize {
  Length edge, seam_edge;
  int nodes = 0, triangles = 0;
};

struct Summary {
  std::string program_version;
  std::vector<InputFile> inputs;
  std::string plan, body, layout;
  std::vector<std::string> worn;     // what is worn and how, one sentence each
  std::vector<std::string> assumed;  // what was assumed, each with source and status
  std::vector<InflatedInlet> inlets;
  std::optional<std::string> limit_point;  // set: the asked pressure was not reached
  ContactFigures figures;
  Audit audit;
  std::optional<MeshError> mesh_error;
  std::vector<FiguresDifference> comparisons;
  MeshSize mesh;
  double model_factor = 1.5;
  std::optional<Calibration> calibration;  // none: the model is not calibrated on this device
  std::vector<Finding> findings;
  std::vector<Hazard> hazards;
  std::vector<InletRelief> relief;    // highest settings of the relief valves
  Severity worst = Severity::kNote;   // of findings and hazards: above a limit, or stop
  std::string limits_name, use;       // of the set; "held for a session"
  std::vector<LimitRow> rows_in_use;  // of the places that are pressed, strictest first
  ReleaseRule release;
  std::optional<Session> session;
  std::optional<SkinExposure> exposure;
  std::optional<std::string> limits_override;  // words that every output carries
  // What differs from the tables that the program ships, a sentence each; every output carries them.
  std::vector<std::string> tables_differ;
  std::optional<BodyPart> part;
  std::optional<BodySide> side;
  std::vector<BonySite> bony_sites;  // the body's and the plan's
  bool sites_known = false;
  std::optional<Length> bone_anywhere;  // tissue was taken no deeper than this, because of that
  std::optional<SitesConfirmed> sites_confirmed;
  std::optional<Clearance> cleared_by;
  bool tissue_confirmed = false;  // the tissue row was chosen for this part
  Wearers wearers;
  std::string date;  // of making, "2026-11-29"; empty: a cell to fill
  std::vector<WrapQuality> quality;
  std::optional<ClosureReport> closure;
};

// Where the job stands, for the terminal, the files and the note: "done", "done, above a limit",
// "stopped: not to be worn".
std::string_view status_text(const Summary& summary);

// One page of Markdown: findings first, then pressures with mesh error and model factor, then cautions.
std::string summary_markdown(const Summary& summary);

}  // namespace wrapgauge
