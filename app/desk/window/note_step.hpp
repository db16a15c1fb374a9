#pragma once
// Step Note: the study note as it will be printed, and where it is saved.

#include <QTextBrowser>
#include <QThreadPool>

#include "app/desk/window/step_form.hpp"
#include "app/picture/note_picture.hpp"

namespace wrapgauge {

// The note as HTML and the pictures it shows, as wide as the column and as the large window; no words: the
// problem says why.
struct MadeNote {
  std::string body;
  QString problem;
  NotePictures narrow, wide;
};

class NoteStep : public StepForm {
  Q_OBJECT
 public:
  explicit NoteStep(PlanSession& session, QWidget* parent = nullptr);
  ~NoteStep() override;

  void ask_where_to_save();
  // By the ending: .pdf, .html or .md; the last two with their pictures beside them. Made and written while
  // the window answers; saved() or problemMet() tells the end.
  void save_note(const std::filesystem::path& file);

 signals:
  void planFileWanted();  // a note names its plan's file: save the plan first
  void saved(const QString& file);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void set_up_preview();
  void show_large();
  void show_preview();
  void show_note(QTextBrowser& browser, const NotePictures& pictures, int width) const;

  FieldForm<Plan> name_;
  QLabel* words_;
  QPushButton *estimate_, *save_, *open_;
  QTextBrowser* preview_;
  std::shared_ptr<const SolvedPlan> shown_;
  MadeNote made_;  // of `shown_`
  QThreadPool maker_;
};

}  // namespace wrapgauge
