#pragma once
// Every part of the layout by name and by numbers.

#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "app/desk/window/step_form.hpp"
#include "model/layout/layout_part.hpp"

namespace wrapgauge {

class PartEditor : public StepForm {
  Q_OBJECT
 public:
  explicit PartEditor(PlanSession& session, QWidget* parent = nullptr);

  void show_chamber(int chamber);  // selected elsewhere

 signals:
  void chamberChosen(int chamber);

 protected:
  void show_plan() override;

 private:
  void make_buttons(QLayout& column);
  void add_part(LayoutPart::Kind kind);
  void rename();
  void remove();
  void rebuild_numbers();
  std::optional<LayoutPart> part() const;
  std::size_t chamber() const;  // the one that new parts go into

  Choice* parts_;
  QLineEdit* name_;
  QFormLayout* numbers_;
  std::vector<NumberField*> fields_;
  std::optional<LayoutPart> built_for_;
  QPushButton *add_, *remove_;
};

}  // namespace wrapgauge
