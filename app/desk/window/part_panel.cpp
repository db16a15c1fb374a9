#include "app/desk/window/part_panel.hpp"

#include <algorithm>

#include "app/desk/session/marked_sites.hpp"
#include "model/body/part_rules.hpp"

namespace wrapgauge {
namespace {

QString title_of(BodyPart part) {
  const QString titles[] = {PartPanel::tr("finger"),   PartPanel::tr("hand"),
                            PartPanel::tr("wrist"),    PartPanel::tr("forearm"),
                            PartPanel::tr("elbow"),    PartPanel::tr("upper arm"),
                            PartPanel::tr("shoulder"), PartPanel::tr("chest"),
                            PartPanel::tr("abdomen"),  PartPanel::tr("back"),
                            PartPanel::tr("hip"),      PartPanel::tr("thigh"),
                            PartPanel::tr("knee"),     PartPanel::tr("lower leg"),
                            PartPanel::tr("ankle"),    PartPanel::tr("foot"),
                            PartPanel::tr("head"),     PartPanel::tr("neck"),
                            PartPanel::tr("face"),     PartPanel::tr("test object, never worn")};
  static_assert(std::size(kBodyParts) == std::size(titles));
  return titles[static_cast<std::size_t>(part)];
}

std::vector<ChoiceEntry> entries() {
  std::vector<ChoiceEntry> entries{{PartPanel::tr("as the form or file says"), -1,
                                    PartPanel::tr("A test solid does not say, nor does a scan.")}};
  for (const BodyPart part : kBodyParts)
    if (!is_refused(part)) entries.push_back({title_of(part), static_cast<int>(part)});
  return entries;
}

// One that was chosen for this part stays; a part without a row of its own keeps what there is.
void take_tissue_of(BodyPart part, Plan& plan) {
  const auto rows = tissue_rows_of(part);
  if (!rows.empty() && std::find(rows.begin(), rows.end(), plan.tissue_site) == rows.end())
    plan.tissue_site = rows.front();
}

}  // namespace

PartPanel::PartPanel(PlanSession& session, QWidget* parent)
    : StepForm(session, parent), words_(words_label({}, this)), rows_(plan_rows(column_form(this), true)) {
  rows_.choice_by(
      FieldText(tr("Part of the person"), {}, tr("Limits, cautions and tissue follow from it."), "part"),
      entries(), [](const Plan& plan) { return plan.part ? static_cast<int>(*plan.part) : -1; },
      [](Plan& plan, const QVariant& value) {
        plan.part.reset();
        if (value.toInt() < 0) return;
        plan.part = static_cast<BodyPart>(value.toInt());
        take_tissue_of(*plan.part, plan);
      });
  add_side();
  rows_.layout().addRow(words_);
}

// Of a scan; a form says its own among its measures.
void PartPanel::add_side() {
  rows_.choice_by(
      FieldText(tr("Side"), tr("Side of the person"), tr("Which arm or leg it is."), "side"),
      {{tr("as the file says"), QString(), tr("A scan does not say; a label file beside it may.")},
       {tr("right"), QStringLiteral("right")},
       {tr("left"), QStringLiteral("left")}},
      [this](const Plan& plan) {
        const auto* file = std::get_if<BodyFile>(&plan.body);
        const auto part = now().body() ? part_of(plan, *now().body()) : plan.part;
        if (!file || !part || !is_paired(*part)) return QVariant();
        return QVariant(file->side ? QString::fromUtf8(side_name(*file->side).data()) : QString());
      },
      [](Plan& plan, const QVariant& value) {
        if (auto* file = std::get_if<BodyFile>(&plan.body))
          file->side = side_from_name(value.toString().toStdString());
      });
}

void PartPanel::show_state(const SessionState& now, const SessionState&) {
  rows_.show(*now.plan);
  const auto part = now.plan->part ? now.plan->part : now.body() ? now.body()->part : std::nullopt;
  words_->setVisible(now.body() && (!part || !is_worn(*part)));
  words_->setText(part ? tr("A test object is never worn: no limit is applied to it, and it has no note.")
                       : tr("Say which part it is: without it nothing is calculated."));
}

}  // namespace wrapgauge
