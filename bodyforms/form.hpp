#pragma once
// Bodies from a few measurements: smooth open limbs, torso and head band, and test solids.
//
// Frame: axis along +z, distal end at z = 0. As seen by the person who stands upright with the palms forward:
// +y is the front, +x the person's right. On a right limb +x is therefore lateral (thumb, little toe); a left
// form is the right one mirrored in x. Angles run from +x about +z: 0 lateral, 90 front, 180 medial, 270
// back. Metres inside; parameters are millimetres, or plain numbers where said.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/body/body.hpp"
#include "model/body/person.hpp"
#include "model/core/phrase.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Part of a default: a factor times a body measure of the survey (see anthropometry.hpp), or times a
// parameter of the same form that stands before it.
struct DefaultTerm {
  std::string of;
  double factor = 1.0;
};

struct FormParameter {
  std::string name;
  std::optional<double> default_value;  // of a man at the median; none: it has to be given
  double least = 0.0, most = 0.0;       // what is taken
  std::string meaning;                  // with its unit
  std::string source;  // of the default, with status; without default: why, and what to measure
  double base = 0.0;   // default = (base + sum of the terms) / over
  std::vector<DefaultTerm> terms = {};  // empty: the same for everyone
  std::string over = {};                // a body measure; empty: 1

  // Whether it comes, straight or through another parameter, from the survey.
  bool follows_person() const { return !terms.empty(); }
};

struct Form {
  std::string name;
  std::string about;
  std::vector<FormParameter> parameters;
  std::string tissue_site;  // row of the tissue table that suits it (judgement); empty: left to the plan
  bool sided = false;       // has a left and a right
  std::optional<BodyPart> part = {};  // of the person; none: a test solid, which the plan has to name
};

// Every form there is, with its documented parameters.
const std::vector<Form>& forms();

// One girth that was asked for, by a parameter or by its default.
struct FormGirth {
  std::string parameter;
  Length station;
  Length girth;
};

// A value given by hand that hardly anyone in the survey has: outside what its default is from the 1st
// percentile of one sex to the 99th of the other, all else as given.
struct BeyondSurvey {
  std::string parameter;
  double value = 0.0, least = 0.0, most = 0.0;  // mm, or plain numbers
};

// "girth_wrist is 500; the survey's women and men have ..."
Phrase beyond_survey_words(const BeyondSurvey& odd);

// Of the values given, without building the form. An unknown form or value has none.
std::vector<BeyondSurvey> beyond_survey_of(const std::string& name,
                                           const std::map<std::string, double>& parameters);

// What make_measured_form would say of the values, without building the form.
std::optional<Problem> form_values_problem(const std::string& name,
                                           const std::map<std::string, double>& parameters,
                                           const Person& person);

// Parameters that only the survey could supply, or that have no default, and that are not given: without a
// sex nothing is taken from the survey in silence.
std::vector<std::string> measures_missing(const Form& form, const std::map<std::string, double>& given);

struct MadeForm {
  Body body;                             // with its part, side, front and sites
  std::vector<FormGirth> girths;         // from the distal end
  std::map<std::string, double> values;  // every parameter as used
  std::vector<BeyondSurvey> beyond_survey;
};

// Builds a form; parameters that are not given take the person's measures. Problems: unknown form or
// parameter (the known ones are listed), a value out of its range, one that has to be given and is not, a
// percentile outside 1 to 99, a side of a form that has none, a surface steeper than 45 degrees.
Result<MadeForm> make_measured_form(const std::string& name, const std::map<std::string, double>& parameters,
                                    const Person& person = {});

// The body alone.
Result<Body> make_form(const std::string& name, const std::map<std::string, double>& parameters,
                       const Person& person = {});

}  // namespace wrapgauge
