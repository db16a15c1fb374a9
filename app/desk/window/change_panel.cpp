#include "app/desk/window/change_panel.hpp"

#include "app/desk/session/made_change.hpp"
#include "app/desk/window/change_card.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

QString words_before() {
  return ChangePanel::tr(
      "Tries one change at a time: less inflation, fastened looser or tighter, moved or turned, another "
      "sheet, "
      "shorter times. It takes a minute or a few.");
}

bool is_searching(const SessionState& state) {
  return state.running && state.running->kind == RunKind::kAdvice;
}

}  // namespace

ChangeList::ChangeList(const QString& name, QWidget* parent) : CardList(name, parent) {
  setMouseTracking(true);
  connect(this, &QListWidget::itemEntered, this,
          [this](QListWidgetItem* item) { emit pointedAt(row(item)); });
  connect(this, &QListWidget::currentRowChanged, this, [this](int row) {
    if (hasFocus()) emit pointedAt(row);
  });
}

void ChangeList::leaveEvent(QEvent* event) {
  CardList::leaveEvent(event);
  emit pointedAt(-1);
}

void ChangeList::focusOutEvent(QFocusEvent* event) {
  CardList::focusOutEvent(event);
  emit pointedAt(-1);
}

void ChangeList::show_changes(const Advice& advice) {
  clear();
  for (const TriedChange* change : changes_to_show(advice)) {
    const FindingCard card = card_of(advice, *change);
    add(QStringLiteral("%1: %2. %3 %4").arg(card.label, card.place, card.figures, card.words), card, {});
  }
  setVisible(count() > 0);
  fit();
}

ChangePanel::ChangePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      verdict_(words_label({}, this)),
      rest_(words_label({}, this)),
      list_(new ChangeList(tr("What to change, the least change first"), this)),
      find_(action_button(this, tr("Find what to change"), [this] { this->session().find_advice(); })),
      make_(action_button(
          this, tr("Make this change"), [this] { make_change(); },
          tr("Make the chosen change of the plan"))) {
  list_->setObjectName(QStringLiteral("changes"));
  list_->hide();
  QVBoxLayout* column = plain_column(this);
  for (QWidget* part : std::initializer_list<QWidget*>{heading_label(tr("What to change"), this), find_,
                                                       verdict_, list_, make_, rest_})
    column->addWidget(part);
  connect(list_, &QListWidget::itemActivated, this, &ChangePanel::make_change);
  connect(list_, &ChangeList::pointedAt, this, &ChangePanel::look_at);
  // How far a run is shows nothing anew elsewhere in a form.
  connect(&session, &PlanSession::changed, this, [this](const SessionState& before) {
    if (isVisible() && is_searching(now()) != is_searching(before)) show_state(now(), before);
  });
  connect(list_, &QListWidget::currentRowChanged, this,
          [this](int row) { make_->setEnabled(row >= 0 && list_->isEnabled()); });
}

void ChangePanel::make_change() {
  const auto advice = session().advice();
  if (!advice || list_->currentRow() < 0) return;
  const auto shown = changes_to_show(*advice);
  const TriedChange& change = *shown[static_cast<std::size_t>(list_->currentRow())];
  session().edit(text(change.words), made_change(now(), change));
}

void ChangePanel::look_at(int row) {
  const auto advice = session().advice();
  if (!advice || row < 0 || !list_->isEnabled()) return void(emit lookAsked(nullptr, {}));
  const TriedChange& change = *changes_to_show(*advice)[static_cast<std::size_t>(row)];
  emit lookAsked(std::make_shared<const Plan>(made_change(now(), change)), text(change.words));
}

void ChangePanel::show_cards(const SessionState& now) {
  const auto advice = now.newest_advice.advice;
  if (advice == shown_) return;
  shown_ = advice;
  if (advice)
    list_->show_changes(*advice);
  else
    list_->clear(), list_->hide();
  rest_->setText(advice ? rest_of_advice(*advice) : QString());
  rest_->setVisible(!rest_->text().isEmpty());
}

void ChangePanel::show_state(const SessionState& now, const SessionState&) {
  show_cards(now);
  const bool of_this_plan = now.advice() != nullptr;
  list_->setEnabled(of_this_plan);
  make_->setVisible(list_->count() > 0);
  make_->setEnabled(of_this_plan && list_->currentRow() >= 0);
  find_->setEnabled(now.can_be_solved() && !is_searching(now));
  if (is_searching(now))
    verdict_->setText(tr("Looking for changes. Cancel is below."));
  else if (!now.newest_advice.advice)
    verdict_->setText(words_before());
  else if (!of_this_plan)
    verdict_->setText(
        tr("Found for the plan as it was before. Undo takes the last change back; to go on, look again."));
  else
    verdict_->setText(advice_verdict(*now.advice()));
}

}  // namespace wrapgauge
