#include "app/desk/window/drawing_dialog.hpp"

#include <QScreen>
#include <algorithm>
#include <limits>

#include "app/desk/session/drawing_rules.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/sheet_fields.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/io/readers/drawing_reader.hpp"
#include "model/layout/air_groups.hpp"
#include "model/layout/drawing_map_json.hpp"
#include "model/layout/drawn_shape_forms.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/page_frame.hpp"

namespace wrapgauge {
namespace {

double distance_to_line(const Polyline& line_m, const Vec2& point_m) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k + 1 < line_m.size(); ++k)
    least = std::min(least, distance_to_segment_m(point_m, line_m[k], line_m[k + 1]));
  return least;
}

std::string free_inlet_name(const Drawing& drawing, const std::vector<Inlet>& added) {
  for (int number = 1;; ++number) {
    const std::string name = "inlet " + std::to_string(number);
    const bool taken =
        std::any_of(added.begin(), added.end(), [&](const Inlet& inlet) { return inlet.name == name; }) ||
        std::any_of(drawing.shapes.begin(), drawing.shapes.end(),
                    [&](const DrawnShape& shape) { return shape.name == name; });
    if (!taken) return name;
  }
}

}  // namespace

DrawingDialog::DrawingDialog(std::filesystem::path file, const Plan& plan,
                             const std::optional<DrawingMap>& remembered, QWidget* parent)
    : QDialog(parent),
      file_(std::move(file)),
      drawing_(std::make_shared<const Drawing>()),
      sheets_of_(plan.layout),
      tabs_(new QTabWidget(this)),
      view_(new DrawingView(this)),
      shapes_(new DrawingShapes(this)),
      measure_box_(new QWidget(this)),
      sheet_box_(new QWidget(this)),
      measures_(measure_box_, column_form(measure_box_),
                [this](const QString&, const QString&, const auto& edit) {
                  edit(map_);
                  read_again();
                }),
      closing_(sheet_box_, column_form(sheet_box_),
               [this](const QString&, const QString&, const auto& edit) {
                 edit(map_);
                 settle();
               }),
      sheets_(sheet_box_, &closing_.layout(),
              [this](const QString&, const QString&, const auto& edit) {
                edit(sheets_of_);
                settle();
              }),
      notes_(words_label({}, this)),
      outcome_(new DrawingOutcome(this)) {
  setWindowTitle(tr("Drawing: %1").arg(text(file_.filename().string())));
  resize(QSize(1080, 700).boundedTo(0.94 * screen()->availableSize()));
  StartingMap start = starting_map(file_, plan, remembered);
  map_ = std::move(start.map);
  carried_taken_ = start.known;
  if (start.known && !has_layout(plan)) {
    if (map_.details.skin_sheet) sheets_of_.skin_sheet = *map_.details.skin_sheet;
    if (map_.details.outer_sheet) sheets_of_.outer_sheet = *map_.details.outer_sheet;
    sheets_of_.backing = map_.details.backing;
    sheets_of_.rim_bonded = map_.details.rim_bonded;
  }
  add_measures();
  add_closing();
  add_sheet_rows(sheets_);
  arrange();
  connect_parts();
  take_sheets();
  read_again();
}

void DrawingDialog::arrange() {
  auto* lead = words_label(
      tr("Click a shape and say what it is. The plan stays as it is until you use the drawing."), this);
  tabs_->addTab(shapes_, tr("Shapes"));
  tabs_->addTab(measures_page(), tr("Measures"));
  tabs_->addTab(sheets_page(), tr("Sheets, closing"));
  tabs_->setMinimumWidth(360);
  tabs_->setMaximumWidth(440);
  tabs_->setDocumentMode(true);
  auto* row = new QHBoxLayout;
  row->addWidget(view_, 1);
  row->addWidget(tabs_);
  auto* column = new QVBoxLayout(this);
  column->addWidget(lead);
  column->addLayout(row, 1);
  column->addWidget(outcome_);
  take_ = add_dialog_buttons(*this, *column, tr("Use this drawing"));
}

void DrawingDialog::connect_parts() {
  connect(view_, &DrawingView::shapeChosen, this, &DrawingDialog::choose);
  connect(shapes_, &DrawingShapes::shapeChosen, this, &DrawingDialog::choose);
  connect(view_, &DrawingView::placeGiven, this, &DrawingDialog::add_inlet);
  connect(view_, &DrawingView::placeGivenUp, this, [this] { ask_for_inlet(false); });
  connect(shapes_, &DrawingShapes::partSaid, this, &DrawingDialog::say);
  connect(shapes_, &DrawingShapes::guessesConfirmed, this, &DrawingDialog::confirm_guesses);
  connect(shapes_, &DrawingShapes::inletWanted, this, &DrawingDialog::ask_for_inlet);
  connect(shapes_, &DrawingShapes::inletTaken, this, [this](std::size_t added) {
    map_.details.inlets.erase(map_.details.inlets.begin() + static_cast<std::ptrdiff_t>(added));
    marks_.chosen.reset();
    try_out();
  });
  connect(outcome_, &DrawingOutcome::shapeAsked, this, &DrawingDialog::choose);
  connect(outcome_, &DrawingOutcome::joinAsked, this, [this](Length join) {
    map_.reading.join = join;
    read_again();
  });
}

QWidget* DrawingDialog::measures_page() {
  auto* page = new QWidget(this);
  auto* column = new QVBoxLayout(page);
  column->addWidget(measure_box_);
  column->addWidget(notes_);
  column->addStretch();
  return in_scroll(page, this);
}

QWidget* DrawingDialog::sheets_page() {
  auto* page = new QWidget(this);
  auto* column = new QVBoxLayout(page);
  column->addWidget(sheet_box_);
  column->addStretch();
  return in_scroll(page, this);
}

void DrawingDialog::add_measures() {
  std::vector<ChoiceEntry> units{{tr("as the file says"), QString()}};
  for (const char* unit : {"px", "pt", "mm", "cm", "m", "in"})
    units.push_back({QString::fromLatin1(unit), QString::fromLatin1(unit)});
  measures_.choice_by(
      FieldText(tr("Unit"), tr("Unit of the drawing")), units,
      [](const DrawingMap& map) {
        for (const char* unit : {"px", "pt", "mm", "cm", "m", "in"})
          if (map.reading.unit == drawing_unit_from_name(unit)) return QVariant(QString::fromLatin1(unit));
        return QVariant(QString());
      },
      [](DrawingMap& map, const QVariant& value) {
        map.reading.unit = drawing_unit_from_name(value.toString().toStdString());
      });
  measures_.optional(
      FieldText(tr("Join line ends"), tr("Join line ends that lie apart by at most"),
                tr("Ends as close as this are read as one. Left out: 0.1 mm in a DXF file, not "
                   "joined in an SVG file.")),
      kInMm, {0.0, 10.0, 1, 0.1}, [](auto& map) { return &map.reading.join; }, 0.1);
  const NumberField::Range widths{0.1, 100.0, 1, 0.5};
  measures_.number(FieldText(tr("Channel lines"), tr("Width of channels drawn as lines")), kInMm, widths,
                   [](auto& map) { return &*map.channel_width; });
  measures_.number(FieldText(tr("Inset lines"), tr("Width of inset seams drawn as lines")), kInMm, widths,
                   [](auto& map) { return &*map.inset_width; });
  measures_.number(FieldText(tr("Strap cloth"), tr("Stiffness of strap cloth")), kInNewtonPerMm,
                   {0.1, 1e4, 1, 1.0}, [](auto& map) { return &*map.details.strap_stiffness; });
  measures_.number(FieldText(tr("Strap thickness"), tr("Thickness of strap cloth")), kInMm,
                   {0.1, 20.0, 1, 0.1}, [](auto& map) { return &*map.details.strap_thickness; });
}

void DrawingDialog::add_closing() {
  closing_.box_by(
      FieldText(tr("Goes round and closes, stretched by")),
      [](const DrawingMap& map) { return map.details.closure.has_value(); },
      [](DrawingMap& map, bool on) {
        map.details.closure.reset();
        if (on) map.details.closure = Closure{0.0, {}, 0.02, 0.0};
      });
  closing_.number(
      FieldText(tr("Closing stretch"), tr("Stretch of the closure")), kInPercent, {-50.0, 200.0, 1, 0.5},
      [](auto& map) {
        return map.details.closure && map.details.closure->stretch ? &*map.details.closure->stretch : nullptr;
      },
      2.0);
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
  try_out();
}

void DrawingDialog::read_again() {
  auto read = read_drawing(file_, map_.reading);
  problem_.reset();
  if (!read) {
    say_unreadable(read.problem());
    return;
  }
  const bool first = drawing_->shapes.empty();
  const std::size_t before = drawing_->shapes.size();
  drawing_ = std::make_shared<const Drawing>(std::move(read).value());
  if (drawing_->carried && !carried_taken_) take_carried();
  if (before != drawing_->shapes.size()) marks_.chosen.reset();
  const auto chosen = marks_.chosen;
  view_->show_drawing(drawing_);
  marks_.chosen = chosen;
  QStringList notes;
  for (const DrawnNote& note : drawing_->notes) notes += text(note.words);
  notes_->setText(notes.join(QStringLiteral("\n\n")));
  try_out();
  if (first && !drawing_->shapes.empty()) view_->setFocus(Qt::OtherFocusReason);
}

// Where only the unit is missing, that is asked for.
void DrawingDialog::say_unreadable(const Problem& problem) {
  problem_ = problem;
  DrawingReading in_mm = map_.reading;
  in_mm.unit = 1.0 * mm;
  needs_unit_ = !map_.reading.unit && read_drawing(file_, in_mm).ok();
  if (needs_unit_) tabs_->setCurrentIndex(1);
  outcome_->say_unreadable(problem);
  measures_.show(map_);
  take_->setEnabled(false);
}

// A drawing of ours brings its sheets, straps and closure.
void DrawingDialog::take_carried() {
  carried_taken_ = true;
  const LayoutDetails& its = drawing_->carried->details;
  if (its.skin_sheet) sheets_of_.skin_sheet = *its.skin_sheet;
  if (its.outer_sheet) sheets_of_.outer_sheet = *its.outer_sheet;
  if (its.skin_sheet) sheets_of_.backing = its.backing;
  sheets_of_.rim_bonded = sheets_of_.rim_bonded || its.rim_bonded;
  map_.details.strap_cloths = its.strap_cloths;
  if (its.closure) map_.details.closure = its.closure;
  take_sheets();
}

void DrawingDialog::choose(std::size_t shape) {
  marks_.chosen = shape;
  view_->show_marks(marks_);
  shapes_->show_shapes(*drawing_, marks_, map_.details.inlets);
}

void DrawingDialog::say(DrawnPart part, bool all_alike) {
  if (!marks_.chosen || *marks_.chosen >= drawing_->shapes.size()) return;
  std::vector<std::size_t> shapes{*marks_.chosen};
  if (all_alike) shapes = alike_shapes(*drawing_, marks_.parts, *marks_.chosen);
  say_part(map_, *drawing_, shapes, part);
  try_out();
}

void DrawingDialog::confirm_guesses() {
  const std::vector<DrawnAs> parts = marks_.parts;
  for (std::size_t i = 0; i < parts.size(); ++i)
    if (parts[i].guessed) say_part(map_, *drawing_, {i}, *parts[i].part);
  try_out();
}

void DrawingDialog::ask_for_inlet(bool wanted) {
  view_->ask_for_place(wanted);
  shapes_->show_placing(wanted);
}

void DrawingDialog::add_inlet(const Vec2& drawn_m) {
  const auto at = in_layout_m(*drawing_, map_, drawn_m);
  if (!at) return shapes_->show_placing(true, tr("Say first which shape is the outline."));
  if (!lies_in_open_part(drawn_m))
    return shapes_->show_placing(true, tr("There is no chamber and no channel there. Click inside one."));
  map_.details.inlets.push_back({free_inlet_name(*drawing_, map_.details.inlets), *at});
  ask_for_inlet(false);
  marks_.chosen = drawing_->shapes.size() + map_.details.inlets.size() - 1;
  try_out();
}

bool DrawingDialog::lies_in_open_part(const Vec2& drawn_m) const {
  for (std::size_t i = 0; i < drawing_->shapes.size(); ++i) {
    const auto part = marks_.parts[i].part;
    for (const DrawnPath& path : drawing_->shapes[i].paths) {
      if (part != DrawnPart::kChamber && part != DrawnPart::kChannel) continue;
      if (path.closed && contains(path.points_m, drawn_m)) return true;
      const double half_m = 0.5 * marks_.parts[i].width.value_or(4.0 * mm).si();
      if (!path.closed && distance_to_line(path.points_m, drawn_m) <= half_m) return true;
    }
  }
  return false;
}

void DrawingDialog::try_out() {
  marks_.parts = drawn_parts(*drawing_, map_);
  marks_.wrong.clear();
  marks_.faults_m.clear();
  marks_.no_inlet.clear();
  marks_.added_inlets_m.clear();
  for (const Inlet& inlet : map_.details.inlets)
    marks_.added_inlets_m.push_back(in_drawing_m(*drawing_, map_, inlet.point_m).value_or(Vec2::Zero()));
  const std::vector<DrawnFault> faults = drawn_faults(*drawing_, map_);
  for (const DrawnFault& fault : faults) {
    if (fault.shape) marks_.wrong.push_back(*fault.shape);
    marks_.faults_m.insert(marks_.faults_m.end(), fault.places_m.begin(), fault.places_m.end());
  }
  const auto drawn = layout_from_drawing(*drawing_, map_);
  take_->setEnabled(drawn.ok());
  if (drawn) {
    layout_ = *drawn;
    show_layout();
  } else {
    outcome_->show_faults(*drawing_, faults);
  }
  view_->show_marks(marks_);
  shapes_->show_shapes(*drawing_, marks_, map_.details.inlets);
  measures_.show(map_);
  closing_.show(map_);
  sheets_.show(sheets_of_);
}

void DrawingDialog::show_layout() {
  const std::vector<std::size_t> shapes = chamber_shapes();
  const std::vector<Problem> problems = check_layout(layout_);
  for (const Problem& problem : problems)
    for (const ProblemPlace& place : problem.places)
      if (says_unreached(problem) && static_cast<std::size_t>(place.index) < shapes.size())
        marks_.no_inlet.push_back(shapes[static_cast<std::size_t>(place.index)]);
  outcome_->show_layout(*drawing_, marks_, layout_, problems, shapes);
}

// In the order in which the layout takes them; one that is carried whole is not made of shapes.
std::vector<std::size_t> DrawingDialog::chamber_shapes() const {
  std::vector<std::size_t> shapes;
  for (std::size_t i = 0; i < drawing_->shapes.size(); ++i) {
    if (marks_.parts[i].part != DrawnPart::kChamber) continue;
    for (const DrawnPath& path : drawing_->shapes[i].paths)
      if (!lies_in_another(drawing_->shapes[i], path)) shapes.push_back(i);
  }
  return shapes.size() == layout_.chambers.size() ? shapes : std::vector<std::size_t>{};
}

}  // namespace wrapgauge
