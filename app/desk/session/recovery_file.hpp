#pragma once
// The plan as it stood at the last edit, kept beside the user's files until the session ends well.

#include <QLockFile>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "model/core/result.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

struct RecoveredPlan {
  Plan plan;
  std::filesystem::path file;  // where the plan was last saved; empty: never
};

// What a recovery file holds: the plan, the place it was saved at, and whether body and layout are there yet.
std::string recovery_text(const RecoveredPlan& recovered);
Result<RecoveredPlan> recovered_from_text(const std::string& text);

// Owned by one running session; others see that it is held.
class RecoveryFile {
 public:
  // `folder`: made if it is missing.
  explicit RecoveryFile(std::filesystem::path folder);
  ~RecoveryFile();  // a session that ends leaves nothing behind
  RecoveryFile(const RecoveryFile&) = delete;
  RecoveryFile& operator=(const RecoveryFile&) = delete;

  const std::filesystem::path& path() const { return file_; }
  void remove() const;

  // The newest plan left by a session that did not end; its file is taken away. None: all ended well.
  static std::optional<RecoveredPlan> take_left_behind(const std::filesystem::path& folder);

 private:
  std::filesystem::path file_;
  std::unique_ptr<QLockFile> lock_;
};

}  // namespace wrapgauge
