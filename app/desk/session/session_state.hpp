#pragma once
// All that the window shows, as it is at one moment. A value: nothing in it is changed, the session puts a
// whole new one in its place. Its parts are shared, so a copy costs little and two of them are told apart by
// their addresses.

#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include "app/desk/session/estimate_runner.hpp"
#include "app/desk/session/plan_part.hpp"

namespace wrapgauge {

enum class RunKind { kPreview, kEstimate, kCeiling, kAim, kAdvice, kBenchSheet, kBenchFit };

// How far what is being calculated is.
struct Running {
  QString stage;
  double fraction = 0.0;
  RunKind kind = RunKind::kPreview;
  bool operator==(const Running&) const = default;
};

struct SessionState {
  std::shared_ptr<const Plan> plan;            // never null
  std::filesystem::path file;                  // of the plan; empty: never saved
  std::shared_ptr<const Plan> saved;           // as the file holds it; null: never saved
  std::shared_ptr<const std::string> on_disk;  // the text of the file when it was last read or written here
  bool open_elsewhere = false;                 // another window has the same file
  bool modified = false;                       // edited since it was opened or saved
  std::shared_ptr<const CheckedPlan> check;  // of the plan or the one before it; null: none was ever checked
  std::shared_ptr<const SolvedPlan> solved;  // the newest result; null: none
  std::vector<PlanPart> stale;               // inputs of the plan changed since `solved`
  FoundCeiling newest_ceiling;               // of the plan or an earlier one
  FoundAim newest_aim;                       // likewise
  FoundAdvice newest_advice;                 // likewise
  FoundBenchSheet newest_sheet;              // likewise
  FoundBenchFit newest_fit;                  // likewise
  std::shared_ptr<const Problem> problem;    // met by the last run; null: none
  std::optional<Running> running;            // none: nothing is being calculated

  bool operator==(const SessionState&) const = default;

  // Null while the plan is being checked.
  std::shared_ptr<const CheckedPlan> checked() const {
    return check && check->plan == plan ? check : nullptr;
  }
  // The body of the newest check; null: none, or it cannot be read.
  const Body* body() const { return check && check->body ? &check->body->body : nullptr; }
  bool can_be_solved() const { return check && check->can_be_solved(); }
  // Null unless found for the plan as it stands.
  std::shared_ptr<const Ceiling> ceiling() const;
  std::shared_ptr<const Aim> aim() const;
  std::shared_ptr<const Advice> advice() const;
  std::shared_ptr<const BenchResult> fit() const;
  // More than how far a run is.
  bool differs_in_work(const SessionState& before) const;
};

}  // namespace wrapgauge
