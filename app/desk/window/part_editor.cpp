#include "app/desk/window/part_editor.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QVBoxLayout>
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

}  // namespace

PartEditor::PartEditor(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      parts_(new Choice(tr("Part of the layout"), this)),
      name_(new QLineEdit(this)),
      numbers_(column_form(nullptr)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  parts_->setObjectName(QStringLiteral("parts"));
  name_->setAccessibleName(tr("Name of the part"));
  name_->setPlaceholderText(tr("name"));
  name_->setMaxLength(60);
  column->addWidget(parts_);
  column->addWidget(name_);
  column->addLayout(numbers_);
  make_buttons(*column);
  connect(parts_, &Choice::chosen, this, [this] {
    rebuild_numbers();
    if (const auto chosen = part();
        chosen && chosen->kind != Kind::kOutline && chosen->kind <= Kind::kInsetLine)
      emit chamberChosen(static_cast<int>(chosen->index));
  });
  connect(name_, &QLineEdit::editingFinished, this, &PartEditor::rename);
}

void PartEditor::make_buttons(QLayout& column) {
  auto* row = new QHBoxLayout;
  add_ = new QPushButton(tr("Add"), this);
  add_->setAccessibleName(tr("Add a part to the layout"));
  auto* menu = new QMenu(add_);
  menu->addAction(tr("Chamber"), this, [this] { add_part(Kind::kChamber); });
  menu->addAction(tr("Inset spot in this chamber"), this, [this] { add_part(Kind::kInsetSpot); });
  menu->addAction(tr("Inset line in this chamber"), this, [this] { add_part(Kind::kInsetLine); });
  menu->addAction(tr("Channel to the next chamber"), this, [this] { add_part(Kind::kChannel); });
  menu->addAction(tr("Inlet in this chamber"), this, [this] { add_part(Kind::kInlet); });
  menu->addAction(tr("Strap"), this, [this] { add_part(Kind::kStrap); });
  add_->setMenu(menu);
  remove_ = new QPushButton(tr("Remove"), this);
  remove_->setAccessibleName(tr("Remove this part"));
  row->addWidget(add_);
  row->addWidget(remove_);
  row->addStretch();
  static_cast<QVBoxLayout&>(column).addLayout(row);
  connect(remove_, &QPushButton::clicked, this, &PartEditor::remove);
}

std::optional<LayoutPart> PartEditor::part() const {
  const auto all = layout_parts(const_cast<PartEditor*>(this)->plan().layout);
  const int at = parts_->currentIndex();
  if (at < 0 || static_cast<std::size_t>(at) >= all.size()) return std::nullopt;
  return all[static_cast<std::size_t>(at)];
}

std::size_t PartEditor::chamber() const {
  const auto chosen = part();
  const bool in_chamber = chosen && chosen->kind != Kind::kOutline && chosen->kind <= Kind::kInsetLine;
  return in_chamber ? chosen->index : 0;
}

void PartEditor::show_chamber(int chamber) {
  const auto all = layout_parts(plan().layout);
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].kind == Kind::kChamber && all[i].index == static_cast<std::size_t>(chamber)) {
      parts_->setCurrentIndex(static_cast<int>(i));
      rebuild_numbers();
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
  rebuild_numbers();
}

void PartEditor::rename() {
  const auto chosen = part();
  const std::string name = name_->text().trimmed().toStdString();
  if (!chosen || !has_name(chosen->kind) || name_of(plan().layout, *chosen).toStdString() == name) return;
  const auto renamed = with_name(plan().layout, *chosen, name);
  if (!renamed) {
    emit problemMet(bad_input("name '" + name + "' is empty or used already: choose another one."));
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

void PartEditor::rebuild_numbers() {
  const auto chosen = part();
  remove_->setEnabled(chosen && chosen->kind != Kind::kOutline);
  name_->setVisible(chosen && has_name(chosen->kind));
  if (!chosen) return;
  name_->setText(name_of(plan().layout, *chosen));
  const auto numbers = part_numbers(plan().layout, *chosen);
  if (built_for_ != chosen || fields_.size() != numbers.size()) {
    while (numbers_->rowCount() > 0) numbers_->removeRow(0);
    fields_.clear();
    for (std::size_t i = 0; i < numbers.size(); ++i) {
      const QString name = text(numbers[i].name);
      auto* field = new NumberField(name, QString::fromStdString(numbers[i].unit),
                                    {numbers[i].least, 3000.0, 2, 1.0}, this);
      numbers_->addRow(name, field);
      fields_.push_back(field);
      connect(field, &NumberField::edited, this, [this, chosen, i](double value) {
        session().edit_layout(tr("Change %1").arg(text(part_title(plan().layout, *chosen))),
                              with_number(plan().layout, *chosen, i, value),
                              QStringLiteral("part.%1.%2.%3.%4")
                                  .arg(int(chosen->kind))
                                  .arg(chosen->index)
                                  .arg(chosen->inset)
                                  .arg(i));
      });
    }
    built_for_ = chosen;
  }
  for (std::size_t i = 0; i < numbers.size(); ++i) fields_[i]->show_value(numbers[i].value);
}

void PartEditor::show_plan() {
  const Layout& layout = plan().layout;
  setVisible(has_layout(plan()));
  const QString before = parts_->currentText();
  const int at = parts_->currentIndex();
  parts_->clear();
  if (!has_layout(plan())) return;
  for (const LayoutPart& part : layout_parts(layout)) parts_->add(text(part_title(layout, part)), {});
  const int same = parts_->findText(before);
  parts_->setCurrentIndex(same >= 0 ? same : std::clamp(at, 0, parts_->count() - 1));
  add_->setEnabled(true);
  rebuild_numbers();
}

}  // namespace wrapgauge
