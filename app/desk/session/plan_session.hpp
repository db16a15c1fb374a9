#pragma once
// One plan being worked on: its edits, its file, what is known about it and the newest result. Widget-free.

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>
#include <filesystem>
#include <memory>

#include "app/desk/session/estimate_runner.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/recovery_file.hpp"
#include "app/desk/session/session_state.hpp"
#include "app/desk/session/step_state.hpp"
#include "model/note/note.hpp"

class QThreadPool;

namespace wrapgauge {

class PlanSession : public QObject {
  Q_OBJECT
 public:
  // `recovery_folder`: where the work in hand is kept until the session ends well.
  explicit PlanSession(std::filesystem::path recovery_folder, QObject* parent = nullptr);
  ~PlanSession() override;

  const SessionState& now() const { return now_; }
  QUndoStack& undo_stack() { return undo_; }
  EstimateRunner& runner() { return runner_; }

  // One edit, which undo takes back; nothing else changes the plan. Edits with the same `merge` (not empty)
  // in a row become one. Programs of inlets that are gone go with them.
  void edit(const QString& words, Plan changed, const QString& merge = {});
  // The same for an edit of the layout: from then on the plan holds it itself instead of naming a file.
  void edit_layout(const QString& words, Layout layout, const QString& merge = {});

  // An edit that brings another body. Where there is a body already and nothing that can be said of the new
  // one makes a body of it, the edit is taken back as soon as that is known; the state says the problem.
  void try_body(const QString& words, Plan changed);

  void end_merge() { ++merge_round_; }  // the next edit is a step of its own, whatever its `merge`

  void start_new();  // no body and no layout yet
  Result<std::monostate> open(const std::filesystem::path& file);
  // The same with files found elsewhere than the plan says (plan_files.hpp); they are an edit, to be saved.
  Result<std::monostate> open_with(const std::filesystem::path& file,
                                   const std::map<std::string, std::filesystem::path>& found);
  void recover(RecoveredPlan recovered);
  // Problem: body or layout is missing, the file was saved by someone else since it was read here, or it
  // could not be written; the plan stays as it was.
  Result<std::monostate> save(const std::filesystem::path& file);

  void estimate_standard();
  void find_ceiling();
  void find_aim(std::vector<AimTarget> targets);
  void find_advice();
  void propose_readings();
  void fit_readings(Readings readings);
  void cancel();

  // For the note: the result, with the saved plan among its inputs. Problems: nothing solved on the standard
  // mesh, stale, the plan not saved, an input file changed since.
  struct NoteInputs {
    Summary summary;
    std::vector<InputFile> now;
    NoteExtras extras;  // the ceiling, when it was found
  };
  Result<NoteInputs> note_inputs() const;

  // Of the state as it is now.
  const Plan& plan() const { return *now_.plan; }
  std::filesystem::path file() const { return now_.file; }
  bool modified() const { return now_.modified; }
  std::shared_ptr<const CheckedPlan> checked() const { return now_.checked(); }
  std::shared_ptr<const CheckedPlan> last_checked() const { return now_.check; }
  std::shared_ptr<const SolvedPlan> solved() const { return now_.solved; }
  const std::vector<PlanPart>& stale() const { return now_.stale; }
  std::shared_ptr<const Ceiling> ceiling() const { return now_.ceiling(); }
  std::shared_ptr<const Aim> aim() const { return now_.aim(); }
  std::shared_ptr<const Advice> advice() const { return now_.advice(); }
  StepState state(PlanStep step) const { return step_state(step, now_); }

 signals:
  // The only one: there is a new state. What differs from `before` is what there is to show anew.
  void changed(const SessionState& before);

 private:
  template <class Change>
  void replace(Change change);
  void reset(SessionState fresh);
  void take_step();
  void take(const RunResult& result);
  void keep_for_recovery();
  bool is_no_body(const CheckedPlan& checked) const;
  void give_up_trial(const Problem& problem);
  Result<std::monostate> show_read(Result<Plan> read, const std::filesystem::path& file, bool as_it_is);
  std::optional<Problem> saved_by_someone_else(const std::filesystem::path& to) const;
  bool claim(const std::filesystem::path& file);
  void preview();

  SessionState now_;
  QUndoStack undo_;
  std::shared_ptr<const Plan> stepped_to_;  // by the command that undo just ran; null: by none
  struct {
    std::shared_ptr<const Plan> before, after;
  } trial_;  // the newest edit that try_body made; null: none yet
  int merge_round_ = 0;
  RunKind run_kind_ = RunKind::kPreview;  // of the newest run
  EstimateRunner runner_;
  std::filesystem::path recovery_folder_;
  std::unique_ptr<RecoveryFile> recovery_;
  std::unique_ptr<PlanClaim> claim_;     // null: no file
  std::unique_ptr<QThreadPool> writer_;  // one thread: flushing a file may take a while
  QTimer edited_, autosave_;
};

}  // namespace wrapgauge
