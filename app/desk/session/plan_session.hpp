#pragma once
// One plan being worked on: its edits, its file, what is known about it and the newest result. Widget-free.

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>
#include <filesystem>
#include <memory>

#include "app/desk/session/estimate_runner.hpp"
#include "app/desk/session/recovery_file.hpp"
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

  const Plan& plan() const { return *plan_; }
  std::filesystem::path file() const { return file_; }  // empty: never saved
  bool modified() const { return !undo_.isClean(); }
  QUndoStack& undo_stack() { return undo_; }
  EstimateRunner& runner() { return runner_; }

  // One edit, which undo takes back. Edits with the same `merge` (not empty) in a row become one. Programs of
  // inlets that are gone go with them.
  void edit(const QString& words, Plan changed, const QString& merge = {});
  // The same for an edit of the layout: from then on the plan holds it itself instead of naming a file.
  void edit_layout(const QString& words, Layout layout, const QString& merge = {});

  void end_merge() { ++merge_round_; }  // the next edit is a step of its own, whatever its `merge`

  void start_new();  // no body and no layout yet
  Result<std::monostate> open(const std::filesystem::path& file);
  void recover(RecoveredPlan recovered);
  // Problem: body or layout is missing, or the file could not be written; the plan stays as it was.
  Result<std::monostate> save(const std::filesystem::path& file);

  // Null while the newest plan is being checked.
  std::shared_ptr<const CheckedPlan> checked() const { return checked_; }
  // Of the newest plan or the one before it; null when none was ever checked.
  std::shared_ptr<const CheckedPlan> last_checked() const { return last_checked_; }
  std::shared_ptr<const SolvedPlan> solved() const { return solved_; }
  std::vector<PlanPart> stale() const;  // inputs changed since `solved`
  // Null unless found for the plan as it stands.
  std::shared_ptr<const Ceiling> ceiling() const;
  std::shared_ptr<const Aim> aim() const;
  StepState state(PlanStep step) const;

  void estimate_standard();
  void find_ceiling();
  void find_aim(std::vector<AimTarget> targets);
  void cancel();

  // For the note: the result, with the saved plan among its inputs. Problems: nothing solved on the standard
  // mesh, stale, the plan not saved, an input file changed since.
  struct NoteInputs {
    Summary summary;
    std::vector<InputFile> now;
    NoteExtras extras;  // the ceiling, when it was found
  };
  Result<NoteInputs> note_inputs() const;

 signals:
  void planChanged();     // what the plan says; after edits, undo, redo, open
  void fileChanged();     // another file, or saved
  void statesChanged();   // step states, staleness
  void checkedChanged();  // new `checked`
  void solvedChanged();   // new `solved`, `ceiling` or `aim`, or none any more
  void failed(const Problem& problem);

 private:
  friend class EditPlan;
  void set_plan(std::shared_ptr<const Plan> plan);
  void reset(Plan plan, std::filesystem::path file);
  void run_after_edit();
  void take_checked(std::shared_ptr<const CheckedPlan> checked);
  void keep_for_recovery();

  std::shared_ptr<const Plan> plan_;
  std::filesystem::path file_, recovery_folder_;
  QUndoStack undo_;
  EstimateRunner runner_;
  std::unique_ptr<RecoveryFile> recovery_;
  std::unique_ptr<QThreadPool> writer_;  // one thread: flushing a file may take a while
  QTimer edited_, autosave_;
  std::shared_ptr<const CheckedPlan> checked_, last_checked_;
  std::shared_ptr<const SolvedPlan> solved_;
  FoundCeiling ceiling_;
  FoundAim aim_;
  // What `stale` found last and for which two plans: every step of the window asks for it after each change.
  struct Compared {
    std::shared_ptr<const Plan> before, now;
    std::vector<PlanPart> changed;
  };
  mutable Compared compared_;
  int merge_round_ = 0;
};

}  // namespace wrapgauge
