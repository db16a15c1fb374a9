#include "app/desk/window/layout_step.hpp"

#include <QFileDialog>

#include "app/desk/session/start_pressure.hpp"
#include "app/desk/window/drawing_dialog.hpp"
#include "app/desk/window/layout_dialog.hpp"
#include "model/io/readers/drawing_reader.hpp"
#include "model/layout/layout_json.hpp"

namespace wrapgauge {
namespace {

void put_layout(Plan& plan, Layout layout, std::optional<std::filesystem::path> file,
                std::optional<DrawnLayout> drawing) {
  plan.layout = std::move(layout);
  plan.layout_file = std::move(file);
  plan.layout_drawing = std::move(drawing);
  plan.placement.layout_point_m.reset();  // it was a point of the layout before
}

}  // namespace

LayoutStep::LayoutStep(PlanSession& session, std::filesystem::path memory, QWidget* parent)
    : StepForm(session, parent),
      memory_(std::move(memory)),
      origin_(words_label({}, this)),
      parts_heading_(heading_label(tr("Parts"), this)),
      parts_(new PartEditor(session, this)),
      sheet_box_(new QWidget(this)),
      sheets_(layout_rows(column_form(sheet_box_))),
      findings_(new FindingsList(tr("What the layout needs"), this)) {
  add_sheet_rows(sheets_);
  QPushButton* open = action_button(this, tr("Open a drawing…"), [this] { ask_for_layout(); });
  open->setObjectName(QStringLiteral("open_drawing"));
  QVBoxLayout* column = plain_column(this);
  add_row(*column,
          {open, action_button(
                     this, tr("Make one…"), [this] { make_layout(); }, tr("Make a layout from sizes"))});
  column->addWidget(origin_);
  column->addWidget(findings_);
  column->addWidget(heading_label(tr("Sheets"), this));
  column->addWidget(sheet_box_);
  column->addWidget(parts_heading_);
  column->addWidget(parts_);
  connect(findings_, &FindingsList::chamberAsked, this, &StepForm::chamberAsked);
  connect(parts_, &StepForm::problemMet, this, &StepForm::problemMet);
}

void LayoutStep::ask_for_layout() {
  const QString file =
      QFileDialog::getOpenFileName(this, tr("Open a drawing or layout"), {},
                                   tr("Drawings and layouts (*.svg *.dxf *.json);;All files (*)"));
  if (!file.isEmpty()) open_layout(file.toStdString());
}

void LayoutStep::open_layout(const std::filesystem::path& file) {
  const auto from = std::filesystem::absolute(file);
  if (!is_drawing_file(from)) {
    auto layout = read_layout(from);
    if (!layout) return void(emit problemMet(layout.problem()));
    take_layout(tr("Open a layout"), std::move(layout).value(), from, {});
    return;
  }
  DrawingDialog dialog(from, plan(), memory_.of(from), this);
  if (const auto problem = dialog.problem()) return void(emit problemMet(*problem));
  if (dialog.exec() != QDialog::Accepted) return;
  memory_.keep(from, dialog.map());
  take_layout(tr("Open a drawing"), dialog.drawn_layout(), {}, DrawnLayout{from, dialog.map()});
}

void LayoutStep::make_layout() {
  LayoutDialog dialog(session(), this);
  if (dialog.exec() != QDialog::Accepted) return;
  change(tr("Make a layout"), {}, [&](Plan& plan) {
    put_layout(plan, dialog.made(), {}, {});
    fill_unfed(plan);
  });
}

void LayoutStep::take_layout(const QString& words, Layout layout, std::optional<std::filesystem::path> file,
                             std::optional<DrawnLayout> drawing) {
  change(words, {},
         [&](Plan& plan) { put_layout(plan, std::move(layout), std::move(file), std::move(drawing)); });
}

void LayoutStep::show_state(const SessionState& now, const SessionState& before) {
  const Plan& plan = *now.plan;
  sheet_box_->setEnabled(has_layout(plan));
  parts_heading_->setVisible(has_layout(plan));
  parts_->setVisible(has_layout(plan));  // then it shows all of it: hidden, it hears of no change
  sheets_.show(plan.layout);
  if (!has_layout(plan))
    origin_->setText(
        tr("No layout yet. Open a drawing (SVG, DXF) or a layout file, or make one; files can "
           "also be dropped on the window."));
  else if (plan.layout_drawing)
    origin_->setText(
        tr("From the drawing %1. A change made here is kept in the plan; the drawing stays as it is.")
            .arg(QString::fromStdString(plan.layout_drawing->file.filename().string())));
  else
    origin_->setText(QString::fromStdString(plan.layout.name));
  if (now.check == before.check && now.plan == before.plan) return;
  findings_->show_findings(now.check && has_layout(plan) ? listed_findings(*now.check)
                                                         : std::vector<ListedFinding>{});
  findings_->setVisible(findings_->count() > 0);
}

}  // namespace wrapgauge
