#pragma once
// What follows from the part of the person that a body is.

#include <string>
#include <string_view>
#include <vector>

#include "model/body/body.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// What a plan may call a body that is `own` by its form or file: that part, the others that the same girth
// belongs to (chest, abdomen and back), and a test object.
std::vector<BodyPart> parts_that_fit(BodyPart own);

// The part that counts: what the plan says, or else what the body says of itself; none: neither does.
// Problems, each for the body called `name`: the two contradict each other; nothing may press there.
Result<std::optional<BodyPart>> agreed_part(const std::string& name, std::optional<BodyPart> own,
                                            std::optional<BodyPart> said);

// Nothing is solved on a body whose part is not known.
std::optional<Problem> part_missing(const std::string& name, std::optional<BodyPart> part);

// Whoever asks `what` ("a ceiling", "a note") of a test object is told that it has none.
std::optional<Problem> not_of_a_test_object(std::optional<BodyPart> part, const Phrase& what);

// Status of a site that was laid on a scan and that nobody has confirmed or dropped yet.
inline constexpr const char* kProposedSite = "proposed";
bool is_proposed(const BonySite& site);

// Has a left and a right: all but trunk and head (and a test object).
bool is_paired(BodyPart part);

// Rows of the tissue table that were chosen for the part; empty: the table has none for it. Judgement.
std::vector<std::string_view> tissue_rows_of(BodyPart part);
bool tissue_was_chosen_for(std::optional<BodyPart> part, std::string_view tissue_row);

// Skin to bone at the shallowest of the part's standard sites (bodyforms); of all parts' where the part has
// none or is not known. Judgement.
Length shallowest_site(std::optional<BodyPart> part);

}  // namespace wrapgauge
