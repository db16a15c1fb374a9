// The fields of one place on the skin: where it lies, what lies there, what the tissue is.

#include <QSignalBlocker>
#include <algorithm>

#include "app/desk/session/text.hpp"
#include "app/desk/window/skin_place_panel.hpp"

namespace wrapgauge {
namespace {

constexpr double kLeastBand_mm = 0.1, kLeastBand_deg = 0.1;

// What is chosen, as it is or to be changed; null: something else is.
auto* site_in(auto& plan, const std::optional<SkinPlace>& chosen) {
  return chosen && chosen->kind == SkinPlace::Kind::kBonySite ? &plan.bony_sites[chosen->index] : nullptr;
}
auto* region_in(auto& plan, const std::optional<SkinPlace>& chosen) {
  return chosen && chosen->kind == SkinPlace::Kind::kRegion ? &plan.regions[chosen->index] : nullptr;
}
auto* near_in(auto& plan, const std::optional<SkinPlace>& chosen) {
  auto* region = region_in(plan, chosen);
  return region ? std::get_if<NearPoint>(&region->place) : nullptr;
}
auto* band_in(auto& plan, const std::optional<SkinPlace>& chosen) {
  auto* region = region_in(plan, chosen);
  return region ? std::get_if<BetweenStations>(&region->place) : nullptr;
}

// The band grows from its first edge to its second, by a full turn at most.
void settle(BetweenStations& band) {
  band.to = std::max(band.to, band.from + kLeastBand_mm * mm);
  band.to_deg = std::clamp(band.to_deg, band.from_deg + kLeastBand_deg, band.from_deg + 360.0);
}

}  // namespace

void SkinPlacePanel::add_point() {
  name_ = new LineField(tr("Name of the place"), this);
  name_->setMaxLength(60);
  connect(name_, &QLineEdit::editingFinished, this, &SkinPlacePanel::rename);
  rows_.layout().addRow(tr("Name"), name_);
  rows_.layout().addRow(here_);
  const FieldText texts[] = {FieldText(tr("x"), tr("Place, x in the body's frame"), {}, "place x"),
                             FieldText(tr("y"), tr("Place, y in the body's frame")),
                             FieldText(tr("z"), tr("Place, z in the body's frame"))};
  for (int axis = 0; axis < 3; ++axis)
    rows_.number_by(
        texts[axis], kInMm.words, {-1e5, 1e5, 1, 1.0},
        [this, axis](const Plan& plan) {
          const auto point = chosen() ? skin_place_point_m(plan, *chosen()) : std::nullopt;
          return point ? std::optional(1e3 * (*point)[axis]) : std::nullopt;
        },
        [this, axis](Plan& plan, double value) {
          Vec3 point = skin_place_point_m(plan, *chosen()).value();
          point[axis] = 1e-3 * value;
          plan = with_place_at(std::move(plan), *chosen(), point);
        });
  rows_.also([this](const Plan& plan) {
    const auto place = chosen();
    const bool has_point = place && skin_place_point_m(plan, *place);
    for (QWidget* widget : std::initializer_list<QWidget*>{places_, remove_, show_})
      widget->setVisible(place.has_value());
    rows_.layout().setRowVisible(name_, place.has_value());
    if (place) name_->show_text(text(skin_place_name(plan, *place)));
    show_->setEnabled(has_point);
    here_->setEnabled(picked_m_ && has_point);
    rows_.layout().setRowVisible(here_, place && !band_in(plan, place));
  });
}

void SkinPlacePanel::add_site() {
  rows_.choice(FieldText(tr("What lies there"), tr("What lies under the skin there")),
               {{tr("bone"), int(SiteKind::kBone)},
                {tr("nerve"), int(SiteKind::kNerve)},
                {tr("vessel"), int(SiteKind::kVessel)},
                {tr("tendon"), int(SiteKind::kTendon)}},
               [this](auto& plan) {
                 auto* site = site_in(plan, chosen());
                 return site ? &site->kind : nullptr;
               });
  rows_.number(FieldText(tr("Depth to bone"), tr("Depth from skin to bone there"),
                         tr("The thinner the tissue, the higher it is pressed.")),
               kInMm, {0.5, 300.0, 1, 0.5}, [this](auto& plan) {
                 auto* site = site_in(plan, chosen());
                 return site ? &site->tissue_depth : nullptr;
               });
  rows_.choice_by(
      FieldText(tr("How sure"), tr("How sure place and depth are")),
      {{tr("not said"), QString()},
       {tr("only proposed"), QStringLiteral("proposed")},
       {tr("confirmed"), QStringLiteral("confirmed")},
       {tr("from memory"), QStringLiteral("from memory")},
       {tr("judgement"), QStringLiteral("judgement")},
       {tr("derived"), QStringLiteral("derived")},
       {tr("common practice"), QStringLiteral("common practice")}},
      [this](const Plan& plan) {
        const auto* site = site_in(plan, chosen());
        return site ? QVariant(text(site->status)) : QVariant();
      },
      [this](Plan& plan, const QVariant& value) {
        if (auto* site = site_in(plan, chosen())) site->status = value.toString().toStdString();
      });
  LineField* words = rows_.line_by(
      FieldText(tr("Words"), tr("What to mind there")),
      [this](const Plan& plan) {
        const auto* site = site_in(plan, chosen());
        return site ? std::optional(site->words) : std::nullopt;
      },
      [this](Plan& plan, const std::string& typed) {
        if (auto* site = site_in(plan, chosen())) site->words = typed;
      });
  words->setPlaceholderText(tr("what to mind there"));
}

void SkinPlacePanel::add_region() {
  add_near();
  add_band();
  rows_.box(FieldText(tr("No layout may lie there"), {}, {}, "no-go"), [this](auto& plan) {
    auto* region = region_in(plan, chosen());
    return region ? &region->no_go : nullptr;
  });
}

// A region's radius is its last distance where it goes by distances.
void SkinPlacePanel::add_near() {
  near_ = new Choice(tr("What the region lies near"), this);
  rows_.layout().addRow(tr("Near"), near_);
  connect(near_, &Choice::chosen, this, [this](const QVariant& value) {
    change_place({}, {}, [&](Plan& plan) { take_near(plan, value.toString().toStdString()); });
  });
  rows_.also([this](const Plan& plan) {
    const NearPoint* near = near_in(plan, chosen());
    rows_.layout().setRowVisible(near_, near != nullptr);
    if (near) fill_near(*near);
  });
  rows_.number_by(
      FieldText(tr("Radius"), tr("Radius of the place"), tr("Straight distance from its point."),
                "place radius"),
      kInMm.words, {1.0, 500.0, 1, 1.0},
      [this](const Plan& plan) -> std::optional<double> {
        const auto place = chosen();
        if (const auto* site = site_in(plan, place)) return site->radius / mm;
        const NearPoint* near = near_in(plan, place);
        if (!near || !region_in(plan, place)->by_distance.empty()) return std::nullopt;
        return near->radius / mm;
      },
      [this](Plan& plan, double value) {
        if (auto* site = site_in(plan, chosen())) site->radius = std::min(value, 200.0) * mm;
        if (NearPoint* near = near_in(plan, chosen())) near->radius = value * mm;
      });
}

void SkinPlacePanel::add_band() {
  const auto add = [this](const FieldText& text, const auto& unit, const NumberField::Range& range,
                          auto member) {
    rows_.number_by(
        text, unit.words, range,
        [this, unit, member](const Plan& plan) {
          const BetweenStations* band = band_in(plan, chosen());
          return unit.read(band ? &(band->*member) : nullptr);
        },
        [this, unit, member](Plan& plan, double value) {
          BetweenStations* band = band_in(plan, chosen());
          if (!band) return;
          unit.write(&(band->*member), value);
          settle(*band);
        });
  };
  const NumberField::Range stations{0.0, 3000.0, 1, 5.0}, angles{-360.0, 720.0, 1, 5.0};
  add(FieldText(tr("From station"), tr("Band from station")), kInMm, stations, &BetweenStations::from);
  add(FieldText(tr("To station"), tr("Band to station")), kInMm, stations, &BetweenStations::to);
  add(FieldText(tr("From angle"), tr("Band from angle")), kInDegrees, angles, &BetweenStations::from_deg);
  add(FieldText(tr("To angle"), tr("Band to angle"),
                tr("About the axis as for the anchor; 0 to 360 is all round.")),
      kInDegrees, angles, &BetweenStations::to_deg);
}

void SkinPlacePanel::add_tissue() {
  const auto plain = [this](auto& plan) {
    auto* region = region_in(plan, chosen());
    return region && region->by_distance.empty() ? region : nullptr;
  };
  rows_.optional(
      FieldText(tr("Depth to bone"), {}, tr("Skin to bone in the region.")), kInMm, {0.5, 300.0, 1, 0.5},
      [plain](auto& plan) { return plain(plan) ? &plain(plan)->tissue_depth : nullptr; }, 10.0);
  rows_.optional(
      FieldText(tr("Stiffness"), {}, tr("Times the modulus of the tissue chosen."), "region stiffness"),
      kTimes, {0.05, 20.0, 2, 0.1},
      [plain](auto& plan) { return plain(plan) ? &plain(plan)->stiffness_factor : nullptr; }, 1.0);
  rows_.number(FieldText(tr("Fade"), tr("Fade at the rim"),
                         tr("Width outside the region over which its surroundings take over; 0: at once.")),
               kInMm, {0.0, 200.0, 1, 1.0}, [this](auto& plan) {
                 auto* region = region_in(plan, chosen());
                 return region ? &region->fade : nullptr;
               });
  distances_ = new DistanceTable(this);
  rows_.layout().addRow(distances_);
  rows_.also([this](const Plan& plan) {
    const bool near = near_in(plan, chosen());
    rows_.layout().setRowVisible(distances_, near);
    if (near) distances_->show_steps(region_in(plan, chosen())->by_distance);
  });
  connect(distances_, &DistanceTable::edited, this, [this] {
    change_place({}, {},
                 [this](Plan& plan) { region_in(plan, chosen())->by_distance = distances_->steps(); });
  });
  connect(distances_, &DistanceTable::refused, this,
          [this](const QString& why) { emit problemMet(bad_input(why.toStdString())); });
}

void SkinPlacePanel::take_near(Plan& plan, const std::string& name) {
  NearPoint* near = near_in(plan, chosen());
  if (!near) return;
  near->landmark = name;
  if (!now().body()) return;
  for (const BonySite& site : now().body()->bony_sites)
    if (site.name == name) near->point_m = site.point_m;
}

// Landmarks and sites of the plan, and the sites its form brings.
void SkinPlacePanel::fill_near(const NearPoint& near) {
  const QSignalBlocker quiet(near_);
  near_->clear();
  near_->takes_unknown();
  near_->add(tr("its own point"), QString());
  for (const Landmark& landmark : plan().landmarks) near_->add(text(landmark.name), text(landmark.name));
  for (const BonySite& site : plan().bony_sites) near_->add(text(site.name), text(site.name));
  if (now().body() && std::holds_alternative<BodyForm>(plan().body))
    for (const BonySite& site : now().body()->bony_sites) near_->add(text(site.name), text(site.name));
  near_->show_value(text(near.landmark));
}

}  // namespace wrapgauge
