#include "app/desk/window/body_step.hpp"

#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/job/resource_folder.hpp"
#include "bodyforms/form.hpp"
#include "model/body/mend.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

enum Origin { kFromFile, kFromMeasures };

void add_tissues(Choice& choice) {
  const auto folder = resource_folder();
  if (!folder) return;
  const auto tissues = read_tissue_sites(*folder / "tissues.json");
  if (!tissues) return;
  for (const TissueSite& site : *tissues)
    choice.add(text(site.name), text(site.name),
               BodyStep::tr("Modulus %1 kPa, skin to bone %2 mm. %3 (%4)")
                   .arg(text(number_text(site.young / kPa, 3)), text(number_text(site.depth / mm, 3)),
                        text(site.source), text(site.status)));
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
      pages_(new QStackedWidget(this)),
      said_(words_label({}, this)),
      measures_(new MeasuresPanel(this)),
      girths_(new QTableWidget(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  origin_->add(tr("From a mesh file or scan"), kFromFile);
  origin_->add(tr("Made from measures"), kFromMeasures);
  column->addWidget(origin_);
  pages_->addWidget(make_file_page());
  pages_->addWidget(measures_);
  column->addWidget(pages_);
  column->addWidget(said_);
  column->addWidget(heading_label(tr("Girths"), this));
  girths_->setObjectName(QStringLiteral("girths"));
  girths_->setColumnCount(2);
  girths_->setHorizontalHeaderLabels({tr("From distal end"), tr("Girth")});
  girths_->setAccessibleName(tr("Girths along the body"));
  girths_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  girths_->verticalHeader()->hide();
  girths_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  girths_->setMinimumHeight(180);
  column->addWidget(girths_);
  column->addWidget(heading_label(tr("Tissue under the skin"), this));
  column->addWidget(make_tissue());
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
  raw_ = new QCheckBox(tr("Raw scan: mend it"), page);
  mend_ = new MendPanel(page);
  column->addWidget(open);
  column->addWidget(file_);
  column->addWidget(unit_);
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

QWidget* BodyStep::make_tissue() {
  auto* box = new QWidget(this);
  QFormLayout* form = column_form(box);
  tissue_ = new Choice(tr("Tissue"), box);
  add_tissues(*tissue_);
  posture_ = new Choice(tr("Muscle"), box);
  posture_->add(tr("as the tissue says"), -1);
  posture_->add(tr("relaxed"), int(Posture::kRelaxed));
  posture_->add(tr("tense"), int(Posture::kTense),
                tr("A tense muscle layer has 2.4 times the modulus of a relaxed one (judgement)."));
  stiffness_ =
      new NumberField(tr("Stiffness factor of the tissue"), QStringLiteral("×"), {0.05, 20.0, 2, 0.1}, box);
  stiffness_->say_source(tr("Times the modulus of the tissue chosen; 1 as it stands."));
  friction_ = new NumberField(tr("Friction of skin on silicone"), {}, {0.0, 2.0, 2, 0.05}, box);
  friction_->say_source(tr("Coulomb coefficient; 0.5 unless you measured it (judgement)."));
  form->addRow(tr("Tissue"), tissue_);
  form->addRow(tr("Muscle"), posture_);
  form->addRow(tr("Stiffness"), stiffness_);
  form->addRow(tr("Friction"), friction_);
  connect_tissue();
  return box;
}

void BodyStep::connect_tissue() {
  connect(tissue_, &Choice::chosen, this, [this](const QVariant& value) {
    change(tr("Tissue"), {}, [&](Plan& plan) { plan.tissue_site = value.toString().toStdString(); });
  });
  connect(posture_, &Choice::chosen, this, [this](const QVariant& value) {
    change(tr("Muscle"), {}, [&](Plan& plan) {
      plan.posture.reset();
      if (value.toInt() >= 0) plan.posture = static_cast<Posture>(value.toInt());
    });
  });
  connect(stiffness_, &NumberField::edited, this, [this](double value) {
    change(tr("Stiffness of the tissue"), QStringLiteral("tissue.stiffness"), [&](Plan& plan) {
      plan.tissue_stiffness_factor.reset();
      if (value != 1.0) plan.tissue_stiffness_factor = value;
    });
  });
  connect(friction_, &NumberField::edited, this, [this](double value) {
    change(tr("Friction"), QStringLiteral("tissue.friction"), [&](Plan& plan) { plan.friction = value; });
  });
}

void BodyStep::ask_for_mesh() {
  const QString file = QFileDialog::getOpenFileName(
      this, tr("Open a mesh"), {}, tr("Meshes (*.obj *.stl *.ply *.glb *.gltf);;All files (*)"));
  if (!file.isEmpty()) open_mesh(file.toStdString());
}

void BodyStep::open_mesh(const std::filesystem::path& file) {
  change(tr("Open a mesh"), {}, [&](Plan& plan) {
    plan.body = BodyFile{std::filesystem::absolute(file), {}, {}, {}};
    plan.bony_sites.clear();  // they lie on the body there was before
  });
}

void BodyStep::take_origin(const QVariant& origin) {
  change(tr("Another body"), {}, [&](Plan& plan) {
    if (origin.toInt() == kFromFile && !std::holds_alternative<BodyFile>(plan.body)) plan.body = BodyFile{};
    if (origin.toInt() == kFromMeasures && !std::holds_alternative<BodyForm>(plan.body))
      take_form({"forearm", {}, {Sex::kMale, 50.0, BodySide::kRight}}, plan);
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
  // The column is as tall as the page that is shown, not as the taller of both.
  for (int i = 0; i < pages_->count(); ++i)
    pages_->widget(i)->setSizePolicy(QSizePolicy::Preferred, (i == 0) == (file != nullptr)
                                                                 ? QSizePolicy::Preferred
                                                                 : QSizePolicy::Ignored);
  pages_->widget(file ? 1 : 0)->setMaximumHeight(0);
  pages_->widget(file ? 0 : 1)->setMaximumHeight(QWIDGETSIZE_MAX);
  pages_->setCurrentIndex(file ? 0 : 1);
  tissue_->show_value(text(plan().tissue_site));
  posture_->show_value(plan().posture ? int(*plan().posture) : -1);
  stiffness_->show_value(plan().tissue_stiffness_factor.value_or(1.0));
  friction_->show_value(plan().friction);
}

void BodyStep::show_checked() {
  const auto checked = session().last_checked();
  girths_->setRowCount(0);
  QStringList words;
  if (checked && checked->body_problem) words.push_back(text(checked->body_problem->message));
  if (words.size() == 1 && raw_->isVisible() && !raw_->isChecked())
    words.push_back(tr("If this is a raw scan, tick Raw scan: mend it."));
  if (checked && checked->body)
    for (const std::string& sentence : checked->body->words) words.push_back(text(sentence));
  said_->setText(words.join(QChar('\n')));
  said_->setVisible(!words.empty());
  if (!checked || !checked->body) return;
  for (const Girth& girth : checked->girths) {
    if (girth.kind == SectionKind::kNone) continue;
    const int row = girths_->rowCount();
    girths_->insertRow(row);
    const QString remark = girth.kind == SectionKind::kOneLoop ? QString() : tr(" (not one closed loop)");
    girths_->setItem(row, 0, new QTableWidgetItem(text(fixed_text(girth.station / mm, 0)) + " mm"));
    girths_->setItem(row, 1, new QTableWidgetItem(text(fixed_text(girth.girth / mm, 1)) + " mm" + remark));
  }
}

}  // namespace wrapgauge
