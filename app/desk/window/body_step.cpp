#include "app/desk/window/body_step.hpp"

#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/session/mend_words.hpp"
#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "bodyforms/form.hpp"
#include "model/body/mend.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

enum Origin { kFromFile, kFromMeasures };

// The long axis as a plan may give it; any other direction is kept and shown as given.
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

// They lie on the body there was before.
void forget_places(Plan& plan) {
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
      if (known.name == form.form && !known.tissue_site.empty()) plan.tissue_site = known.tissue_site;
  plan.body = form;
}

}  // namespace

BodyStep::BodyStep(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      origin_(new Choice(tr("Where the body comes from"), this)),
      said_(words_label({}, this)),
      measures_(new MeasuresPanel(this)),
      girths_(new QTableWidget(this)),
      tissue_(new TissuePanel(session, this)),
      places_(new SkinPlacePanel(session, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  origin_->add(tr("From a mesh file or scan"), kFromFile);
  origin_->add(tr("Made from measures"), kFromMeasures);
  column->addWidget(origin_);
  file_page_ = make_file_page();
  column->addWidget(file_page_);
  column->addWidget(measures_);
  column->addWidget(said_);
  column->addWidget(heading_label(tr("Girths"), this));
  girths_->setObjectName(QStringLiteral("girths"));
  girths_->setColumnCount(2);
  girths_->setHorizontalHeaderLabels({tr("From distal end"), tr("Girth")});
  girths_->setAccessibleName(tr("Girths along the body"));
  girths_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  girths_->verticalHeader()->hide();
  girths_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  girths_->setTabKeyNavigation(false);
  girths_->setMinimumHeight(180);
  column->addWidget(girths_);
  column->addWidget(heading_label(tr("Tissue under the skin"), this));
  column->addWidget(tissue_);
  column->addWidget(heading_label(tr("Places on the skin"), this));
  column->addWidget(places_);
  connect(places_, &StepForm::problemMet, this, &StepForm::problemMet);
  connect(places_, &StepForm::placeAsked, this, &StepForm::placeAsked);
  connect(origin_, &Choice::chosen, this, &BodyStep::take_origin);
  connect(measures_, &MeasuresPanel::edited, this, [this](const QString& merge) {
    change(tr("Body from measures"), merge, [this](Plan& plan) { take_form(measures_->form(), plan); });
  });
}

QWidget* BodyStep::make_file_page() {
  auto* page = new QWidget(this);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  auto* open = new QPushButton(tr("Open a mesh…"), page);
  open->setObjectName(QStringLiteral("open_mesh"));
  file_ = words_label({}, page);
  unit_ = new Choice(tr("Unit of the file"), page);
  unit_->add(tr("unit guessed from size"), QString());
  for (const char* unit : {"mm", "cm", "m", "in"})
    unit_->add(QString::fromLatin1(unit), QString::fromLatin1(unit));
  axis_ = new Choice(tr("Long axis of the body, from hand or foot to trunk"), page);
  axis_->add(tr("long axis found by itself"), kFound);
  const char* const axes[] = {"+x", "−x", "+y", "−y", "+z", "−z"};
  for (int i = 0; i < 6; ++i)
    axis_->add(tr("long axis along %1 of the file").arg(QString::fromUtf8(axes[i])), i + 1,
               tr("From hand or foot to trunk."));
  axis_->add(tr("long axis as the plan says"), kGiven);
  raw_ = new QCheckBox(tr("Raw scan: mend it"), page);
  mend_ = new MendPanel(page);
  column->addWidget(open);
  column->addWidget(file_);
  column->addWidget(unit_);
  column->addWidget(axis_);
  column->addWidget(raw_);
  column->addWidget(mend_);
  column->addStretch(1);
  connect(open, &QPushButton::clicked, this, &BodyStep::ask_for_mesh);
  connect(unit_, &Choice::chosen, this, [this](const QVariant& value) {
    change(tr("Unit of the body"), {}, [&](Plan& plan) {
      if (auto* file = std::get_if<BodyFile>(&plan.body))
        file->unit = unit_from_name(value.toString().toStdString());
    });
  });
  connect(axis_, &Choice::chosen, this, [this](const QVariant& value) {
    if (value.toInt() == kGiven) return show_plan();
    change(tr("Long axis of the body"), {}, [&](Plan& plan) {
      if (auto* file = std::get_if<BodyFile>(&plan.body)) file->axis_direction = axis_of(value.toInt());
    });
  });
  connect(raw_, &QCheckBox::clicked, this, [this](bool mend) {
    change(tr("Mend the scan"), {}, [&](Plan& plan) {
      if (auto* file = std::get_if<BodyFile>(&plan.body))
        file->mend = mend ? usual_steps() : std::vector<MendStep>{};
    });
  });
  connect(mend_, &MendPanel::edited, this, [this] {
    change(tr("Mend the scan"), QStringLiteral("body.mend"), [&](Plan& plan) {
      if (auto* file = std::get_if<BodyFile>(&plan.body)) file->mend = mend_->steps();
    });
  });
  return page;
}

void BodyStep::ask_for_mesh() {
  const QString file = QFileDialog::getOpenFileName(
      this, tr("Open a mesh"), {}, tr("Meshes (*.obj *.stl *.ply *.glb *.gltf);;All files (*)"));
  if (!file.isEmpty()) open_mesh(file.toStdString());
}

void BodyStep::open_mesh(const std::filesystem::path& file) {
  change(tr("Open a mesh"), {}, [&](Plan& plan) {
    plan.body = BodyFile{std::filesystem::absolute(file), {}, {}, {}};
    forget_places(plan);
  });
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

void BodyStep::show_file(const BodyFile& file) {
  file_->setText(file.file.empty() ? tr("No mesh yet. Open one, or drop it on the window.")
                                   : text(file.file.filename().string()));
  file_->setToolTip(text(file.file.string()));
  unit_->show_value(file.unit ? QString::fromUtf8(unit_name(*file.unit).data()) : QString());
  raw_->setChecked(!file.mend.empty());
  raw_->setEnabled(!file.file.empty());
  unit_->setEnabled(!file.file.empty());
  axis_->setEnabled(!file.file.empty());
  axis_->show_value(choice_of(file.axis_direction));
  mend_->setVisible(!file.mend.empty());
  mend_->show_steps(file.mend);
}

void BodyStep::show_plan() {
  const auto* file = std::get_if<BodyFile>(&plan().body);
  origin_->show_value(file ? kFromFile : kFromMeasures);
  if (file)
    show_file(*file);
  else
    measures_->show_form(std::get<BodyForm>(plan().body));
  file_page_->setVisible(file != nullptr);
  measures_->setVisible(file == nullptr);
}

void BodyStep::show_checked() {
  const auto checked = session().last_checked();
  girths_->setRowCount(0);
  QStringList words;
  if (checked && checked->body_problem) words.push_back(body_problem_words(*checked));
  if (checked && checked->body_need == BodyNeed::kMending)
    words.push_back(tr("Mended it can be read: tick Raw scan: mend it."));
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
