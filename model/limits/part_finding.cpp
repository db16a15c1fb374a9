#include "model/limits/part_finding.hpp"

#include <algorithm>

#include "model/core/number_text.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

Phrase part_words(const LimitInputs& inputs) {
  return inputs.part ? table_words(std::string(body_part_name(*inputs.part)))
                     : Phrase::worded("part that is not known");
}

std::string part_text(const LimitInputs& inputs) {
  return inputs.part ? std::string(body_part_name(*inputs.part)) : "body";
}

// What the other findings rest on, so it stands before them.
Finding premise(const char* where, Phrase place, Phrase sentence, Phrase action, const char* source_key) {
  Finding finding{Severity::kWarn, where, std::move(sentence)};
  finding.place = std::move(place);
  finding.action = std::move(action);
  finding.source_key = source_key;
  finding.comes_first = true;
  return finding;
}

Finding test_object_finding() {
  const Phrase action = Phrase::worded("Never wear it on this evidence.");
  return premise("test object", Phrase::worded("Test object"),
                 Phrase::worded("The body is a test object, so no limit for skin or tissue is applied: "
                                "nothing here says how the device presses on a person. %1",
                                {action}),
                 action, "test object");
}

Finding unknown_part() {
  const Phrase action = Phrase::worded("Name the part of the body in the plan (body.part).");
  return premise("body", Phrase::worded("Part of the body"),
                 Phrase::worded("Nobody has said which part of the body this is, so the strictest rules hold "
                                "everywhere: those of bone and nerve, and those of chest and head. %1",
                                {action}),
                 action, "part");
}

Finding unknown_sites(const LimitSet& limits, const LimitInputs& inputs) {
  const Phrase action = Phrase::worded("Mark the sites, or confirm in words that there are none.");
  const LimitRow* row = find_row(limits, SiteClass::kBony, inputs.use, Area());
  const Phrase limit = row ? figures_of(row->limit) : Phrase::worded("none given");
  const Phrase sentence =
      inputs.bone_anywhere
          ? Phrase::worded(
                "Nobody has said where the bones and nerves of this body lie, so bone is taken to "
                "lie %1 under the skin everywhere, and the limit over bone or nerve, %2, holds "
                "everywhere. %3",
                {figures_of(fixed_text(*inputs.bone_anywhere / mm, 0) + " mm"), limit, action})
          : Phrase::worded(
                "Nobody has said where the bones and nerves of this body lie, so the limit over "
                "bone or nerve, %1, holds everywhere. %2",
                {limit, action});
  return premise("body", Phrase::worded("Bony and nerve sites"), sentence, action, "sites not known");
}

Finding refused_part(const LimitInputs& inputs) {
  const Phrase action = Phrase::worded("Take it off; never wear it there.");
  Finding finding{Severity::kStop, part_text(inputs),
                  Phrase::worded("Nothing inflatable may press on the %1: airway, vessels and eyes are at "
                                 "stake, and no one can allow it. %2",
                                 {part_words(inputs), action})};
  finding.place = part_words(inputs);
  finding.action = action;
  finding.source_key = "neck and face";
  return finding;
}

bool goes_all_round(const LimitSet& limits, const ContactFigures& figures) {
  // A set of one's own may call more of a girth "round the limb", but nothing less protects breathing.
  return figures.share_of_girth >= std::min(limits.circumferential_share, 2.0 / 3.0);
}

// What a band all round may do to the part.
Phrase danger_words(const LimitInputs& inputs) {
  if (!inputs.part) return Phrase::worded("it may hinder breathing or reach eyes and airway");
  return *inputs.part == BodyPart::kHead ? Phrase::worded("it may slip onto eyes or airway")
                                         : Phrase::worded("it may hinder breathing");
}

Finding all_round(const LimitInputs& inputs, double share_of_girth) {
  const Phrase share = percent_of(share_of_girth);
  Finding finding{inputs.cleared_by ? Severity::kWarn : Severity::kStop, part_text(inputs), {}};
  if (inputs.cleared_by) {
    const Clearance& by = *inputs.cleared_by;
    finding.action = Phrase::worded("Watch breathing, eyes and airway all the time.");
    finding.sentence =
        Phrase::worded("The device presses on %1 of a girth of the %2: %3. %4 (%5) allowed it on %6. %7",
                       {share, part_words(inputs), danger_words(inputs), name_of(by.name), name_of(by.role),
                        figures_of(by.date), finding.action});
  } else {
    finding.action = Phrase::worded(
        "Do not wear it like this: press on less than 2/3 of the girth, or have a clinician decide and name "
        "them in the plan (cleared_by).");
    finding.sentence = Phrase::worded(
        "The device presses on %1 of a girth of the %2: %3, and no clinician is named who allows it. %4",
        {share, part_words(inputs), danger_words(inputs), finding.action});
  }
  finding.place = Phrase::worded("All round the %1", {part_words(inputs)});
  finding.source_key = kAllRoundRule;
  return finding;
}

}  // namespace

std::vector<Finding> part_findings(const LimitSet& limits, const LimitInputs& inputs,
                                   const ContactFigures& figures) {
  if (is_test_object(inputs)) return {test_object_finding()};
  std::vector<Finding> out;
  if (!inputs.part)
    out.push_back(unknown_part());
  else if (is_refused(*inputs.part))
    out.push_back(refused_part(inputs));
  if (inputs.part && !inputs.sites_known) out.push_back(unknown_sites(limits, inputs));
  const bool may_harm = !inputs.part || needs_clearance_all_round(*inputs.part);
  if (may_harm && goes_all_round(limits, figures)) out.push_back(all_round(inputs, figures.share_of_girth));
  return out;
}

}  // namespace wrapgauge
