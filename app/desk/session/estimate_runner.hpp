#pragma once
// Runs checks and solves of a plan on a thread of its own, newest wish first, and hands over finished values.

#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <thread>
#include <variant>
#include <vector>

#include "app/desk/session/checked_plan.hpp"
#include "model/bench/bench_sheet.hpp"
#include "model/bench/calibrate.hpp"
#include "model/study/advice.hpp"
#include "model/study/aim.hpp"
#include "model/study/ceiling.hpp"

namespace wrapgauge {

enum class Fineness { kPreview, kStandard };

// A finished estimate with what it was made from.
struct SolvedPlan {
  std::shared_ptr<const Plan> plan;  // as edited; a preview solves it on a coarser mesh
  Fineness fineness = Fineness::kPreview;
  std::shared_ptr<const Estimate> estimate;
  std::shared_ptr<const Summary> summary;
  std::vector<InputFile> inputs;  // all but the plan's own
};

struct FoundCeiling {
  std::shared_ptr<const Plan> plan;
  std::shared_ptr<const Ceiling> ceiling;
  bool operator==(const FoundCeiling&) const = default;
};
struct FoundAim {
  std::shared_ptr<const Plan> plan;
  std::shared_ptr<const Aim> aim;
  bool operator==(const FoundAim&) const = default;
};
struct FoundAdvice {
  std::shared_ptr<const Plan> plan;
  std::shared_ptr<const Advice> advice;
  bool operator==(const FoundAdvice&) const = default;
};
struct FoundBenchSheet {
  std::shared_ptr<const Plan> plan;
  std::shared_ptr<const BenchSheet> sheet;
  bool operator==(const FoundBenchSheet&) const = default;
};
struct FoundBenchFit {
  std::shared_ptr<const Plan> plan;
  std::shared_ptr<const BenchResult> fit;
  bool operator==(const FoundBenchFit&) const = default;
};
// One thing that a run found, or why it found nothing.
using RunResult = std::variant<std::shared_ptr<const CheckedPlan>, std::shared_ptr<const SolvedPlan>,
                               FoundCeiling, FoundAim, FoundAdvice, FoundBenchSheet, FoundBenchFit, Problem>;

// All signals come on the thread that the runner lives in. What was cancelled says nothing but `idle`.
class EstimateRunner : public QObject {
  Q_OBJECT
 public:
  explicit EstimateRunner(QObject* parent = nullptr);
  ~EstimateRunner() override;

  // Each takes the place of what is running: that is cancelled. Each checks the plan first and goes on when
  // it can be solved, or read on the bench.
  void check_and_preview(std::shared_ptr<const Plan> plan);
  void estimate_standard(std::shared_ptr<const Plan> plan);
  void find_ceiling(std::shared_ptr<const Plan> plan);
  void find_aim(std::shared_ptr<const Plan> plan, std::vector<AimTarget> targets);
  void find_advice(std::shared_ptr<const Plan> plan);
  void propose_readings(std::shared_ptr<const Plan> plan);
  void fit_readings(std::shared_ptr<const Plan> plan, std::shared_ptr<const Readings> readings);
  void cancel();
  bool busy() const { return busy_; }

 signals:
  void busyChanged(bool busy);
  void progressed(const QString& stage, double fraction);
  void found(const RunResult& result);

 private:
  class Reporter;
  using Task = std::function<void(Reporter&)>;

  using Then = std::function<void(const CheckedPlan&, Reporter&)>;

  void start(std::shared_ptr<const Plan> plan, Then then,
             bool (CheckedPlan::*is_ready)() const = &CheckedPlan::can_be_solved);
  void work();
  Q_INVOKABLE void take_posted();  // what the worker has to say, on the window's thread
  std::shared_ptr<const CheckedPlan> check_now(const std::shared_ptr<const Plan>& plan);
  void solve_now(const CheckedPlan& checked, Fineness fineness, Reporter& reporter);
  void deliver(const Reporter& reporter, RunResult result);

  struct Shared;
  std::unique_ptr<Shared> shared_;
  std::shared_ptr<const CheckedPlan> last_checked_;  // touched by the worker alone
  DistanceBlocks distances_;                         // likewise
  bool busy_ = false;
  std::thread worker_;
};

}  // namespace wrapgauge
