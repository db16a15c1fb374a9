#pragma once
// What one form's source file gives to the list of forms.

#include <map>
#include <string>

#include "bodyforms/form.hpp"
#include "bodyforms/limb_surface.hpp"
#include "model/body/standard_site.hpp"

namespace wrapgauge {

// Checked parameter values in mm, every one of the form present.
using FormValues = std::map<std::string, double>;

using SiteOnForm = StandardSite;

struct FormSurface {
  TriangleMesh mesh;
  std::vector<FormGirth> girths;
  std::optional<LimbShape> limb;  // none: a solid without sites
};

struct FormMaker {
  Form form;
  std::vector<SiteOnForm> sites;
  Result<FormSurface> (*surface)(const FormValues& values);
};

Result<FormSurface> surface_of_limb(const LimbShape& shape);

// The `surface` of a form that is a limb.
template <LimbShape (*shape)(const FormValues&)>
Result<FormSurface> limb(const FormValues& values) {
  return surface_of_limb(shape(values));
}

FormMaker wrist_form();
FormMaker forearm_form();
FormMaker upper_arm_form();
FormMaker hand_back_form();
FormMaker thigh_form();
FormMaker knee_form();
FormMaker calf_form();
FormMaker ankle_form();
FormMaker lower_leg_form();
FormMaker torso_form();
FormMaker head_band_form();
FormMaker tapered_limb_form();
FormMaker cylinder_form();
FormMaker cone_form();
FormMaker sphere_form();
FormMaker ellipsoid_form();

// Parameters. `where` completes "girth ...".
FormParameter length_parameter(double base_mm, std::vector<DefaultTerm> terms, std::string source);
FormParameter edge_parameter();
FormParameter girth_parameter(std::string name, double default_mm, std::string where, std::string source);
FormParameter measured_girth(std::string name, std::string measure, std::string where,
                             const std::string& remark = "");
FormParameter shared_girth(std::string name, std::vector<DefaultTerm> terms, std::string where,
                           std::string source);
FormParameter asked_girth(std::string name, std::string where, std::string source);
FormParameter aspect_parameter(std::string name, double default_value, std::string where, std::string source);
FormParameter measured_aspect(std::string name, std::string width, std::string depth, std::string where);

// `count` sites in a row, called "NAME 1" ..., from one share of the length to another.
void add_row(std::vector<SiteOnForm>& sites, const SiteOnForm& first, double last_share, int count);

}  // namespace wrapgauge
