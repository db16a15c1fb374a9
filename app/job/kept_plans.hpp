#pragma once
// Variants of a plan that are kept beside it, to be looked at and compared: a folder NAME-kept of plan files,
// each with the figures it had and, where there is one, its picture.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "model/plan/plan.hpp"

namespace wrapgauge {

// Predicted, of the last state that was solved.
struct KeptFigures {
  double share_of_limit = 0.0;  // the largest, after the model factor
  Pressure peak;                // over 1 cm2, anywhere
  Pressure inside;              // of the fullest chamber
  bool above = false;           // a limit
  Length edge;                  // of the mesh they were solved on
  bool operator==(const KeptFigures&) const = default;
};

struct KeptPlan {
  std::string name;
  std::filesystem::path plan;  // its file
  KeptFigures figures;
  std::filesystem::path picture;  // may not be there
};

std::filesystem::path kept_folder(const std::filesystem::path& plan_file);

// In the order they were kept; what is no kept plan is passed over.
std::vector<KeptPlan> kept_plans(const std::filesystem::path& plan_file);

// `plan`: its files named as they are seen from kept_folder(plan_file), or absolute. `picture`: PNG bytes;
// empty: none. Problems: what cannot be written, by its name; then nothing of it is left.
Result<KeptPlan> keep_plan(const std::filesystem::path& plan_file, const Plan& plan, const std::string& name,
                           const KeptFigures& figures, const std::string& picture = {});

Result<std::monostate> drop_kept(const KeptPlan& kept);

}  // namespace wrapgauge
