#include "app/desk/window/sheet_fields.hpp"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <cmath>

#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/resource_folder.hpp"
#include "model/core/number_text.hpp"
#include "model/material/silicone.hpp"

namespace wrapgauge {
namespace {

struct SheetWords {
  Q_DECLARE_TR_FUNCTIONS(wrapgauge::SheetFields)
};

std::vector<ChoiceEntry> grades() {
  const auto folder = resource_folder();
  if (!folder) return {};
  const auto known = read_silicone_grades(*folder / "silicones.json");
  if (!known) return {};
  std::vector<ChoiceEntry> entries;
  for (const SiliconeGrade& grade : *known)
    entries.push_back(
        {text(grade.hardness), text(grade.hardness),
         SheetWords::tr("Elongation at break %1 %. %2 (%3) %4 %5")
             .arg(figures_text(number_text(100.0 * grade.elongation_at_break, 3)), text(grade.source),
                  text(grade.status), text(grade.sheet_source), text(grade.caution))});
  return entries;
}

// Hardness and thickness beside one another, and below them how far the sheet was stretched.
void add_sheet(FieldForm<Layout>& rows, Sheet Layout::*sheet, const QString& title,
               const FieldText& prestretch) {
  Choice* material = rows.choice_by(
      FieldText({}, SheetWords::tr("%1, hardness").arg(title)), grades(),
      [sheet](const Layout& layout) { return text((layout.*sheet).material); },
      [sheet](Layout& layout, const QVariant& value) {
        (layout.*sheet).material = value.toString().toStdString();
      });
  material->takes_unknown();
  material->setMinimumContentsLength(5);  // "00-30": both fit beside their name in the narrowest column
  auto* thick =
      rows.number(FieldText({}, SheetWords::tr("%1, thickness").arg(title)), kInMm, {0.1, 50.0, 2, 0.1},
                  [sheet](auto& layout) { return &(layout.*sheet).thickness; });
  auto* both = new QWidget(rows.owner());
  auto* row = new QHBoxLayout(both);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(material, 1);
  row->addWidget(thick, 1);
  both->setFocusProxy(material);
  rows.layout().addRow(title, both);
  // A stretch of 5 % is 1.05 and not a digit beside it.
  rows.number_by(
      prestretch, kInPercent.words, {0.0, 100.0, 1, 1.0},
      [sheet](const Layout& layout) { return std::optional(100.0 * ((layout.*sheet).prestretch - 1.0)); },
      [sheet](Layout& layout, double percent) {
        (layout.*sheet).prestretch = 1e-6 * std::round(1e6 + 1e4 * percent);
      });
}

}  // namespace

void add_sheet_rows(FieldForm<Layout>& rows) {
  add_sheet(
      rows, &Layout::skin_sheet, SheetWords::tr("Skin sheet"),
      FieldText(SheetWords::tr("Skin prestretch"), SheetWords::tr("Skin sheet, stretched along x when fused"),
                SheetWords::tr("Skin sheet: stretched along x by this much when it was fused; 0: not."),
                "skin prestretch"));
  add_sheet(
      rows, &Layout::outer_sheet, SheetWords::tr("Outer sheet"),
      FieldText(SheetWords::tr("Outer prestretch"),
                SheetWords::tr("Outer sheet, stretched along x when fused"),
                SheetWords::tr("Outer sheet: stretched along x by this much when it was fused; 0: not.")));
  rows.number(FieldText(SheetWords::tr("Backing along x"), SheetWords::tr("Backing cloth, stiffness along x"),
                        SheetWords::tr("Cloth on the outer sheet, along x; 0: none. Pulls only.")),
              kInNewtonPerMm, {0.0, 1e4, 1, 1.0}, [](auto& layout) { return &layout.backing.along; });
  rows.number(FieldText(SheetWords::tr("Backing along y"), SheetWords::tr("Backing cloth, stiffness along y"),
                        SheetWords::tr("Cloth on the outer sheet, along y; 0: none. Pulls only.")),
              kInNewtonPerMm, {0.0, 1e4, 1, 1.0}, [](auto& layout) { return &layout.backing.across; });
  rows.box(FieldText(SheetWords::tr("Rim glued or taped to the skin")),
           [](auto& layout) { return &layout.rim_bonded; });
}

}  // namespace wrapgauge
