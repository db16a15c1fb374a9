#include "app/desk/window/limits_step.hpp"

#include <QFileDialog>

#include "app/desk/window/word_panels.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/note/verdict.hpp"
#include "model/study/aim_report.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

QString status_words(const Summary& summary) {
  if (summary.worst == Severity::kStop) return LimitsStep::tr("stopped: not to be worn");
  return summary.worst == Severity::kAboveLimit ? LimitsStep::tr("done, above a limit")
                                                : LimitsStep::tr("done");
}

// The verdict, what is not the program's own, and where the job stands.
QString result_words(const Summary& summary) {
  QStringList words{text(verdict(summary))};
  for (const std::string& sentence : not_the_programs_own(summary))
    words.push_back(QString::fromStdString(sentence));
  words.push_back(
      (summary.calibration
           ? LimitsStep::tr("Status: %1. Predicted by a calibrated model; not a medical device.")
           : LimitsStep::tr("Status: %1. Predicted by an uncalibrated model; not a medical device."))
          .arg(status_words(summary)));
  return words.join(QChar('\n'));
}

QString joined(const std::vector<std::string>& sentences) {
  QStringList words;
  for (const std::string& sentence : sentences) words.push_back(QString::fromStdString(sentence));
  return words.join(QChar('\n'));
}

// What keeps the limits from being used; findings have their own list.
QStringList needs_of(const StepState& state) {
  return state.kind == StepState::Kind::kNeeds ? state.findings : QStringList{};
}

}  // namespace

LimitsStep::LimitsStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      limits_(plan_rows(column_form(nullptr), true)),
      changes_(new ChangePanel(session, this)),
      set_(words_label({}, this)),
      status_(words_label({}, this)),
      plain_words_(words_label({}, this)),
      ceiling_(words_label({}, this)),
      aim_(words_label({}, this)),
      findings_(new FindingsList(tr("Findings, worst first"), this)),
      notes_(new FindingsList(tr("Notes"), this)),
      notes_drawer_(new FineSettings(notes_, tr("nothing to act on"), this, tr("Notes"))),
      wanted_(words_table(this, tr("Wanted mean contact pressure of each chamber"),
                          {tr("Chamber"), tr("Wanted kPa")})),
      find_ceiling_(action_button(this, tr("Find the highest inflation within limits"),
                                  [this] { this->session().find_ceiling(); })),
      find_aim_(action_button(this, tr("Find the inflation"), [this] { start_aim(); })),
      use_aim_(action_button(
          this, tr("Use it"), [this] { use_aim(); }, tr("Use the inflation that was found"))) {
  findings_->setObjectName(QStringLiteral("findings"));
  notes_->setObjectName(QStringLiteral("notes"));
  add_limits();
  QVBoxLayout* column = plain_column(this);
  column->addLayout(&limits_.layout());
  for (QWidget* part : std::initializer_list<QWidget*>{
           status_, new ClearancePanel(session, this),
           heading_label(tr("Highest inflation within the limits"), this), find_ceiling_, ceiling_, changes_,
           findings_, notes_drawer_, plain_words_, heading_label(tr("Aim"), this),
           words_label(tr("Wanted mean contact pressure, kPa; leave a chamber empty to let it follow."),
                       this),
           wanted_})
    column->addWidget(part);
  add_row(*column, {find_aim_, use_aim_});
  column->addWidget(aim_);
  for (FindingsList* list : {findings_, notes_}) {
    connect(list, &FindingsList::chamberAsked, this, &StepForm::chamberAsked);
    connect(list, &FindingsList::placeAsked, this, &StepForm::placeAsked);
  }
}

void LimitsStep::add_limits() {
  limits_.choice(FieldText(tr("Use"), tr("How it is used")),
                 {{tr("held for a session"), int(UsePattern::kSustained)},
                  {tr("held for a minute at most"), int(UsePattern::kShortHold)},
                  {tr("pulses"), int(UsePattern::kPulse)}},
                 [](auto& plan) { return &plan.use; });
  limits_.layout().addRow(set_);
  auto* buttons = new QVBoxLayout;
  add_row(*buttons, {action_button(this, tr("Another limit set…"), [this] { ask_for_limits(); }),
                     action_button(
                         this, tr("Default limit set"), [this] { take_limits({}); },
                         tr("Take the program's own limit set"))});
  limits_.layout().addRow(buttons);
  LineField* reason = limits_.line_by(
      FieldText({}, tr("Why a laxer limit set is used")),
      [](const Plan& plan) {
        return plan.limits_file ? std::optional(plan.limits_override_reason.value_or("")) : std::nullopt;
      },
      [](Plan& plan, const std::string& typed) {
        plan.limits_override_reason.reset();
        if (!typed.empty()) plan.limits_override_reason = typed;
      });
  reason->setPlaceholderText(tr("why it may be laxer"));
  limits_.layout().addRow(reason);
}

void LimitsStep::ask_for_limits() {
  const QString file =
      QFileDialog::getOpenFileName(this, tr("Open a limit set"), {}, tr("Limit sets (*.json)"));
  if (!file.isEmpty()) take_limits(std::filesystem::absolute(file.toStdString()));
}

void LimitsStep::take_limits(const std::optional<std::filesystem::path>& file) {
  change(tr("Limit set"), {}, [&](Plan& plan) {
    plan.limits_file = file;
    if (!file) plan.limits_override_reason.reset();
  });
}

void LimitsStep::start_aim() {
  std::vector<AimTarget> targets;
  for (int i = 0; i < wanted_->rowCount(); ++i) {
    bool number = false;
    QString words = wanted_->item(i, 1) ? wanted_->item(i, 1)->text().trimmed() : QString();
    if (words.isEmpty()) continue;
    const double kpa = words.replace(QChar(','), QChar('.')).toDouble(&number);
    if (!number || kpa < 0.0) {
      emit problemMet(bad_input(Phrase::worded(
          "wanted pressure '%1' is no pressure in kPa: write for example 2.5, or leave it empty.",
          {name_of(words.toStdString())})));
      return;
    }
    targets.push_back({wanted_->item(i, 0)->text().toStdString(), kpa * kPa});
  }
  if (targets.empty())
    return void(emit problemMet(
        bad_input(Phrase::worded("no wanted pressure is given: write one beside a chamber."))));
  session().find_aim(std::move(targets));
}

void LimitsStep::use_aim() {
  const auto found = session().aim();
  if (!found) return;
  change(tr("Inflation of the aim"), {}, [&](Plan& plan) {
    for (const AimInlet& inlet : found->as_drawn.inlets)
      for (InletProgram& program : plan.inflation)
        if (program.inlet == inlet.inlet) program.target = inlet.gauge;
  });
}

void LimitsStep::rebuild_wanted() {
  const auto& chambers = plan().layout.chambers;
  QStringList before;
  for (int i = 0; i < wanted_->rowCount(); ++i)
    before.push_back(wanted_->item(i, 1) ? wanted_->item(i, 1)->text() : QString());
  wanted_->setRowCount(static_cast<int>(chambers.size()));
  for (int i = 0; i < wanted_->rowCount(); ++i) {
    auto* name = new QTableWidgetItem(QString::fromStdString(chambers[static_cast<std::size_t>(i)].name));
    name->setFlags(Qt::ItemIsEnabled);
    wanted_->setItem(i, 0, name);
    wanted_->setItem(i, 1, new QTableWidgetItem(before.value(i)));
  }
  fit_height(*wanted_, 8);
}

void LimitsStep::show_findings(const SessionState& now) {
  const auto listed = now.solved ? listed_findings(*now.solved->estimate) : std::vector<ListedFinding>{};
  plain_words_->setText(plain_words(listed));
  plain_words_->setVisible(!plain_words_->text().isEmpty());
  ListedApart apart = listed_apart(listed);
  notes_drawer_->say_title(tr("Notes: %1").arg(apart.aside.size()));
  notes_drawer_->setVisible(!apart.aside.empty());
  findings_->setVisible(!apart.to_act_on.empty());
  findings_->show_findings(std::move(apart.to_act_on));
  notes_->show_findings(std::move(apart.aside));
}

void LimitsStep::show_state(const SessionState& now, const SessionState& before) {
  limits_.show(*now.plan);
  const auto& file = now.plan->limits_file;
  set_->setText(file
                    ? QString::fromStdString(file->filename().string())
                    : tr("The program's own limit set: judgement throughout, no row is a proven threshold."));
  if (now.plan != before.plan) rebuild_wanted();
  const StepState state = step_state(PlanStep::kLimits, now);
  status_->setText(now.solved && now.stale.empty()
                       ? result_words(*now.solved->summary)
                       : (QStringList{state.words} + needs_of(state)).join(QChar('\n')));
  if (now.solved != before.solved || !now.solved) show_findings(now);
  for (FindingsList* list : {findings_, notes_}) list->setEnabled(now.stale.empty());
  const auto ceiling = now.ceiling();
  ceiling_->setText(ceiling ? joined(ceiling_words(*ceiling)) : QString());
  const auto aim = now.aim();
  aim_->setText(aim ? joined(aim_words(*aim)) : QString());
  use_aim_->setEnabled(aim != nullptr);
  find_ceiling_->setEnabled(now.can_be_solved());
  find_aim_->setEnabled(now.can_be_solved());
}

}  // namespace wrapgauge
