#include "app/desk/window/site_panel.hpp"

#include <QSignalBlocker>
#include <algorithm>

#include "app/desk/session/skin_place.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/signed_words.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/body/part_rules.hpp"

namespace wrapgauge {
namespace {

constexpr int kRowSpacing = 1;

QString kind_words(SiteKind kind) {
  const QString words[] = {SitePanel::tr("bone"), SitePanel::tr("nerve"), SitePanel::tr("vessel"),
                           SitePanel::tr("tendon")};
  return words[static_cast<std::size_t>(kind)];
}

QString joined_names(const std::vector<std::string>& names) {
  QStringList words;
  for (const std::string& name : names) words.push_back(text(name));
  return words.join(QStringLiteral(", "));
}

std::vector<ChoiceEntry> place_entries(const std::vector<StandardSite>& places, bool may_be_none) {
  std::vector<ChoiceEntry> entries;
  if (may_be_none) entries.push_back({SitePanel::tr("no second one"), QString()});
  for (const StandardSite& place : places)
    entries.push_back({text(place.name), text(place.name), text(table_words(place.words))});
  return entries;
}

bool holds(const Choice& choice, const std::vector<ChoiceEntry>& entries) {
  return choice.count() == static_cast<int>(entries.size()) &&
         std::all_of(entries.begin(), entries.end(),
                     [&](const ChoiceEntry& entry) { return choice.findData(entry.value) >= 0; });
}

}  // namespace

SitePanel::SitePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      inside_(new QWidget(this)),
      status_(words_label({}, inside_)),
      refused_(refused_label(inside_)),
      beyond_(words_label({}, inside_)),
      rows_{new_row(tr("Landmark"), tr("Click the landmark on the body"), 0),
            new_row(tr("Second landmark"), tr("Click the second landmark on the body"), 1)},
      list_(new QListWidget(inside_)),
      drop_(action_button(
          inside_, tr("Drop it"), [this] { drop(); }, tr("Drop the chosen site"))) {
  status_->setObjectName(QStringLiteral("sites status"));
  refused_->setObjectName(QStringLiteral("sites refused"));
  list_->setObjectName(QStringLiteral("sites"));
  list_->setAccessibleName(tr("Sites on the body"));
  list_->setToolTip(
      tr("Feel for it. Tick it where it is, drop it where it is not. A click shows it on the body."));
  list_->setSpacing(kRowSpacing);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  drop_->setToolTip(tr("Takes the chosen site off the body."));
  QVBoxLayout* column = plain_column(inside_);
  column->addWidget(heading_label(tr("Mark where the bones are"), inside_));
  column->addWidget(status_);
  for (const Row& row : rows_) {
    auto* line = new QHBoxLayout;
    line->addWidget(row.name, 2);
    line->addWidget(row.click, 1);
    column->addLayout(line);
  }
  for (QWidget* part : std::initializer_list<QWidget*>{refused_, list_, drop_, beyond_})
    column->addWidget(part);
  plain_column(this)->addWidget(inside_);
  connect(list_, &QListWidget::itemChanged, this, &SitePanel::confirm);
  connect(list_, &QListWidget::itemClicked, this, &SitePanel::show_row);
  connect(list_, &QListWidget::itemActivated, this, &SitePanel::show_row);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) { drop_->setEnabled(row >= 0); });
}

SitePanel::Row SitePanel::new_row(const QString& spoken, const QString& button_spoken, std::size_t which) {
  auto* name = new Choice(spoken, inside_);
  name->setToolTip(which == 0 ? tr("One that is easy to feel.") : tr("A second one makes the rest surer."));
  connect(name, &Choice::chosen, this, [this, which] { name_changed(which); });
  auto* click = action_button(
      inside_, tr("Click it…"), [this, which] { ask(which); }, button_spoken);
  click->setCheckable(true);
  return {name, click, std::nullopt};
}

// Pressed again it is asked for no more.
void SitePanel::ask(std::size_t which) {
  const bool again = asked_ == which;
  stop_asking();
  if (again) return;
  asked_ = which;
  rows_[which].click->setChecked(true);
  emit clickAsked(
      tr("Click the %1 on the body. Esc ends it.").arg(rows_[which].name->currentData().toString()));
}

void SitePanel::stop_asking() {
  if (!asked_) return;
  asked_.reset();
  for (const Row& row : rows_) row.click->setChecked(false);
  emit clickAsked({});
}

void SitePanel::hideEvent(QHideEvent* event) {
  stop_asking();
  StepForm::hideEvent(event);
}

void SitePanel::take_click(const Vec3& point_m) {
  if (!asked_) return;
  rows_[*asked_].point_m = point_m;
  stop_asking();
  mark();
}

// Another place is another landmark: it is clicked anew. Without the second one the first holds alone.
void SitePanel::name_changed(std::size_t which) {
  stop_asking();
  const bool counted = rows_[which].point_m.has_value();
  rows_[which].point_m.reset();
  refused_->hide();
  rows_[which].click->setEnabled(!rows_[which].name->currentData().toString().isEmpty());
  if (counted) mark();
}

void SitePanel::mark() {
  std::vector<Landmark> landmarks;
  for (const Row& row : rows_)
    if (row.point_m) landmarks.push_back({row.name->currentData().toString().toStdString(), *row.point_m});
  if (landmarks.empty() || !now().body()) return;
  auto marked = with_sites_marked(plan(), *now().body(), landmarks, marked_front_);
  refused_->setVisible(!marked.ok());
  if (!marked) return refused_->setText(text(marked.problem()));
  marked_front_ = marked->front;
  beyond_->setText(marked->beyond.empty() ? QString()
                                          : tr("Beyond the scan: %1").arg(joined_names(marked->beyond)));
  beyond_->setVisible(!marked->beyond.empty());
  status_->setToolTip(text(marked->rests_on));
  session().edit(tr("Mark where the bones are"), std::move(marked->plan));
}

void SitePanel::confirm(QListWidgetItem* item) {
  const auto row = static_cast<std::size_t>(list_->row(item));
  if (row >= listed_.size()) return;
  const bool ticked = item->checkState() == Qt::Checked;
  session().edit(ticked ? tr("Confirm a site") : tr("Doubt a site"),
                 with_site_confirmed(plan(), listed_[row], ticked));
}

void SitePanel::show_row(QListWidgetItem* item) {
  stop_asking();
  const auto row = static_cast<std::size_t>(list_->row(item));
  if (row < listed_.size()) emit placeAsked(plan().bony_sites[listed_[row]].point_m);
}

void SitePanel::drop() {
  const auto row = static_cast<std::size_t>(list_->currentRow());
  if (row < listed_.size())
    session().edit(tr("Drop a site"), without_place(plan(), {SkinPlace::Kind::kBonySite, listed_[row]}));
}

void SitePanel::show_state(const SessionState& now, const SessionState&) {
  const Body* body = now.body();
  const auto places = body ? places_to_mark(*now.plan, *body) : std::vector<StandardSite>{};
  const bool there = !places.empty() ||
                     (body && (!sites_to_decide(*now.plan, *body).empty() || proposed_in_label(*body) > 0));
  inside_->setVisible(there);
  if (!there) return stop_asking();
  if (now.check->body != body_) forget_landmarks(now.check->body);
  show_landmarks(places, places.empty() || side_is_clear(*now.plan, *body));
  show_list(*now.plan);
  status_->setText(status_words(now));
}

void SitePanel::forget_landmarks(std::shared_ptr<const ReadBody> body) {
  body_ = std::move(body);
  for (Row& row : rows_) row.point_m.reset();
  marked_front_.reset();
  refused_->hide();
  beyond_->hide();
}

void SitePanel::show_landmarks(const std::vector<StandardSite>& places, bool can_be_clicked) {
  for (std::size_t which = 0; which < rows_.size(); ++which) {
    Row& row = rows_[which];
    const auto entries = place_entries(places, which == 1);
    if (!holds(*row.name, entries)) {
      row.name->clear();
      row.name->add(entries);
      row.point_m.reset();
    }
    row.name->setVisible(!places.empty());
    row.click->setVisible(!places.empty());
    row.click->setEnabled(can_be_clicked && !row.name->currentData().toString().isEmpty());
  }
}

// In place where it can be: this may be the answer to a tick in the list.
void SitePanel::show_list(const Plan& plan) {
  const QSignalBlocker quiet(list_);
  listed_ = sites_to_decide(plan, *now().body());
  const int count = static_cast<int>(listed_.size()), chosen = list_->currentRow();
  while (list_->count() > count) delete list_->takeItem(list_->count() - 1);
  while (list_->count() < count) list_->addItem(QString());
  for (int row = 0; row < count; ++row) {
    const BonySite& site = plan.bony_sites[listed_[static_cast<std::size_t>(row)]];
    QListWidgetItem& item = *list_->item(row);
    item.setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item.setText(tr("%1 (%2)").arg(text(site.name), kind_words(site.kind)));
    item.setToolTip(text(table_words(site.words)));
    item.setCheckState(is_proposed(site) ? Qt::Unchecked : Qt::Checked);
  }
  list_->setCurrentRow(std::min(chosen, count - 1));
  drop_->setEnabled(list_->currentRow() >= 0);
  for (QWidget* widget : std::initializer_list<QWidget*>{list_, drop_}) widget->setVisible(count > 0);
  constexpr int kMostRows = 10;
  const int row_height = list_->sizeHintForRow(0) + 2 * kRowSpacing;
  if (count > 0)
    list_->setFixedHeight(std::min(count, kMostRows) * row_height + 2 * (list_->frameWidth() + kRowSpacing));
}

QString SitePanel::status_words(const SessionState& now) const {
  const auto& sites = now.plan->bony_sites;
  const auto proposed = std::count_if(listed_.begin(), listed_.end(),
                                      [&](std::size_t site) { return is_proposed(sites[site]); });
  const QString everywhere =
      now.plan->sites_confirmed ? QString() : tr("Until then every place is judged as over bone.");
  const auto with = [&](const QString& words) { return (words + QChar(' ') + everywhere).trimmed(); };
  if (const int of_label = proposed_in_label(*now.body()))
    return with(tr("%1 sites of the label beside the file are only proposed: confirm or drop them there.")
                    .arg(of_label));
  if (proposed > 0) return with(tr("%1 of %2 still to tick or drop.").arg(proposed).arg(listed_.size()));
  if (!listed_.empty()) return tr("All %1 are confirmed.").arg(listed_.size());
  if (!side_is_clear(*now.plan, *now.body())) return tr("Say first which side it is, left or right.");
  const QString how = tr("Choose a landmark, then click it on the body.");
  return sites.empty() ? with(how) : how;
}

}  // namespace wrapgauge
