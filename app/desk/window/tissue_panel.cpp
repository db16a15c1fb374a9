#include "app/desk/window/tissue_panel.hpp"

#include <QFormLayout>
#include <algorithm>

#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/resource_folder.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

std::vector<TissueSite> tissue_table() {
  const auto folder = resource_folder();
  if (!folder) return {};
  auto sites = read_tissue_sites(*folder / "tissues.json");
  return sites ? std::move(sites).value() : std::vector<TissueSite>{};
}

QString values_of(const TissueSite& site) {
  QString words =
      TissuePanel::tr("Modulus %1 kPa, skin to bone %2 mm")
          .arg(figures_text(number_text(site.young / kPa, 3)), figures_text(number_text(site.depth / mm, 3)));
  if (site.poisson > 0.0)
    words += TissuePanel::tr(", Poisson's ratio %1").arg(figures_text(number_text(site.poisson, 3)));
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
      fit_depths_(new QPushButton(this)) {
  QFormLayout* form = column_form(this);
  make_choices(*form);
  make_numbers(*form);
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
  depth_ = optional_number(
      this, tr("Depth"), QStringLiteral("mm"), {0.5, 300.0, 1, 1.0},
      tr("Skin to bone over the whole body, instead of the table's; bony sites and regions keep their own. "
         "Measure it, for example with ultrasound, or take it from the literature."),
      [this] { take_depth(); });
  depth_.field->setObjectName(QStringLiteral("tissue depth"));
  friction_ = new NumberField(tr("Friction of skin on silicone"), {}, {0.0, 3.0, 2, 0.05}, this);
  friction_->say_source(tr("Coulomb coefficient; 0.5 unless you measured it (judgement)."));
  form.addRow(tr("Stiffness"), stiffness_);
  form.addRow(poisson_.box, poisson_.field);
  form.addRow(depth_.box, depth_.field);
  form.addRow(depths_);
  form.addRow(fit_depths_);
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
  connect(fit_depths_, &QPushButton::clicked, this, &TissuePanel::take_depths_over);
}

std::size_t TissuePanel::body_points() const {
  const auto checked = session().last_checked();
  return checked && checked->body ? static_cast<std::size_t>(checked->body->body.surface.vertices_m.rows())
                                  : 0;
}

// The plan gives one for each point of the body's mesh: the field gives all the same.
void TissuePanel::take_depth() {
  const auto depth = depth_.value();
  change(tr("Depth of the tissue"), QStringLiteral("tissue.depth"), [&](Plan& plan) {
    plan.tissue_depth_mm.clear();
    if (depth) plan.tissue_depth_mm.assign(body_points(), *depth);
  });
}

void TissuePanel::take_depths_over() {
  if (one_depth_mm(plan().tissue_depth_mm)) return take_depth();
  const auto checked = session().checked();
  if (!checked || !checked->brought_depths) return;
  change(tr("Depth of the tissue"), {},
         [&](Plan& plan) { plan.tissue_depth_mm = checked->brought_depths->depth_mm; });
}

void TissuePanel::show_depth(std::optional<double> of_table_mm) {
  const auto& depths = plan().tissue_depth_mm;
  depth_.box->setEnabled(!depths.empty() || body_points() > 0);
  depths_->setVisible(false);
  fit_depths_->setVisible(false);
  if (depths.empty()) return depth_.show({}, of_table_mm.value_or(20.0));
  const double least = *std::min_element(depths.begin(), depths.end());
  depth_.show(least, least);
  if (!one_depth_mm(plan().tissue_depth_mm)) return show_several_depths();
  if (body_points() == 0 || depths.size() == body_points()) return;
  depths_->setText(tr("This depth was given for another body."));
  depths_->setVisible(true);
  fit_depths_->setText(tr("Give this depth to the body as it is now"));
  fit_depths_->setVisible(true);
}

void TissuePanel::show_several_depths() {
  const auto& depths = plan().tissue_depth_mm;
  const auto [least, most] = std::minmax_element(depths.begin(), depths.end());
  const auto number = [](double depth_mm, int digits) { return figures_text(number_text(depth_mm, digits)); };
  const bool of_other = body_points() > 0 && depths.size() != body_points();
  QString words = of_other ? tr("The plan gives %1 to %2 mm from skin to bone, one depth for each point of "
                                "another body's mesh.")
                           : tr("The plan gives %1 to %2 mm from skin to bone, one depth for each point of "
                                "the body's mesh.");
  words = words.arg(number(*least, 3), number(*most, 3)) + QChar(' ');
  const auto checked = session().checked();
  if (of_other && checked && checked->brought_depths) {
    words += tr("Taken over, each point of this body gets the depth of the nearest place of the body before, "
                "which is at most %1 mm away.")
                 .arg(number(checked->brought_depths->farthest / mm, 2)) +
             QChar(' ');
    fit_depths_->setText(tr("Take the depths over to the body as it is now"));
    fit_depths_->setVisible(true);
  }
  depths_->setText(words + tr("A number typed above takes their place; unticked, the table's depth does."));
  depths_->setVisible(true);
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
  show_depth(site ? std::optional(site->depth / mm) : std::nullopt);
}

}  // namespace wrapgauge
