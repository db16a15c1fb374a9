#include "app/command/form_report.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "app/command/body_output.hpp"
#include "bodyforms/anthropometry.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

constexpr const char* kSampleCaution =
    "Percentiles are those of soldiers (ANSUR II 2012: 4082 men, 1986 women, median age 27 to 28), fitter "
    "than "
    "the public, and nobody is at the same percentile of every measure. The wearer's own tape values are "
    "better.";
constexpr const char* kSiteCaution =
    "places from memory of anatomy, radii and depths judgement; people differ, so feel for them";

double rounded(double value) {
  return std::round(value * 1e4) / 1e4;
}

std::string source_of(const FormOrder& order, const FormParameter& parameter) {
  return order.given.contains(parameter.name) ? "as given" : parameter.source;
}

const FormParameter& parameter_of(const Form& form, const std::string& name) {
  return *std::find_if(form.parameters.begin(), form.parameters.end(),
                       [&](const FormParameter& parameter) { return parameter.name == name; });
}

bool uses_survey(const FormOrder& order, const Form& form) {
  return std::any_of(form.parameters.begin(), form.parameters.end(), [&](const FormParameter& parameter) {
    return parameter.follows_person() && !order.given.contains(parameter.name);
  });
}

std::string percent_text(double made, double asked) {
  return fixed_text(100.0 * (made / asked - 1.0), 2) + " %";
}

Json body_of_plan(const FormOrder& order) {
  Json body{{"form", order.form}};
  if (order.person.sex) body["sex"] = sex_name(*order.person.sex);
  if (order.person.percentile) body["percentile"] = *order.person.percentile;
  if (order.person.side == BodySide::kLeft) body["side"] = side_name(order.person.side);
  for (const auto& [name, value] : order.given) body["parameters"][name] = value;
  return body;
}

void say_girths(const FormOrder& order, const Form& form, const MadeForm& made, std::ostream& out) {
  out << "girths, asked for and measured on the mesh:\n";
  for (const FormGirth& girth : made.girths) {
    const double asked = girth.girth / mm, found = girth_inside(made.body, girth.station).girth / mm;
    out << "  " << girth.parameter << " at " << fixed_text(girth.station / mm, 1) << " mm: asked "
        << fixed_text(asked, 1) << ", made " << fixed_text(found, 1) << " mm (" << percent_text(found, asked)
        << "); " << source_of(order, parameter_of(form, girth.parameter)) << "\n";
  }
  out << "other values:\n";
  for (const FormParameter& parameter : form.parameters)
    if (parameter.name.rfind("girth", 0) != 0)
      out << "  " << parameter.name << " " << number_text(made.values.at(parameter.name), 4) << " ("
          << parameter.meaning << "); " << source_of(order, parameter) << "\n";
}

void say_sites(const Body& body, std::ostream& out) {
  if (body.bony_sites.empty()) return;
  out << "bony and nerve sites (" << kSiteCaution << "):\n";
  for (const BonySite& site : body.bony_sites) {
    const Vec3 at = 1e3 * site.point_m;
    out << "  " << site.name << " (" << site_kind_name(site.kind) << ") at " << fixed_text(at.x(), 1) << ", "
        << fixed_text(at.y(), 1) << ", " << fixed_text(at.z(), 1) << " mm, within "
        << fixed_text(site.radius / mm, 0) << " mm, bone " << fixed_text(site.tissue_depth / mm, 0)
        << " mm under the skin" << (site.words.empty() ? "" : ": ") << site.words << "\n";
  }
}

Json sites_json(const Body& body) {
  Json sites = Json::array();
  for (const BonySite& site : body.bony_sites) {
    Json item{
        {"name", site.name},
        {"point_mm",
         {rounded(1e3 * site.point_m.x()), rounded(1e3 * site.point_m.y()), rounded(1e3 * site.point_m.z())}},
        {"radius_mm", rounded(site.radius / mm)},
        {"tissue_depth_mm", rounded(site.tissue_depth / mm)},
        {"kind", site_kind_name(site.kind)},
        {"status", site.status}};
    if (!site.words.empty()) item["words"] = site.words;
    sites.push_back(std::move(item));
  }
  return sites;
}

}  // namespace

std::string person_words(const FormOrder& order, const Form& form) {
  std::string words = form.sided ? std::string(side_name(order.person.side)) : "";
  const auto add = [&](const std::string& more) { words.append(words.empty() ? "" : "; ").append(more); };
  if (order.person.sex)
    add(std::string(*order.person.sex == Sex::kMale ? "men" : "women") + ", percentile " +
        number_text(order.person.percentile.value_or(50.0), 4));
  if (!order.given.empty()) add("with values as given");
  return words.empty() ? "test solid" : words;
}

std::vector<GirthMark> girth_marks(const MadeForm& made) {
  std::vector<GirthMark> marks;
  for (const FormGirth& girth : made.girths) {
    std::string name = girth.parameter == "girth" ? "" : girth.parameter.substr(6);
    std::replace(name.begin(), name.end(), '_', ' ');
    marks.push_back({name, girth_inside(made.body, girth.station)});
  }
  return marks;
}

void say_form(const FormOrder& order, const Form& form, const MadeForm& made, std::ostream& out) {
  out << form.name << ": " << person_words(order, form) << "\n" << form.about << "\n";
  say_girths(order, form, made, out);
  say_sites(made.body, out);
  if (!form.tissue_site.empty())
    out << "tissue: row '" << form.tissue_site << "' of the tissue table (judgement)\n";
  for (const BeyondSurvey& odd : made.beyond_survey)
    out << "check: " << english(beyond_survey_words(odd)) << "\n";
  if (uses_survey(order, form)) out << "caution: " << kSampleCaution << "\n";
  out << "for a plan: \"body\": " << body_of_plan(order).dump() << "\n";
}

std::string form_json(const FormOrder& order, const Form& form, const MadeForm& made) {
  Json json{{"wrapgauge-form", 1}, {"body", body_of_plan(order)}, {"about", form.about}};
  json["length_mm"] = rounded(body_length(made.body) / mm);
  json["girths"] = Json::array();
  for (const FormGirth& girth : made.girths)
    json["girths"].push_back({{"parameter", girth.parameter},
                              {"station_mm", rounded(girth.station / mm)},
                              {"asked_mm", rounded(girth.girth / mm)},
                              {"made_mm", rounded(girth_inside(made.body, girth.station).girth / mm)}});
  json["parameters"] = Json::array();
  for (const FormParameter& parameter : form.parameters)
    json["parameters"].push_back({{"name", parameter.name},
                                  {"value", rounded(made.values.at(parameter.name))},
                                  {"meaning", parameter.meaning},
                                  {"source", source_of(order, parameter)}});
  json["bony_sites"] = sites_json(made.body);
  json["bony_sites_note"] = kSiteCaution;
  json["tissue_site"] = form.tissue_site;
  json["beyond_survey"] = Json::array();
  for (const BeyondSurvey& odd : made.beyond_survey)
    json["beyond_survey"].push_back({{"parameter", odd.parameter},
                                     {"value", rounded(odd.value)},
                                     {"least", rounded(odd.least)},
                                     {"most", rounded(odd.most)}});
  if (uses_survey(order, form)) json["caution"] = kSampleCaution;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

void list_forms(std::ostream& out) {
  for (const Form& form : forms()) out << form.name << ": " << form.about << "\n";
  out << "wrapgauge body make FORM --list shows the parameters of one.\n";
}

void list_parameters(const Form& form, std::ostream& out) {
  out << form.name << ": " << form.about << "\n";
  for (const FormParameter& parameter : form.parameters) {
    out << "  " << parameter.name << ": " << parameter.meaning << ", " << number_text(parameter.least)
        << " to " << number_text(parameter.most);
    if (parameter.default_value)
      out << (parameter.follows_person() ? "; median man " : "; default ")
          << number_text(*parameter.default_value, 4);
    out << "; " << parameter.source << "\n";
  }
}

}  // namespace wrapgauge
