#include "app/desk/window/run_bar.hpp"

#include <QHBoxLayout>
#include <QRegularExpression>
#include <map>

namespace wrapgauge {
namespace {

// Each change has the whole window put together anew, which costs an estimate on software graphics more than
// a step of its solver.
constexpr int kBetweenChanges_ms = 150;

// "runs 3 of 31, about 2 min left"
std::optional<QString> runs_words(const QString& stage) {
  static const QRegularExpression runs(QStringLiteral("^runs (\\d+) of (\\d+)(?:, about (.+) left)?$"));
  const auto found = runs.match(stage);
  if (!found.hasMatch()) return std::nullopt;
  const QString done = found.captured(1), all = found.captured(2), left = found.captured(3);
  return left.isEmpty() ? RunBar::tr("%1 of %2").arg(done, all)
                        : RunBar::tr("%1 of %2, about %3 left").arg(done, all, left);
}

QString one_stage(const QString& stage) {
  const std::map<QString, QString> known{
      {QStringLiteral("checking"), RunBar::tr("checking")},
      {QStringLiteral("putting it on"), RunBar::tr("putting it on")},
      {QStringLiteral("closing"), RunBar::tr("closing")},
      {QStringLiteral("inflating"), RunBar::tr("inflating")},
      {QStringLiteral("reading the contact"), RunBar::tr("reading the contact")},
      {QStringLiteral("once more on a coarser mesh"), RunBar::tr("once more on a coarser mesh")},
      {QStringLiteral("once more for comparison"), RunBar::tr("once more for comparison")},
      {QStringLiteral("all inlets together"), RunBar::tr("all inlets together")},
      {QStringLiteral("as drawn"), RunBar::tr("as drawn")},
      {QStringLiteral("chambers fed apart"), RunBar::tr("chambers fed apart")},
      {QStringLiteral("the plan as it is"), RunBar::tr("the plan as it is")},
      {QStringLiteral("changes on the coarse mesh"), RunBar::tr("changes on the preview's mesh")},
      {QStringLiteral("changes on the plan's own mesh"), RunBar::tr("changes on the plan's own mesh")},
      {QStringLiteral("done"), RunBar::tr("done")}};
  const auto found = known.find(stage);
  if (found != known.end()) return found->second;
  if (const auto runs = runs_words(stage)) return *runs;
  const QString before = QStringLiteral("inlet '"), after = QStringLiteral("' alone");
  if (!stage.startsWith(before) || !stage.endsWith(after)) return stage;
  return RunBar::tr("inlet '%1' alone").arg(stage.sliced(before.size()).chopped(after.size()));
}

}  // namespace

// "all inlets together: inflating": each part is a stage of its own.
QString stage_words(const QString& stage) {
  QStringList parts = stage.split(QStringLiteral(": "));
  for (QString& part : parts) part = one_stage(part);
  return parts.join(QStringLiteral(": "));
}

RunBar::RunBar(PlanSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      stage_(new QLabel(this)),
      progress_(new QProgressBar(this)),
      cancel_(new QPushButton(tr("Cancel"), this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(stage_);
  row->addWidget(progress_);
  row->addWidget(cancel_);
  progress_->setRange(0, 100);
  progress_->setFixedWidth(140);
  progress_->setAccessibleName(tr("How far the estimate is"));
  cancel_->setAccessibleName(tr("Cancel the calculation"));
  cancel_->setObjectName(QStringLiteral("cancel"));
  connect(cancel_, &QPushButton::clicked, &session, &PlanSession::cancel);
  connect(&session, &PlanSession::changed, this,
          [this](const SessionState& before) { take_running(before); });
  shown_.setSingleShot(true);
  shown_.setInterval(kBetweenChanges_ms);
  connect(&shown_, &QTimer::timeout, this, &RunBar::show_progress);
  hide();
}

// What is done at once shows no bar: it would be gone before it is read.
void RunBar::take_running(const SessionState& before) {
  const auto& running = session_.now().running;
  if (running == before.running) return;
  if (running && !shown_.isActive()) return shown_.start();
  if (running) return;
  shown_.stop();
  hide();
}

void RunBar::show_progress() {
  const auto& running = session_.now().running;
  if (!running) return;
  const QString words = stage_words(running->stage);
  if (stage_->text() != words) {
    stage_->setText(words);
    stage_->setMinimumWidth(stage_->sizeHint().width());  // the status bar would cut it
  }
  progress_->setValue(static_cast<int>(100.0 * running->fraction));
  progress_->setVisible(running->fraction > 0.0);  // a check does not know how far it is
  show();
}

}  // namespace wrapgauge
