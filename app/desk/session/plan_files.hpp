#pragma once
// The files that a plan names: where they are seen from, which are gone, and who has the plan itself open.

#include <QLockFile>
#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "model/plan/plan.hpp"

namespace wrapgauge {

// The same plan, its files named as they are seen from `folder`; those on another root stay absolute.
Plan with_files_seen_from(Plan plan, const std::filesystem::path& folder);

struct MissingFile {
  std::string key;              // where the plan names it: "/layout/drawing"
  std::filesystem::path named;  // as the plan names it, from its own folder
};
// Of a plan file that may not be readable for just that reason; empty where it is no plan at all.
std::vector<MissingFile> missing_files(const std::filesystem::path& plan_file);

// Read as if it named these files, a key each. The file itself is not touched.
Result<Plan> read_plan_with(const std::filesystem::path& plan_file,
                            const std::map<std::string, std::filesystem::path>& found);

// One window's hold on a plan file, given up with it. It keeps nobody from anything: it lets a second window
// know.
class PlanClaim {
 public:
  // `folder`: shared by all windows, made if it is missing. `plan_file`: absolute.
  PlanClaim(const std::filesystem::path& folder, const std::filesystem::path& plan_file);
  bool is_ours() const { return ours_; }  // false: another window that is running has it

 private:
  std::unique_ptr<QLockFile> lock_;
  bool ours_ = false;
};

}  // namespace wrapgauge
