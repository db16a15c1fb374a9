#pragma once
// A body made from measures: which form, whose, and every measure as a number to overrule.

#include <map>

#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

struct FormParameter;

class MeasuresPanel : public QWidget {
  Q_OBJECT
 public:
  explicit MeasuresPanel(FieldForm<BodyForm>::Take take, QWidget* parent = nullptr);

  void show_form(const BodyForm& body);

 private:
  void rebuild(const std::string& form_name);
  void add_measure(const FormParameter& parameter);
  void take_survey(const BodyForm& body);

  QLabel* about_;
  FieldForm<BodyForm>::Take take_;
  FieldForm<BodyForm> person_, measures_;
  std::string built_for_;                   // form whose measures stand there
  std::map<std::string, double> surveyed_;  // measures that were not given
};

// "girth_forearm" -> "Girth forearm", in the language of the window.
QString parameter_title(const std::string& name);

}  // namespace wrapgauge
