#include "app/desk/window/drawing_dialog.hpp"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/desk/session/text.hpp"
#include "app/desk/window/choice.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/drawing_report.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/drawing_reader.hpp"
#include "model/layout/drawing_map_json.hpp"
#include "model/layout/drawn_layout.hpp"
#include "model/layout/layout_check.hpp"

namespace wrapgauge {
namespace {

QString part_words(DrawnPart part) {
  switch (part) {
    case DrawnPart::kOutline:
      return DrawingDialog::tr("outline");
    case DrawnPart::kChamber:
      return DrawingDialog::tr("chamber");
    case DrawnPart::kInsetSeam:
      return DrawingDialog::tr("inset seam");
    case DrawnPart::kChannel:
      return DrawingDialog::tr("channel");
    case DrawnPart::kInlet:
      return DrawingDialog::tr("inlet");
    case DrawnPart::kStrap:
      return DrawingDialog::tr("strap");
    case DrawnPart::kIgnore:
      break;
  }
  return DrawingDialog::tr("left out");
}

// A shape is known by its name, else by its group or layer, else by its colours.
DrawingRule rule_for(const DrawnShape& shape, DrawnPart part) {
  if (!shape.names.empty()) return {DrawingRule::Of::kName, shape.names.front(), part, {}};
  if (!shape.groups.empty()) return {DrawingRule::Of::kName, shape.groups.front(), part, {}};
  if (!shape.fill.empty() && shape.fill != "none") return {DrawingRule::Of::kFill, shape.fill, part, {}};
  return {DrawingRule::Of::kStroke, shape.stroke, part, {}};
}

QString called(const DrawnShape& shape) {
  QStringList words;
  if (!shape.name.empty()) words.push_back(text(shape.name));
  for (const std::string& group : shape.groups) words.push_back(DrawingDialog::tr("in %1").arg(text(group)));
  if (!shape.fill.empty() && shape.fill != "none")
    words.push_back(DrawingDialog::tr("fill %1").arg(text(shape.fill)));
  return words.join(QStringLiteral(", "));
}

QString size_words(const Bounds2& box_mm) {
  return QStringLiteral("%1 × %2 mm")
      .arg(figures_text(fixed_text((box_mm.high - box_mm.low).x(), 1)),
           figures_text(fixed_text((box_mm.high - box_mm.low).y(), 1)));
}

// A line that is meant to be open is no trouble.
QString remark(const ShapeRow& row) {
  return text(row.wrong ? row.trouble : row.as.why);
}

}  // namespace

DrawingDialog::DrawingDialog(std::filesystem::path file, const Plan& plan, QWidget* parent)
    : QDialog(parent),
      file_(std::move(file)),
      shapes_(new QTableWidget(this)),
      outcome_(words_label({}, this)) {
  setWindowTitle(tr("Drawing: %1").arg(text(file_.filename().string())));
  resize(1000, 640);
  auto* column = new QVBoxLayout(this);
  auto* lead = words_label(
      tr("Say what each shape of the drawing is. Nothing is taken over until you press Take over."), this);
  lead->setWordWrap(false);
  column->addWidget(lead);
  auto* row = new QHBoxLayout;
  shapes_->setAccessibleName(tr("Shapes of the drawing"));
  shapes_->setColumnCount(5);
  shapes_->setHorizontalHeaderLabels({tr("Shape"), tr("Called"), tr("Size"), tr("Becomes"), tr("Remark")});
  shapes_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  shapes_->setTabKeyNavigation(false);
  shapes_->verticalHeader()->hide();
  shapes_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  for (const int wordy : {1, 4})
    shapes_->horizontalHeader()->setSectionResizeMode(wordy, QHeaderView::Stretch);
  shapes_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  row->addWidget(shapes_, 5);
  column->addLayout(row, 1);
  make_fields(plan);
  column->addWidget(outcome_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
  take_ = buttons->addButton(tr("Take over"), QDialogButtonBox::AcceptRole);
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  take_fields();
  read_again();
}

void DrawingDialog::make_fields(const Plan& plan) {
  auto* box = new QWidget(this);
  QFormLayout* form = column_form(box);
  unit_ = new Choice(tr("Unit of the drawing"), box);
  unit_->add(tr("as the file says"), QString());
  for (const char* unit : {"px", "mm", "cm", "m", "in"})
    unit_->add(QString::fromLatin1(unit), QString::fromLatin1(unit));
  const QString mm_unit = QStringLiteral("mm");
  channel_ = new NumberField(tr("Width of channels drawn as lines"), mm_unit, {0.1, 100.0, 1, 0.5}, box);
  inset_ = new NumberField(tr("Width of inset seams drawn as lines"), mm_unit, {0.1, 100.0, 1, 0.5}, box);
  strap_stiffness_ =
      new NumberField(tr("Stiffness of strap cloth"), QStringLiteral("N/mm"), {0.1, 1e4, 1, 1.0}, box);
  strap_thickness_ = new NumberField(tr("Thickness of strap cloth"), mm_unit, {0.1, 20.0, 1, 0.1}, box);
  closes_ = new QCheckBox(tr("Goes round and closes, stretched by"), box);
  stretch_ = new NumberField(tr("Stretch of the closure"), QStringLiteral("%"), {-50.0, 200.0, 1, 0.5}, box);
  channel_->show_value(4.0);
  inset_->show_value(3.0);
  strap_stiffness_->show_value(20.0);
  strap_thickness_->show_value(1.0);
  stretch_->show_value(2.0);
  form->addRow(tr("Unit"), unit_);
  form->addRow(tr("Channel lines"), channel_);
  form->addRow(tr("Inset lines"), inset_);
  form->addRow(tr("Strap cloth"), strap_stiffness_);
  form->addRow(tr("Strap thickness"), strap_thickness_);
  form->addRow(closes_);
  form->addRow(tr("Stretch"), stretch_);
  sheets_ = new SheetFields(*form);
  sheets_->show_layout(plan.layout);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidget(box);
  static_cast<QHBoxLayout*>(layout()->itemAt(1)->layout())->addWidget(scroll, 3);
  for (NumberField* field : {channel_, inset_, stretch_, strap_stiffness_, strap_thickness_})
    connect(field, &NumberField::edited, this, [this] { take_fields(), fill_table(); });
  connect(closes_, &QCheckBox::toggled, this, [this] { take_fields(), fill_table(); });
  connect(sheets_, &SheetFields::edited, this, [this] { take_fields(), fill_table(); });
  connect(unit_, &Choice::chosen, this, [this](const QVariant& value) {
    map_.reading.unit = drawing_unit_from_name(value.toString().toStdString());
    read_again();
  });
}

void DrawingDialog::take_fields() {
  map_.channel_width = channel_->value() * mm;
  map_.inset_width = inset_->value() * mm;
  Layout sheets;
  sheets_->apply(sheets);
  map_.details.skin_sheet = sheets.skin_sheet;
  map_.details.outer_sheet = sheets.outer_sheet;
  map_.details.backing = sheets.backing;
  map_.details.rim_bonded = sheets.rim_bonded;
  map_.details.strap_stiffness = strap_stiffness_->value() * N_per_mm;
  map_.details.strap_thickness = strap_thickness_->value() * mm;
  map_.details.closure.reset();
  if (closes_->isChecked()) map_.details.closure = Closure{0.0, {}, 0.01 * stretch_->value(), 0.0};
  stretch_->setEnabled(closes_->isChecked());
}

void DrawingDialog::read_again() {
  auto read = read_drawing(file_, map_.reading);
  problem_.reset();
  if (!read) {
    problem_ = read.problem();
    outcome_->setText(text(read.problem().message));
    take_->setEnabled(false);
    return;
  }
  drawing_ = std::move(read).value();
  fill_table();
}

void DrawingDialog::fill_table() {
  const std::vector<DrawnAs> parts = drawn_parts(drawing_, map_);
  const std::vector<ShapeRow> rows = shape_rows(drawing_, parts);
  shapes_->setRowCount(static_cast<int>(rows.size()));
  for (int i = 0; i < shapes_->rowCount(); ++i) {
    const ShapeRow& row = rows[static_cast<std::size_t>(i)];
    shapes_->setItem(i, 0,
                     new QTableWidgetItem(tr("%1, line %2").arg(text(row.shape.kind)).arg(row.shape.line)));
    shapes_->setItem(i, 1, new QTableWidgetItem(called(row.shape)));
    shapes_->setItem(i, 2, new QTableWidgetItem(size_words(row.box_mm)));
    shapes_->setItem(i, 4, new QTableWidgetItem(remark(row)));
    auto* choice = new Choice(tr("Shape %1 becomes").arg(i + 1), shapes_);
    choice->add(tr("not said"), -1);
    for (const DrawnPart part :
         {DrawnPart::kOutline, DrawnPart::kChamber, DrawnPart::kInsetSeam, DrawnPart::kChannel,
          DrawnPart::kInlet, DrawnPart::kStrap, DrawnPart::kIgnore})
      choice->add(part_words(part), int(part));
    choice->show_value(row.as.part ? int(*row.as.part) : -1);
    // The table is filled anew, which ends this list: so only after its signal has gone through.
    connect(
        choice, &Choice::chosen, this,
        [this, i](const QVariant& value) {
          if (value.toInt() >= 0) take_part(i, static_cast<DrawnPart>(value.toInt()));
        },
        Qt::QueuedConnection);
    shapes_->setCellWidget(i, 3, choice);
  }
  try_out();
}

void DrawingDialog::take_part(int row, DrawnPart part) {
  const DrawingRule rule = rule_for(drawing_.shapes[static_cast<std::size_t>(row)], part);
  std::erase_if(map_.rules,
                [&](const DrawingRule& old) { return old.of == rule.of && old.pattern == rule.pattern; });
  map_.rules.insert(map_.rules.begin(), rule);
  fill_table();
}

void DrawingDialog::try_out() {
  QStringList words;
  for (const std::string& note : drawing_.notes) words.push_back(text(note));
  const auto drawn = layout_from_drawing(drawing_, map_);
  take_->setEnabled(drawn.ok());
  if (!drawn) {
    words.push_back(text(drawn.problem().message));
  } else {
    layout_ = *drawn;
    words.push_back(tr("Chambers: %1, channels: %2, inlets: %3, straps: %4.")
                        .arg(layout_.chambers.size())
                        .arg(layout_.channels.size())
                        .arg(layout_.inlets.size())
                        .arg(layout_.straps.size()));
    for (const Problem& problem : check_layout(layout_))
      words.push_back(tr("To mend: %1").arg(text(problem.message)));
  }
  outcome_->setText(words.join(QChar('\n')));
}

}  // namespace wrapgauge
