// The fields of one place on the skin: where it lies, what lies there, what the tissue is.

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <algorithm>

#include "app/desk/session/text.hpp"
#include "app/desk/window/skin_place_panel.hpp"

namespace wrapgauge {
void SkinPlacePanel::make_point() {
  here_ = new QPushButton(tr("Put it at the picked spot"), this);
  here_->setToolTip(tr("Click a spot on the body first."));
  const QString mm_unit = QStringLiteral("mm");
  const NumberField::Range range{-1e5, 1e5, 1, 1.0};
  x_ = new NumberField(tr("Place, x in the body's frame"), mm_unit, range, this);
  y_ = new NumberField(tr("Place, y in the body's frame"), mm_unit, range, this);
  z_ = new NumberField(tr("Place, z in the body's frame"), mm_unit, range, this);
  x_->setObjectName(QStringLiteral("place x"));
  form_->addRow(here_);
  form_->addRow(tr("x"), x_);
  form_->addRow(tr("y"), y_);
  form_->addRow(tr("z"), z_);
  for (NumberField* field : {x_, y_, z_})
    connect(field, &NumberField::edited, this, &SkinPlacePanel::take_point);
  connect(here_, &QPushButton::clicked, this, [this] {
    const auto place = chosen();
    if (place && picked_m_) session().edit(tr("Move a place"), with_place_at(plan(), *place, *picked_m_));
  });
}

void SkinPlacePanel::make_site() {
  const QString mm_unit = QStringLiteral("mm");
  kind_ = new Choice(tr("What lies under the skin there"), this);
  kind_->add(tr("bone"), int(SiteKind::kBone));
  kind_->add(tr("nerve"), int(SiteKind::kNerve));
  kind_->add(tr("vessel"), int(SiteKind::kVessel));
  kind_->add(tr("tendon"), int(SiteKind::kTendon));
  site_depth_ = new NumberField(tr("Depth from skin to bone there"), mm_unit, {0.5, 300.0, 1, 0.5}, this);
  site_depth_->say_source(tr("The thinner the tissue, the higher it is pressed."));
  status_ = new Choice(tr("How sure place and depth are"), this);
  status_->add(tr("not said"), QString());
  for (const auto& [shown, kept] :
       {std::pair(tr("confirmed"), "confirmed"), std::pair(tr("from memory"), "from memory"),
        std::pair(tr("judgement"), "judgement"), std::pair(tr("derived"), "derived"),
        std::pair(tr("common practice"), "common practice")})
    status_->add(shown, QString::fromLatin1(kept));
  words_ = new QLineEdit(this);
  words_->setAccessibleName(tr("What to mind there"));
  words_->setPlaceholderText(tr("what to mind there"));
  form_->addRow(tr("What lies there"), kind_);
  form_->addRow(tr("Depth to bone"), site_depth_);
  form_->addRow(tr("How sure"), status_);
  form_->addRow(tr("Words"), words_);
  connect(kind_, &Choice::chosen, this, [this](const QVariant& value) {
    change_place({}, [&](Plan& plan, std::size_t i) {
      plan.bony_sites[i].kind = static_cast<SiteKind>(value.toInt());
    });
  });
  connect(status_, &Choice::chosen, this, [this](const QVariant& value) {
    change_place(
        {}, [&](Plan& plan, std::size_t i) { plan.bony_sites[i].status = value.toString().toStdString(); });
  });
  connect(site_depth_, &NumberField::edited, this, [this](double value) {
    change_place(QStringLiteral("depth"),
                 [&](Plan& plan, std::size_t i) { plan.bony_sites[i].tissue_depth = value * mm; });
  });
  connect(words_, &QLineEdit::editingFinished, this, [this] {
    change_place({}, [&](Plan& plan, std::size_t i) {
      plan.bony_sites[i].words = words_->text().trimmed().toStdString();
    });
  });
}

void SkinPlacePanel::make_region() {
  const QString mm_unit = QStringLiteral("mm"), degrees = QStringLiteral("°");
  near_ = new Choice(tr("What the region lies near"), this);
  radius_ = new NumberField(tr("Radius of the place"), mm_unit, {1.0, 500.0, 1, 1.0}, this);
  radius_->setObjectName(QStringLiteral("place radius"));
  radius_->say_source(tr("Straight distance from its point."));
  from_ = new NumberField(tr("Band from station"), mm_unit, {0.0, 3000.0, 1, 5.0}, this);
  to_ = new NumberField(tr("Band to station"), mm_unit, {0.0, 3000.0, 1, 5.0}, this);
  from_angle_ = new NumberField(tr("Band from angle"), degrees, {-360.0, 720.0, 1, 5.0}, this);
  to_angle_ = new NumberField(tr("Band to angle"), degrees, {-360.0, 720.0, 1, 5.0}, this);
  to_angle_->say_source(tr("About the axis as for the anchor; 0 to 360 is all round."));
  no_go_ = new QCheckBox(tr("No layout may lie there"), this);
  no_go_->setObjectName(QStringLiteral("no-go"));
  form_->addRow(tr("Near"), near_);
  form_->addRow(tr("Radius"), radius_);
  form_->addRow(tr("From station"), from_);
  form_->addRow(tr("To station"), to_);
  form_->addRow(tr("From angle"), from_angle_);
  form_->addRow(tr("To angle"), to_angle_);
  form_->addRow(no_go_);
  connect(near_, &Choice::chosen, this, [this](const QVariant& value) { take_near(value.toString()); });
  connect(radius_, &NumberField::edited, this, [this](double value) {
    const bool site = chosen() && chosen()->kind == SkinPlace::Kind::kBonySite;
    change_place(QStringLiteral("radius"), [&](Plan& plan, std::size_t i) {
      if (site)
        plan.bony_sites[i].radius = std::min(value, 200.0) * mm;
      else if (auto* near = std::get_if<NearPoint>(&plan.regions[i].place))
        near->radius = value * mm;
    });
  });
  for (NumberField* field : {from_, to_, from_angle_, to_angle_})
    connect(field, &NumberField::edited, this, &SkinPlacePanel::take_band);
  connect(no_go_, &QCheckBox::clicked, this, [this](bool on) {
    change_place({}, [&](Plan& plan, std::size_t i) { plan.regions[i].no_go = on; });
  });
}

void SkinPlacePanel::make_tissue() {
  const auto take = [this] {
    change_place(QStringLiteral("tissue"), [this](Plan& plan, std::size_t i) {
      const auto depth = depth_.value();
      plan.regions[i].tissue_depth = depth ? std::optional(*depth * mm) : std::nullopt;
      plan.regions[i].stiffness_factor = factor_.value();
    });
  };
  depth_ = optional_number(this, tr("Depth to bone"), QStringLiteral("mm"), {0.5, 300.0, 1, 0.5},
                           tr("Skin to bone in the region."), take);
  factor_ = optional_number(this, tr("Stiffness"), QStringLiteral("×"), {0.05, 20.0, 2, 0.1},
                            tr("Times the modulus of the tissue chosen."), take);
  factor_.field->setObjectName(QStringLiteral("region stiffness"));
  fade_ = new NumberField(tr("Fade at the rim"), QStringLiteral("mm"), {0.0, 200.0, 1, 1.0}, this);
  fade_->say_source(tr("Width outside the region over which its surroundings take over; 0: at once."));
  distances_ = new DistanceTable(this);
  form_->addRow(depth_.box, depth_.field);
  form_->addRow(factor_.box, factor_.field);
  form_->addRow(tr("Fade"), fade_);
  form_->addRow(distances_);
  connect(fade_, &NumberField::edited, this, [this](double value) {
    change_place(QStringLiteral("fade"),
                 [&](Plan& plan, std::size_t i) { plan.regions[i].fade = value * mm; });
  });
  connect(distances_, &DistanceTable::edited, this, &SkinPlacePanel::take_distances);
  connect(distances_, &DistanceTable::refused, this,
          [this](const QString& why) { emit problemMet(bad_input(why.toStdString())); });
}

void SkinPlacePanel::take_point() {
  const auto place = chosen();
  if (!place) return;
  session().edit(tr("Move a place"),
                 with_place_at(plan(), *place, 1e-3 * Vec3(x_->value(), y_->value(), z_->value())),
                 QStringLiteral("place.point.%1").arg(places_->currentIndex()));
}

void SkinPlacePanel::take_near(const QString& name) {
  change_place({}, [&](Plan& plan, std::size_t i) {
    auto& near = std::get<NearPoint>(plan.regions[i].place);
    near.landmark = name.toStdString();
    if (const auto checked = session().last_checked(); checked && checked->body)
      for (const BonySite& site : checked->body->body.bony_sites)
        if (site.name == near.landmark) near.point_m = site.point_m;
  });
}

// The band grows from its first edge to its second, by a full turn at most.
void SkinPlacePanel::take_band() {
  constexpr double kLeast_mm = 0.1, kLeast_deg = 0.1;
  const double from = from_->value(), from_angle = from_angle_->value();
  change_place(QStringLiteral("band"), [&](Plan& plan, std::size_t i) {
    plan.regions[i].place =
        BetweenStations{from * mm, std::max(to_->value(), from + kLeast_mm) * mm, from_angle,
                        std::clamp(to_angle_->value(), from_angle + kLeast_deg, from_angle + 360.0)};
  });
}

void SkinPlacePanel::take_distances() {
  change_place({}, [this](Plan& plan, std::size_t i) { plan.regions[i].by_distance = distances_->steps(); });
}

void SkinPlacePanel::show_site(const BonySite& site) {
  kind_->show_value(int(site.kind));
  radius_->show_value(site.radius / mm);
  site_depth_->show_value(site.tissue_depth / mm);
  status_->show_value(text(site.status));
  words_->setText(text(site.words));
}

// Landmarks and sites of the plan, and the sites its form brings.
void SkinPlacePanel::fill_near(const SkinRegion& region) {
  const QSignalBlocker quiet(near_);
  near_->clear();
  near_->add(tr("its own point"), QString());
  for (const Landmark& landmark : plan().landmarks) near_->add(text(landmark.name), text(landmark.name));
  for (const BonySite& site : plan().bony_sites) near_->add(text(site.name), text(site.name));
  if (const auto checked = session().last_checked();
      checked && checked->body && std::holds_alternative<BodyForm>(plan().body))
    for (const BonySite& site : checked->body->body.bony_sites) near_->add(text(site.name), text(site.name));
  const QString now = text(std::get<NearPoint>(region.place).landmark);
  if (near_->findData(now) < 0) near_->add(now, now);
  near_->show_value(now);
}

void SkinPlacePanel::show_region(const SkinRegion& region) {
  if (const auto* near = std::get_if<NearPoint>(&region.place)) {
    fill_near(region);
    radius_->show_value(near->radius / mm);
    distances_->show_steps(region.by_distance);
  } else {
    const auto& band = std::get<BetweenStations>(region.place);
    from_->show_value(band.from / mm);
    to_->show_value(band.to / mm);
    from_angle_->show_value(band.from_deg);
    to_angle_->show_value(band.to_deg);
  }
  no_go_->setChecked(region.no_go);
  depth_.show(region.tissue_depth ? std::optional(*region.tissue_depth / mm) : std::nullopt, 10.0);
  factor_.show(region.stiffness_factor, 1.0);
  fade_->show_value(region.fade / mm);
}

}  // namespace wrapgauge
