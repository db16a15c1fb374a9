#include "model/plan/site_json.hpp"

#include "model/body/part_rules.hpp"
#include "model/plan/plan_numbers.hpp"

namespace wrapgauge {

BonySite site_from_json(JsonObject& object) {
  BonySite site;
  site.name = object.text("name");
  site.point_m = point_m(object, "point_mm");
  site.radius = object.number("radius_mm", {1.0, 200.0, "mm"}) * mm;
  site.tissue_depth = object.number("tissue_depth_mm", kDepth) * mm;
  if (object.has("kind"))
    site.kind = site_kind_from_name(object.choice("kind", {"bone", "nerve", "vessel", "tendon"}))
                    .value_or(SiteKind::kBone);
  if (object.has("status"))
    site.status = object.choice(
        "status", {"confirmed", "from memory", "judgement", "derived", "common practice", kProposedSite});
  site.words = object.text_or("words", "");
  return site;
}

nlohmann::ordered_json sites_to_json(const std::vector<BonySite>& sites) {
  auto out = nlohmann::ordered_json::array();
  for (const BonySite& site : sites) {
    nlohmann::ordered_json item{{"name", site.name},
                                {"point_mm", in_mm(site.point_m)},
                                {"radius_mm", tidy(site.radius / mm)},
                                {"tissue_depth_mm", tidy(site.tissue_depth / mm)}};
    if (site.kind != SiteKind::kBone) item["kind"] = site_kind_name(site.kind);
    if (!site.status.empty()) item["status"] = site.status;
    if (!site.words.empty()) item["words"] = site.words;
    out.push_back(std::move(item));
  }
  return out;
}

Vec3 direction_from_json(JsonObject& object, const char* key, const Phrase& advice) {
  const std::vector<double> xyz = object.numbers(key, 3, {-1e6, 1e6, ""});
  const Vec3 direction(xyz[0], xyz[1], xyz[2]);
  if (!object.failed() && direction.norm() < 1e-6)
    object.fail(Phrase::worded("%1 has no length; %2.", {name_of(key), advice}));
  return object.failed() ? Vec3(Vec3::UnitZ()) : Vec3(direction.normalized());
}

nlohmann::ordered_json direction_to_json(const Vec3& direction) {
  return {tidy(direction.x()), tidy(direction.y()), tidy(direction.z())};
}

}  // namespace wrapgauge
