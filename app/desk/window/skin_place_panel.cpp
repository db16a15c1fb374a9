#include "app/desk/window/skin_place_panel.hpp"

#include <QHBoxLayout>
#include <QMenu>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/session/text.hpp"

namespace wrapgauge {
namespace {

using Kind = SkinPlace::Kind;

}  // namespace

SkinPlacePanel::SkinPlacePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      places_(new Choice(tr("Place on the skin"), this)),
      name_(new QLineEdit(this)),
      form_(column_form(nullptr)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  places_->setObjectName(QStringLiteral("skin places"));
  name_->setAccessibleName(tr("Name of the place"));
  name_->setMaxLength(60);
  column->addWidget(places_);
  make_buttons(*column);
  form_->addRow(tr("Name"), name_);
  make_point();
  make_site();
  make_region();
  make_tissue();
  column->addLayout(form_);
  connect(places_, &Choice::chosen, this, &SkinPlacePanel::show_fields);
  connect(name_, &QLineEdit::editingFinished, this, &SkinPlacePanel::rename);
}

void SkinPlacePanel::make_buttons(QLayout& column) {
  auto* row = new QHBoxLayout;
  add_ = new QPushButton(tr("Add"), this);
  add_->setAccessibleName(tr("Add a place on the skin"));
  add_->setToolTip(
      tr("Goes to the picked spot, else beside the layout: click a spot on the body first. What "
         "a form brings by itself is not listed here."));
  auto* menu = new QMenu(add_);
  const std::pair<QString, NewSkinPlace> all[] = {
      {tr("Bone, nerve, vessel or tendon under the skin"), NewSkinPlace::kBonySite},
      {tr("Landmark"), NewSkinPlace::kLandmark},
      {tr("No-go zone: no layout may lie there"), NewSkinPlace::kNoGo},
      {tr("Other tissue near a point"), NewSkinPlace::kTissueNear},
      {tr("Other tissue between two stations"), NewSkinPlace::kTissueBand}};
  for (const auto& [words, what] : all)
    menu->addAction(words, this, [this, what = what] { add_place(what); });
  add_->setMenu(menu);
  remove_ = new QPushButton(tr("Remove"), this);
  remove_->setAccessibleName(tr("Remove this place"));
  show_ = new QPushButton(tr("Show"), this);
  show_->setAccessibleName(tr("Show this place on the body"));
  for (QPushButton* button : {add_, remove_, show_}) row->addWidget(button, 1);
  static_cast<QVBoxLayout&>(column).addLayout(row);
  connect(remove_, &QPushButton::clicked, this, &SkinPlacePanel::remove);
  connect(show_, &QPushButton::clicked, this, [this] {
    const auto place = chosen();
    if (!place) return;
    if (const auto at = skin_place_point_m(plan(), *place)) emit placeAsked(*at);
  });
}

std::optional<SkinPlace> SkinPlacePanel::chosen() const {
  const auto all = skin_places(const_cast<SkinPlacePanel*>(this)->plan());
  const int at = places_->currentIndex();
  if (at < 0 || static_cast<std::size_t>(at) >= all.size()) return std::nullopt;
  return all[static_cast<std::size_t>(at)];
}

// The picked spot; else where the layout is anchored; else the distal end of the body.
Vec3 SkinPlacePanel::spot_m() const {
  if (picked_m_) return *picked_m_;
  const auto checked = const_cast<SkinPlacePanel*>(this)->session().last_checked();
  if (checked && checked->prepared) return checked->prepared->wrap.anchor_m;
  if (checked && checked->body) return checked->body->body.surface.vertices_m.row(0);
  return Vec3::Zero();
}

void SkinPlacePanel::show_picked(const std::optional<Vec3>& point_m) {
  picked_m_ = point_m;
  const auto place = chosen();
  here_->setEnabled(picked_m_ && place && skin_place_point_m(plan(), *place));
}

void SkinPlacePanel::add_place(NewSkinPlace what) {
  Plan changed = with_new_place(plan(), what, spot_m());
  const std::size_t site = changed.bony_sites.size(), landmark = changed.landmarks.size();
  session().edit(tr("Add a place"), std::move(changed));
  int at = places_->count() - 1;
  if (what == NewSkinPlace::kBonySite) at = static_cast<int>(site) - 1;
  if (what == NewSkinPlace::kLandmark) at = static_cast<int>(site + landmark) - 1;
  places_->setCurrentIndex(at);
  show_fields();
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
  emit problemMet(bad_input("name '" + name + "' is empty or used already: choose another one."));
  name_->setText(text(skin_place_name(plan(), *place)));
}

void SkinPlacePanel::change_place(const QString& merge, const std::function<void(Plan&, std::size_t)>& edit) {
  const auto place = chosen();
  if (!place) return;
  Plan changed = plan();
  edit(changed, place->index);
  session().edit(tr("Change a place"), with_places_settled(std::move(changed)),
                 QStringLiteral("place.%1.%2").arg(merge).arg(places_->currentIndex()));
}

void SkinPlacePanel::show_plan() {
  const QSignalBlocker quiet(places_);
  const int before = places_->currentIndex();
  places_->clear();
  for (const SkinPlace& place : skin_places(plan()))
    places_->add(skin_place_title(plan(), place), places_->count());
  places_->setCurrentIndex(std::min(std::max(before, 0), places_->count() - 1));
  show_fields();
}

void SkinPlacePanel::show_fields() {
  const auto place = chosen();
  const bool site = place && place->kind == Kind::kBonySite;
  const bool region = place && place->kind == Kind::kRegion;
  const SkinRegion* shown = region ? &plan().regions[place->index] : nullptr;
  const bool near = shown && std::holds_alternative<NearPoint>(shown->place);
  const auto point = place ? skin_place_point_m(plan(), *place) : std::nullopt;
  const bool by_distance = shown && !shown->by_distance.empty();
  places_->setVisible(place.has_value());
  remove_->setVisible(place.has_value());
  show_->setVisible(place.has_value());
  show_->setEnabled(point.has_value());
  here_->setEnabled(picked_m_ && point);
  const auto rows = [&](bool on, std::initializer_list<QWidget*> fields) {
    for (QWidget* field : fields) form_->setRowVisible(field, on);
  };
  rows(place.has_value(), {name_});
  rows(place && !(region && !near), {here_});
  rows(point.has_value(), {x_, y_, z_});
  rows(site, {kind_, site_depth_, status_, words_});
  rows(near, {near_, distances_});
  rows(site || (near && !by_distance), {radius_});
  rows(region && !near, {from_, to_, from_angle_, to_angle_});
  rows(region, {no_go_, fade_});
  rows(region && !by_distance, {depth_.field, factor_.field});
  if (!place) return;
  name_->setText(text(skin_place_name(plan(), *place)));
  if (point) {
    x_->show_value(1e3 * point->x());
    y_->show_value(1e3 * point->y());
    z_->show_value(1e3 * point->z());
  }
  if (site) show_site(plan().bony_sites[place->index]);
  if (region) show_region(*shown);
}

}  // namespace wrapgauge
