#include "app/desk/window/sheet_fields.hpp"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include "app/desk/window/step_form.hpp"
#include "app/job/resource_folder.hpp"
#include "model/core/number_text.hpp"
#include "model/material/silicone.hpp"

namespace wrapgauge {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

void add_grades(Choice& choice) {
  const auto folder = resource_folder();
  if (!folder) return;
  const auto grades = read_silicone_grades(*folder / "silicones.json");
  if (!grades) return;
  for (const SiliconeGrade& grade : *grades)
    choice.add(text(grade.hardness), text(grade.hardness),
               SheetField::tr("Elongation at break %1 %. %2 (%3) %4 %5")
                   .arg(text(number_text(100.0 * grade.elongation_at_break, 3)), text(grade.source),
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
  Sheet sheet = shown_;  // keeps a prestretch, which has no field
  sheet.material = material_->currentData().toString().toStdString();
  sheet.thickness = thickness_->value() * mm;
  return sheet;
}

SheetFields::SheetFields(QWidget* parent)
    : QWidget(parent),
      skin_(new SheetField(tr("Skin sheet"), this)),
      outer_(new SheetField(tr("Outer sheet"), this)),
      along_(new NumberField(tr("Backing cloth, stiffness along x"), QStringLiteral("N/mm"),
                             {0.0, 1e4, 1, 1.0}, this)),
      across_(new NumberField(tr("Backing cloth, stiffness along y"), QStringLiteral("N/mm"),
                              {0.0, 1e4, 1, 1.0}, this)),
      rim_(new QCheckBox(tr("Rim glued or taped to the skin"), this)) {
  QFormLayout* form = column_form(this);
  form->addRow(tr("Skin sheet"), skin_);
  form->addRow(tr("Outer sheet"), outer_);
  auto* cloth = new QHBoxLayout;
  cloth->addWidget(along_, 1);
  cloth->addWidget(across_, 1);
  form->addRow(tr("Backing"), cloth);
  form->addRow(rim_);
  along_->say_source(tr("Cloth on the outer sheet, along x; 0: none. Pulls only."));
  across_->say_source(tr("Cloth on the outer sheet, along y; 0: none. Pulls only."));
  connect(skin_, &SheetField::edited, this, &SheetFields::edited);
  connect(outer_, &SheetField::edited, this, &SheetFields::edited);
  connect(along_, &NumberField::edited, this, &SheetFields::edited);
  connect(across_, &NumberField::edited, this, &SheetFields::edited);
  connect(rim_, &QCheckBox::toggled, this, &SheetFields::edited);
}

void SheetFields::show_layout(const Layout& layout) {
  skin_->show_sheet(layout.skin_sheet);
  outer_->show_sheet(layout.outer_sheet);
  along_->show_value(layout.backing.along / N_per_mm);
  across_->show_value(layout.backing.across / N_per_mm);
  const QSignalBlocker quiet(rim_);
  rim_->setChecked(layout.rim_bonded);
}

void SheetFields::apply(Layout& layout) const {
  layout.skin_sheet = skin_->sheet();
  layout.outer_sheet = outer_->sheet();
  layout.backing = {along_->value() * N_per_mm, across_->value() * N_per_mm};
  layout.rim_bonded = rim_->isChecked();
}

}  // namespace wrapgauge
