#include "model/plan/region_json.hpp"

#include <algorithm>

#include "model/plan/plan_numbers.hpp"

namespace wrapgauge {
namespace {

using nlohmann::ordered_json;

constexpr NumberRange kFactor{0.05, 20.0, ""};

// A form's own sites are known only when it is built, so a name may be left for later.
NearPoint near_landmark(JsonObject& object, const std::vector<Landmark>& landmarks, bool form) {
  NearPoint place;
  place.landmark = object.text("near");
  std::string known;
  for (const Landmark& landmark : landmarks) {
    known += (known.empty() ? "'" : ", '") + landmark.name + "'";
    if (landmark.name == place.landmark) place.point_m = landmark.point_m;
  }
  const bool found = std::any_of(landmarks.begin(), landmarks.end(),
                                 [&](const Landmark& landmark) { return landmark.name == place.landmark; });
  if (!object.failed() && !found && !form)
    object.fail(
        Phrase::worded("near names the landmark '%1'; the plan has %2.",
                       {name_of(place.landmark), known.empty() ? Phrase::worded("none") : name_of(known)}));
  return place;
}

BetweenStations between_stations(JsonObject& object) {
  BetweenStations place;
  const std::vector<double> stations = object.numbers("stations_mm", 2, kStation);
  place.from = stations[0] * mm;
  place.to = stations[1] * mm;
  if (!object.failed() && place.to <= place.from)
    object.fail(Phrase::worded("stations_mm must grow: the smaller one first."));
  if (!object.has("angles_deg")) return place;
  const std::vector<double> angles = object.numbers("angles_deg", 2, {-360.0, 720.0, "degrees"});
  place.from_deg = angles[0];
  place.to_deg = angles[1];
  if (!object.failed() && (place.to_deg <= place.from_deg || place.to_deg > place.from_deg + 360.0))
    object.fail(Phrase::worded("angles_deg must grow by at most 360, e.g. [330, 390]."));
  return place;
}

TissueAtDistance tissue_at_distance(JsonObject& object) {
  TissueAtDistance step;
  step.distance = object.number("at_mm", {0.0, 500.0, "mm"}) * mm;
  if (const auto depth = object.optional_number("tissue_depth_mm", kDepth)) step.tissue_depth = *depth * mm;
  step.stiffness_factor = object.optional_number("stiffness_factor", kFactor);
  return step;
}

std::vector<TissueAtDistance> by_distance(JsonObject& object) {
  std::vector<TissueAtDistance> steps;
  int number = 0;
  for (const nlohmann::json& value : object.list("by_distance")) {
    if (object.failed()) return steps;
    JsonObject item(value, object.place("by_distance") + " " + std::to_string(++number));
    steps.push_back(tissue_at_distance(item));
    if (!item.failed() && !steps.back().tissue_depth && !steps.back().stiffness_factor)
      item.fail(Phrase::worded("says nothing: give tissue_depth_mm or stiffness_factor."));
    if (!item.failed() && number > 1) {
      const TissueAtDistance &before = steps[steps.size() - 2], &now = steps.back();
      if (now.distance <= before.distance)
        item.fail(Phrase::worded("at_mm must grow from one distance to the next."));
      if (before.tissue_depth.has_value() != now.tissue_depth.has_value() ||
          before.stiffness_factor.has_value() != now.stiffness_factor.has_value())
        item.fail(
            Phrase::worded("names tissue_depth_mm or stiffness_factor where the one before does not, or the "
                           "other way round; all distances must name the same."));
    }
    if (auto problem = item.finish()) object.fail(std::move(*problem));
  }
  if (!object.failed() && steps.size() < 2)
    object.fail(Phrase::worded("by_distance needs two distances or more."));
  return steps;
}

// The radius of a region that goes by distance is its last distance.
Length radius_of(JsonObject& object, const SkinRegion& region) {
  if (region.by_distance.empty()) return object.number("radius_mm", {1.0, 500.0, "mm"}) * mm;
  if (object.has("radius_mm"))
    object.fail(Phrase::worded("give radius_mm or by_distance, not both: the last distance is the radius."));
  return region.by_distance.back().distance;
}

void write_place(const NearPoint& place, ordered_json& out) {
  if (place.landmark.empty())
    out["point_mm"] = in_mm(place.point_m);
  else
    out["near"] = place.landmark;
}

void write_place(const BetweenStations& place, ordered_json& out) {
  out["stations_mm"] = {tidy(place.from / mm), tidy(place.to / mm)};
  out["angles_deg"] = {place.from_deg, place.to_deg};
}

ordered_json distance_to_json(const TissueAtDistance& step) {
  ordered_json out{{"at_mm", tidy(step.distance / mm)}};
  if (step.tissue_depth) out["tissue_depth_mm"] = tidy(*step.tissue_depth / mm);
  if (step.stiffness_factor) out["stiffness_factor"] = *step.stiffness_factor;
  return out;
}

}  // namespace

Landmark landmark_from_json(JsonObject& object) {
  return {object.text("name"), point_m(object, "point_mm")};
}

SkinRegion region_from_json(JsonObject& object, const std::vector<Landmark>& landmarks, bool form) {
  SkinRegion region;
  region.name = object.text("name");
  const bool by_name = object.has("near"), by_point = object.has("point_mm"),
             by_station = object.has("stations_mm");
  if (!object.failed() && by_name + by_point + by_station != 1)
    object.fail(Phrase::worded("give exactly one of near, point_mm and stations_mm."));
  if (object.has("by_distance")) region.by_distance = by_distance(object);
  if (by_station && !object.failed() && !region.by_distance.empty())
    object.fail(Phrase::worded("by_distance needs a region near a point, not between stations."));
  if (by_station) {
    region.place = between_stations(object);
  } else {
    NearPoint place =
        by_name ? near_landmark(object, landmarks, form) : NearPoint{"", point_m(object, "point_mm"), {}};
    place.radius = radius_of(object, region);
    region.place = place;
  }
  region.no_go = object.flag_or("no_go", false);
  if (const auto depth = object.optional_number("tissue_depth_mm", kDepth)) region.tissue_depth = *depth * mm;
  region.stiffness_factor = object.optional_number("stiffness_factor", kFactor);
  region.fade = object.number_or("fade_mm", 10.0, {0.0, 200.0, "mm"}) * mm;
  const bool plain = region.tissue_depth || region.stiffness_factor;
  if (!object.failed() && plain && !region.by_distance.empty())
    object.fail(Phrase::worded("give by_distance, or tissue_depth_mm and stiffness_factor, not both."));
  if (!object.failed() && !region.no_go && !plain && region.by_distance.empty())
    object.fail(
        Phrase::worded("says nothing: give no_go, tissue_depth_mm, stiffness_factor or by_distance."));
  return region;
}

ordered_json landmarks_to_json(const std::vector<Landmark>& landmarks) {
  ordered_json out = ordered_json::array();
  for (const Landmark& landmark : landmarks)
    out.push_back({{"name", landmark.name}, {"point_mm", in_mm(landmark.point_m)}});
  return out;
}

ordered_json regions_to_json(const std::vector<SkinRegion>& regions) {
  ordered_json out = ordered_json::array();
  for (const SkinRegion& region : regions) {
    ordered_json item{{"name", region.name}};
    std::visit([&](const auto& place) { write_place(place, item); }, region.place);
    const auto* near = std::get_if<NearPoint>(&region.place);
    if (near && region.by_distance.empty()) item["radius_mm"] = tidy(near->radius / mm);
    for (const TissueAtDistance& step : region.by_distance)
      item["by_distance"].push_back(distance_to_json(step));
    if (region.no_go) item["no_go"] = true;
    if (region.tissue_depth) item["tissue_depth_mm"] = tidy(*region.tissue_depth / mm);
    if (region.stiffness_factor) item["stiffness_factor"] = *region.stiffness_factor;
    item["fade_mm"] = tidy(region.fade / mm);
    out.push_back(std::move(item));
  }
  return out;
}

}  // namespace wrapgauge
