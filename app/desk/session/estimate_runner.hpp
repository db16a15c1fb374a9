#pragma once
// Runs checks and solves of a plan on a thread of its own, newest wish first, and hands over finished values.

#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <thread>
#include <vector>

#include "app/desk/session/checked_plan.hpp"
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
};
struct FoundAim {
  std::shared_ptr<const Plan> plan;
  std::shared_ptr<const Aim> aim;
};

// All signals come on the thread that the runner lives in. What was cancelled says nothing but `idle`.
class EstimateRunner : public QObject {
  Q_OBJECT
 public:
  explicit EstimateRunner(QObject* parent = nullptr);
  ~EstimateRunner() override;

  // Each takes the place of what is running: that is cancelled. check_and_preview goes on to a preview when
  // the plan can be solved.
  void check(std::shared_ptr<const Plan> plan);
  void check_and_preview(std::shared_ptr<const Plan> plan);
  void estimate_standard(std::shared_ptr<const Plan> plan);
  void find_ceiling(std::shared_ptr<const Plan> plan);
  void find_aim(std::shared_ptr<const Plan> plan, std::vector<AimTarget> targets);
  void cancel();
  bool busy() const { return busy_; }

 signals:
  void busyChanged(bool busy);
  void progressed(const QString& stage, double fraction);
  void checked(std::shared_ptr<const CheckedPlan> checked);
  void solved(std::shared_ptr<const SolvedPlan> solved);
  void ceilingFound(const FoundCeiling& found);
  void aimFound(const FoundAim& found);
  void failed(const Problem& problem);

 private:
  class Reporter;
  using Task = std::function<void(Reporter&)>;

  void start(Task task);
  void work();
  std::shared_ptr<const CheckedPlan> check_now(const std::shared_ptr<const Plan>& plan);
  void solve_now(const CheckedPlan& checked, Fineness fineness, Reporter& reporter);
  template <class Found>
  void deliver(const Reporter& reporter, Found found);

  struct Shared;
  std::unique_ptr<Shared> shared_;
  std::shared_ptr<const CheckedPlan> last_checked_;  // touched by the worker alone
  DistanceBlocks distances_;                         // likewise
  bool busy_ = false;
  std::thread worker_;
};

}  // namespace wrapgauge
