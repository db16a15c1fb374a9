#include "app/desk/window/skin_place_panel.hpp"

#include <QMenu>
#include <QSignalBlocker>
#include <algorithm>
#include <functional>

#include "app/desk/session/text.hpp"

namespace wrapgauge {

SkinPlacePanel::SkinPlacePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      places_(new Choice(tr("Place on the skin"), this)),
      remove_(action_button(
          this, tr("Remove"), [this] { remove(); }, tr("Remove this place"))),
      show_(action_button(
          this, tr("Show"), [this] { ask_for_place(); }, tr("Show this place on the body"))),
      here_(action_button(this, tr("Put it at the picked spot"), [this] { put_at_picked(); })),
      rows_(this, column_form(nullptr), std::bind_front(&SkinPlacePanel::change_place, this), true) {
  places_->setObjectName(QStringLiteral("skin places"));
  here_->setToolTip(tr("Click a spot on the body first."));
  QVBoxLayout* column = plain_column(this);
  column->addWidget(places_);
  add_row(*column, {add_button(), remove_, show_});
  column->addLayout(&rows_.layout());
  add_point();
  add_site();
  add_region();
  add_tissue();
  connect(places_, &Choice::chosen, this, [this] { rows_.show(plan()); });
}

QPushButton* SkinPlacePanel::add_button() {
  auto* add = new QPushButton(tr("Add"), this);
  add->setAccessibleName(tr("Add a place on the skin"));
  add->setToolTip(
      tr("Goes to the picked spot, else beside the layout: click a spot on the body first. Sites that the "
         "form brings are not listed here."));
  auto* menu = new QMenu(add);
  const std::pair<QString, NewSkinPlace> all[] = {
      {tr("Bone, nerve, vessel or tendon under the skin"), NewSkinPlace::kBonySite},
      {tr("Landmark"), NewSkinPlace::kLandmark},
      {tr("No-go zone: no layout may lie there"), NewSkinPlace::kNoGo},
      {tr("Other tissue near a point"), NewSkinPlace::kTissueNear},
      {tr("Other tissue between two stations"), NewSkinPlace::kTissueBand}};
  for (const auto& [words, what] : all)
    menu->addAction(words, this, [this, what = what] { add_place(what); });
  add->setMenu(menu);
  return add;
}

std::optional<SkinPlace> SkinPlacePanel::chosen() const {
  const auto all = skin_places(plan());
  const int at = places_->currentIndex();
  if (at < 0 || static_cast<std::size_t>(at) >= all.size()) return std::nullopt;
  return all[static_cast<std::size_t>(at)];
}

// The picked spot; else where the layout is anchored; else the distal end of the body.
Vec3 SkinPlacePanel::spot_m() const {
  if (picked_m_) return *picked_m_;
  if (now().check && now().check->prepared) return now().check->prepared->wrap.anchor_m;
  if (now().body()) return now().body()->surface.vertices_m.row(0);
  return Vec3::Zero();
}

void SkinPlacePanel::show_picked(const std::optional<Vec3>& point_m) {
  picked_m_ = point_m;
  rows_.show(plan());
}

void SkinPlacePanel::ask_for_place() {
  const auto place = chosen();
  if (!place) return;
  if (const auto at = skin_place_point_m(plan(), *place)) emit placeAsked(*at);
}

void SkinPlacePanel::put_at_picked() {
  const auto place = chosen();
  if (place && picked_m_) session().edit(tr("Move a place"), with_place_at(plan(), *place, *picked_m_));
}

void SkinPlacePanel::add_place(NewSkinPlace what) {
  Plan changed = with_new_place(plan(), what, spot_m());
  const std::size_t site = changed.bony_sites.size(), landmark = changed.landmarks.size();
  session().edit(tr("Add a place"), std::move(changed));
  int at = places_->count() - 1;
  if (what == NewSkinPlace::kBonySite) at = static_cast<int>(site) - 1;
  if (what == NewSkinPlace::kLandmark) at = static_cast<int>(site + landmark) - 1;
  places_->setCurrentIndex(at);
  rows_.show(plan());
}

void SkinPlacePanel::remove() {
  if (const auto place = chosen()) session().edit(tr("Remove a place"), without_place(plan(), *place));
}

void SkinPlacePanel::rename() {
  const auto place = chosen();
  const std::string name = name_->text().trimmed().toStdString();
  if (!place || skin_place_name(plan(), *place) == name) return;
  if (auto renamed = with_place_name(plan(), *place, name))
    return session().edit(tr("Rename a place"), std::move(*renamed));
  emit problemMet(
      bad_input(Phrase::worded("name '%1' is empty or used already: choose another one.", {name_of(name)})));
  name_->setText(text(skin_place_name(plan(), *place)));
}

void SkinPlacePanel::change_place(const QString&, const QString& merge,
                                  const std::function<void(Plan&)>& edit) {
  const QString at =
      merge.isEmpty() ? merge : QStringLiteral("place.%1.%2").arg(merge).arg(places_->currentIndex());
  change(tr("Change a place"), at, [&](Plan& plan) {
    edit(plan);
    plan = with_places_settled(std::move(plan));
  });
}

void SkinPlacePanel::show_state(const SessionState& now, const SessionState& before) {
  if (now.plan != before.plan) {
    const QSignalBlocker quiet(places_);
    const int shown = places_->currentIndex();
    places_->clear();
    for (const SkinPlace& place : skin_places(*now.plan))
      places_->add(skin_place_title(*now.plan, place), places_->count());
    places_->setCurrentIndex(std::min(std::max(shown, 0), places_->count() - 1));
  }
  rows_.show(*now.plan);
}

}  // namespace wrapgauge
