#include "model/material/tissue.hpp"

#include <cmath>
#include <set>
#include <utility>

#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

Result<TissueSite> site_from_json(const nlohmann::json& value, const std::string& where) {
  JsonObject object(value, where);
  TissueSite site;
  site.name = object.text("name");
  site.young = object.number("young_kpa", {0.1, 1e4, "kPa"}) * kPa;
  site.poisson = object.number("poisson", {0.0, 0.49, ""});
  site.depth = object.number("depth_mm", {0.5, 300.0, "mm"}) * mm;
  site.source = object.text("source");
  site.status = object.status("status");
  if (auto problem = object.finish()) return *problem;
  return site;
}

}  // namespace

Result<FoundationModulus> foundation_modulus(Pressure young, double poisson, Length depth) {
  if (!(young.si() > 0.0) || !std::isfinite(young.si())) {
    return bad_input(Phrase::worded(
        "Tissue with a Young's modulus of %1 kPa cannot carry pressure; give a value above 0 kPa.",
        {figures_of(number_text(young / kPa))}));
  }
  if (!(poisson >= 0.0 && poisson <= 0.49)) {
    return bad_input(Phrase::worded(
        "A Poisson ratio of %1 is outside 0 to 0.49, where the tissue layer formula holds; give one inside.",
        {figures_of(number_text(poisson))}));
  }
  if (!(depth.si() > 0.0) || !std::isfinite(depth.si())) {
    return bad_input(Phrase::worded("A tissue depth of %1 mm is not a layer; give a value above 0 mm.",
                                    {figures_of(number_text(depth / mm))}));
  }
  const double confinement = (1.0 - poisson) / ((1.0 + poisson) * (1.0 - 2.0 * poisson));
  return confinement * young / depth;
}

Result<std::vector<TissueSite>> read_tissue_sites(const std::filesystem::path& file) {
  const Result<nlohmann::json> json = read_json(file);
  if (!json) return json.problem();
  JsonObject table(*json, file.filename().string());
  table.format_one("wrapgauge-tissues");
  std::vector<TissueSite> sites;
  std::set<std::string> names;
  for (const nlohmann::json& row : table.list("sites")) {
    const std::string where = table.place("site ") + std::to_string(sites.size() + 1);
    Result<TissueSite> site = site_from_json(row, where);
    if (!site) return site.problem();
    if (!names.insert(site->name).second)
      return bad_input(Phrase::worded("%1: the name \"%2\" stands twice; rename one.",
                                      {name_of(where), name_of(site->name)}));
    sites.push_back(std::move(site).value());
  }
  if (!table.failed() && sites.empty()) table.fail(Phrase::worded("has no sites; give at least one."));
  if (auto problem = table.finish()) return *problem;
  return sites;
}

Result<TissueSite> find_tissue(const std::vector<TissueSite>& sites, const std::string& name) {
  std::string known;
  for (const TissueSite& site : sites) {
    if (site.name == name) return site;
    known += (known.empty() ? "\"" : ", \"") + site.name + "\"";
  }
  return bad_input(
      Phrase::worded("No tissue site is called \"%1\"; known: %2.", {name_of(name), name_of(known)}));
}

}  // namespace wrapgauge
