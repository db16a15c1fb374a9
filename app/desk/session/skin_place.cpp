#include "app/desk/session/skin_place.hpp"

#include <QCoreApplication>
#include <algorithm>

namespace wrapgauge {
namespace {

using Kind = SkinPlace::Kind;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(SkinPlace)
};

template <class Plan>
auto& name_of(Plan& plan, const SkinPlace& place) {
  if (place.kind == Kind::kBonySite) return plan.bony_sites[place.index].name;
  if (place.kind == Kind::kLandmark) return plan.landmarks[place.index].name;
  return plan.regions[place.index].name;
}

bool is_taken(const Plan& plan, const std::string& name) {
  const auto all = skin_places(plan);
  return std::any_of(all.begin(), all.end(),
                     [&](const SkinPlace& place) { return name_of(plan, place) == name; });
}

std::string free_name(const Plan& plan, const QString& word) {
  for (int number = 1;; ++number) {
    const std::string name = (word + QChar(' ') + QString::number(number)).toStdString();
    if (!is_taken(plan, name)) return name;
  }
}

template <class Each>
void each_region_near(Plan& plan, const std::string& name, Each act) {
  for (SkinRegion& region : plan.regions)
    if (auto* near = std::get_if<NearPoint>(&region.place); near && near->landmark == name) act(*near);
}

// The sites a form brings are not known here; their points are set when the plan is prepared.
std::optional<Vec3> point_called(const Plan& plan, const std::string& name) {
  for (const Landmark& landmark : plan.landmarks)
    if (landmark.name == name) return landmark.point_m;
  for (const BonySite& site : plan.bony_sites)
    if (site.name == name) return site.point_m;
  return std::nullopt;
}

void settle(SkinRegion& region, const Plan& plan) {
  if (auto* near = std::get_if<NearPoint>(&region.place)) {
    if (!near->landmark.empty()) near->point_m = point_called(plan, near->landmark).value_or(near->point_m);
    if (!region.by_distance.empty()) near->radius = region.by_distance.back().distance;
  } else {
    region.by_distance.clear();
  }
  if (!region.by_distance.empty()) {
    region.tissue_depth.reset();
    region.stiffness_factor.reset();
  } else if (!region.no_go && !region.tissue_depth && !region.stiffness_factor) {
    region.stiffness_factor = 1.0;
  }
}

template <class List>
void erase_at(List& list, std::size_t index) {
  list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
}

constexpr Length kNewRadius = 15.0 * mm, kNewFade = 10.0 * mm;

SkinRegion new_region(const Plan& plan, NewSkinPlace what, const Vec3& at_m) {
  SkinRegion region;
  region.no_go = what == NewSkinPlace::kNoGo;
  region.name = free_name(plan, region.no_go ? Words::tr("no-go") : Words::tr("region"));
  if (!region.no_go) region.stiffness_factor = 1.0;
  region.fade = kNewFade;
  if (what == NewSkinPlace::kTissueBand)
    region.place = BetweenStations{0.0 * mm, 50.0 * mm};
  else
    region.place = NearPoint{"", at_m, kNewRadius};
  return region;
}

}  // namespace

std::vector<SkinPlace> skin_places(const Plan& plan) {
  std::vector<SkinPlace> all;
  for (std::size_t i = 0; i < plan.bony_sites.size(); ++i) all.push_back({Kind::kBonySite, i});
  for (std::size_t i = 0; i < plan.landmarks.size(); ++i) all.push_back({Kind::kLandmark, i});
  for (std::size_t i = 0; i < plan.regions.size(); ++i) all.push_back({Kind::kRegion, i});
  return all;
}

const std::string& skin_place_name(const Plan& plan, const SkinPlace& place) {
  return name_of(plan, place);
}

QString skin_place_title(const Plan& plan, const SkinPlace& place) {
  const QString name = QString::fromStdString(name_of(plan, place));
  if (place.kind == Kind::kBonySite) return Words::tr("bony site: %1").arg(name);
  if (place.kind == Kind::kLandmark) return Words::tr("landmark: %1").arg(name);
  return (plan.regions[place.index].no_go ? Words::tr("no-go zone: %1") : Words::tr("region: %1")).arg(name);
}

std::optional<Vec3> skin_place_point_m(const Plan& plan, const SkinPlace& place) {
  if (place.kind == Kind::kBonySite) return plan.bony_sites[place.index].point_m;
  if (place.kind == Kind::kLandmark) return plan.landmarks[place.index].point_m;
  const auto* near = std::get_if<NearPoint>(&plan.regions[place.index].place);
  if (!near || !near->landmark.empty()) return std::nullopt;
  return near->point_m;
}

Plan with_new_place(Plan plan, NewSkinPlace what, const Vec3& at_m) {
  if (what == NewSkinPlace::kBonySite)
    plan.bony_sites.push_back(
        {free_name(plan, Words::tr("site")), at_m, kNewRadius, 5.0 * mm, SiteKind::kBone, "judgement", ""});
  else if (what == NewSkinPlace::kLandmark)
    plan.landmarks.push_back({free_name(plan, Words::tr("landmark")), at_m});
  else
    plan.regions.push_back(new_region(plan, what, at_m));
  return plan;
}

Plan with_place_at(Plan plan, const SkinPlace& place, const Vec3& point_m) {
  if (place.kind == Kind::kBonySite) plan.bony_sites[place.index].point_m = point_m;
  if (place.kind == Kind::kLandmark) plan.landmarks[place.index].point_m = point_m;
  if (place.kind == Kind::kRegion)
    if (auto* near = std::get_if<NearPoint>(&plan.regions[place.index].place)) {
      near->landmark.clear();
      near->point_m = point_m;
    }
  return with_places_settled(std::move(plan));
}

std::optional<Plan> with_place_name(Plan plan, const SkinPlace& place, const std::string& name) {
  if (name.empty() || is_taken(plan, name)) return std::nullopt;
  if (place.kind != Kind::kRegion)
    each_region_near(plan, name_of(plan, place), [&](NearPoint& near) { near.landmark = name; });
  name_of(plan, place) = name;
  return plan;
}

Plan without_place(Plan plan, const SkinPlace& place) {
  if (place.kind != Kind::kRegion)
    each_region_near(plan, name_of(plan, place), [](NearPoint& near) { near.landmark.clear(); });
  if (place.kind == Kind::kBonySite) erase_at(plan.bony_sites, place.index);
  if (place.kind == Kind::kLandmark) erase_at(plan.landmarks, place.index);
  if (place.kind == Kind::kRegion) erase_at(plan.regions, place.index);
  return plan;
}

Plan with_places_settled(Plan plan) {
  for (SkinRegion& region : plan.regions) settle(region, plan);
  return plan;
}

}  // namespace wrapgauge
