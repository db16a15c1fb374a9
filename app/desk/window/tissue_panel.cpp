#include "app/desk/window/tissue_panel.hpp"

#include <algorithm>

#include "app/desk/session/text.hpp"
#include "app/desk/window/fine_settings.hpp"
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

QString brief_values_of(const TissueSite& site) {
  return TissuePanel::tr("Modulus %1 kPa, skin to bone %2 mm")
      .arg(figures_text(number_text(site.young / kPa, 3)), figures_text(number_text(site.depth / mm, 3)));
}

QString values_of(const TissueSite& site) {
  QString words = brief_values_of(site);
  if (site.poisson > 0.0)
    words += TissuePanel::tr(", Poisson's ratio %1").arg(figures_text(number_text(site.poisson, 3)));
  return words + QChar('.');
}

QString source_of(const TissueSite& site) {
  return QStringLiteral("%1 (%2)").arg(text(site.source), text(site.status));
}

std::optional<double> least_depth_mm(const Plan& plan) {
  const auto least = std::min_element(plan.tissue_depth_mm.begin(), plan.tissue_depth_mm.end());
  return least == plan.tissue_depth_mm.end() ? std::nullopt : std::optional(*least);
}

}  // namespace

TissuePanel::TissuePanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent),
      sites_(tissue_table()),
      values_(words_label({}, this)),
      depths_(words_label({}, this)),
      fit_depths_(action_button(this, {}, [this] { take_depths_over(); })),
      rows_(plan_rows(column_form(this))),
      fine_(new QWidget(this)),
      fine_rows_(plan_rows(column_form(fine_))) {
  add_choices();
  add_numbers();
  add_fine_settings();
}

void TissuePanel::add_choices() {
  std::vector<ChoiceEntry> sites{
      {tr("the form's own"), QString(), tr("The tissue that suits a form made from measures.")}};
  for (const TissueSite& site : sites_)
    sites.push_back({text(site.name), text(site.name), values_of(site) + QChar('\n') + source_of(site)});
  rows_.choice_by(
      FieldText(tr("Tissue"), {}, {}, "tissue"), sites,
      [](const Plan& plan) { return text(plan.tissue_site); },
      [](Plan& plan, const QVariant& value) {
        // Nothing is known of the tissue of a mesh from a file.
        if (!value.toString().isEmpty() || std::holds_alternative<BodyForm>(plan.body))
          plan.tissue_site = value.toString().toStdString();
      });
  rows_.layout().addRow(values_);
  const QString tense = tr("A tense muscle layer has 2.4 times the modulus of a relaxed one (judgement).");
  rows_.choice_by(
      FieldText(tr("Muscle")),
      {{tr("as the tissue says"), -1},
       {tr("relaxed"), int(Posture::kRelaxed)},
       {tr("tense"), int(Posture::kTense), tense}},
      [](const Plan& plan) { return plan.posture ? int(*plan.posture) : -1; },
      [](Plan& plan, const QVariant& value) {
        plan.posture.reset();
        if (value.toInt() >= 0) plan.posture = static_cast<Posture>(value.toInt());
      });
}

void TissuePanel::add_numbers() {
  const FieldText stiffness(tr("Stiffness"), tr("Stiffness factor of the tissue"),
                            tr("Times the modulus of the tissue chosen; 1 as it stands."));
  const FieldText depth(
      tr("Depth"), {},
      tr("Skin to bone over the whole body, instead of the table's; bony sites and regions keep their own. "
         "Measure it, for example with ultrasound, or take it from the literature."),
      "tissue depth");
  rows_.number_by(
      stiffness, kTimes.words, {0.05, 20.0, 2, 0.1},
      [](const Plan& plan) { return std::optional(plan.tissue_stiffness_factor.value_or(1.0)); },
      [](Plan& plan, double value) {
        plan.tissue_stiffness_factor.reset();
        if (value != 1.0) plan.tissue_stiffness_factor = value;
      });
  depth_ = rows_.optional_by(
      depth, kInMm.words, {0.5, 300.0, 1, 1.0}, [](const Plan& plan) { return least_depth_mm(plan); },
      [](Plan& plan, std::optional<double> value) {
        plan.tissue_depth_mm.clear();
        if (value) plan.tissue_depth_mm = {*value};
      },
      20.0);
  rows_.layout().addRow(depths_);
  rows_.layout().addRow(fit_depths_);
}

void TissuePanel::add_fine_settings() {
  const FieldText poisson(
      tr("Poisson's ratio"), {},
      tr("Instead of the table's; 0.45 to 0.49 hardly squeezes. 0: the modulus holds the confinement."),
      "poisson");
  const FieldText friction(tr("Friction"), tr("Friction of skin on silicone"),
                           tr("Coulomb coefficient; 0.5 unless you measured it (judgement)."));
  fine_rows_.choice(FieldText(tr("Gives way"), tr("How tissue gives way"), {}, "tissue model"),
                    {{tr("each place on its own"), int(TissueModel::kFoundation),
                      tr("Elastic foundation: a place sinks under its own pressure only.")},
                     {tr("together with its surroundings"), int(TissueModel::kCoupled),
                      tr("Coupled layer: a pressed place lowers its surroundings too; takes longer.")}},
                    [](auto& plan) { return &plan.tissue_model; });
  poisson_ = fine_rows_.optional(
      poisson, kPlain, {0.0, 0.49, 3, 0.01}, [](auto& plan) { return &plan.tissue_poisson; }, 0.0);
  fine_rows_.number(friction, kPlain, {0.0, 3.0, 2, 0.05}, [](auto& plan) { return &plan.friction; });
  rows_.layout().addRow(new FineSettings(fine_, tr("How tissue gives way, and friction"), this));
}

std::size_t TissuePanel::body_points() const {
  return now().body() ? static_cast<std::size_t>(now().body()->surface.vertices_m.rows()) : 0;
}

void TissuePanel::take_depths_over() {
  const auto checked = session().checked();
  const auto one = one_depth_mm(plan().tissue_depth_mm);
  if (!one && !(checked && checked->brought_depths)) return;
  change(tr("Depth of the tissue"), {}, [&](Plan& plan) {
    plan.tissue_depth_mm = one ? std::vector<double>{*one} : checked->brought_depths->depth_mm;
  });
}

void TissuePanel::show_depths() {
  const auto& depths = plan().tissue_depth_mm;
  depths_->setVisible(false);
  fit_depths_->setVisible(false);
  if (depths.empty()) return;
  if (!one_depth_mm(plan().tissue_depth_mm)) return show_several_depths();
  if (body_points() == 0 || depths.size() == 1 || depths.size() == body_points()) return;
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

void TissuePanel::show_state(const SessionState& now, const SessionState&) {
  rows_.show(*now.plan);
  fine_rows_.show(*now.plan);
  const bool of_form = now.plan->tissue_site.empty() && now.body();
  const auto site = find_tissue(sites_, of_form ? now.body()->tissue_site : now.plan->tissue_site);
  poisson_.offer(site ? site->poisson : 0.0);
  depth_.offer(site ? site->depth / mm : 20.0);
  values_->setVisible(site.ok());
  values_->setText(site ? brief_values_of(*site) + QChar('.') : QString());
  values_->setToolTip(site ? values_of(*site) + QChar('\n') + source_of(*site) : QString());
  show_depths();
}

}  // namespace wrapgauge
