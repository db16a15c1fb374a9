#pragma once
// Step Wear: where the layout lies, which way it is turned, how it closes, and how well it then goes round.

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class WearStep : public StepForm {
  Q_OBJECT
 public:
  explicit WearStep(PlanSession& session, QWidget* parent = nullptr);

  void place_at(const Vec3& point_m);                    // on the skin
  void show_picked(const std::optional<Vec3>& point_m);  // what "place at the picked spot" takes

 protected:
  void show_plan() override;
  void show_checked() override;

 private:
  void make_anchor(QLayout& column);
  void make_closure(QLayout& column);
  void connect_fields();
  void take_station();
  void take_closure(const QString& merge);
  void show_closure();
  void show_quality(const Wrap& wrap);

  QPushButton* here_;
  std::optional<Vec3> picked_m_;
  NumberField *station_, *angle_, *turn_, *point_x_, *point_y_;
  QFormLayout* closing_;  // which of its rows are there goes by how it closes
  Choice* closes_;
  NumberField *stretch_, *length_, *from_x_, *taper_;
  QLabel* words_;
  QTableWidget* quality_;
};

}  // namespace wrapgauge
