#pragma once
// Every part of the layout by name and by numbers.

#include "app/desk/window/step_form.hpp"
#include "model/layout/layout_part.hpp"
#include "model/layout/part_edits.hpp"
#include "model/layout/part_numbers.hpp"

namespace wrapgauge {

class PartEditor : public StepForm {
  Q_OBJECT
 public:
  explicit PartEditor(PlanSession& session, QWidget* parent = nullptr);

  void show_chamber(int chamber);  // selected elsewhere

 signals:
  void chamberChosen(int chamber);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  QPushButton* add_button();
  void add_part(LayoutPart::Kind kind);
  void rename();
  void remove();
  void show_part();
  void rebuild_numbers(const LayoutPart& part, const std::vector<PartNumber>& numbers);
  std::optional<LayoutPart> part() const;
  std::size_t chamber() const;  // the one that new parts go into

  Choice* parts_;
  LineField* name_;
  QPushButton* remove_;
  FieldForm<Layout> numbers_;  // of the part that they were built for
  std::optional<LayoutPart> built_for_;
};

}  // namespace wrapgauge
