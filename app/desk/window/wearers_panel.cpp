#include "app/desk/window/wearers_panel.hpp"

#include "app/desk/session/said_by_people.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/signed_words.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

constexpr FieldUnit<Length> kInCm{"cm", 10.0 * mm};
constexpr int kPostureNotSaid = -1;
constexpr double kFreshNumber = 10.0;

LineField* add_line(FieldForm<Plan>& rows, const FieldText& text, const QString& placeholder,
                    std::string Wearers::*member) {
  LineField* line = rows.line_by(
      text, [member](const Plan& plan) { return std::optional(plan.wearers.*member); },
      [member](Plan& plan, const std::string& typed) { plan.wearers.*member = typed; });
  line->setPlaceholderText(placeholder);
  line->setMaxLength(200);
  return line;
}

}  // namespace

WearersPanel::WearersPanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      rows_(plan_rows(column_form(this))),
      date_(new LineField(tr("Date of the note"), this)),
      refused_(refused_label(this)),
      missing_(words_label({}, this)) {
  missing_->setObjectName(QStringLiteral("answers missing"));
  add_answers();
  add_date();
  rows_.layout().addRow(missing_);
}

void WearersPanel::add_answers() {
  add_line(rows_, FieldText(tr("Wearers"), tr("Who wears it"), {}, "wearers population"),
           tr("e.g. healthy adults"), &Wearers::population);
  rows_.optional(
      FieldText(tr("How many"), {}, tr("How many people take part."), "wearers number"), kPlain,
      {1, 100000, 0, 1}, [](auto& plan) { return &plan.wearers.number; }, kFreshNumber);
  rows_.choice_by(
      FieldText(tr("Posture"), tr("Posture of the wearers"), {}, "wearers posture"),
      {{tr("not said"), kPostureNotSaid},
       {tr("lying"), int(WearerPosture::kLying)},
       {tr("sitting"), int(WearerPosture::kSitting)},
       {tr("standing"), int(WearerPosture::kStanding)},
       {tr("moving"), int(WearerPosture::kMoving)}},
      [](const Plan& plan) {
        return plan.wearers.posture ? static_cast<int>(*plan.wearers.posture) : kPostureNotSaid;
      },
      [](Plan& plan, const QVariant& value) {
        plan.wearers.posture.reset();
        if (value.toInt() != kPostureNotSaid)
          plan.wearers.posture = static_cast<WearerPosture>(value.toInt());
      });
  rows_.optional(
      FieldText(tr("Above the heart"), {}, tr("How high the limb lies; below the heart is negative."),
                "wearers height"),
      kInCm, {-200.0, 200.0, 0, 5.0}, [](auto& plan) { return &plan.wearers.above_heart; }, 0.0);
  add_line(rows_, FieldText(tr("Who watches"), {}, {}, "wearers watched by"), tr("e.g. a trained helper"),
           &Wearers::watched_by);
  add_line(rows_, FieldText(tr("How they tell"), tr("How a wearer tells that it hurts"), {}, "wearers tell"),
           tr("e.g. by word"), &Wearers::how_they_tell);
}

void WearersPanel::add_date() {
  date_->setObjectName(QStringLiteral("note date"));
  date_->setPlaceholderText(QStringLiteral("2026-11-29"));
  date_->setMaxLength(40);
  rows_.layout().addRow(tr("Date of the note"), date_);
  rows_.layout().addRow(refused_);
  connect(date_, &QLineEdit::editingFinished, this, &WearersPanel::take_date);
}

void WearersPanel::take_date() {
  const std::string date = date_->text().trimmed().toStdString();
  auto changed = with_date(plan(), date);
  refused_->setVisible(!changed.ok());
  if (!changed) return refused_->setText(text(changed.problem()));
  session().edit(tr("Date of the note"), std::move(changed).value());
}

// A date that was refused stays as it was typed until the plan's own is another one.
void WearersPanel::show_state(const SessionState& now, const SessionState& before) {
  rows_.show(*now.plan);
  if (!before.plan || now.plan->date != before.plan->date) refused_->hide();
  if (refused_->isHidden()) date_->show_text(text(now.plan->date));
  const int missing = answers_missing(*now.plan);
  missing_->setText(missing == 0   ? tr("All answers are given.")
                    : missing == 1 ? tr("1 cell of the note is still to be filled here.")
                                   : tr("%1 cells of the note are still to be filled here.").arg(missing));
}

}  // namespace wrapgauge
