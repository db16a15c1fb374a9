#include "app/desk/window/limits_step.hpp"

#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include "model/study/aim_report.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

QString status_words(const Summary& summary) {
  if (summary.worst == Severity::kStop) return LimitsStep::tr("stopped: not to be worn");
  return summary.worst == Severity::kAboveLimit ? LimitsStep::tr("done, above a limit")
                                                : LimitsStep::tr("done");
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
    : StepForm(session, parent), findings_(new FindingsList(tr("Findings, worst first"), this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(make_limits());
  status_ = words_label({}, this);
  column->addWidget(status_);
  findings_->setObjectName(QStringLiteral("findings"));
  column->addWidget(findings_);
  plain_words_ = words_label({}, this);
  column->addWidget(plain_words_);
  column->addWidget(heading_label(tr("Ceiling"), this));
  column->addWidget(make_ceiling());
  column->addWidget(heading_label(tr("Aim"), this));
  column->addWidget(make_aim());
  connect(findings_, &FindingsList::chamberAsked, this, &StepForm::chamberAsked);
  connect(findings_, &FindingsList::placeAsked, this, &StepForm::placeAsked);
}

QWidget* LimitsStep::make_limits() {
  auto* box = new QWidget(this);
  QFormLayout* form = column_form(box);
  use_ = new Choice(tr("How it is used"), box);
  use_->add(tr("held for a session"), int(UsePattern::kSustained));
  use_->add(tr("held for a minute at most"), int(UsePattern::kShortHold));
  use_->add(tr("pulses"), int(UsePattern::kPulse));
  set_ = words_label({}, box);
  auto* own = new QPushButton(tr("Another limit set…"), box);
  auto* shipped = new QPushButton(tr("Default limit set"), box);
  shipped->setAccessibleName(tr("Take the program's own limit set"));
  reason_ = new QLineEdit(box);
  reason_->setAccessibleName(tr("Why a laxer limit set is used"));
  reason_->setPlaceholderText(tr("why it may be laxer"));
  auto* row = new QHBoxLayout;
  row->addWidget(own, 1);
  row->addWidget(shipped, 1);
  form->addRow(tr("Use"), use_);
  form->addRow(set_);
  form->addRow(row);
  form->addRow(reason_);
  connect(use_, &Choice::chosen, this, [this](const QVariant& value) {
    change(tr("Use"), {}, [&](Plan& plan) { plan.use = static_cast<UsePattern>(value.toInt()); });
  });
  connect(own, &QPushButton::clicked, this, &LimitsStep::ask_for_limits);
  connect(shipped, &QPushButton::clicked, this, [this] {
    change(tr("Limit set"), {}, [](Plan& plan) {
      plan.limits_file.reset();
      plan.limits_override_reason.reset();
    });
  });
  connect(reason_, &QLineEdit::editingFinished, this, [this] {
    const std::string reason = reason_->text().trimmed().toStdString();
    change(tr("Reason for laxer limits"), {}, [&](Plan& plan) {
      plan.limits_override_reason.reset();
      if (!reason.empty()) plan.limits_override_reason = reason;
    });
  });
  return box;
}

QWidget* LimitsStep::make_ceiling() {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  find_ceiling_ = new QPushButton(tr("Find the highest inflation within limits"), box);
  ceiling_ = words_label({}, box);
  column->addWidget(find_ceiling_);
  column->addWidget(ceiling_);
  connect(find_ceiling_, &QPushButton::clicked, this, [this] { session().find_ceiling(); });
  return box;
}

QWidget* LimitsStep::make_aim() {
  auto* box = new QWidget(this);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(
      words_label(tr("Wanted mean contact pressure, kPa; leave a chamber empty to let it follow."), box));
  wanted_ = new QTableWidget(box);
  wanted_->setAccessibleName(tr("Wanted mean contact pressure of each chamber"));
  wanted_->setColumnCount(2);
  wanted_->setHorizontalHeaderLabels({tr("Chamber"), tr("Wanted kPa")});
  wanted_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  wanted_->setTabKeyNavigation(false);
  wanted_->verticalHeader()->hide();
  column->addWidget(wanted_);
  auto* row = new QHBoxLayout;
  find_aim_ = new QPushButton(tr("Find the inflation"), box);
  use_aim_ = new QPushButton(tr("Use it"), box);
  use_aim_->setAccessibleName(tr("Use the inflation that was found"));
  row->addWidget(find_aim_, 1);
  row->addWidget(use_aim_, 1);
  column->addLayout(row);
  aim_ = words_label({}, box);
  column->addWidget(aim_);
  connect(find_aim_, &QPushButton::clicked, this, &LimitsStep::start_aim);
  connect(use_aim_, &QPushButton::clicked, this, &LimitsStep::use_aim);
  return box;
}

void LimitsStep::ask_for_limits() {
  const QString file =
      QFileDialog::getOpenFileName(this, tr("Open a limit set"), {}, tr("Limit sets (*.json)"));
  if (file.isEmpty()) return;
  change(tr("Limit set"), {},
         [&](Plan& plan) { plan.limits_file = std::filesystem::absolute(file.toStdString()); });
}

void LimitsStep::start_aim() {
  std::vector<AimTarget> targets;
  for (int i = 0; i < wanted_->rowCount(); ++i) {
    bool number = false;
    QString words = wanted_->item(i, 1) ? wanted_->item(i, 1)->text().trimmed() : QString();
    if (words.isEmpty()) continue;
    const double kpa = words.replace(QChar(','), QChar('.')).toDouble(&number);
    if (!number || kpa < 0.0) {
      emit problemMet(bad_input("wanted pressure '" + words.toStdString() +
                                "' is no pressure in kPa: write for example 2.5, or leave it empty."));
      return;
    }
    targets.push_back({wanted_->item(i, 0)->text().toStdString(), kpa * kPa});
  }
  if (targets.empty())
    return void(emit problemMet(bad_input("no wanted pressure is given: write one beside a chamber.")));
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
  const int rows = std::min(wanted_->rowCount(), 8);
  wanted_->setFixedHeight(wanted_->horizontalHeader()->sizeHint().height() + 4 +
                          rows * wanted_->verticalHeader()->defaultSectionSize());
}

void LimitsStep::show_plan() {
  use_->show_value(int(plan().use));
  const bool own = plan().limits_file.has_value();
  reason_->setVisible(own);
  reason_->setText(QString::fromStdString(plan().limits_override_reason.value_or("")));
  set_->setText(own ? QString::fromStdString(plan().limits_file->filename().string())
                    : tr("The program's own limit set: judgement throughout, no row is a proven threshold."));
  rebuild_wanted();
}

void LimitsStep::show_solved() {
  const auto solved = session().solved();
  const StepState state = session().state(PlanStep::kLimits);
  status_->setText(solved && session().stale().empty()
                       ? tr("Status: %1. Predicted by an uncalibrated model; not a medical device.")
                             .arg(status_words(*solved->summary))
                       : (QStringList{state.words} + needs_of(state)).join(QChar('\n')));
  auto listed = solved ? listed_findings(*solved->estimate) : std::vector<ListedFinding>{};
  plain_words_->setText(plain_words(listed));
  plain_words_->setVisible(!plain_words_->text().isEmpty());
  findings_->show_findings(std::move(listed));
  findings_->setEnabled(session().stale().empty());
  const auto ceiling = session().ceiling();
  ceiling_->setText(ceiling ? joined(ceiling_words(*ceiling)) : QString());
  const auto aim = session().aim();
  aim_->setText(aim ? joined(aim_words(*aim)) : QString());
  use_aim_->setEnabled(aim != nullptr);
  const auto checked = session().last_checked();
  find_ceiling_->setEnabled(checked && checked->can_be_solved());
  find_aim_->setEnabled(checked && checked->can_be_solved());
}

}  // namespace wrapgauge
