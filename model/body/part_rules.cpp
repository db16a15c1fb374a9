#include "model/body/part_rules.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

// Of one girth: a band round one of them lies on the others too.
constexpr std::array kTrunk = {BodyPart::kChest, BodyPart::kAbdomen, BodyPart::kBack};

bool is_of_trunk(BodyPart part) {
  return std::find(kTrunk.begin(), kTrunk.end(), part) != kTrunk.end();
}

Phrase name_of_part(BodyPart part) {
  return table_words(std::string(body_part_name(part)));
}

Phrase names_of(const std::vector<BodyPart>& parts) {
  std::vector<Phrase> names;
  for (const BodyPart part : parts) names.push_back(name_of_part(part));
  return in_a_row(std::move(names), ", ");
}

}  // namespace

std::vector<BodyPart> parts_that_fit(BodyPart own) {
  std::vector<BodyPart> parts{own};
  if (is_of_trunk(own))
    std::copy_if(kTrunk.begin(), kTrunk.end(), std::back_inserter(parts),
                 [own](BodyPart part) { return part != own; });
  if (own != BodyPart::kTestObject) parts.push_back(BodyPart::kTestObject);
  return parts;
}

Result<std::optional<BodyPart>> agreed_part(const std::string& name, std::optional<BodyPart> own,
                                            std::optional<BodyPart> said) {
  const std::optional<BodyPart> part = said ? said : own;
  if (part && is_refused(*part))
    return bad_input(Phrase::worded(
        "the part of the body '%1' is '%2': nothing may press on neck, face, eyes or airway, and "
        "no setting lifts that; design for another part.",
        {name_of(name), name_of_part(*part)}));
  if (!own || !said) return part;
  const std::vector<BodyPart> fit = parts_that_fit(*own);
  if (std::find(fit.begin(), fit.end(), *said) != fit.end()) return part;
  return bad_input(
      Phrase::worded("the plan calls the body '%1' a part it is not: '%2'; it may be %3: correct "
                     "body.part or take another body.",
                     {name_of(name), name_of_part(*said), names_of(fit)}));
}

std::optional<Problem> part_missing(const std::string& name, std::optional<BodyPart> part) {
  if (part) return std::nullopt;
  return bad_input(
      Phrase::worded("the body '%1' does not say which part of the person it is: add \"part\" to "
                     "the plan's body; it may be %2.",
                     {name_of(name), name_of(body_part_names())}));
}

std::optional<Problem> not_of_a_test_object(std::optional<BodyPart> part, const Phrase& what) {
  if (!part || is_worn(*part)) return std::nullopt;
  return bad_input(
      Phrase::worded("the body is a test object, to which no limit is applied, so it is given no "
                     "%1: name the part that wears the device.",
                     {what}));
}

bool is_proposed(const BonySite& site) {
  return site.status == kProposedSite;
}

bool is_paired(BodyPart part) {
  return !is_of_trunk(part) && part != BodyPart::kHip && part != BodyPart::kHead && part != BodyPart::kNeck &&
         part != BodyPart::kFace && part != BodyPart::kTestObject;
}

std::vector<std::string_view> tissue_rows_of(BodyPart part) {
  switch (part) {
    case BodyPart::kHand:
    case BodyPart::kWrist:
      return {"wrist dorsal"};
    case BodyPart::kForearm:
      return {"forearm relaxed", "forearm tense"};
    case BodyPart::kUpperArm:
      return {"upper arm relaxed"};
    case BodyPart::kChest:
      return {"rib or sternum"};
    case BodyPart::kAbdomen:
      return {"abdomen"};
    case BodyPart::kThigh:
      return {"thigh"};
    case BodyPart::kKnee:
    case BodyPart::kAnkle:
      return {"shin"};
    case BodyPart::kLowerLeg:
      return {"calf", "shin"};
    case BodyPart::kHead:
      return {"forehead"};
    default:
      return {};
  }
}

Length shallowest_site(std::optional<BodyPart> part) {
  if (!part) return 2.0 * mm;
  switch (*part) {
    case BodyPart::kWrist:
    case BodyPart::kForearm:
    case BodyPart::kUpperArm:
    case BodyPart::kKnee:
    case BodyPart::kLowerLeg:
    case BodyPart::kAnkle:
      return 3.0 * mm;
    case BodyPart::kHead:
      return 4.0 * mm;
    case BodyPart::kChest:
    case BodyPart::kAbdomen:
    case BodyPart::kBack:
    case BodyPart::kThigh:
      return 8.0 * mm;
    default:
      return 2.0 * mm;
  }
}

bool tissue_was_chosen_for(std::optional<BodyPart> part, std::string_view tissue_row) {
  if (!part) return false;
  const std::vector<std::string_view> rows = tissue_rows_of(*part);
  return std::find(rows.begin(), rows.end(), tissue_row) != rows.end();
}

}  // namespace wrapgauge
