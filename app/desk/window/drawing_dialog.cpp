#include "app/desk/window/drawing_dialog.hpp"

#include <QHeaderView>

#include "app/desk/session/text.hpp"
#include "app/desk/window/sheet_fields.hpp"
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
  const QString words[] = {DrawingDialog::tr("outline"),    DrawingDialog::tr("chamber"),
                           DrawingDialog::tr("inset seam"), DrawingDialog::tr("channel"),
                           DrawingDialog::tr("inlet"),      DrawingDialog::tr("strap"),
                           DrawingDialog::tr("left out")};
  return words[static_cast<std::size_t>(part)];
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
  if (row.wrong) return text(row.trouble);
  return row.as.guessed ? DrawingDialog::tr("Guessed, please check: %1").arg(text(row.as.why))
                        : text(row.as.why);
}

// What was said of this file before holds again; of another one, how the layout closes.
DrawingMap known_map(const std::filesystem::path& file, const Plan& plan) {
  DrawingMap map;
  map.channel_width = 4.0 * mm;
  map.inset_width = 3.0 * mm;
  map.details.strap_stiffness = 20.0 * N_per_mm;
  map.details.strap_thickness = 1.0 * mm;
  map.details.closure = plan.layout.closure;
  const auto& before = plan.layout_drawing;
  if (!before) return map;
  const auto* said = std::get_if<DrawingMap>(&before->map);
  std::error_code error;
  if (!said || !std::filesystem::equivalent(plan.folder / before->file, file, error)) return map;
  map.reading = said->reading;
  map.rules = said->rules;
  map.guess = said->guess;
  if (said->channel_width) map.channel_width = said->channel_width;
  if (said->inset_width) map.inset_width = said->inset_width;
  if (said->details.strap_stiffness) map.details.strap_stiffness = said->details.strap_stiffness;
  if (said->details.strap_thickness) map.details.strap_thickness = said->details.strap_thickness;
  return map;
}

}  // namespace

DrawingDialog::DrawingDialog(std::filesystem::path file, const Plan& plan, QWidget* parent)
    : QDialog(parent),
      file_(std::move(file)),
      sheets_of_(plan.layout),
      field_box_(new QWidget(this)),
      fields_(field_box_, column_form(field_box_),
              [this](const QString&, const QString&, const auto& edit) {
                edit(map_);
                settle();
              }),
      sheets_(field_box_, &fields_.layout(),
              [this](const QString&, const QString&, const auto& edit) {
                edit(sheets_of_);
                settle();
              }),
      shapes_(words_table(this, tr("Shapes of the drawing"),
                          {tr("Shape"), tr("Called"), tr("Size"), tr("Becomes"), tr("Remark")})),
      outcome_(words_label({}, this)) {
  setWindowTitle(tr("Drawing: %1").arg(text(file_.filename().string())));
  resize(1000, 640);
  arrange();
  add_fields();
  map_ = known_map(file_, plan);
  take_sheets();
  fields_.show(map_);
  sheets_.show(sheets_of_);
  read_again();
}

void DrawingDialog::arrange() {
  auto* lead = words_label(
      tr("Say what each shape of the drawing is. Nothing is taken over until you press Take over."), this);
  lead->setWordWrap(false);
  shapes_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  shapes_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  for (const int wordy : {1, 4})
    shapes_->horizontalHeader()->setSectionResizeMode(wordy, QHeaderView::Stretch);
  shapes_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  auto* row = new QHBoxLayout;
  row->addWidget(shapes_, 5);
  row->addWidget(in_scroll(field_box_, this), 3);
  auto* column = new QVBoxLayout(this);
  column->addWidget(lead);
  column->addLayout(row, 1);
  column->addWidget(outcome_);
  take_ = add_dialog_buttons(*this, *column, tr("Take over"));
}

void DrawingDialog::add_fields() {
  std::vector<ChoiceEntry> units{{tr("as the file says"), QString()}};
  for (const char* unit : {"px", "pt", "mm", "cm", "m", "in"})
    units.push_back({QString::fromLatin1(unit), QString::fromLatin1(unit)});
  auto* unit = new Choice(tr("Unit of the drawing"), field_box_);
  unit->add(units);
  fields_.layout().addRow(tr("Unit"), unit);
  connect(unit, &Choice::chosen, this, [this](const QVariant& value) {
    map_.reading.unit = drawing_unit_from_name(value.toString().toStdString());
    read_again();
  });
  const NumberField::Range widths{0.1, 100.0, 1, 0.5};
  fields_.number(FieldText(tr("Channel lines"), tr("Width of channels drawn as lines")), kInMm, widths,
                 [](auto& map) { return &*map.channel_width; });
  fields_.number(FieldText(tr("Inset lines"), tr("Width of inset seams drawn as lines")), kInMm, widths,
                 [](auto& map) { return &*map.inset_width; });
  fields_.number(FieldText(tr("Strap cloth"), tr("Stiffness of strap cloth")), kInNewtonPerMm,
                 {0.1, 1e4, 1, 1.0}, [](auto& map) { return &*map.details.strap_stiffness; });
  fields_.number(FieldText(tr("Strap thickness"), tr("Thickness of strap cloth")), kInMm, {0.1, 20.0, 1, 0.1},
                 [](auto& map) { return &*map.details.strap_thickness; });
  fields_.box_by(
      FieldText(tr("Goes round and closes, stretched by")),
      [](const DrawingMap& map) { return map.details.closure.has_value(); },
      [](DrawingMap& map, bool on) {
        map.details.closure.reset();
        if (on) map.details.closure = Closure{0.0, {}, 0.02, 0.0};
      });
  fields_.number(
      FieldText(tr("Stretch"), tr("Stretch of the closure")), kInPercent, {-50.0, 200.0, 1, 0.5},
      [](auto& map) {
        return map.details.closure && map.details.closure->stretch ? &*map.details.closure->stretch : nullptr;
      },
      2.0);
  add_sheet_rows(sheets_);
}

// What no drawing says comes from the fields.
void DrawingDialog::take_sheets() {
  map_.details.skin_sheet = sheets_of_.skin_sheet;
  map_.details.outer_sheet = sheets_of_.outer_sheet;
  map_.details.backing = sheets_of_.backing;
  map_.details.rim_bonded = sheets_of_.rim_bonded;
}

void DrawingDialog::settle() {
  take_sheets();
  fields_.show(map_);
  fill_table();
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
  if (drawing_.carried && !carried_taken_) take_carried();
  fill_table();
}

// A drawing of ours brings its sheets, straps and closure.
void DrawingDialog::take_carried() {
  carried_taken_ = true;
  const LayoutDetails& its = drawing_.carried->details;
  if (its.skin_sheet) sheets_of_.skin_sheet = *its.skin_sheet;
  if (its.outer_sheet) sheets_of_.outer_sheet = *its.outer_sheet;
  if (its.skin_sheet) sheets_of_.backing = its.backing;
  sheets_of_.rim_bonded = sheets_of_.rim_bonded || its.rim_bonded;
  map_.details.strap_cloths = its.strap_cloths;
  if (its.closure) map_.details.closure = its.closure;
  take_sheets();
  fields_.show(map_);
  sheets_.show(sheets_of_);
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
