#include "app/desk/session/plan_part.hpp"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <nlohmann/json.hpp>
#include <system_error>

#include "app/desk/session/checked_plan.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {
namespace {

using nlohmann::ordered_json;

struct PartKeys {
  PlanPart part;
  std::vector<const char*> keys;  // of the plan file
};

const std::array<PartKeys, 7>& part_keys() {
  static const std::array<PartKeys, 7> keys{{
      {PlanPart::kBody, {"body", "bony_sites", "landmarks", "regions"}},
      {PlanPart::kTissue, {"tissue", "friction"}},
      {PlanPart::kLayout, {"layout"}},
      {PlanPart::kWear, {"wear"}},
      {PlanPart::kInflation, {"inflation", "session", "supply", "filling"}},
      {PlanPart::kLimits, {"limits"}},
      {PlanPart::kSolving, {"mesh", "solver"}},
  }};
  return keys;
}

// With the layout itself in the place of the name of its file, and files named from the root.
ordered_json in_full(const Plan& plan) {
  Plan whole = plan;
  whole.layout_file.reset();
  whole.layout_drawing.reset();
  std::error_code error;
  const auto from_root = [&](const std::filesystem::path& file) {
    return std::filesystem::weakly_canonical(plan.folder / file, error);
  };
  if (auto* body = std::get_if<BodyFile>(&whole.body); body && has_body(plan))
    body->file = from_root(body->file);
  if (whole.limits_file) whole.limits_file = from_root(*whole.limits_file);
  return plan_to_json(whole);
}

bool same_at(const ordered_json& a, const ordered_json& b, const char* key) {
  const auto at_a = a.find(key), at_b = b.find(key);
  if (at_a == a.end() || at_b == b.end()) return (at_a == a.end()) == (at_b == b.end());
  return *at_a == *at_b;
}

}  // namespace

QString part_words(PlanPart part) {
  struct Words {
    Q_DECLARE_TR_FUNCTIONS(PlanPart)
  };
  switch (part) {
    case PlanPart::kBody:
      return Words::tr("the body");
    case PlanPart::kTissue:
      return Words::tr("the tissue");
    case PlanPart::kLayout:
      return Words::tr("the layout");
    case PlanPart::kWear:
      return Words::tr("the wear");
    case PlanPart::kInflation:
      return Words::tr("the inflation");
    case PlanPart::kLimits:
      return Words::tr("the limits");
    case PlanPart::kSolving:
      break;
  }
  return Words::tr("the mesh or solver settings");
}

std::vector<PlanPart> changed_parts(const Plan& before, const Plan& after) {
  const ordered_json a = in_full(before), b = in_full(after);
  std::vector<PlanPart> changed;
  for (const PartKeys& part : part_keys())
    for (const char* key : part.keys)
      if (!same_at(a, b, key)) {
        changed.push_back(part.part);
        break;
      }
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
