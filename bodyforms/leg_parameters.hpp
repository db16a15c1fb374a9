#pragma once
// Parameters that several forms of the leg share: "calf", "lower-leg", "ankle" and "knee".

#include <string>
#include <vector>

#include "bodyforms/form.hpp"

namespace wrapgauge {

FormParameter ankle_girth();     // "girth_ankle", the survey's
FormParameter malleoli_girth();  // "girth_malleoli", a share of "girth_ankle", which stands before it
FormParameter ankle_aspect();    // "aspect_ankle"

// A share of the widest girth of the calf: `widest` is a body measure or a parameter that stands before it,
// `words` says which.
FormParameter girth_below_knee(std::string name, std::string widest, const std::string& words);

// What follows the ankle in a form that reaches up to the knee: "girth_calf", "girth_knee", "aspect_ankle",
// "aspect_knee", "edge".
std::vector<FormParameter> calf_parameters();

}  // namespace wrapgauge
