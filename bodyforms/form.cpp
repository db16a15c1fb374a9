#include "bodyforms/form.hpp"

#include <algorithm>
#include <limits>
#include <optional>
#include <set>
#include <string>

#include "bodyforms/anthropometry.hpp"
#include "bodyforms/form_values.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

template <class Items>
std::string names_of(const Items& items) {
  std::string text;
  for (const auto& item : items) text += (text.empty() ? "" : ", ") + item.name;
  return text;
}

Problem no_such_form(const std::string& name) {
  return bad_input(Phrase::worded("There is no body form \"%1\"; there are: %2.",
                                  {name_of(name), name_of(names_of(forms()))}));
}

Result<double> default_of(const FormParameter& parameter, const FormValues& before, const Person& person) {
  const auto value_of = [&](const std::string& name) -> Result<double> {
    if (const auto found = before.find(name); found != before.end()) return found->second;
    return body_measure_mm(name, person.sex.value_or(Sex::kMale), person.percentile.value_or(50.0));
  };
  double value = parameter.base;
  for (const DefaultTerm& term : parameter.terms) {
    const auto part = value_of(term.of);
    if (!part) return part.problem();
    value += term.factor * *part;
  }
  if (parameter.over.empty()) return value;
  const auto over = value_of(parameter.over);
  if (!over) return over.problem();
  return value / *over;
}

// What the defaults come to for a man at the median; none where one that has to be given is needed.
void fill_defaults(Form& form) {
  FormValues values;
  std::set<std::string> open;
  for (FormParameter& parameter : form.parameters) {
    const auto value = default_of(parameter, values, {});
    bool known = value && (parameter.default_value || parameter.follows_person());
    for (const DefaultTerm& term : parameter.terms) known = known && !open.contains(term.of);
    parameter.default_value = known ? std::optional(*value) : std::nullopt;
    values[parameter.name] = parameter.default_value.value_or(0.0);
    if (!known) open.insert(parameter.name);
  }
}

std::vector<FormMaker> all_makers() {
  std::vector<FormMaker> all = {wrist_form(),     forearm_form(), upper_arm_form(), hand_back_form(),
                                thigh_form(),     knee_form(),    calf_form(),      ankle_form(),
                                lower_leg_form(), torso_form(),   head_band_form(), tapered_limb_form(),
                                cylinder_form(),  cone_form(),    sphere_form(),    ellipsoid_form()};
  for (FormMaker& maker : all) fill_defaults(maker.form);
  return all;
}

const std::vector<FormMaker>& makers() {
  static const std::vector<FormMaker> all = all_makers();
  return all;
}

Result<double> value_for(const Form& form, const FormParameter& parameter,
                         const std::map<std::string, double>& given, const FormValues& before,
                         const Person& person) {
  if (const auto found = given.find(parameter.name); found != given.end()) return found->second;
  if (!parameter.default_value && !parameter.follows_person())
    return bad_input(Phrase::worded("The form \"%1\" needs %2, the %3: %4.",
                                    {name_of(form.name), name_of(parameter.name), name_of(parameter.meaning),
                                     name_of(parameter.source)}));
  return default_of(parameter, before, person);
}

Result<FormValues> checked_values(const Form& form, const std::map<std::string, double>& given,
                                  const Person& person) {
  FormValues values;
  for (const auto& item : given) {
    bool known = false;
    for (const FormParameter& parameter : form.parameters) known |= parameter.name == item.first;
    if (!known)
      return bad_input(
          Phrase::worded("The form \"%1\" has no parameter \"%2\"; it has: %3.",
                         {name_of(form.name), name_of(item.first), name_of(names_of(form.parameters))}));
  }
  for (const FormParameter& parameter : form.parameters) {
    const auto value = value_for(form, parameter, given, values, person);
    if (!value) return value.problem();
    if (!(*value >= parameter.least && *value <= parameter.most))
      return bad_input(Phrase::worded(
          "\"%1\" of the form \"%2\" is %3; it may be from %4 to %5.",
          {name_of(parameter.name), name_of(form.name), figures_of(number_text(*value)),
           figures_of(number_text(parameter.least)), figures_of(number_text(parameter.most))}));
    values[parameter.name] = *value;
  }
  return values;
}

// From the smallest to the largest default that people at both ends of the survey have.
std::optional<BeyondSurvey> beyond_survey(const Form& form, const FormParameter& parameter, double value,
                                          const std::map<std::string, double>& others) {
  BeyondSurvey found{parameter.name, value, std::numeric_limits<double>::max(), 0.0};
  for (const Sex sex : {Sex::kMale, Sex::kFemale})
    for (const double percentile : {kTablePercentiles.front(), kTablePercentiles.back()}) {
      Person person;
      person.sex = sex;
      person.percentile = percentile;
      const Result<FormValues> values = checked_values(form, others, person);
      if (!values) return std::nullopt;
      found.least = std::min(found.least, values->at(parameter.name));
      found.most = std::max(found.most, values->at(parameter.name));
    }
  if (value >= found.least && value <= found.most) return std::nullopt;
  return found;
}

std::vector<BeyondSurvey> beyond_survey(const Form& form, const std::map<std::string, double>& given) {
  std::vector<BeyondSurvey> all;
  for (const FormParameter& parameter : form.parameters) {
    const auto value = given.find(parameter.name);
    if (value == given.end() || !parameter.follows_person()) continue;
    std::map<std::string, double> others;  // only those that no survey supplies
    for (const FormParameter& other : form.parameters)
      if (given.contains(other.name) && !other.follows_person()) others[other.name] = given.at(other.name);
    if (auto found = beyond_survey(form, parameter, value->second, others)) all.push_back(*found);
  }
  return all;
}

std::vector<BonySite> sites_on(const FormMaker& maker, const LimbShape& shape) {
  std::vector<BonySite> sites;
  for (const SiteOnForm& site : maker.sites)
    sites.push_back({site.name, skin_point_m(shape, site.share, site.angle_deg), site.radius_mm * mm,
                     site.depth_mm * mm, site.kind, "from memory", site.words});
  return sites;
}

void mirror(Body& body) {
  body.surface.vertices_m.col(0) *= -1.0;
  body.surface.faces.col(1).swap(body.surface.faces.col(2));
  for (BonySite& site : body.bony_sites) site.point_m.x() *= -1.0;
}

Result<MadeForm> make(const FormMaker& maker, const std::map<std::string, double>& parameters,
                      const Person& person) {
  if (person.side == BodySide::kLeft && !maker.form.sided)
    return bad_input(Phrase::worded("The form \"%1\" has no left and right; leave the side out.",
                                    {name_of(maker.form.name)}));
  Result<FormValues> values = checked_values(maker.form, parameters, person);
  if (!values) return values.problem();
  Result<FormSurface> surface = maker.surface(*values);
  if (!surface) return surface.problem();
  MadeForm made;
  made.body.name = maker.form.name;
  made.body.surface = surface->mesh;
  made.body.tissue_site = maker.form.tissue_site;
  made.body.part = maker.form.part;
  if (maker.form.sided) made.body.side = person.side;
  if (maker.form.part) made.body.front = Vec3::UnitY();
  if (surface->limb) made.body.bony_sites = sites_on(maker, *surface->limb);
  if (person.side == BodySide::kLeft) mirror(made.body);
  made.girths = surface->girths;
  made.beyond_survey = beyond_survey(maker.form, parameters);
  made.values = std::move(values).value();
  return made;
}

}  // namespace

std::vector<BeyondSurvey> beyond_survey_of(const std::string& name,
                                           const std::map<std::string, double>& parameters) {
  for (const Form& form : forms())
    if (form.name == name) return beyond_survey(form, parameters);
  return {};
}

std::optional<Problem> form_values_problem(const std::string& name,
                                           const std::map<std::string, double>& parameters,
                                           const Person& person) {
  for (const Form& form : forms()) {
    if (form.name != name) continue;
    const auto values = checked_values(form, parameters, person);
    return values ? std::nullopt : std::optional(values.problem());
  }
  return no_such_form(name);
}

std::vector<std::string> measures_missing(const Form& form, const std::map<std::string, double>& given) {
  std::vector<std::string> missing;
  for (const FormParameter& parameter : form.parameters) {
    bool from_survey = !parameter.over.empty();
    for (const DefaultTerm& term : parameter.terms)
      from_survey |= std::none_of(form.parameters.begin(), form.parameters.end(),
                                  [&](const FormParameter& other) { return other.name == term.of; });
    const bool asked = !parameter.default_value && !parameter.follows_person();
    if ((from_survey || asked) && !given.contains(parameter.name)) missing.push_back(parameter.name);
  }
  return missing;
}

Phrase beyond_survey_words(const BeyondSurvey& odd) {
  return Phrase::worded(
      "%1 is %2; the survey's women and men have %3 to %4 (1st to 99th percentile). Check the tape value and "
      "its "
      "unit: the form is stretched beyond what it was made from.",
      {name_of(odd.parameter), figures_of(number_text(odd.value, 4)), figures_of(number_text(odd.least, 4)),
       figures_of(number_text(odd.most, 4))});
}

const std::vector<Form>& forms() {
  static const std::vector<Form> all = [] {
    std::vector<Form> list;
    for (const FormMaker& maker : makers()) list.push_back(maker.form);
    return list;
  }();
  return all;
}

Result<FormSurface> surface_of_limb(const LimbShape& shape) {
  Result<TriangleMesh> mesh = limb_surface(shape);
  if (!mesh) return mesh.problem();
  FormSurface surface{std::move(mesh).value(), {}, shape};
  for (const GirthAtStation& knot : shape.girths)
    if (!knot.parameter.empty()) surface.girths.push_back({knot.parameter, knot.station, knot.girth});
  return surface;
}

Result<MadeForm> make_measured_form(const std::string& name, const std::map<std::string, double>& parameters,
                                    const Person& person) {
  for (const FormMaker& maker : makers())
    if (maker.form.name == name) return make(maker, parameters, person);
  return no_such_form(name);
}

Result<Body> make_form(const std::string& name, const std::map<std::string, double>& parameters,
                       const Person& person) {
  auto made = make_measured_form(name, parameters, person);
  if (!made) return made.problem();
  return std::move(made).value().body;
}

}  // namespace wrapgauge
