#include "bodyforms/form.hpp"

#include <cstdio>
#include <string>

#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

const std::vector<FormMaker>& makers() {
  static const std::vector<FormMaker> all = {tapered_limb_form(), forearm_form(), calf_form(),
                                             cylinder_form(), cone_form()};
  return all;
}

template <class Items>
std::string names_of(const Items& items) {
  std::string text;
  for (const auto& item : items) text += (text.empty() ? "" : ", ") + item.name;
  return text;
}

std::string plain(double value) {
  char text[48];
  std::snprintf(text, sizeof text, "%g", value);
  return text;
}

Result<FormValues> checked_values(const Form& form, const std::map<std::string, double>& given) {
  FormValues values;
  for (const FormParameter& parameter : form.parameters) values[parameter.name] = parameter.default_value;
  for (const auto& [name, value] : given) {
    if (!values.contains(name))
      return bad_input("The form \"" + form.name + "\" has no parameter \"" + name +
                       "\"; it has: " + names_of(form.parameters) + ".");
    values[name] = value;
  }
  for (const FormParameter& parameter : form.parameters) {
    const double value = values[parameter.name];
    if (!(value >= parameter.least && value <= parameter.most))
      return bad_input("\"" + parameter.name + "\" of the form \"" + form.name + "\" is " + plain(value) +
                       "; it may be from " + plain(parameter.least) + " to " + plain(parameter.most) + ".");
  }
  return values;
}

}  // namespace

const std::vector<Form>& forms() {
  static const std::vector<Form> all = [] {
    std::vector<Form> list;
    for (const FormMaker& maker : makers()) list.push_back(maker.form);
    return list;
  }();
  return all;
}

Result<Body> make_form(const std::string& name, const std::map<std::string, double>& parameters) {
  for (const FormMaker& maker : makers()) {
    if (maker.form.name != name) continue;
    const Result<FormValues> values = checked_values(maker.form, parameters);
    if (!values) return values.problem();
    Result<TriangleMesh> surface = limb_surface(maker.shape(*values));
    if (!surface) return surface.problem();
    Body body;
    body.name = name;
    body.surface = std::move(surface).value();
    body.tissue_site = maker.form.tissue_site;
    return body;
  }
  return bad_input("There is no body form \"" + name + "\"; there are: " + names_of(forms()) + ".");
}

FormParameter length_parameter(double default_mm, std::string source) {
  return {"length", default_mm, 40.0, 1500.0, "length along the axis, mm", std::move(source)};
}

FormParameter edge_parameter() {
  return {"edge", 3.0, 1.0, 20.0, "edge length of the triangles, mm", "judgement"};
}

FormParameter girth_parameter(std::string name, double default_mm, std::string where, std::string source) {
  return {std::move(name), default_mm, 60.0, 2000.0, "girth " + where + ", mm", std::move(source)};
}

FormParameter aspect_parameter(std::string name, double default_value, std::string where,
                               std::string source) {
  return {std::move(name),  default_value, 0.5, 2.0, "width over depth of the section " + where,
          std::move(source)};
}

}  // namespace wrapgauge
