#include "app/desk/window/part_editor.hpp"

#include <QMenu>
#include <algorithm>

#include "app/desk/words/phrase_text.hpp"
#include "model/layout/part_edits.hpp"
#include "model/layout/part_numbers.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutPart::Kind;

bool has_name(Kind kind) {
  return kind == Kind::kChamber || kind == Kind::kChannel || kind == Kind::kInlet || kind == Kind::kStrap;
}

QString name_of(const Layout& layout, const LayoutPart& part) {
  if (part.kind == Kind::kChamber) return QString::fromStdString(layout.chambers[part.index].name);
  if (part.kind == Kind::kChannel) return QString::fromStdString(layout.channels[part.index].name);
  if (part.kind == Kind::kInlet) return QString::fromStdString(layout.inlets[part.index].name);
  if (part.kind == Kind::kStrap) return QString::fromStdString(layout.straps[part.index].name);
  return {};
}

bool is_in_chamber(const std::optional<LayoutPart>& part) {
  return part && part->kind != Kind::kOutline && part->kind <= Kind::kInsetLine;
}

}  // namespace

PartEditor::PartEditor(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      parts_(new Choice(tr("Part of the layout"), this)),
      name_(new LineField(tr("Name of the part"), this)),
      remove_(action_button(
          this, tr("Remove"), [this] { remove(); }, tr("Remove this part"))),
      numbers_(layout_rows(column_form(nullptr))) {
  parts_->setObjectName(QStringLiteral("parts"));
  name_->setPlaceholderText(tr("name"));
  name_->setMaxLength(60);
  QVBoxLayout* column = plain_column(this);
  column->addWidget(parts_);
  column->addWidget(name_);
  column->addLayout(&numbers_.layout());
  auto* row = new QHBoxLayout;
  row->addWidget(add_button());
  row->addWidget(remove_);
  row->addStretch();
  column->addLayout(row);
  connect(parts_, &Choice::chosen, this, [this] {
    show_part();
    if (const auto chosen = part(); is_in_chamber(chosen))
      emit chamberChosen(static_cast<int>(chosen->index));
  });
  connect(name_, &QLineEdit::editingFinished, this, &PartEditor::rename);
}

QPushButton* PartEditor::add_button() {
  auto* add = new QPushButton(tr("Add"), this);
  add->setAccessibleName(tr("Add a part to the layout"));
  auto* menu = new QMenu(add);
  const std::pair<QString, Kind> all[] = {{tr("Chamber"), Kind::kChamber},
                                          {tr("Inset spot in this chamber"), Kind::kInsetSpot},
                                          {tr("Inset line in this chamber"), Kind::kInsetLine},
                                          {tr("Channel to the next chamber"), Kind::kChannel},
                                          {tr("Inlet in this chamber"), Kind::kInlet},
                                          {tr("Strap"), Kind::kStrap}};
  for (const auto& [words, kind] : all) menu->addAction(words, this, [this, kind = kind] { add_part(kind); });
  add->setMenu(menu);
  return add;
}

std::optional<LayoutPart> PartEditor::part() const {
  const auto all = layout_parts(plan().layout);
  const int at = parts_->currentIndex();
  if (at < 0 || static_cast<std::size_t>(at) >= all.size()) return std::nullopt;
  return all[static_cast<std::size_t>(at)];
}

std::size_t PartEditor::chamber() const {
  const auto chosen = part();
  return is_in_chamber(chosen) ? chosen->index : 0;
}

void PartEditor::show_chamber(int chamber) {
  const auto all = layout_parts(plan().layout);
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].kind == Kind::kChamber && all[i].index == static_cast<std::size_t>(chamber)) {
      parts_->setCurrentIndex(static_cast<int>(i));
      show_part();
    }
}

void PartEditor::add_part(Kind kind) {
  const bool inside = kind == Kind::kInsetSpot || kind == Kind::kInsetLine || kind == Kind::kChannel;
  if (inside && plan().layout.chambers.empty()) return;
  const auto before = layout_parts(plan().layout);
  session().edit_layout(tr("Add a part"), with_new_part(plan().layout, kind, chamber()));
  const auto now = layout_parts(plan().layout);
  for (std::size_t i = 0; i < now.size(); ++i)
    if (std::find(before.begin(), before.end(), now[i]) == before.end())
      parts_->setCurrentIndex(static_cast<int>(i));
  show_part();
}

void PartEditor::rename() {
  const auto chosen = part();
  const std::string name = name_->text().trimmed().toStdString();
  if (!chosen || !has_name(chosen->kind) || name_of(plan().layout, *chosen).toStdString() == name) return;
  const auto renamed = with_name(plan().layout, *chosen, name);
  if (!renamed) {
    emit problemMet(bad_input(Phrase::worded("name '%1' is empty or used already: choose another one.",
                                             {wrapgauge::name_of(name)})));
    name_->setText(name_of(plan().layout, *chosen));
    return;
  }
  Plan changed = plan();
  if (chosen->kind == Kind::kInlet)
    for (InletProgram& program : changed.inflation)
      if (program.inlet == plan().layout.inlets[chosen->index].name) program.inlet = name;
  changed.layout = *renamed;
  changed.layout_file.reset();
  changed.layout_drawing.reset();
  session().edit(tr("Rename a part"), std::move(changed));
}

void PartEditor::remove() {
  if (const auto chosen = part())
    session().edit_layout(tr("Remove a part"), without_part(plan().layout, *chosen));
}

void PartEditor::show_part() {
  const auto chosen = part();
  remove_->setEnabled(chosen && chosen->kind != Kind::kOutline);
  name_->setVisible(chosen && has_name(chosen->kind));
  if (!chosen) return;
  name_->show_text(name_of(plan().layout, *chosen));
  const auto numbers = part_numbers(plan().layout, *chosen);
  if (built_for_ != chosen || static_cast<std::size_t>(numbers_.layout().rowCount()) != numbers.size())
    rebuild_numbers(*chosen, numbers);
  numbers_.show(plan().layout);
}

void PartEditor::rebuild_numbers(const LayoutPart& part, const std::vector<PartNumber>& numbers) {
  QFormLayout* rows = &numbers_.layout();
  while (rows->rowCount() > 0) rows->removeRow(0);
  numbers_ =
      FieldForm<Layout>(this, rows, [this, part](const QString&, const QString& number, const auto& edit) {
        const QString merge =
            QStringLiteral("part.%1.%2.%3.").arg(int(part.kind)).arg(part.index).arg(part.inset);
        change_layout(tr("Change %1").arg(text(part_title(plan().layout, part))), merge + number, edit);
      });
  for (std::size_t i = 0; i < numbers.size(); ++i)
    numbers_.number_by(
        FieldText(text(numbers[i].name)), QString::fromStdString(numbers[i].unit),
        {numbers[i].least, 3000.0, 2, 1.0},
        [part, i](const Layout& layout) -> std::optional<double> {
          const auto all = part_numbers(layout, part);
          return i < all.size() ? std::optional(all[i].value) : std::nullopt;
        },
        [part, i](Layout& layout, double value) { layout = with_number(std::move(layout), part, i, value); });
  built_for_ = part;
}

void PartEditor::show_state(const SessionState& now, const SessionState& before) {
  if (now.plan == before.plan) return;
  const Layout& layout = now.plan->layout;
  const QString shown = parts_->currentText();
  const int at = parts_->currentIndex();
  parts_->clear();
  if (!has_layout(*now.plan)) return;
  for (const LayoutPart& part : layout_parts(layout)) parts_->add(text(part_title(layout, part)), {});
  const int same = parts_->findText(shown);
  parts_->setCurrentIndex(same >= 0 ? same : std::clamp(at, 0, parts_->count() - 1));
  show_part();
}

}  // namespace wrapgauge
