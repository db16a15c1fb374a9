#pragma once
// One variant solved: what an estimate of it would come to, how its chambers got there, and the map.

#include <Eigen/Core>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "model/study/ceiling.hpp"
#include "model/study/many_runs.hpp"
#include "model/study/run_figures.hpp"
#include "model/study/variants.hpp"
#include "model/study/worn_cases.hpp"

namespace wrapgauge {

// One recorded state of a chamber.
struct CurvePoint {
  double gauge_kpa = 0.0;  // inside
  double volume_ml = 0.0;  // its own
  double mean_kpa = 0.0;   // contact force over its drawn area
  double peak_kpa = 0.0;   // highest average over 1 cm2
  double bulge_mm = 0.0;   // greatest distance between its two sheets
  double stretch_max = 1.0;
};

struct ChamberCurve {
  std::string chamber;
  std::vector<CurvePoint> points;  // closed first, the last at what was asked for or at the limit point
};

// Of the last state, a flat vertex each; the mesh is made anew from the layout.
struct VariantMap {
  std::vector<int> contact_pa;
  std::vector<int> share_permille;  // of the limit of that place: the mean over 1 cm2 times the model factor
  std::vector<int> limits_pa;       // of the rows that hold somewhere, lowest first
};

struct VariantCeiling {
  bool none = false;  // nothing may be inflated, or there is no ceiling to find
  std::string words;  // "'a' 1.7 kPa (12 mmHg), 'b' 6.0 mL", or why there is none
  std::vector<CeilingInlet> inlets;
};

struct VariantAnswer {
  std::optional<std::string> failed;  // the sentence of what left it without figures
  int exit_code = 0;                  // of an estimate on this mesh, without its coarser one
  std::optional<std::string> held;    // what the chambers cannot hold; the figures are those they can
  double share = 0.0;                 // highest share of a limit, after the model factor
  std::string where, sentence;        // of what comes nearest to a limit, or is farthest above it
  std::string valve;                  // the hazard that makes the verdict, where no place does; else empty
  double model_factor = 1.5;
  std::vector<std::string> limits_words;  // what limits and tables differ from the program's own
  RunFigures figures;
  std::vector<ChamberCurve> curves;
  VariantMap map;
  std::optional<VariantCeiling> ceiling;
};

struct VariantMesh {
  std::optional<Length> edge;  // everywhere; none: as each variant's own plan says
};
Plan meshed(Plan plan, const VariantMesh& mesh);
std::string mesh_words(const VariantMesh& mesh);  // "mesh edge 8 mm", "the mesh of each plan"

// What runs on one body and one set of tables leave to each other; the answer is the same bits with it and
// without.
struct LeftByRuns {
  DistanceBlocks* distances = nullptr;  // to this body, for one thread at a time
  WornCases* worn = nullptr;
};

// Solves it. A variant that cannot be laid on or finds no equilibrium is a failed answer; only what
// is_no_answer() is a Problem. Distances are read on the lattice of DistanceBlocks, own or left by other
// runs.
Result<VariantAnswer> solve_variant(const Plan& meshed_plan, const Body& body, const Resources& resources,
                                    bool with_ceiling, Progress& progress = silent_progress(),
                                    const LeftByRuns& left = {});

// What the answer depends on beside the files that `inputs_hash` is of. `plan`: as `meshed` gives it.
std::string variant_identity(const Variants& variants, std::size_t variant, const Plan& plan,
                             const std::string& inputs_hash, bool with_ceiling);
std::string variant_json(const VariantAnswer& answer);  // in one line
// None: it is no answer of a variant.
std::optional<VariantAnswer> variant_from(const std::string& json);

// The greatest distance between the two sheets over a chamber, in one state.
Length bulge_height(const InflationSetup& setup, const SheetMesh& sheet, const EquilibriumState& state,
                    ChamberId chamber);

}  // namespace wrapgauge
