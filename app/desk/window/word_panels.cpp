#include "app/desk/window/word_panels.hpp"

#include "app/desk/session/said_by_people.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

std::string word(const QStringList& words, qsizetype field) {
  return words.value(field).toStdString();
}

}  // namespace

NoOtherSitesPanel::NoOtherSitesPanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      words_(new SignedWords(
          tr("There are no other sites"),
          tr("Where nothing is marked, laxer limits and thicker tissue then count."),
          {{tr("Who says so"), tr("Who says that there are no other sites"), tr("name and job"),
            "no sites who"},
           {tr("When"), tr("When it was found"), QStringLiteral("2026-11-29"), "no sites when"},
           {tr("Why"), tr("Why there are no other sites"), tr("how it was found"), "no sites why"}},
          this)) {
  plain_column(this)->addWidget(words_);
  connect(words_, &SignedWords::given, this, [this](const QStringList& words) {
    auto changed = with_sites_confirmed(plan(), {word(words, 0), word(words, 1), word(words, 2)});
    if (!changed) return words_->show_refused(text(changed.problem()));
    this->session().edit(tr("Confirm that there are no other sites"), std::move(changed).value());
  });
  connect(words_, &SignedWords::takenBack, this, [this] {
    change(tr("Take back that there are no other sites"), {},
           [](Plan& plan) { plan.sites_confirmed.reset(); });
  });
}

void NoOtherSitesPanel::show_state(const SessionState& now, const SessionState&) {
  words_->setVisible(may_have_no_sites(now));
  const auto& said = now.plan->sites_confirmed;
  words_->show_said(said ? std::optional(QStringList{text(said->who), text(said->when), text(said->why)})
                         : std::nullopt);
}

ClearancePanel::ClearancePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      words_(new SignedWords(
          tr("A clinician allows it all round"),
          tr("The stop becomes a warning. Their name stands in every output."),
          {{tr("Name"), tr("Name of the clinician"), {}, "cleared name"},
           {tr("Role"), tr("Role of the clinician"), tr("e.g. chest physician"), "cleared role"},
           {tr("Date"), tr("Day of the clinician's decision"), QStringLiteral("2026-11-29"), "cleared date"}},
          this)) {
  plain_column(this)->addWidget(words_);
  connect(words_, &SignedWords::given, this, [this](const QStringList& words) {
    auto changed = with_clearance(plan(), {word(words, 0), word(words, 1), word(words, 2)});
    if (!changed) return words_->show_refused(text(changed.problem()));
    this->session().edit(tr("Name the clinician"), std::move(changed).value());
  });
  connect(words_, &SignedWords::takenBack, this,
          [this] { change(tr("Remove the clinician"), {}, [](Plan& plan) { plan.cleared_by.reset(); }); });
}

void ClearancePanel::show_state(const SessionState& now, const SessionState&) {
  words_->setVisible(asks_for_clearance(now));
  const auto& by = now.plan->cleared_by;
  words_->show_said(by ? std::optional(QStringList{text(by->name), text(by->role), text(by->date)})
                       : std::nullopt);
}

}  // namespace wrapgauge
