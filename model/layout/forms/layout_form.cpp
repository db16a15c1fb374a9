#include "model/layout/forms/layout_form.hpp"

#include <cmath>
#include <numbers>

#include "model/core/number_text.hpp"
#include "model/layout/forms/layout_form_values.hpp"
#include "model/layout/layout_check.hpp"

namespace wrapgauge {
namespace {

const std::vector<LayoutFormMaker>& makers() {
  static const std::vector<LayoutFormMaker> all = {cuff_layout_form(), sleeve_layout_form(),
                                                   graduated_sleeve_layout_form(), round_pad_layout_form(),
                                                   quilted_pack_layout_form()};
  return all;
}

template <class Items>
std::string names_of(const Items& items) {
  std::string text;
  for (const auto& item : items) text += (text.empty() ? "" : ", ") + item.name;
  return text;
}

std::optional<Problem> unusable_value(const LayoutForm& form, const LayoutParameter& parameter,
                                      double value) {
  const Phrase named = name_of(parameter.name), of = name_of(form.name), is = figures_of(number_text(value));
  if (!(value >= parameter.least && value <= parameter.most))
    return bad_input(Phrase::worded(
        "\"%1\" of the layout \"%2\" is %3; it may be from %4 to %5.",
        {named, of, is, figures_of(number_text(parameter.least)), figures_of(number_text(parameter.most))}));
  if (parameter.whole && value != std::floor(value))
    return bad_input(
        Phrase::worded("\"%1\" of the layout \"%2\" is %3; give a whole number.", {named, of, is}));
  return std::nullopt;
}

// The stretch at which a layout meets as the fit asks for; see LayoutFit.
double fitted_value(const LayoutFit& fit, const std::map<std::string, double>& values, double depth_mm) {
  double girth = 0.0;
  for (const std::string& name : fit.girths)
    girth += values.at(name) / static_cast<double>(fit.girths.size());
  const double covered = fit.covered.empty() ? 1.0 : values.at(fit.covered);
  return girth * (1.0 + fit.beyond) / (girth + covered * 2.0 * std::numbers::pi * depth_mm) - 1.0;
}

Result<std::map<std::string, double>> checked_values(const LayoutForm& form,
                                                     const std::map<std::string, double>& given,
                                                     const MadeSheets& sheets) {
  std::map<std::string, double> values;
  for (const LayoutParameter& parameter : form.parameters) values[parameter.name] = parameter.default_value;
  for (const auto& [name, value] : given) {
    if (!values.contains(name))
      return bad_input(
          Phrase::worded("The layout \"%1\" has no parameter \"%2\"; it has: %3.",
                         {name_of(form.name), name_of(name), name_of(names_of(form.parameters))}));
    values[name] = value;
  }
  for (const LayoutParameter& parameter : form.parameters)
    if (auto problem = unusable_value(form, parameter, values[parameter.name])) return *problem;
  const Length depth = sheets.skin.value_or(form.skin_sheet).thickness +
                       0.5 * sheets.outer.value_or(form.outer_sheet).thickness;
  for (const LayoutParameter& parameter : form.parameters)
    if (parameter.fit && !given.contains(parameter.name))
      values[parameter.name] = fitted_value(*parameter.fit, values, depth / mm);
  return values;
}

Result<const LayoutFormMaker*> find_maker(const std::string& name) {
  for (const LayoutFormMaker& maker : makers())
    if (maker.form.name == name) return &maker;
  return bad_input(Phrase::worded("There is no layout form \"%1\"; there are: %2.",
                                  {name_of(name), name_of(names_of(layout_forms()))}));
}

}  // namespace

const std::vector<LayoutForm>& layout_forms() {
  static const std::vector<LayoutForm> all = [] {
    std::vector<LayoutForm> list;
    for (const LayoutFormMaker& maker : makers()) list.push_back(maker.form);
    return list;
  }();
  return all;
}

Result<LayoutForm> find_layout_form(const std::string& name) {
  const auto maker = find_maker(name);
  return maker ? Result<LayoutForm>((*maker)->form) : Result<LayoutForm>(maker.problem());
}

Result<std::map<std::string, double>> layout_parameters(const std::string& name,
                                                        const std::map<std::string, double>& given,
                                                        const MadeSheets& sheets) {
  const auto maker = find_maker(name);
  if (!maker) return maker.problem();
  return checked_values((*maker)->form, given, sheets);
}

Result<Layout> make_layout(const std::string& name, const std::map<std::string, double>& parameters,
                           const MadeSheets& sheets) {
  const auto maker = find_maker(name);
  if (!maker) return maker.problem();
  const LayoutForm& form = (*maker)->form;
  auto values = checked_values(form, parameters, sheets);
  if (!values) return values.problem();
  Result<Layout> drawn = (*maker)->draw(LayoutFormValues(std::move(values).value()));
  if (!drawn) return drawn;
  Layout layout = std::move(drawn).value();
  layout.name = form.name;
  layout.skin_sheet = sheets.skin.value_or(form.skin_sheet);
  layout.outer_sheet = sheets.outer.value_or(form.outer_sheet);
  const std::vector<Problem> problems = check_layout(layout);
  if (!problems.empty()) return problems.front();
  return layout;
}

LayoutParameter measured_girth(std::string name, double default_mm, std::string where, double measured_at) {
  return {std::move(name),
          default_mm,
          60.0,
          2000.0,
          "girth of the limb " + where,
          "mm",
          "judgement: a place to start from; measure",
          false,
          measured_at};
}

LayoutParameter fitted_stretch(std::string name, double usual, double least, double most, std::string meaning,
                               LayoutFit fit) {
  return {std::move(name), usual, least, most, std::move(meaning), "",
          "judgement",     false, {},    {},   std::move(fit)};
}

LayoutParameter layout_size(std::string name, double default_mm, double least, double most,
                            std::string meaning) {
  return {std::move(name), default_mm, least, most, std::move(meaning), "mm", "judgement", false, {}};
}

LayoutParameter layout_count(std::string name, int default_count, int least, int most, std::string meaning) {
  return {std::move(name),
          static_cast<double>(default_count),
          static_cast<double>(least),
          static_cast<double>(most),
          std::move(meaning),
          "",
          "judgement",
          true,
          {}};
}

std::vector<LayoutParameter> band_parameters() {
  return {
      layout_size("seam", 10.0, 2.0, 60.0, "width of the seams between chambers"),
      layout_size("rim", 12.0, 2.0, 80.0, "width of the fused rim round the chambers"),
      layout_size("corner", 8.0, 0.0, 100.0, "radius of the chambers' corners"),
      layout_size("channel", 5.0, 1.0, 40.0, "width of the channels within a row"),
      layout_size("overlap", 40.0, 0.0, 300.0, "length of the cloth strap beyond the closing line, 0: none")};
}

}  // namespace wrapgauge
