#include <cmath>

#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

const char* const kSurvey = "ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), ";

FormParameter girth_of(std::string name, const std::string& where, std::string source) {
  return {std::move(name),  std::nullopt, 60.0, 2000.0, std::string("girth ").append(where).append(", mm"),
          std::move(source)};
}

}  // namespace

FormParameter length_parameter(double base_mm, std::vector<DefaultTerm> terms, std::string source) {
  FormParameter parameter{"length", base_mm, 40.0, 1500.0, "length along the axis, mm", std::move(source)};
  parameter.base = base_mm;
  parameter.terms = std::move(terms);
  return parameter;
}

FormParameter edge_parameter() {
  FormParameter parameter{"edge", 3.0, 1.0, 20.0, "edge length of the triangles, mm", "judgement"};
  parameter.base = 3.0;
  return parameter;
}

FormParameter girth_parameter(std::string name, double default_mm, std::string where, std::string source) {
  FormParameter parameter = girth_of(std::move(name), where, std::move(source));
  parameter.default_value = parameter.base = default_mm;
  return parameter;
}

FormParameter measured_girth(std::string name, std::string measure, std::string where,
                             const std::string& remark) {
  FormParameter parameter = girth_of(
      std::move(name), where, kSurvey + measure + "; confirmed" + (remark.empty() ? "" : "; ") + remark);
  parameter.terms = {{std::move(measure), 1.0}};
  return parameter;
}

FormParameter shared_girth(std::string name, std::vector<DefaultTerm> terms, std::string where,
                           std::string source) {
  FormParameter parameter = girth_of(std::move(name), where, std::move(source));
  parameter.terms = std::move(terms);
  return parameter;
}

FormParameter asked_girth(std::string name, std::string where, std::string source) {
  return girth_of(std::move(name), where, std::move(source));
}

FormParameter aspect_parameter(std::string name, double default_value, std::string where,
                               std::string source) {
  FormParameter parameter{
      std::move(name),  default_value, 0.4, 4.0, "width over depth of the section " + where,
      std::move(source)};
  parameter.base = default_value;
  return parameter;
}

FormParameter measured_aspect(std::string name, std::string width, std::string depth, std::string where) {
  FormParameter parameter = aspect_parameter(std::move(name), 1.0, std::move(where),
                                             kSurvey + width + " over " + depth + "; derived");
  parameter.base = 0.0;
  parameter.terms = {{std::move(width), 1.0}};
  parameter.over = std::move(depth);
  return parameter;
}

void add_row(std::vector<SiteOnForm>& sites, const SiteOnForm& first, double last_share, int count) {
  for (int i = 0; i < count; ++i) {
    SiteOnForm site = first;
    site.name.append(" ").append(std::to_string(i + 1));
    site.share += (last_share - first.share) * i / (count - 1);
    sites.push_back(std::move(site));
  }
}

}  // namespace wrapgauge
