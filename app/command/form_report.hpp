#pragma once
// A made form in words and as JSON: what was asked for, what came out, where each value comes from.

#include <map>
#include <ostream>
#include <string>
#include <vector>

#include "app/picture/girth_picture.hpp"
#include "bodyforms/form.hpp"

namespace wrapgauge {

struct FormOrder {
  std::string form;
  std::map<std::string, double> given;
  Person person;
};

// "left; women, percentile 5" or "right; as measured".
std::string person_words(const FormOrder& order, const Form& form);

// The girths asked for, as measured on the mesh.
std::vector<GirthMark> girth_marks(const MadeForm& made);

void say_form(const FormOrder& order, const Form& form, const MadeForm& made, std::ostream& out);
std::string form_json(const FormOrder& order, const Form& form, const MadeForm& made);

// Every form, or one with its parameters.
void list_forms(std::ostream& out);
void list_parameters(const Form& form, std::ostream& out);

}  // namespace wrapgauge
