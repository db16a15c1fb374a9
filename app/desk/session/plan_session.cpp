#include "app/desk/session/plan_session.hpp"

#include <QThreadPool>
#include <QUndoCommand>
#include <algorithm>
#include <new>

#include "app/desk/session/marked_sites.hpp"
#include "app/job/note_studies.hpp"
#include "model/core/file.hpp"
#include "model/note/summarise.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

constexpr int kAfterEdit_ms = 50;  // a preview starts this long after the last change
constexpr int kAutosave_ms = 400;

// The plan before and after one edit; undo and redo say which of them it is to be.
class EditPlan : public QUndoCommand {
 public:
  EditPlan(const QString& words, std::shared_ptr<const Plan> before, std::shared_ptr<const Plan> after,
           QString merge, std::shared_ptr<const Plan>& plan)
      : QUndoCommand(words),
        before_(std::move(before)),
        after_(std::move(after)),
        merge_(std::move(merge)),
        plan_(plan) {}

  void undo() override { plan_ = before_; }
  void redo() override { plan_ = after_; }
  int id() const override { return merge_.isEmpty() ? -1 : 1; }
  bool mergeWith(const QUndoCommand* next) override {
    const auto* edit = static_cast<const EditPlan*>(next);
    if (edit->merge_ != merge_) return false;
    after_ = edit->after_;
    return true;
  }

 private:
  std::shared_ptr<const Plan> before_, after_;
  QString merge_;
  std::shared_ptr<const Plan>& plan_;
};

// Inflation may name only inlets that the layout has.
void drop_gone_inlets(Plan& plan) {
  const auto& inlets = plan.layout.inlets;
  std::erase_if(plan.inflation, [&](const InletProgram& program) {
    return std::none_of(inlets.begin(), inlets.end(),
                        [&](const Inlet& inlet) { return inlet.name == program.inlet; });
  });
}

// The points of another body are others: a depth that all of them share is from then on one of the whole
// body.
void keep_one_depth(const Plan& before, Plan& plan) {
  if (plan.body == before.body) return;
  if (const auto depth = one_depth_mm(plan.tissue_depth_mm)) plan.tissue_depth_mm = {*depth};
}

// Name, wearers and date stand in the note and change nothing that was calculated.
bool same_but_for_note_words(const Plan& a, const Plan& b) {
  Plan same = b;
  same.name = a.name;
  same.wearers = a.wearers;
  same.date = a.date;
  return same == a;
}

std::shared_ptr<const SolvedPlan> with_note_words(const SolvedPlan& solved,
                                                  const std::shared_ptr<const Plan>& plan) {
  auto summary = std::make_shared<Summary>(*solved.summary);
  say_note_words(*plan, *summary);
  auto said = std::make_shared<SolvedPlan>(solved);
  said->plan = plan;
  said->summary = std::move(summary);
  return said;
}

// What is known of a plan that says the same but for these words is known of this one.
void take_note_words(const std::shared_ptr<const Plan>& plan, SessionState& next) {
  const auto says_the_same = [&](const std::shared_ptr<const Plan>& asked) {
    return asked && same_but_for_note_words(*asked, *plan);
  };
  auto check = std::make_shared<CheckedPlan>(*next.check);
  check->plan = plan;
  next.check = std::move(check);
  if (next.solved && says_the_same(next.solved->plan)) next.solved = with_note_words(*next.solved, plan);
  if (says_the_same(next.newest_ceiling.plan)) next.newest_ceiling.plan = plan;
  if (says_the_same(next.newest_aim.plan)) next.newest_aim.plan = plan;
  if (says_the_same(next.newest_advice.plan)) next.newest_advice.plan = plan;
  if (says_the_same(next.newest_sheet.plan)) next.newest_sheet.plan = plan;
  if (says_the_same(next.newest_fit.plan)) next.newest_fit.plan = plan;
}

std::shared_ptr<const std::string> text_of(const std::filesystem::path& file) {
  auto text = read_file(file);
  return text ? std::make_shared<const std::string>(std::move(text).value()) : nullptr;
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
      recovery_folder_(std::move(recovery_folder)),
      recovery_(std::make_unique<RecoveryFile>(recovery_folder_)),
      writer_(std::make_unique<QThreadPool>()) {
  now_.plan = std::make_shared<const Plan>(empty_plan());
  writer_->setMaxThreadCount(1);
  undo_.setUndoLimit(200);
  edited_.setSingleShot(true);
  edited_.setInterval(kAfterEdit_ms);
  autosave_.setSingleShot(true);
  autosave_.setInterval(kAutosave_ms);
  connect(&edited_, &QTimer::timeout, this, &PlanSession::preview);
  connect(&autosave_, &QTimer::timeout, this, &PlanSession::keep_for_recovery);
  connect(&undo_, &QUndoStack::indexChanged, this, &PlanSession::take_step);
  connect(&runner_, &EstimateRunner::found, this, &PlanSession::take);
  connect(&runner_, &EstimateRunner::busyChanged, this, [this](bool busy) {
    replace([&](SessionState& next) {
      next.running = busy ? std::optional(Running{QStringLiteral("checking"), 0.0, run_kind_}) : std::nullopt;
    });
  });
  connect(&runner_, &EstimateRunner::progressed, this, [this](const QString& stage, double fraction) {
    replace([&](SessionState& next) { next.running = Running{stage, fraction, run_kind_}; });
  });
}

PlanSession::~PlanSession() {
  writer_->waitForDone();
}

template <class Change>
void PlanSession::replace(Change change) {
  SessionState next = now_;
  change(next);
  if (next.plan != now_.plan || next.solved != now_.solved)
    next.stale = next.solved ? changed_parts(*next.solved->plan, *next.plan) : std::vector<PlanPart>{};
  if (next == now_) return;
  const SessionState before = std::exchange(now_, std::move(next));
  emit changed(before);
}

void PlanSession::edit(const QString& words, Plan changed, const QString& merge) {
  drop_gone_inlets(changed);
  keep_one_depth(plan(), changed);
  doubt_what_was_said(plan(), changed);
  if (changed == plan()) return;
  const QString round = merge.isEmpty() ? merge : merge + QString::number(merge_round_);
  undo_.push(
      new EditPlan(words, now_.plan, std::make_shared<const Plan>(std::move(changed)), round, stepped_to_));
}

void PlanSession::edit_layout(const QString& words, Layout layout, const QString& merge) {
  Plan changed = plan();
  if (layout == changed.layout) return;
  changed.layout = std::move(layout);
  changed.layout_file.reset();
  changed.layout_drawing.reset();
  edit(words, std::move(changed), merge);
}

void PlanSession::try_body(const QString& words, Plan changed) {
  const auto before = now_.plan;
  const bool had_body = now_.body() != nullptr;
  edit(words, std::move(changed));
  if (had_body && now_.plan != before) trial_ = {before, now_.plan};
}

bool PlanSession::is_no_body(const CheckedPlan& checked) const {
  return checked.plan == trial_.after && checked.body_need == BodyNeed::kOtherFile;
}

// The plan is that of the newest command, which goes for good: redo would bring the same problem.
void PlanSession::give_up_trial(const Problem& problem) {
  const_cast<QUndoCommand*>(undo_.command(undo_.index() - 1))->setObsolete(true);
  stepped_to_ = trial_.before;  // a command that goes is not undone by itself
  undo_.undo();
  replace([&](SessionState& next) { next.problem = std::make_shared<const Problem>(problem); });
}

// After an edit, undo or redo.
void PlanSession::take_step() {
  if (!stepped_to_) return;  // the history was emptied
  const auto plan = std::exchange(stepped_to_, nullptr);
  const bool words_alone =
      now_.checked() && !runner_.busy() && !edited_.isActive() && same_but_for_note_words(*now_.plan, *plan);
  autosave_.start();
  if (!words_alone) edited_.start();
  replace([&](SessionState& next) {
    if (words_alone) take_note_words(plan, next);
    next.plan = plan;
    next.modified = !undo_.isClean();
    next.running.reset();
    next.problem.reset();  // it was about the plan before
  });
  if (!words_alone) runner_.cancel();
}

void PlanSession::take(const RunResult& result) {
  if (const auto* checked = std::get_if<std::shared_ptr<const CheckedPlan>>(&result))
    if (is_no_body(**checked)) return give_up_trial(*(*checked)->body_problem);
  replace([&](SessionState& next) {
    if (const auto* checked = std::get_if<std::shared_ptr<const CheckedPlan>>(&result)) {
      if ((*checked)->plan == next.plan) next.check = *checked;
    } else if (const auto* solved = std::get_if<std::shared_ptr<const SolvedPlan>>(&result)) {
      next.solved = *solved;
    } else if (const auto* ceiling = std::get_if<FoundCeiling>(&result)) {
      next.newest_ceiling = *ceiling;
    } else if (const auto* aim = std::get_if<FoundAim>(&result)) {
      next.newest_aim = *aim;
    } else if (const auto* advice = std::get_if<FoundAdvice>(&result)) {
      next.newest_advice = *advice;
    } else if (const auto* sheet = std::get_if<FoundBenchSheet>(&result)) {
      next.newest_sheet = *sheet;
    } else if (const auto* fit = std::get_if<FoundBenchFit>(&result)) {
      next.newest_fit = *fit;
    } else {
      next.problem = std::make_shared<const Problem>(std::get<Problem>(result));
    }
  });
}

void PlanSession::reset(SessionState fresh) {
  autosave_.stop();
  writer_->waitForDone();
  recovery_->remove();
  replace([&](SessionState& next) { next = std::move(fresh); });
  undo_.clear();
  preview();
}

void PlanSession::preview() {
  run_kind_ = RunKind::kPreview;
  runner_.check_and_preview(now_.plan);
}

void PlanSession::start_new() {
  SessionState fresh;
  fresh.plan = std::make_shared<const Plan>(empty_plan());
  claim({});
  reset(std::move(fresh));
}

// Whether no other window has it. Another file is given up for it.
bool PlanSession::claim(const std::filesystem::path& file) {
  claim_.reset();
  if (file.empty()) return true;
  claim_ = std::make_unique<PlanClaim>(recovery_folder_.parent_path() / "open-plans", file);
  return claim_->is_ours();
}

Result<std::monostate> PlanSession::show_read(Result<Plan> read, const std::filesystem::path& file,
                                              bool as_it_is) {
  if (!read) return read.problem();
  SessionState fresh;
  fresh.plan = std::make_shared<const Plan>(std::move(read).value());
  if (as_it_is) fresh.saved = fresh.plan;
  fresh.file = std::filesystem::absolute(file);
  fresh.on_disk = text_of(fresh.file);
  fresh.modified = !as_it_is;
  fresh.open_elsewhere = !claim(fresh.file);
  reset(std::move(fresh));
  if (!as_it_is) undo_.resetClean();
  return std::monostate{};
}

Result<std::monostate> PlanSession::open(const std::filesystem::path& file) {
  return show_read(read_plan(std::filesystem::absolute(file)), file, true);
}

Result<std::monostate> PlanSession::open_with(const std::filesystem::path& file,
                                              const std::map<std::string, std::filesystem::path>& found) {
  return show_read(read_plan_with(std::filesystem::absolute(file), found), file, false);
}

void PlanSession::recover(RecoveredPlan recovered) {
  SessionState fresh;
  fresh.plan = std::make_shared<const Plan>(std::move(recovered.plan));
  fresh.file = std::move(recovered.file);
  fresh.modified = true;
  fresh.on_disk = text_of(fresh.file);
  fresh.open_elsewhere = !claim(fresh.file);
  reset(std::move(fresh));
  undo_.resetClean();
  keep_for_recovery();
}

std::optional<Problem> PlanSession::saved_by_someone_else(const std::filesystem::path& to) const {
  if (to != now_.file || !now_.on_disk) return std::nullopt;
  const auto there = read_file(to);
  if (!there || *there == *now_.on_disk) return std::nullopt;  // a file that is gone is written anew
  return bad_input(Phrase::worded(
      "plan '%1' was saved from another window or program since it was opened here, so it was not "
      "overwritten: save under another name, or open it again.",
      {name_of(to.filename().string())}));
}

Result<std::monostate> PlanSession::save(const std::filesystem::path& file) {
  if (!has_body(plan()) || !has_layout(plan()))
    return bad_input(Phrase::worded(
        "a plan file holds a body and a layout, and one of them is still missing: add it, then save."));
  const auto to = std::filesystem::absolute(file);
  if (auto problem = saved_by_someone_else(to)) return *problem;
  const Plan kept = with_files_seen_from(plan(), to.parent_path());
  if (auto written = write_plan(kept, to); !written) return written.problem();
  auto read = read_plan(to);
  if (!read) return read.problem();
  autosave_.stop();
  writer_->waitForDone();
  recovery_->remove();
  replace([&](SessionState& next) {
    next.open_elsewhere = to == next.file ? next.open_elsewhere : !claim(to);
    next.file = to;
    next.on_disk = text_of(to);
    next.saved = std::make_shared<const Plan>(std::move(read).value());
    next.modified = false;
  });
  undo_.setClean();
  return std::monostate{};
}

void PlanSession::keep_for_recovery() {
  const std::filesystem::path to = recovery_->path();
  // A failure is not said: the plan in the window is whole, and saving says what is wrong with the disk.
  writer_->start([plan = now_.plan, file = now_.file, to] {
    try {
      [[maybe_unused]] const auto kept = write_file_atomically(to, recovery_text({*plan, file}));
    } catch (const std::bad_alloc&) {
      // Nor is this: the last copy that could be written is still there.
    }
  });
}

void PlanSession::estimate_standard() {
  edited_.stop();
  run_kind_ = RunKind::kEstimate;
  runner_.estimate_standard(now_.plan);
}

void PlanSession::find_ceiling() {
  edited_.stop();
  run_kind_ = RunKind::kCeiling;
  runner_.find_ceiling(now_.plan);
}

void PlanSession::find_aim(std::vector<AimTarget> targets) {
  edited_.stop();
  run_kind_ = RunKind::kAim;
  runner_.find_aim(now_.plan, std::move(targets));
}

void PlanSession::find_advice() {
  edited_.stop();
  run_kind_ = RunKind::kAdvice;
  runner_.find_advice(now_.plan);
}

void PlanSession::propose_readings() {
  edited_.stop();
  run_kind_ = RunKind::kBenchSheet;
  runner_.propose_readings(now_.plan);
}

void PlanSession::fit_readings(Readings readings) {
  edited_.stop();
  run_kind_ = RunKind::kBenchFit;
  runner_.fit_readings(now_.plan, std::make_shared<const Readings>(std::move(readings)));
}

void PlanSession::cancel() {
  edited_.stop();
  runner_.cancel();
}

Result<PlanSession::NoteInputs> PlanSession::note_inputs() const {
  if (!now_.solved || now_.solved->fineness != Fineness::kStandard)
    return bad_input(Phrase::worded("a note is written from the final estimate: make that first."));
  if (!now_.stale.empty())
    return bad_input(Phrase::worded("the plan has changed since the estimate (%1): estimate again first.",
                                    {name_of(parts_words(now_.stale).toStdString())}));
  if (!now_.saved || now_.modified)
    return bad_input(Phrase::worded("a note names the plan file it was made from: save the plan first."));
  auto job = read_job(now_.file);
  if (!job) return job.problem();
  if (!changed_parts(job->plan, *now_.saved).empty())
    return bad_input(Phrase::worded("the plan file was changed by someone else since: open it again."));
  NoteInputs inputs{*now_.solved->summary, job->inputs, {}};
  inputs.summary.inputs = now_.solved->inputs;
  inputs.summary.inputs.insert(inputs.summary.inputs.begin(), job->inputs.front());
  if (const auto found = now_.ceiling())
    inputs.extras.ceiling = note_ceiling(ceiling_brief(*found), relief_brief(*found), inputs.summary.inputs);
  return inputs;
}

}  // namespace wrapgauge
