// Of the main window: where work begins, and what is written beside the plan.

#include <QFileDialog>
#include <QProgressDialog>

#include "app/desk/views/filling_frames.hpp"
#include "app/desk/window/body_step.hpp"
#include "app/desk/window/layout_step.hpp"
#include "app/desk/window/main_window.hpp"
#include "app/desk/window/message_bar.hpp"
#include "app/desk/window/plan_column.hpp"
#include "app/desk/window/recent_plans.hpp"
#include "app/desk/window/view_area.hpp"
#include "app/job/results.hpp"

namespace wrapgauge {

void MainWindow::show_start_page() {
  auto* page = new WelcomePage(recent_plans(), data_folder_ / "thumbnails", this);
  page->setAttribute(Qt::WA_DeleteOnClose);
  connect(page, &WelcomePage::doorChosen, this, &MainWindow::begin_with);
  connect(page, &WelcomePage::planChosen, this,
          [this](const QString& file) { open_plan(file.toStdString()); });
  page->open();
}

void MainWindow::start_new() {
  message_->hide();
  session_.start_new();
  column_->open_step(PlanStep::kBody);
}

void MainWindow::begin_with(Door door) {
  if (!may_leave()) return;
  if (door == Door::kExample) return open_demo();
  start_new();
  if (door == Door::kScan) return body_->ask_for_mesh();
  if (door == Door::kGirths) return body_->make_from_measures();
  column_->open_step(PlanStep::kLayout);
  layout_->ask_for_layout();
}

void MainWindow::picture_plan() {
  if (session_.file().empty() || !session_.solved() || !views_->body().isVisible()) return;
  keep_thumbnail(views_->body().picture(), thumbnail_file(data_folder_ / "thumbnails", session_.file()));
}

void MainWindow::save_results() {
  const auto solved = session_.solved();
  if (!solved || !session_.stale().empty())
    return say(bad_input("there is no result of the plan as it stands: estimate first."));
  const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the results"));
  if (folder.isEmpty()) return;
  const auto written = write_results(*solved->estimate, *solved->summary, folder.toStdString());
  if (!written) return say(written.problem());
  message_->say_news(tr("Results were written to %1.").arg(folder));
}

void MainWindow::save_filling() {
  const int states = views_->shown().state_count();
  if (states < 2 || !views_->body().isVisible())
    return say(bad_input("there is no filling to save: estimate first."));
  const QString folder =
      QFileDialog::getSaveFileName(this, tr("A new folder for the pictures of the filling"), tr("filling"),
                                   {}, nullptr, QFileDialog::DontConfirmOverwrite);
  if (folder.isEmpty()) return;
  QProgressDialog progress(tr("Saving pictures of the filling"), tr("Cancel"), 0, kFillingFrames, this);
  progress.setWindowModality(Qt::WindowModal);
  views_->strip().play(false);
  const auto written = write_filling_frames(
      folder.toStdString(), views_->selection(), states, kFillingFrames,
      [this] { return views_->body().picture(); },
      [&](int done) {
        progress.setValue(done);  // lets the button be pressed
        return !progress.wasCanceled();
      });
  progress.reset();
  if (written)
    message_->say_news(tr("%1 pictures of the filling were written to %2.").arg(*written).arg(folder));
  else if (written.problem().kind != ProblemKind::kCancelled)
    say(written.problem());
}

}  // namespace wrapgauge
