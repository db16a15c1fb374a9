// Of the main window: where work begins, and what is written beside the plan.

#include <QFileDialog>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressDialog>
#include <QStringList>

#include "app/desk/session/verdict_line.hpp"
#include "app/desk/views/filling_frames.hpp"
#include "app/desk/window/body_step.hpp"
#include "app/desk/window/findings_list.hpp"
#include "app/desk/window/layout_step.hpp"
#include "app/desk/window/main_window.hpp"
#include "app/desk/window/message_bar.hpp"
#include "app/desk/window/plan_column.hpp"
#include "app/desk/window/print_page.hpp"
#include "app/desk/window/recent_plans.hpp"
#include "app/desk/window/view_area.hpp"
#include "app/desk/words/phrase_text.hpp"
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
    return say(bad_input(Phrase::worded("there is no result of the plan as it stands: estimate first.")));
  const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the results"));
  if (folder.isEmpty()) return;
  const auto written = write_results(*solved->estimate, *solved->summary, folder.toStdString());
  if (!written) return say(written.problem());
  QStringList news{tr("Results were written to %1.").arg(folder)};
  for (const Phrase& sentence : *written) news.push_back(text(sentence));
  message_->say_news(news.join(QChar(' ')));
}

// Whether there is a filling to save, and it is said where there is none.
bool MainWindow::has_filling() {
  const bool has = views_->shown().state_count() > 1 && views_->body().isVisible();
  if (!has) say(bad_input(Phrase::worded("there is no filling to save: estimate first.")));
  return has;
}

void MainWindow::write_filling(const QString& to, const QString& title, WriteFilling write,
                               const QString& said) {
  if (to.isEmpty()) return;
  QProgressDialog progress(title, tr("Cancel"), 0, kFillingFrames, this);
  progress.setWindowModality(Qt::WindowModal);
  views_->strip().play(false);
  const auto written = write(
      to.toStdString(), views_->selection(), views_->shown().state_count(), kFillingFrames,
      [this] { return views_->body().picture(); },
      [&](int done) {
        progress.setValue(done);  // lets the button be pressed
        return !progress.wasCanceled();
      });
  progress.reset();
  if (written)
    message_->say_news(said.arg(*written).arg(to));
  else if (written.problem().kind != ProblemKind::kCancelled)
    say(written.problem());
}

void MainWindow::save_filling() {
  if (!has_filling()) return;
  const QString folder =
      QFileDialog::getSaveFileName(this, tr("A new folder for the pictures of the filling"), tr("filling"),
                                   {}, nullptr, QFileDialog::DontConfirmOverwrite);
  write_filling(folder, tr("Saving pictures of the filling"), write_filling_frames,
                tr("%1 pictures of the filling were written to %2."));
}

void MainWindow::save_film() {
  if (!has_filling()) return;
  const QString file =
      QFileDialog::getSaveFileName(this, tr("Save the filling as a film"),
                                   tr("filling") + QStringLiteral(".webp"), tr("WebP films (*.webp)"));
  write_filling(file, tr("Making the film of the filling"), write_filling_film,
                tr("A film of %1 pictures was written to %2."));
}

// As it stands on the screen: what is out of date says so.
PrintedPage MainWindow::page_to_print() {
  const SessionState& now = session_.now();
  const VerdictLine line = verdict_line(now);
  PrintedPage page;
  page.title = QString::fromStdString(now.plan->name);
  page.verdict = line.words;
  page.made_of = line.made_of;
  page.pictures = {views_->body().picture(), views_->flat().picture()};
  if (now.solved)
    for (const ListedFinding& finding : listed_apart(listed_findings(*now.solved->estimate)).to_act_on)
      page.findings.push_back(finding.label + QStringLiteral(": ") + finding.sentence);
  page.caution = caution_words();
  return page;
}

void MainWindow::print() {
  if (!has_body(session_.plan()) || !views_->body().isVisible())
    return say(bad_input(Phrase::worded("there is nothing to print yet: open a body or a plan first.")));
  QPrinter printer(QPrinter::HighResolution);
  printer.setDocName(QString::fromStdString(session_.plan().name));
  if (QPrintDialog(&printer, this).exec() == QDialog::Accepted) say(print_page(printer, page_to_print()));
}

}  // namespace wrapgauge
