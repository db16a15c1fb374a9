#include "app/desk/window/drawing_shapes.hpp"

#include <QHeaderView>
#include <algorithm>

#include "app/desk/session/drawing_rules.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

constexpr DrawnPart kParts[] = {DrawnPart::kOutline, DrawnPart::kChamber, DrawnPart::kInsetSeam,
                                DrawnPart::kChannel, DrawnPart::kInlet,   DrawnPart::kStrap,
                                DrawnPart::kIgnore};

QString called(const DrawnShape& shape) {
  std::string name = shape.name;
  if (name.empty() && !shape.names.empty()) name = shape.names.front();
  return name.empty() ? DrawingShapes::tr("%1, line %2").arg(text(shape.kind)).arg(shape.line)
                      : text(shown_name(name));
}

QString size_words(const DrawnShape& shape) {
  if (shape.paths.empty()) return QStringLiteral("–");
  const Vec2 size = bounds(shape).high - bounds(shape).low;
  return DrawingShapes::tr("%1 × %2 mm").arg(fixed_words(1e3 * size.x(), 1), fixed_words(1e3 * size.y(), 1));
}

QString part_title(std::optional<DrawnPart> part) {
  return part ? text(part_words(*part)) : DrawingShapes::tr("not said yet");
}

QString remark_words(const DrawnShape& shape, const DrawnAs& as) {
  QStringList words;
  if (!as.part)
    words += DrawingShapes::tr("Nothing says what it is, so it is left out.");
  else if (as.guessed)
    words += DrawingShapes::tr("Guessed, please check: %1.").arg(text(as.why));
  else if (as.alone)
    words += DrawingShapes::tr("Said here.");
  else
    words += DrawingShapes::tr("Said: %1.").arg(text(as.why));
  if (!shape.remark.empty()) words += DrawingShapes::tr("It %1.").arg(text(table_words(shape.remark)));
  return words.join(u' ');
}

QTableWidgetItem* cell(const QString& words) {
  return new QTableWidgetItem(words);
}

}  // namespace

DrawingShapes::DrawingShapes(QWidget* parent)
    : QWidget(parent),
      chosen_words_(heading_label({}, this)),
      remark_(words_label({}, this)),
      placing_words_(words_label({}, this)),
      part_(new Choice(tr("The chosen shape is"), this)),
      alike_(new QCheckBox(this)),
      confirm_(action_button(this, tr("The guesses are right"), [this] { emit guessesConfirmed(); })),
      add_inlet_(new QPushButton(tr("Add an inlet"), this)),
      take_inlet_(action_button(this, tr("Remove this inlet"),
                                [this] {
                                  if (chosen_ && *chosen_ >= shape_count_)
                                    emit inletTaken(*chosen_ - shape_count_);
                                })),
      list_(words_table(this, tr("Shapes of the drawing"), {tr("Shape"), tr("Size"), tr("It is")})) {
  add_inlet_->setCheckable(true);
  add_inlet_->setToolTip(tr("Where the air goes in, when the drawing does not show it."));
  part_->add(part_title(std::nullopt), -1);
  for (const DrawnPart part : kParts) {
    part_->add(part_title(part), static_cast<int>(part));
    part_->setItemIcon(part_->count() - 1, part_icon(part, *this));
  }
  arrange();
  connect(part_, &Choice::chosen, this, [this](const QVariant& value) {
    if (value.toInt() >= 0)
      emit partSaid(static_cast<DrawnPart>(value.toInt()), !alike_->isHidden() && alike_->isChecked());
  });
  connect(add_inlet_, &QPushButton::toggled, this, [this](bool on) {
    if (!filling_) emit inletWanted(on);
  });
  connect(list_, &QTableWidget::currentCellChanged, this, [this](int row, int, int before, int) {
    if (!filling_ && row >= 0 && row != before) emit shapeChosen(static_cast<std::size_t>(row));
  });
}

void DrawingShapes::arrange() {
  list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  list_->setSelectionBehavior(QAbstractItemView::SelectRows);
  list_->setSelectionMode(QAbstractItemView::SingleSelection);
  list_->setIconSize({22, 16});
  list_->setMinimumHeight(90);
  list_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  list_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  list_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  auto* column = new QVBoxLayout(this);
  column->addWidget(chosen_words_);
  column->addWidget(part_);
  column->addWidget(alike_);
  column->addWidget(remark_);
  add_row(*column, {add_inlet_, take_inlet_});
  column->addWidget(placing_words_);
  column->addWidget(list_, 1);
  column->addWidget(confirm_);
}

void DrawingShapes::show_shapes(const Drawing& drawing, const DrawingMarks& marks,
                                const std::vector<Inlet>& added) {
  filling_ = true;
  chosen_ = marks.chosen;
  shape_count_ = drawing.shapes.size();
  fill_list(drawing, marks, added);
  show_chosen(drawing, marks, added);
  confirm_->setVisible(
      std::any_of(marks.parts.begin(), marks.parts.end(), [](const DrawnAs& as) { return as.guessed; }));
  filling_ = false;
}

void DrawingShapes::fill_list(const Drawing& drawing, const DrawingMarks& marks,
                              const std::vector<Inlet>& added) {
  list_->setRowCount(static_cast<int>(drawing.shapes.size() + added.size()));
  for (std::size_t i = 0; i < drawing.shapes.size(); ++i) {
    const int row = static_cast<int>(i);
    const DrawnAs& as = marks.parts[i];
    const QString what = part_title(as.part);
    QTableWidgetItem* part = cell(as.guessed ? tr("%1 ?").arg(what) : what);
    part->setIcon(part_icon(as.part, *this));
    part->setToolTip(remark_words(drawing.shapes[i], as));
    list_->setItem(row, 0, cell(called(drawing.shapes[i])));
    list_->setItem(row, 1, cell(size_words(drawing.shapes[i])));
    list_->setItem(row, 2, part);
  }
  for (std::size_t k = 0; k < added.size(); ++k) {
    const int row = static_cast<int>(drawing.shapes.size() + k);
    list_->setItem(row, 0, cell(text(added[k].name)));
    list_->setItem(row, 1, cell(tr("added here")));
    list_->setItem(row, 2, cell(part_title(DrawnPart::kInlet)));
    list_->item(row, 2)->setIcon(part_icon(DrawnPart::kInlet, *this));
  }
  if (chosen_)
    list_->setCurrentCell(static_cast<int>(*chosen_), 0);
  else
    list_->setCurrentCell(-1, -1);
}

void DrawingShapes::show_chosen(const Drawing& drawing, const DrawingMarks& marks,
                                const std::vector<Inlet>& added) {
  const bool shape = chosen_ && *chosen_ < shape_count_;
  part_->setEnabled(shape);
  take_inlet_->setVisible(chosen_ && !shape);
  alike_->setVisible(false);
  remark_->clear();
  if (!shape) {
    chosen_words_->setText(chosen_ ? tr("%1, added here").arg(text(added[*chosen_ - shape_count_].name))
                                   : tr("Click a shape"));
    part_->show_value(chosen_ ? static_cast<int>(DrawnPart::kInlet) : -1);
    return;
  }
  const DrawnShape& drawn = drawing.shapes[*chosen_];
  const DrawnAs& as = marks.parts[*chosen_];
  chosen_words_->setText(
      tr("%1 · %2").arg(fontMetrics().elidedText(called(drawn), Qt::ElideRight, 220), size_words(drawn)));
  part_->show_value(as.part ? static_cast<int>(*as.part) : -1);
  remark_->setText(remark_words(drawn, as));
  const auto alike = alike_shapes(drawing, marks.parts, *chosen_);
  const std::string group = shared_group(drawing, alike);
  const auto others = static_cast<int>(alike.size()) - 1;
  alike_->setVisible(others > 0);
  alike_->setChecked(!group.empty());
  const QString in = fontMetrics().elidedText(text(group), Qt::ElideRight, 120);
  alike_->setText(group.empty() ? tr("Others drawn alike too: %1").arg(others)
                                : tr("All of “%1” too: %2 more").arg(in).arg(others));
}

void DrawingShapes::show_placing(bool asked, const QString& said) {
  filling_ = true;
  add_inlet_->setChecked(asked);
  filling_ = false;
  QString words = said;
  if (asked && words.isEmpty())
    words = tr("Click a place in a chamber, or press Enter for the middle of the chosen one. Esc: no inlet.");
  placing_words_->setText(words);
  placing_words_->setVisible(!words.isEmpty());
}

}  // namespace wrapgauge
