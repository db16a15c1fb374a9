#include "app/desk/window/body_step.hpp"

#include <QFileDialog>
#include <functional>

#include "app/desk/session/mend_words.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/window/mend_panel.hpp"
#include "app/desk/window/part_panel.hpp"
#include "app/desk/window/tissue_panel.hpp"
#include "app/desk/window/word_panels.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "bodyforms/form.hpp"
#include "model/body/mend.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

enum Origin { kFromFile, kFromMeasures };

// Long axis and front as a plan may give them; any other direction is kept and shown as given.
constexpr int kFound = 0, kGiven = 7;

std::optional<Vec3> axis_of(int choice) {
  if (choice <= kFound || choice >= kGiven) return std::nullopt;
  const double sign = choice % 2 == 1 ? 1.0 : -1.0;
  return Vec3(sign * Vec3::Unit((choice - 1) / 2));
}

int choice_of(const std::optional<Vec3>& axis) {
  if (!axis) return kFound;
  for (int choice = 1; choice < kGiven; ++choice)
    if (axis->normalized() == *axis_of(choice)) return choice;
  return kGiven;
}

// `otherwise`: what holds when none is given; `along`: with the axis of the file in it.
std::vector<ChoiceEntry> direction_entries(const QString& otherwise, const QString& along,
                                           const QString& source, const QString& as_given) {
  std::vector<ChoiceEntry> entries{{otherwise, kFound}};
  for (const char* axis : {"+x", "−x", "+y", "−y", "+z", "−z"})
    entries.push_back({along.arg(QString::fromUtf8(axis)), static_cast<int>(entries.size()), source});
  entries.push_back({as_given, kGiven});
  return entries;
}

// What was said of the body there was before.
void forget_places(Plan& plan) {
  plan.part.reset();
  plan.sites_confirmed.reset();
  plan.bony_sites.clear();
  plan.landmarks.clear();
  plan.regions.clear();
  plan.tissue_depth_mm.clear();
}

// Another form brings the tissue that suits it; one chosen for this form stays.
void take_form(const BodyForm& form, Plan& plan) {
  const auto* before = std::get_if<BodyForm>(&plan.body);
  if (!before || before->form != form.form)
    for (const Form& known : forms())
      if (known.name == form.form) {
        if (!known.tissue_site.empty()) plan.tissue_site = known.tissue_site;
        if (known.part) plan.part.reset();
      }
  plan.body = form;
}

}  // namespace

BodyStep::BodyStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      origin_(new Choice(tr("Where the body comes from"), this)),
      file_page_(new QWidget(this)),
      file_(words_label({}, file_page_)),
      mend_box_(new QWidget(file_page_)),
      said_(words_label({}, this)),
      of_file_(file_page_, column_form(nullptr), std::bind_front(&BodyStep::change_file, this)),
      mending_(
          mend_box_, column_form(mend_box_),
          [this](const QString&, const QString&, const auto& edit) {
            change_file(tr("Repair the scan"), QStringLiteral("body.repair"),
                        [&](BodyFile& file) { edit(file.mend); });
          },
          true),
      measures_(new MeasuresPanel(
          [this](const QString& words, const QString& merge, const auto& edit) {
            change(words, merge, [&](Plan& plan) {
              BodyForm form = std::get<BodyForm>(plan.body);
              edit(form);
              take_form(form, plan);
            });
          },
          this)),
      girths_(words_table(this, tr("Girths along the body"), {tr("From distal end"), tr("Girth")})),
      sites_(new SitePanel(session, this)),
      places_(new SkinPlacePanel(session, this)) {
  origin_->add({{tr("From a mesh file or scan"), kFromFile}, {tr("Made from measures"), kFromMeasures}});
  girths_->setObjectName(QStringLiteral("girths"));
  girths_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  girths_->setMinimumHeight(180);
  fill_file_page();
  QVBoxLayout* column = plain_column(this);
  for (QWidget* part : std::initializer_list<QWidget*>{
           origin_, file_page_, measures_, new PartPanel(session, this), said_, sites_,
           new NoOtherSitesPanel(session, this), heading_label(tr("Girths"), this), girths_,
           heading_label(tr("Tissue under the skin"), this), new TissuePanel(session, this),
           heading_label(tr("Places on the skin"), this), places_})
    column->addWidget(part);
  connect(places_, &StepForm::problemMet, this, &StepForm::problemMet);
  for (StepForm* part : std::initializer_list<StepForm*>{sites_, places_})
    connect(part, &StepForm::placeAsked, this, &StepForm::placeAsked);
  connect(origin_, &Choice::chosen, this, &BodyStep::take_origin);
}

void BodyStep::change_file(const QString& words, const QString& merge,
                           const std::function<void(BodyFile&)>& edit) {
  change(words, merge, [&](Plan& plan) {
    if (auto* file = std::get_if<BodyFile>(&plan.body)) edit(*file);
  });
}

void BodyStep::fill_file_page() {
  QPushButton* open = action_button(file_page_, tr("Open a mesh…"), [this] { ask_for_mesh(); });
  open->setObjectName(QStringLiteral("open_mesh"));
  std::vector<ChoiceEntry> units{{tr("unit guessed from size"), QString()}};
  for (const char* unit : {"mm", "cm", "m", "in"})
    units.push_back({QString::fromLatin1(unit), QString::fromLatin1(unit)});
  const auto axes =
      direction_entries(tr("long axis found automatically"), tr("long axis along %1 of the file"),
                        tr("From hand or foot to trunk."), tr("long axis as the plan says"));
  const auto fronts = direction_entries(tr("front not given"), tr("front along %1 of the file"),
                                        tr("Where the person's front faces."), tr("front as the plan says"));
  Choice* unit = of_file_.choice_by(
      FieldText({}, tr("Unit of the file")), units,
      [](const BodyFile& file) {
        return file.unit ? QString::fromUtf8(unit_name(*file.unit).data()) : QString();
      },
      [](BodyFile& file, const QVariant& value) {
        file.unit = unit_from_name(value.toString().toStdString());
      });
  Choice* axis = of_file_.choice_by(
      FieldText({}, tr("Long axis of the body, from hand or foot to trunk")), axes,
      [](const BodyFile& file) { return choice_of(file.axis_direction); },
      [](BodyFile& file, const QVariant& value) {
        if (value.toInt() != kGiven) file.axis_direction = axis_of(value.toInt());
      });
  Choice* front = of_file_.choice_by(
      FieldText({}, tr("Front of the person in the file"), {}, "front"), fronts,
      [](const BodyFile& file) { return choice_of(file.front); },
      [](BodyFile& file, const QVariant& value) {
        if (value.toInt() != kGiven) file.front = axis_of(value.toInt());
      });
  QVBoxLayout* column = plain_column(file_page_);
  for (QWidget* part : std::initializer_list<QWidget*>{open, file_, unit, axis, front})
    column->addWidget(part);
  column->addLayout(&of_file_.layout());
  column->addWidget(mend_box_);
  QCheckBox* raw = of_file_.box_by(
      FieldText(tr("Raw scan: repair it")), [](const BodyFile& file) { return !file.mend.empty(); },
      [](BodyFile& file, bool mend) { file.mend = mend ? usual_steps() : std::vector<MendStep>{}; });
  add_mend_rows(mending_);
  of_file_.also([=, this](const BodyFile& file) {
    for (QWidget* field : std::initializer_list<QWidget*>{unit, axis, front, raw})
      field->setEnabled(!file.file.empty());
    mend_box_->setVisible(!file.mend.empty());
    file_->setText(file.file.empty() ? tr("No mesh yet. Open one, or drop it on the window.")
                                     : text(file.file.filename().string()));
    file_->setToolTip(text(file.file.string()));
  });
}

void BodyStep::ask_for_mesh() {
  const QString file = QFileDialog::getOpenFileName(
      this, tr("Open a mesh"), {}, tr("Meshes (*.obj *.stl *.ply *.glb *.gltf);;All files (*)"));
  if (!file.isEmpty()) open_mesh(file.toStdString());
}

// A file that holds no body takes nothing away: the body before stays.
void BodyStep::open_mesh(const std::filesystem::path& file) {
  Plan changed = plan();
  changed.body = BodyFile{std::filesystem::absolute(file), {}, {}, {}, {}, {}};
  forget_places(changed);
  session().try_body(tr("Open a mesh"), std::move(changed));
}

void BodyStep::take_origin(const QVariant& origin) {
  if (origin.toInt() == (std::holds_alternative<BodyFile>(plan().body) ? kFromFile : kFromMeasures)) return;
  change(tr("Another body"), {}, [&](Plan& plan) {
    if (origin.toInt() == kFromFile)
      plan.body = BodyFile{};
    else
      take_form({"forearm", {}, {Sex::kMale, 50.0, BodySide::kRight}}, plan);
    forget_places(plan);
  });
}

void BodyStep::make_from_measures() {
  take_origin(kFromMeasures);
}

void BodyStep::show_state(const SessionState& now, const SessionState& before) {
  const auto* file = std::get_if<BodyFile>(&now.plan->body);
  if (now.plan != before.plan) {
    origin_->show_value(file ? kFromFile : kFromMeasures);
    file_page_->setVisible(file != nullptr);
    measures_->setVisible(file == nullptr);
    if (file) {
      of_file_.show(*file);
      mending_.show(file->mend);
    } else {
      measures_->show_form(std::get<BodyForm>(now.plan->body));
    }
  }
  if (now.check != before.check || !now.check) show_checked(now.check.get());
}

void BodyStep::show_checked(const CheckedPlan* checked) {
  girths_->setRowCount(0);
  QStringList words;
  if (checked && checked->body_problem) words.push_back(body_problem_words(*checked));
  if (checked && checked->body_need == BodyNeed::kMending)
    words.push_back(tr("Repaired it can be read: tick Raw scan: repair it."));
  if (checked && checked->body) words += body_words(*checked->body);
  said_->setText(words.join(QChar('\n')));
  said_->setVisible(!words.empty());
  if (!checked || !checked->body) return;
  for (const Girth& girth : checked->girths) {
    if (girth.kind == SectionKind::kNone) continue;
    const int row = girths_->rowCount();
    girths_->insertRow(row);
    const QString remark = girth.kind == SectionKind::kOneLoop ? QString() : tr(" (not one closed loop)");
    girths_->setItem(row, 0, new QTableWidgetItem(figures_text(fixed_text(girth.station / mm, 0)) + " mm"));
    girths_->setItem(row, 1,
                     new QTableWidgetItem(figures_text(fixed_text(girth.girth / mm, 1)) + " mm" + remark));
  }
}

}  // namespace wrapgauge
