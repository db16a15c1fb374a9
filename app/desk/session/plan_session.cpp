#include "app/desk/session/plan_session.hpp"

#include <QThreadPool>
#include <algorithm>

#include "app/desk/session/edit_plan.hpp"
#include "app/job/note_studies.hpp"
#include "model/core/file.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

constexpr int kAfterEdit_ms = 50;  // a preview starts this long after the last change
constexpr int kAutosave_ms = 400;

// Inflation may name only inlets that the layout has.
void drop_gone_inlets(Plan& plan) {
  const auto& inlets = plan.layout.inlets;
  std::erase_if(plan.inflation, [&](const InletProgram& program) {
    return std::none_of(inlets.begin(), inlets.end(),
                        [&](const Inlet& inlet) { return inlet.name == program.inlet; });
  });
}

Plan empty_plan() {
  Plan plan;
  plan.name = QObject::tr("new plan").toStdString();
  plan.tissue_site = "forearm relaxed";
  plan.placement.anchor = AnchorAtStation{100.0 * mm, 90.0};
  plan.layout.skin_sheet = plan.layout.outer_sheet = {"00-30", 2.0 * mm, 1.0};
  return plan;
}

}  // namespace

PlanSession::PlanSession(std::filesystem::path recovery_folder, QObject* parent)
    : QObject(parent),
      plan_(std::make_shared<const Plan>(empty_plan())),
      recovery_folder_(std::move(recovery_folder)),
      recovery_(std::make_unique<RecoveryFile>(recovery_folder_)),
      writer_(std::make_unique<QThreadPool>()) {
  writer_->setMaxThreadCount(1);
  undo_.setUndoLimit(200);
  edited_.setSingleShot(true);
  autosave_.setSingleShot(true);
  connect(&edited_, &QTimer::timeout, this, &PlanSession::run_after_edit);
  connect(&autosave_, &QTimer::timeout, this, &PlanSession::keep_for_recovery);
  connect(&runner_, &EstimateRunner::checked, this, &PlanSession::take_checked);
  connect(&runner_, &EstimateRunner::solved, this, [this](std::shared_ptr<const SolvedPlan> solved) {
    solved_ = std::move(solved);
    emit solvedChanged();
    emit statesChanged();
  });
  connect(&runner_, &EstimateRunner::ceilingFound, this, [this](const FoundCeiling& found) {
    ceiling_ = found;
    emit solvedChanged();
  });
  connect(&runner_, &EstimateRunner::aimFound, this, [this](const FoundAim& found) {
    aim_ = found;
    emit solvedChanged();
  });
  connect(&runner_, &EstimateRunner::failed, this, &PlanSession::failed);
}

PlanSession::~PlanSession() {
  writer_->waitForDone();
}

void PlanSession::edit(const QString& words, Plan changed, const QString& merge) {
  drop_gone_inlets(changed);
  if (changed_parts(*plan_, changed).empty() && changed.name == plan_->name) return;
  const QString round = merge.isEmpty() ? merge : merge + QString::number(merge_round_);
  undo_.push(new EditPlan(*this, words, std::move(changed), round));
}

void PlanSession::edit_layout(const QString& words, Layout layout, const QString& merge) {
  Plan changed = *plan_;
  changed.layout = std::move(layout);
  changed.layout_file.reset();
  changed.layout_drawing.reset();
  edit(words, std::move(changed), merge);
}

void PlanSession::set_plan(std::shared_ptr<const Plan> plan) {
  plan_ = std::move(plan);
  checked_.reset();
  runner_.cancel();
  edited_.start(kAfterEdit_ms);
  autosave_.start(kAutosave_ms);
  emit planChanged();
  emit statesChanged();
}

void PlanSession::take_checked(std::shared_ptr<const CheckedPlan> checked) {
  if (checked->asked != plan_ && checked->plan != plan_) return;
  checked_ = last_checked_ = std::move(checked);
  if (plan_ != checked_->plan) {
    plan_ = checked_->plan;
    autosave_.start(kAutosave_ms);
    emit planChanged();
  }
  emit checkedChanged();
  emit statesChanged();
}

void PlanSession::run_after_edit() {
  runner_.check_and_preview(plan_);
}

void PlanSession::reset(Plan plan, std::filesystem::path file) {
  file_ = std::move(file);
  autosave_.stop();
  writer_->waitForDone();
  recovery_->remove();
  undo_.clear();
  solved_.reset();
  ceiling_ = {};
  aim_ = {};
  checked_.reset();
  last_checked_.reset();
  plan_ = std::make_shared<const Plan>(std::move(plan));
  emit fileChanged();
  emit planChanged();
  emit solvedChanged();
  emit statesChanged();
  runner_.check_and_preview(plan_);
}

void PlanSession::start_new() {
  reset(empty_plan(), {});
}

Result<std::monostate> PlanSession::open(const std::filesystem::path& file) {
  auto plan = read_plan(std::filesystem::absolute(file));
  if (!plan) return plan.problem();
  reset(std::move(plan).value(), std::filesystem::absolute(file));
  return std::monostate{};
}

void PlanSession::recover(RecoveredPlan recovered) {
  reset(std::move(recovered.plan), std::move(recovered.file));
  undo_.resetClean();
  keep_for_recovery();
  emit fileChanged();
}

Result<std::monostate> PlanSession::save(const std::filesystem::path& file) {
  if (!has_body(*plan_) || !has_layout(*plan_))
    return bad_input(
        "a plan file holds a body and a layout, and one of them is still missing: add it, then save.");
  const auto to = std::filesystem::absolute(file);
  if (auto written = write_plan(*plan_, to); !written) return written.problem();
  file_ = to;
  undo_.setClean();
  autosave_.stop();
  writer_->waitForDone();
  recovery_->remove();
  emit fileChanged();
  emit statesChanged();
  return std::monostate{};
}

void PlanSession::keep_for_recovery() {
  const std::filesystem::path to = recovery_->path();
  // A failure is not said: the plan in the window is whole, and saving says what is wrong with the disk.
  writer_->start([plan = plan_, file = file_, to] {
    try {
      [[maybe_unused]] const auto kept = write_file_atomically(to, recovery_text({*plan, file}));
    } catch (const std::bad_alloc&) {
      // Nor is this: the last copy that could be written is still there.
    }
  });
}

std::vector<PlanPart> PlanSession::stale() const {
  if (!solved_ || solved_->plan == plan_) return {};
  if (compared_.before != solved_->plan || compared_.now != plan_)
    compared_ = {solved_->plan, plan_, changed_parts(*solved_->plan, *plan_)};
  return compared_.changed;
}

std::shared_ptr<const Ceiling> PlanSession::ceiling() const {
  return ceiling_.plan && changed_parts(*ceiling_.plan, *plan_).empty() ? ceiling_.ceiling : nullptr;
}

std::shared_ptr<const Aim> PlanSession::aim() const {
  return aim_.plan && changed_parts(*aim_.plan, *plan_).empty() ? aim_.aim : nullptr;
}

StepState PlanSession::state(PlanStep step) const {
  return step_state(step, {*plan_, last_checked_.get(), solved_.get(), stale()});
}

void PlanSession::estimate_standard() {
  edited_.stop();
  runner_.estimate_standard(plan_);
}

void PlanSession::find_ceiling() {
  edited_.stop();
  runner_.find_ceiling(plan_);
}

void PlanSession::find_aim(std::vector<AimTarget> targets) {
  edited_.stop();
  runner_.find_aim(plan_, std::move(targets));
}

void PlanSession::cancel() {
  edited_.stop();
  runner_.cancel();
}

Result<PlanSession::NoteInputs> PlanSession::note_inputs() const {
  if (!solved_ || solved_->fineness != Fineness::kStandard)
    return bad_input("a note is written from an estimate on the standard mesh: make that first.");
  if (const auto parts = stale(); !parts.empty())
    return bad_input("the estimate is older than the last change (" + parts_words(parts).toStdString() +
                     "): estimate again first.");
  if (file_.empty() || modified())
    return bad_input("a note names the plan file it was made from: save the plan first.");
  auto now = read_job(file_);
  if (!now) return now.problem();
  if (!changed_parts(now->plan, *plan_).empty())
    return bad_input("the plan file was changed by someone else since: open it again.");
  NoteInputs inputs{*solved_->summary, now->inputs, {}};
  inputs.summary.inputs = solved_->inputs;
  inputs.summary.inputs.insert(inputs.summary.inputs.begin(), now->inputs.front());
  if (const auto found = ceiling())
    inputs.extras.ceiling = note_ceiling(ceiling_brief(*found), relief_brief(*found), inputs.summary.inputs);
  return inputs;
}

}  // namespace wrapgauge
