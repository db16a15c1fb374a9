#include "app/desk/session/plan_part.hpp"

#include <QCoreApplication>
#include <QStringList>
#include <system_error>
#include <tuple>

#include "app/desk/session/checked_plan.hpp"

namespace wrapgauge {
namespace {

// From the root, so that a plan saved in another folder still names the same file.
std::filesystem::path whole_path(const Plan& plan, const std::filesystem::path& file) {
  std::error_code error;
  return std::filesystem::weakly_canonical(plan.folder / file, error);
}

bool same_body(const Plan& a, const Plan& b) {
  const auto inputs = [](const Plan& plan) {
    auto body = plan.body;
    if (auto* file = std::get_if<BodyFile>(&body); file && has_body(plan))
      file->file = whole_path(plan, file->file);
    return std::tuple(std::move(body), plan.part, plan.bony_sites, plan.sites_confirmed, plan.landmarks,
                      plan.regions);
  };
  return inputs(a) == inputs(b);
}

bool same_tissue(const Plan& a, const Plan& b) {
  const auto inputs = [](const Plan& plan) {
    return std::tie(plan.tissue_site, plan.posture, plan.tissue_stiffness_factor, plan.tissue_poisson,
                    plan.tissue_model, plan.tissue_depth_mm, plan.friction);
  };
  return inputs(a) == inputs(b);
}

bool same_inflation(const Plan& a, const Plan& b) {
  const auto inputs = [](const Plan& plan) {
    return std::tie(plan.inflation, plan.session, plan.supply, plan.filling);
  };
  return inputs(a) == inputs(b);
}

bool same_limits(const Plan& a, const Plan& b) {
  const auto inputs = [](const Plan& plan) {
    const auto file = plan.limits_file ? std::optional(whole_path(plan, *plan.limits_file)) : std::nullopt;
    return std::tuple(plan.use, file, plan.limits_override_reason, plan.cleared_by, plan.wearers, plan.date);
  };
  return inputs(a) == inputs(b);
}

bool same_solving(const Plan& a, const Plan& b) {
  const auto inputs = [](const Plan& plan) {
    return std::tie(plan.mesh_edge, plan.mesh_seam_edge, plan.mesh_seam_band, plan.solver,
                    plan.compare_wrinkled);
  };
  return inputs(a) == inputs(b);
}

bool same_calibration(const Plan& a, const Plan& b) {
  const auto file = [](const Plan& plan) {
    return plan.calibration ? std::optional(whole_path(plan, *plan.calibration)) : std::nullopt;
  };
  return file(a) == file(b);
}

}  // namespace

QString part_words(PlanPart part) {
  struct Words {
    Q_DECLARE_TR_FUNCTIONS(PlanPart)
  };
  const QString words[] = {Words::tr("the body"),
                           Words::tr("the tissue"),
                           Words::tr("the layout"),
                           Words::tr("the wear"),
                           Words::tr("the inflation"),
                           Words::tr("the limits"),
                           Words::tr("the mesh or solver settings"),
                           Words::tr("the calibration")};
  return words[static_cast<std::size_t>(part)];
}

std::vector<PlanPart> changed_parts(const Plan& before, const Plan& after) {
  const std::pair<PlanPart, bool> same[] = {{PlanPart::kBody, same_body(before, after)},
                                            {PlanPart::kTissue, same_tissue(before, after)},
                                            {PlanPart::kLayout, before.layout == after.layout},
                                            {PlanPart::kWear, before.placement == after.placement},
                                            {PlanPart::kInflation, same_inflation(before, after)},
                                            {PlanPart::kLimits, same_limits(before, after)},
                                            {PlanPart::kSolving, same_solving(before, after)},
                                            {PlanPart::kCalibration, same_calibration(before, after)}};
  std::vector<PlanPart> changed;
  for (const auto& [part, is_same] : same)
    if (!is_same) changed.push_back(part);
  return changed;
}

QString parts_words(const std::vector<PlanPart>& parts) {
  QStringList words;
  for (const PlanPart part : parts) words.push_back(part_words(part));
  if (words.size() < 2) return words.join(QString());
  const QString last = words.takeLast();
  return QCoreApplication::translate("PlanPart", "%1 and %2").arg(words.join(QStringLiteral(", ")), last);
}

}  // namespace wrapgauge
