#include "app/desk/session/estimate_runner.hpp"

#include <sys/resource.h>

#include <QTemporaryDir>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <exception>
#include <mutex>
#include <new>

#include "app/desk/session/forward_progress.hpp"
#include "app/job/study_inputs.hpp"
#include "model/core/thrown.hpp"

namespace wrapgauge {

// What both threads touch; guarded by `mutex` except the counters.
struct EstimateRunner::Shared {
  std::mutex mutex;
  std::condition_variable wake;
  Task next;                                 // empty: nothing to do
  std::deque<std::function<void()>> posted;  // for the window's thread, in this order
  bool end = false;
  std::atomic<int> newest{0};  // number of the newest wish; older ones are cancelled
};

// Tells the window how far one task is, and the task whether it is still wanted.
class EstimateRunner::Reporter : public Progress {
 public:
  Reporter(EstimateRunner& runner, int number) : runner_(runner), number_(number) {}

  void report(std::string_view stage, double fraction) override {
    const QString words = QString::fromUtf8(stage.data(), static_cast<qsizetype>(stage.size()));
    post([words, fraction](EstimateRunner& runner) { emit runner.progressed(words, fraction); });
  }
  bool cancelled() const override { return runner_.shared_->newest.load() != number_; }

  // Runs on the window's thread unless something newer was asked for in between.
  template <class Action>
  void post(Action action) const {
    EstimateRunner* runner = &runner_;
    {
      const std::lock_guard lock(runner->shared_->mutex);
      runner->shared_->posted.emplace_back([runner, number = number_, action] {
        if (runner->shared_->newest.load() == number) action(*runner);
      });
    }
    QMetaObject::invokeMethod(runner, "take_posted", Qt::QueuedConnection);
  }

 private:
  EstimateRunner& runner_;
  int number_;
};

namespace {

// Judgement: of what is left, what one solve takes. A final estimate makes two to four of
// them, a search ten to thirty.
constexpr double kPartOfEstimate = 0.5, kPartOfSearch = 0.08;
// Of advice, each of its three stages: the plan, changes on the coarse mesh, those advised on its own.
constexpr double kPartOfAdvice = 0.45;
// Of a sheet to fill in, each of its six kinds; of a fit, the predictions and then each solve.
constexpr double kPartOfSheet = 0.4, kPartOfFit = 0.05;

// What went wrong is said even where there is no memory left to say it, as long as somebody wants to know:
// the window frees some before long.
template <class Saying>
void until_it_is_said(const Progress& asked, const Saying& say) {
  do {
    try {
      return say();
    } catch (const std::bad_alloc&) {
      std::this_thread::sleep_for(std::chrono::milliseconds(50));
    }
  } while (!asked.cancelled());
}

}  // namespace

EstimateRunner::EstimateRunner(QObject* parent) : QObject(parent), shared_(std::make_unique<Shared>()) {
  worker_ = std::thread([this] { work(); });
}

EstimateRunner::~EstimateRunner() {
  ++shared_->newest;
  {
    const std::lock_guard lock(shared_->mutex);
    shared_->end = true;
    shared_->next = nullptr;
  }
  shared_->wake.notify_one();
  worker_.join();
}

void EstimateRunner::work() {
  // The threads that a solve starts inherit this: the window stays quick while they use every core.
  setpriority(PRIO_PROCESS, 0, 5);
  for (;;) {
    Task task;
    int number = 0;
    {
      std::unique_lock lock(shared_->mutex);
      shared_->wake.wait(lock, [&] { return shared_->end || shared_->next; });
      if (shared_->end) return;
      std::swap(task, shared_->next);
      number = shared_->newest.load();
    }
    Reporter reporter(*this, number);
    try {
      task(reporter);
    } catch (...) {
      until_it_is_said(reporter, [&] { deliver(reporter, problem_of(std::current_exception())); });
    }
    until_it_is_said(reporter, [&] {
      reporter.post([](EstimateRunner& runner) {
        runner.busy_ = false;
        emit runner.busyChanged(false);
      });
    });
  }
}

// Each event takes whatever there is by then: one that got lost for want of memory loses nothing that was
// said, and what one of them throws leaves the others to the next event.
void EstimateRunner::take_posted() {
  for (;;) {
    std::function<void()> act;
    {
      const std::lock_guard lock(shared_->mutex);
      if (shared_->posted.empty()) return;
      act = std::move(shared_->posted.front());
      shared_->posted.pop_front();
    }
    act();
  }
}

void EstimateRunner::start(std::shared_ptr<const Plan> plan, Then then,
                           bool (CheckedPlan::*is_ready)() const) {
  {
    const std::lock_guard lock(shared_->mutex);
    ++shared_->newest;
    shared_->next = [this, plan = std::move(plan), then = std::move(then), is_ready](Reporter& reporter) {
      reporter.report("checking", 0.0);
      const auto known = check_now(plan);
      deliver(reporter, known);
      if (((*known).*is_ready)() && !reporter.cancelled()) then(*known, reporter);
    };
  }
  shared_->wake.notify_one();
  busy_ = true;
  emit busyChanged(true);
}

void EstimateRunner::cancel() {
  {
    const std::lock_guard lock(shared_->mutex);
    ++shared_->newest;
    shared_->next = nullptr;
  }
  if (!busy_) return;
  busy_ = false;
  emit busyChanged(false);
}

void EstimateRunner::deliver(const Reporter& reporter, RunResult result) {
  const auto* problem = std::get_if<Problem>(&result);
  if (problem && problem->kind == ProblemKind::kCancelled) return;
  reporter.post([result = std::move(result)](EstimateRunner& runner) { emit runner.found(result); });
}

std::shared_ptr<const CheckedPlan> EstimateRunner::check_now(const std::shared_ptr<const Plan>& plan) {
  if (last_checked_ && last_checked_->plan == plan) return last_checked_;
  last_checked_ = std::make_shared<const CheckedPlan>(
      check_plan(plan, last_checked_.get(), preview_edge(*plan), distances_));
  return last_checked_;
}

void EstimateRunner::solve_now(const CheckedPlan& checked, Fineness fineness, Reporter& reporter) {
  const Plan plan = fineness == Fineness::kPreview ? preview_plan(*checked.plan) : *checked.plan;
  const bool whole = fineness == Fineness::kStandard;
  ForwardProgress forward(reporter, kPartOfEstimate);
  auto result = wrapgauge::estimate(plan, checked.job->body, checked.job->resources,
                                    {.mesh_error = whole,
                                     .relief = whole,
                                     .comparisons = whole,
                                     .prepared = whole ? nullptr : checked.prepared,
                                     .inputs = checked.job->inputs},
                                    forward);
  if (!result) return deliver(reporter, result.problem());
  auto solved = std::make_shared<SolvedPlan>();
  solved->plan = checked.plan;
  solved->fineness = fineness;
  solved->inputs = checked.job->inputs;
  solved->estimate = std::make_shared<const Estimate>(std::move(result).value());
  solved->summary = {solved->estimate, &solved->estimate->summary};
  deliver(reporter, std::shared_ptr<const SolvedPlan>(solved));
}

void EstimateRunner::check_and_preview(std::shared_ptr<const Plan> plan) {
  start(std::move(plan), [this](const CheckedPlan& known, Reporter& reporter) {
    solve_now(known, Fineness::kPreview, reporter);
  });
}

void EstimateRunner::estimate_standard(std::shared_ptr<const Plan> plan) {
  start(std::move(plan), [this](const CheckedPlan& known, Reporter& reporter) {
    solve_now(known, Fineness::kStandard, reporter);
  });
}

void EstimateRunner::find_ceiling(std::shared_ptr<const Plan> plan) {
  start(std::move(plan), [this](const CheckedPlan& known, Reporter& reporter) {
    ForwardProgress forward(reporter, kPartOfSearch);
    auto found = wrapgauge::find_ceiling(*known.plan, known.job->body, known.job->resources, {}, forward);
    if (!found) return deliver(reporter, found.problem());
    deliver(reporter, FoundCeiling{known.plan, std::make_shared<const Ceiling>(std::move(found).value())});
  });
}

void EstimateRunner::find_aim(std::shared_ptr<const Plan> plan, std::vector<AimTarget> targets) {
  start(std::move(plan), [this, targets = std::move(targets)](const CheckedPlan& known, Reporter& reporter) {
    ForwardProgress forward(reporter, kPartOfSearch);
    auto found = aim(*known.plan, known.job->body, known.job->resources, targets, forward);
    if (!found) return deliver(reporter, found.problem());
    deliver(reporter, FoundAim{known.plan, std::make_shared<const Aim>(std::move(found).value())});
  });
}

void EstimateRunner::find_advice(std::shared_ptr<const Plan> plan) {
  start(std::move(plan), [this](const CheckedPlan& known, Reporter& reporter) {
    const QTemporaryDir runs;  // what is found is kept in the window; the runs go with it
    if (!runs.isValid())
      return deliver(
          reporter,
          bad_input(Phrase::worded(
              "no folder for the runs of a search can be made (%1): free some room for temporary files.",
              {name_of(runs.errorString().toStdString())})));
    ForwardProgress forward(reporter, kPartOfAdvice);
    auto found =
        wrapgauge::find_advice({*known.plan, known.job->body, known.job->resources, inputs_hash(*known.job)},
                               {runs.path().toStdString(), {}}, forward);
    if (!found) return deliver(reporter, found.problem());
    deliver(reporter, FoundAdvice{known.plan, std::make_shared<const Advice>(std::move(found).value())});
  });
}

void EstimateRunner::propose_readings(std::shared_ptr<const Plan> plan) {
  start(
      std::move(plan),
      [this](const CheckedPlan& known, Reporter& reporter) {
        ForwardProgress forward(reporter, kPartOfSheet);
        auto found = bench_sheet({*known.plan, known.job->body, known.job->resources}, forward);
        if (!found) return deliver(reporter, found.problem());
        deliver(reporter,
                FoundBenchSheet{known.plan, std::make_shared<const BenchSheet>(std::move(found).value())});
      },
      &CheckedPlan::can_be_read);
}

void EstimateRunner::fit_readings(std::shared_ptr<const Plan> plan,
                                  std::shared_ptr<const Readings> readings) {
  start(
      std::move(plan),
      [this, readings = std::move(readings)](const CheckedPlan& known, Reporter& reporter) {
        ForwardProgress forward(reporter, kPartOfFit);
        auto found = calibrate({*known.plan, known.job->body, known.job->resources}, *readings, forward);
        if (!found) return deliver(reporter, found.problem());
        deliver(reporter,
                FoundBenchFit{known.plan, std::make_shared<const BenchResult>(std::move(found).value())});
      },
      &CheckedPlan::can_be_read);
}

}  // namespace wrapgauge
