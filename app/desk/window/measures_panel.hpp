#pragma once
// A body made from measures: which form, whose, and every measure as a number to overrule.

#include <QFormLayout>
#include <QLabel>
#include <map>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

class MeasuresPanel : public QWidget {
  Q_OBJECT
 public:
  explicit MeasuresPanel(QWidget* parent = nullptr);

  void show_form(const BodyForm& body);
  const BodyForm& form() const { return body_; }

 signals:
  void edited(const QString& merge);

 private:
  void rebuild_fields();
  void show_person();
  void fill_values();

  BodyForm body_;
  std::string built_for_;  // form whose fields stand there
  Choice *form_, *sex_, *side_;
  NumberField* percentile_;
  QLabel* about_;
  QFormLayout* fields_;
  std::map<std::string, NumberField*> numbers_;
};

// "girth_forearm" -> "Girth forearm", in the language of the window.
QString parameter_title(const std::string& name);

}  // namespace wrapgauge
