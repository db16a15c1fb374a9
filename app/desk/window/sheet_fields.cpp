#include "app/desk/window/sheet_fields.hpp"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <cmath>

#include "app/desk/session/text.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/resource_folder.hpp"
#include "model/core/number_text.hpp"
#include "model/material/silicone.hpp"

namespace wrapgauge {
namespace {

// A stretch of 5 % is 1.05 and not a digit beside it.
double prestretch_of(const NumberField& percent) {
  return 1e-6 * std::round(1e6 + 1e4 * percent.value());
}

void add_grades(Choice& choice) {
  const auto folder = resource_folder();
  if (!folder) return;
  const auto grades = read_silicone_grades(*folder / "silicones.json");
  if (!grades) return;
  for (const SiliconeGrade& grade : *grades)
    choice.add(text(grade.hardness), text(grade.hardness),
               SheetField::tr("Elongation at break %1 %. %2 (%3) %4 %5")
                   .arg(figures_text(number_text(100.0 * grade.elongation_at_break, 3)), text(grade.source),
                        text(grade.status), text(grade.sheet_source), text(grade.caution)));
}

}  // namespace

SheetField::SheetField(const QString& name, QWidget* parent)
    : QWidget(parent),
      material_(new Choice(tr("%1, hardness").arg(name), this)),
      thickness_(
          new NumberField(tr("%1, thickness").arg(name), QStringLiteral("mm"), {0.1, 50.0, 2, 0.1}, this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(material_, 1);
  row->addWidget(thickness_, 1);
  add_grades(*material_);
  material_->setMinimumContentsLength(5);  // "00-30": both fit beside their name in the narrowest column
  setFocusProxy(material_);
  connect(material_, &Choice::chosen, this, &SheetField::edited);
  connect(thickness_, &NumberField::edited, this, &SheetField::edited);
}

void SheetField::show_sheet(const Sheet& sheet) {
  shown_ = sheet;
  if (material_->findData(text(sheet.material)) < 0)
    material_->add(text(sheet.material), text(sheet.material));
  material_->show_value(text(sheet.material));
  thickness_->show_value(sheet.thickness / mm);
}

Sheet SheetField::sheet() const {
  Sheet sheet = shown_;  // keeps a prestretch, which has a field elsewhere
  sheet.material = material_->currentData().toString().toStdString();
  sheet.thickness = thickness_->value() * mm;
  return sheet;
}

SheetFields::SheetFields(QFormLayout& form) : QObject(form.parentWidget()) {
  QWidget* parent = form.parentWidget();
  const auto stiffness = [&](const QString& name) {
    return new NumberField(name, QStringLiteral("N/mm"), {0.0, 1e4, 1, 1.0}, parent);
  };
  const auto stretch = [&](const QString& name) {
    return new NumberField(name, QStringLiteral("%"), {0.0, 100.0, 1, 1.0}, parent);
  };
  skin_ = new SheetField(tr("Skin sheet"), parent);
  outer_ = new SheetField(tr("Outer sheet"), parent);
  skin_stretch_ = stretch(tr("Skin sheet, stretched along x when fused"));
  outer_stretch_ = stretch(tr("Outer sheet, stretched along x when fused"));
  along_ = stiffness(tr("Backing cloth, stiffness along x"));
  across_ = stiffness(tr("Backing cloth, stiffness along y"));
  rim_ = new QCheckBox(tr("Rim glued or taped to the skin"), parent);
  skin_stretch_->setObjectName(QStringLiteral("skin prestretch"));
  skin_stretch_->say_source(tr("Skin sheet: stretched along x by this much when it was fused; 0: not."));
  outer_stretch_->say_source(tr("Outer sheet: stretched along x by this much when it was fused; 0: not."));
  along_->say_source(tr("Cloth on the outer sheet, along x; 0: none. Pulls only."));
  across_->say_source(tr("Cloth on the outer sheet, along y; 0: none. Pulls only."));
  form.addRow(tr("Skin sheet"), skin_);
  form.addRow(tr("Skin prestretch"), skin_stretch_);
  form.addRow(tr("Outer sheet"), outer_);
  form.addRow(tr("Outer prestretch"), outer_stretch_);
  form.addRow(tr("Backing along x"), along_);
  form.addRow(tr("Backing along y"), across_);
  form.addRow(rim_);
  connect_fields();
}

void SheetFields::connect_fields() {
  for (SheetField* field : {skin_, outer_}) connect(field, &SheetField::edited, this, &SheetFields::edited);
  for (NumberField* field : {along_, across_, skin_stretch_, outer_stretch_})
    connect(field, &NumberField::edited, this, &SheetFields::edited);
  connect(rim_, &QCheckBox::toggled, this, &SheetFields::edited);
}

void SheetFields::show_layout(const Layout& layout) {
  skin_->show_sheet(layout.skin_sheet);
  outer_->show_sheet(layout.outer_sheet);
  along_->show_value(layout.backing.along / N_per_mm);
  across_->show_value(layout.backing.across / N_per_mm);
  skin_stretch_->show_value(100.0 * (layout.skin_sheet.prestretch - 1.0));
  outer_stretch_->show_value(100.0 * (layout.outer_sheet.prestretch - 1.0));
  const QSignalBlocker quiet(rim_);
  rim_->setChecked(layout.rim_bonded);
}

void SheetFields::apply(Layout& layout) const {
  layout.skin_sheet = skin_->sheet();
  layout.outer_sheet = outer_->sheet();
  layout.skin_sheet.prestretch = prestretch_of(*skin_stretch_);
  layout.outer_sheet.prestretch = prestretch_of(*outer_stretch_);
  layout.backing = {along_->value() * N_per_mm, across_->value() * N_per_mm};
  layout.rim_bonded = rim_->isChecked();
}

}  // namespace wrapgauge
