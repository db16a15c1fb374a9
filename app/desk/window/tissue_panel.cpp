#include "app/desk/window/tissue_panel.hpp"

#include <QFormLayout>

#include "app/job/resource_folder.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

std::vector<TissueSite> tissue_table() {
  const auto folder = resource_folder();
  if (!folder) return {};
  auto sites = read_tissue_sites(*folder / "tissues.json");
  return sites ? std::move(sites).value() : std::vector<TissueSite>{};
}

QString values_of(const TissueSite& site) {
  QString words = TissuePanel::tr("Modulus %1 kPa, skin to bone %2 mm")
                      .arg(text(number_text(site.young / kPa, 3)), text(number_text(site.depth / mm, 3)));
  if (site.poisson > 0.0)
    words += TissuePanel::tr(", Poisson's ratio %1").arg(text(number_text(site.poisson, 3)));
  return words + QChar('.');
}

QString source_of(const TissueSite& site) {
  return QStringLiteral("%1 (%2)").arg(text(site.source), text(site.status));
}

}  // namespace

TissuePanel::TissuePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      sites_(tissue_table()),
      site_(new Choice(tr("Tissue"), this)),
      posture_(new Choice(tr("Muscle"), this)),
      model_(new Choice(tr("How tissue gives way"), this)),
      values_(words_label({}, this)),
      depths_(words_label({}, this)),
      drop_depths_(new QPushButton(tr("Take the tissue's depth instead"), this)) {
  QFormLayout* form = column_form(this);
  make_choices(*form);
  make_numbers(*form);
  form->addRow(depths_);
  form->addRow(drop_depths_);
  connect_choices();
}

void TissuePanel::make_choices(QFormLayout& form) {
  site_->setObjectName(QStringLiteral("tissue"));
  site_->add(tr("the form's own"), QString(), tr("The tissue that suits a form made from measures."));
  for (const TissueSite& site : sites_)
    site_->add(text(site.name), text(site.name), values_of(site) + QChar('\n') + source_of(site));
  posture_->add(tr("as the tissue says"), -1);
  posture_->add(tr("relaxed"), int(Posture::kRelaxed));
  posture_->add(tr("tense"), int(Posture::kTense),
                tr("A tense muscle layer has 2.4 times the modulus of a relaxed one (judgement)."));
  model_->setObjectName(QStringLiteral("tissue model"));
  model_->add(tr("each place by itself"), int(TissueModel::kFoundation),
              tr("Elastic foundation: a place sinks under its own pressure only."));
  model_->add(tr("together with its surroundings"), int(TissueModel::kCoupled),
              tr("Coupled layer: a pressed place lowers its surroundings too; takes longer."));
  form.addRow(tr("Tissue"), site_);
  form.addRow(values_);
  form.addRow(tr("Muscle"), posture_);
  form.addRow(tr("Gives way"), model_);
}

void TissuePanel::make_numbers(QFormLayout& form) {
  stiffness_ =
      new NumberField(tr("Stiffness factor of the tissue"), QStringLiteral("×"), {0.05, 20.0, 2, 0.1}, this);
  stiffness_->say_source(tr("Times the modulus of the tissue chosen; 1 as it stands."));
  poisson_ = optional_number(
      this, tr("Poisson's ratio"), {}, {0.0, 0.49, 3, 0.01},
      tr("Instead of the table's; 0.45 to 0.49 hardly squeezes. 0: the modulus holds the confinement."),
      [this] {
        change(tr("Poisson's ratio"), QStringLiteral("tissue.poisson"),
               [this](Plan& plan) { plan.tissue_poisson = poisson_.value(); });
      });
  poisson_.field->setObjectName(QStringLiteral("poisson"));
  friction_ = new NumberField(tr("Friction of skin on silicone"), {}, {0.0, 3.0, 2, 0.05}, this);
  friction_->say_source(tr("Coulomb coefficient; 0.5 unless you measured it (judgement)."));
  form.addRow(tr("Stiffness"), stiffness_);
  form.addRow(poisson_.box, poisson_.field);
  form.addRow(tr("Friction"), friction_);
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

void TissuePanel::connect_choices() {
  connect(site_, &Choice::chosen, this, [this](const QVariant& value) {
    // Nothing is known of the tissue of a mesh from a file.
    if (value.toString().isEmpty() && std::holds_alternative<BodyFile>(plan().body)) return show_plan();
    change(tr("Tissue"), {}, [&](Plan& plan) { plan.tissue_site = value.toString().toStdString(); });
  });
  connect(posture_, &Choice::chosen, this, [this](const QVariant& value) {
    change(tr("Muscle"), {}, [&](Plan& plan) {
      plan.posture.reset();
      if (value.toInt() >= 0) plan.posture = static_cast<Posture>(value.toInt());
    });
  });
  connect(model_, &Choice::chosen, this, [this](const QVariant& value) {
    change(tr("How tissue gives way"), {},
           [&](Plan& plan) { plan.tissue_model = static_cast<TissueModel>(value.toInt()); });
  });
  connect(drop_depths_, &QPushButton::clicked, this, [this] {
    change(tr("Depth of the tissue"), {}, [](Plan& plan) { plan.tissue_depth_mm.clear(); });
  });
}

void TissuePanel::show_plan() {
  site_->show_value(text(plan().tissue_site));
  posture_->show_value(plan().posture ? int(*plan().posture) : -1);
  model_->show_value(int(plan().tissue_model));
  stiffness_->show_value(plan().tissue_stiffness_factor.value_or(1.0));
  friction_->show_value(plan().friction);
  const auto checked = session().last_checked();
  const bool of_form = plan().tissue_site.empty() && checked && checked->body;
  const auto site = find_tissue(sites_, of_form ? checked->body->body.tissue_site : plan().tissue_site);
  poisson_.show(plan().tissue_poisson, site ? site->poisson : 0.0);
  values_->setVisible(site.ok());
  values_->setText(site ? values_of(*site) : QString());
  values_->setToolTip(site ? source_of(*site) : QString());
  const auto depths = plan().tissue_depth_mm.size();
  depths_->setVisible(depths > 0);
  drop_depths_->setVisible(depths > 0);
  depths_->setText(
      tr("The plan gives a depth from skin to bone at each of %1 points of the body's mesh.").arg(depths));
}

}  // namespace wrapgauge
