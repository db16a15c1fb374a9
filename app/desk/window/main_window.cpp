#include "app/desk/window/main_window.hpp"

#include <QCloseEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QSettings>
#include <QSplitter>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "app/desk/window/bench_step.hpp"
#include "app/desk/window/body_step.hpp"
#include "app/desk/window/drop_frame.hpp"
#include "app/desk/window/inflation_step.hpp"
#include "app/desk/window/layout_step.hpp"
#include "app/desk/window/limits_step.hpp"
#include "app/desk/window/menu_keys.hpp"
#include "app/desk/window/message_bar.hpp"
#include "app/desk/window/note_step.hpp"
#include "app/desk/window/plan_column.hpp"
#include "app/desk/window/recent_plans.hpp"
#include "app/desk/window/run_bar.hpp"
#include "app/desk/window/verdict_bar.hpp"
#include "app/desk/window/view_area.hpp"
#include "app/desk/window/wear_step.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/demo_files.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {

MainWindow::MainWindow(const std::filesystem::path& data_folder, QWidget* parent)
    : QMainWindow(parent),
      data_folder_(data_folder),
      session_(data_folder / "recovery"),
      verdict_(new VerdictBar(session_, this)),
      splitter_(new QSplitter(Qt::Horizontal, this)),
      column_(new PlanColumn(session_, this)),
      views_(new ViewArea(session_, this)),
      message_(new MessageBar(this)) {
  setAcceptDrops(true);
  arrange();
  add_steps();
  connect_views();
  add_plan_menu();
  add_edit_menu();
  add_estimate_menu();
  add_view_menu();
  add_help_menu();
  new MenuKeys(this);
  connect(&session_, &PlanSession::changed, this, [this](const SessionState& before) {
    const SessionState& now = session_.now();
    if (now.plan != before.plan) message_->take_back_problem();
    if (now.problem && now.problem != before.problem) say(*now.problem);
    if (now.differs_in_work(before)) show_title();
  });
  recall_layout();
}

// What is being typed ends while its form is still there to take it.
MainWindow::~MainWindow() {
  if (QWidget* field = focusWidget()) field->clearFocus();
}

QString MainWindow::caution_words() const {
  const auto& solved = session_.now().solved;
  return solved && solved->summary->calibration
             ? tr("Predicted by a model calibrated on a bench. Not a medical device; ask a clinician before "
                  "anyone wears it.")
             : tr("Predicted by an uncalibrated model. Not a medical device; ask a clinician before anyone "
                  "wears it.");
}

void MainWindow::arrange() {
  auto* right = new QWidget(this);
  auto* stack = new QVBoxLayout(right);
  stack->setContentsMargins(0, 0, 0, 0);
  stack->setSpacing(2);
  stack->addWidget(message_);
  stack->addWidget(views_, 1);
  splitter_->addWidget(column_);
  splitter_->addWidget(right);
  splitter_->setStretchFactor(1, 1);
  splitter_->setChildrenCollapsible(false);
  auto* all = new QWidget(this);
  auto* below_one_another = new QVBoxLayout(all);
  below_one_another->setContentsMargins(0, 0, 0, 0);
  below_one_another->setSpacing(0);
  below_one_another->addWidget(verdict_);
  below_one_another->addWidget(splitter_, 1);
  setCentralWidget(all);
  drop_ = new DropFrame(all);
  connect(verdict_, &VerdictBar::stepAsked, column_, &PlanColumn::open_step);
  auto* caution = new QLabel(caution_words(), this);
  caution->setMinimumWidth(50);
  connect(&session_, &PlanSession::changed, caution, [this, caution](const SessionState& before) {
    if (session_.now().solved != before.solved) caution->setText(caution_words());
  });
  statusBar()->addWidget(caution, 1);
  statusBar()->addPermanentWidget(new RunBar(session_, this));
  saved_ = new QLabel(this);
  statusBar()->addPermanentWidget(saved_);
  statusBar()->setSizeGripEnabled(false);
  resize(QSize(1400, 900).boundedTo(screen()->availableSize()));
  const int for_the_plan = std::clamp(width() / 3, 366, 400);
  splitter_->setSizes({for_the_plan, width() - for_the_plan});
}

void MainWindow::add_steps() {
  body_ = new BodyStep(session_, this);
  layout_ = new LayoutStep(session_, data_folder_ / "drawings", this);
  wear_ = new WearStep(session_, this);
  auto* inflation = new InflationStep(session_, this);
  auto* limits = new LimitsStep(session_, this);
  note_ = new NoteStep(session_, this);
  bench_ = new BenchStep(session_, this);
  const std::pair<PlanStep, StepForm*> all[] = {
      {PlanStep::kBody, body_},          {PlanStep::kLayout, layout_}, {PlanStep::kWear, wear_},
      {PlanStep::kInflation, inflation}, {PlanStep::kLimits, limits},  {PlanStep::kNote, note_},
      {PlanStep::kBench, bench_}};
  for (const auto& [step, form] : all) {
    column_->add_step(step, form);
    connect(form, &StepForm::problemMet, this, [this](const Problem& problem) { say(problem); });
    connect(form, &StepForm::chamberAsked, views_, &ViewArea::show_chamber);
    connect(form, &StepForm::placeAsked, views_, &ViewArea::show_place);
  }
  column_->open_step(PlanStep::kBody);
  connect(&limits->changes(), &ChangePanel::lookAsked, views_, &ViewArea::look_at);
  connect(note_, &NoteStep::planFileWanted, this, [this] {
    if (session_.file().empty())
      save_as(tr("First the plan: a note names the plan file it was made from"));
    else
      save();
  });
  connect(bench_, &BenchStep::planFileWanted, this, [this] {
    if (session_.file().empty())
      save_as(tr("First the plan: its readings lie beside its file"));
    else
      save();
  });
  connect(note_, &NoteStep::saved, this, [this](const QString& file) {
    message_->say_news(tr("The note was written to %1; empty cells are for the study to fill.").arg(file));
  });
}

void MainWindow::connect_views() {
  connect(views_, &ViewArea::problemMet, this, [this](const Problem& problem) { say(problem); });
  Selection& selection = views_->selection();
  connect(&selection, &Selection::chamberChanged, this, [this, &selection] {
    if (selection.chamber()) layout_->parts().show_chamber(static_cast<int>(index_of(*selection.chamber())));
  });
  connect(&layout_->parts(), &PartEditor::chamberChosen, views_, &ViewArea::show_chamber);
  connect(&selection, &Selection::placeChanged, this, [this, &selection] {
    wear_->show_picked(selection.place_m());
    body_->places().show_picked(selection.place_m());
  });
  connect(&body_->sites(), &SitePanel::clickAsked, &views_->body(), &BodyView::ask_for_click);
  connect(&views_->body(), &BodyView::clickGiven, &body_->sites(), &SitePanel::take_click);
  connect(&views_->body(), &BodyView::clickGivenUp, &body_->sites(), &SitePanel::stop_asking);
}

void MainWindow::say(const Problem& problem) {
  message_->say_problem(text(problem));
}

void MainWindow::say(const Result<std::monostate>& done) {
  if (!done) say(done.problem());
}

void MainWindow::start(const std::filesystem::path& plan_file) {
  if (auto left = RecoveryFile::take_left_behind(data_folder_ / "recovery")) {
    session_.recover(std::move(*left));
    message_->say_news(
        tr("The last session did not end well. Its plan is here again as it stood at the last "
           "change; save it to keep it."));
    return;
  }
  if (!plan_file.empty()) return void(open_plan(plan_file));
  const QStringList recent = recent_plans();
  if (recent.empty() || !session_.open(recent.front().toStdString()).ok()) open_demo();
}

void MainWindow::open_demo() {
  const auto plans = write_demo(data_folder_ / "demo");
  if (!plans) return say(plans.problem());
  for (const auto& plan : *plans)
    if (plan.stem() == "forearm-cuff" && !open_plan(plan)) return;
  message_->say_news(
      tr("This is a worked demo: a cuff of four chambers on a forearm. Change anything; Undo takes it "
         "back. Plan > New starts your own."));
}

bool MainWindow::open_plan(const std::filesystem::path& file) {
  if (!may_leave()) return false;
  if (!missing_files(file).empty()) return locate_and_open(file);
  const auto opened = session_.open(file);
  say(opened);
  if (!opened) return false;
  opened_well();
  return true;
}

void MainWindow::opened_well() {
  message_->hide();
  remember_plan();
  if (session_.now().open_elsewhere)
    message_->say_news(
        tr("Another window has this plan open. What is saved there is not overwritten from here: save under "
           "another name, or close one of the two."));
}

// Each file that is not where the plan says is asked for; what is found is an edit of the plan.
bool MainWindow::locate_and_open(const std::filesystem::path& file) {
  std::map<std::string, std::filesystem::path> found;
  for (const MissingFile& missing : missing_files(file)) {
    const QString name = QString::fromStdString(missing.named.filename().string());
    QMessageBox ask(QMessageBox::Question, tr("A file of the plan is missing"),
                    tr("%1 names %2, which is not there. Show where it is now.")
                        .arg(QString::fromStdString(file.filename().string()),
                             QString::fromStdString(missing.named.string())),
                    QMessageBox::Cancel, this);
    const QPushButton* locate = ask.addButton(tr("Find it…"), QMessageBox::AcceptRole);
    ask.exec();
    if (ask.clickedButton() != locate) break;
    const QString now = QFileDialog::getOpenFileName(
        this, tr("Where is %1?").arg(name), QString::fromStdString(file.parent_path().string()),
        tr("%1;;All files (*)")
            .arg(QStringLiteral("*%1").arg(QString::fromStdString(missing.named.extension().string()))));
    if (now.isEmpty()) break;
    found[missing.key] = std::filesystem::absolute(now.toStdString());
  }
  const auto opened = found.empty() ? session_.open(file) : session_.open_with(file, found);
  say(opened);
  if (!opened) return false;
  opened_well();
  return true;
}

void MainWindow::open_dropped(const std::filesystem::path& file) {
  const QString ending = QString::fromStdString(file.extension().string()).toLower();
  if (QStringList{".obj", ".stl", ".ply", ".glb", ".gltf"}.contains(ending)) {
    column_->open_step(PlanStep::kBody);
    return body_->open_mesh(file);
  }
  if (QStringList{".svg", ".dxf"}.contains(ending)) {
    column_->open_step(PlanStep::kLayout);
    return layout_->open_layout(file);
  }
  if (ending != ".json")
    return say(bad_input(
        Phrase::worded("file '%1' is none of these: plan or layout (.json), mesh (.obj, .stl, .ply, "
                       ".glb, .gltf), drawing (.svg, .dxf).",
                       {name_of(file.filename().string())})));
  if (read_plan(file)) return void(open_plan(file));
  if (read_layout(file)) {
    column_->open_step(PlanStep::kLayout);
    return layout_->open_layout(file);
  }
  open_plan(file);  // says what is wrong with it
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (!event->mimeData()->hasUrls()) return;
  event->acceptProposedAction();
  drop_->light(true);
}

void MainWindow::dragLeaveEvent(QDragLeaveEvent*) {
  drop_->light(false);
}

void MainWindow::dropEvent(QDropEvent* event) {
  event->acceptProposedAction();
  drop_->light(false);
  // After the drop has ended: a dialog may come up, and where the files came from must not wait for it.
  for (const QUrl& url : event->mimeData()->urls())
    if (url.isLocalFile())
      QTimer::singleShot(0, this, [this, url] { open_dropped(url.toLocalFile().toStdString()); });
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && session_.runner().busy())
    session_.cancel();
  else
    QMainWindow::keyPressEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!may_leave()) return event->ignore();
  remember_layout();
  event->accept();
}

void MainWindow::show_title() {
  const auto file = session_.file();
  const QString name = file.empty() ? QString::fromStdString(session_.plan().name)
                                    : QString::fromStdString(file.filename().string());
  setWindowTitle(tr("%1[*] – Wrapgauge").arg(name));
  setWindowModified(session_.modified());
  const bool has_file = !session_.file().empty();
  saved_->setText(session_.modified() ? tr("Changes not saved") : has_file ? tr("Saved") : QString());
}

bool MainWindow::save() {
  if (session_.file().empty()) return save_as();
  const auto saved = session_.save(session_.file());
  say(saved);
  return saved.ok();
}

bool MainWindow::save_as(const QString& title) {
  const QString file =
      QFileDialog::getSaveFileName(this, title.isEmpty() ? tr("Save the plan") : title,
                                   QString::fromStdString(session_.file().string()), tr("Plans (*.json)"));
  if (file.isEmpty()) return false;
  const auto saved =
      session_.save(file.endsWith(".json") ? file.toStdString() : file.toStdString() + ".json");
  say(saved);
  if (saved) remember_plan();
  return saved.ok();
}

bool MainWindow::may_leave() {
  picture_plan();
  if (!session_.modified()) return true;
  QMessageBox ask(QMessageBox::Question, tr("Unsaved changes"),
                  tr("The plan has changes that were not saved. Save them?"),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
  const int answer = ask.exec();
  if (answer == QMessageBox::Save) return save();
  return answer == QMessageBox::Discard;
}

void MainWindow::remember_plan() {
  if (!session_.file().empty()) remember_recent(QString::fromStdString(session_.file().string()));
}

void MainWindow::remember_layout() {
  QSettings settings;
  settings.setValue(QStringLiteral("window/geometry"), saveGeometry());
  settings.setValue(QStringLiteral("window/columns"), splitter_->saveState());
  settings.setValue(QStringLiteral("window/views"), views_->save_state());
  settings.setValue(QStringLiteral("window/step"), static_cast<int>(column_->opened()));
}

void MainWindow::recall_layout() {
  const QSettings settings;
  const QByteArray geometry = settings.value(QStringLiteral("window/geometry")).toByteArray();
  if (geometry.isEmpty()) return;
  restoreGeometry(geometry);
  splitter_->restoreState(settings.value(QStringLiteral("window/columns")).toByteArray());
  views_->restore_state(settings.value(QStringLiteral("window/views")).toByteArray());
  const int step = std::clamp(settings.value(QStringLiteral("window/step")).toInt(), 0, 5);
  column_->open_step(static_cast<PlanStep>(step));
}

}  // namespace wrapgauge
