#pragma once
// The steps that make a raw scan a body, each on or off with its number.

#include <QCheckBox>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/number_field.hpp"
#include "model/body/mend_step.hpp"

namespace wrapgauge {

class MendPanel : public QWidget {
  Q_OBJECT
 public:
  explicit MendPanel(QWidget* parent = nullptr);

  void show_steps(const std::vector<MendStep>& steps);
  // Always in the order: table, crumbs, holes, smooth, pose, cut, mirror, triangles.
  std::vector<MendStep> steps() const;

 signals:
  void edited();

 private:
  QCheckBox* add_step(const QString& text, const std::vector<QWidget*>& fields);
  NumberField* add_number(const QString& name, const QString& unit, const NumberField::Range& range);
  void enable_fields();

  QCheckBox *table_, *crumbs_, *holes_, *smooth_, *pose_, *cut_, *mirror_, *triangles_;
  NumberField *hole_, *passes_, *turn_, *cut_from_, *cut_to_, *edge_;
  Choice* distal_;
  std::vector<std::pair<QCheckBox*, std::vector<QWidget*>>> rows_;
};

}  // namespace wrapgauge
