#pragma once
// Places on the skin that a plan names: bony sites, landmarks, and regions that differ or must stay free.

#include <QString>
#include <optional>
#include <vector>

#include "model/plan/plan.hpp"

namespace wrapgauge {

struct SkinPlace {
  enum class Kind { kBonySite, kLandmark, kRegion };
  Kind kind = Kind::kBonySite;
  std::size_t index = 0;

  bool operator==(const SkinPlace&) const = default;
};

// Bony sites, landmarks, regions; each in the plan's order.
std::vector<SkinPlace> skin_places(const Plan& plan);
QString skin_place_title(const Plan& plan, const SkinPlace& place);  // "no-go zone 2: old scar"

const std::string& skin_place_name(const Plan& plan, const SkinPlace& place);
// None: a landmark or region placed by another's name, or a band.
std::optional<Vec3> skin_place_point_m(const Plan& plan, const SkinPlace& place);

// What can be added: a site, a landmark, a zone that must stay free, other tissue near a point or in a band.
enum class NewSkinPlace { kBonySite, kLandmark, kNoGo, kTissueNear, kTissueBand };

// --- edits; each gives the changed plan, with regions following the landmarks they lie near ---

Plan with_new_place(Plan plan, NewSkinPlace what, const Vec3& at_m);
Plan with_place_at(Plan plan, const SkinPlace& place, const Vec3& point_m);
// None: the name is empty or another place of the plan has it.
std::optional<Plan> with_place_name(Plan plan, const SkinPlace& place, const std::string& name);
// Regions that lay near a landmark that goes stay where they are.
Plan without_place(Plan plan, const SkinPlace& place);
// After its fields were changed one by one. A region that would say nothing gets the factor 1.
Plan with_places_settled(Plan plan);

}  // namespace wrapgauge
