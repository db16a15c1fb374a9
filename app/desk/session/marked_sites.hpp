#pragma once
// Bony and nerve sites of a body from a file: laid on it from landmarks that someone clicks, then confirmed
// or dropped one by one. While one is still proposed the sites are not known, and the bony limit holds
// everywhere.

#include <optional>
#include <string>
#include <vector>

#include "app/desk/session/session_state.hpp"
#include "model/body/skin_region.hpp"
#include "model/body/standard_site.hpp"

namespace wrapgauge {

// What the plan and the body itself agree on; none: nobody has said, or they contradict each other.
std::optional<BodyPart> part_of(const Plan& plan, const Body& body);
std::optional<BodySide> side_of(const Plan& plan, const Body& body);
bool side_is_clear(const Plan& plan, const Body& body);  // it is known, or the part has none

// The standard places of the part, in its order. Empty: the part has none, or the body brings sites of its
// own, as forms and labelled files do.
std::vector<StandardSite> places_to_mark(const Plan& plan, const Body& body);

struct MarkedSites {
  Plan plan;                        // with the sites as proposals
  std::optional<Vec3> front;        // that the landmarks gave the plan; none: it was given before
  std::vector<std::string> beyond;  // names of places that the body does not reach
  std::string rests_on;             // what length and turn were taken from
};
// `landmarks`: one or two places by name, on the skin. Sites of the same names give way. `earlier_front`: of
// an earlier marking, which must not speak against this one. Problems: no side yet; those of carry_sites.
Result<MarkedSites> with_sites_marked(const Plan& plan, const Body& body,
                                      const std::vector<Landmark>& landmarks,
                                      const std::optional<Vec3>& earlier_front);

// Places in plan.bony_sites: those proposed, and those called as standard places of the part.
std::vector<std::size_t> sites_to_decide(const Plan& plan, const Body& body);
int proposed_in_label(const Body& body);  // by the file's label, where the plan cannot decide them
Plan with_site_confirmed(Plan plan, std::size_t site, bool confirmed);

// Sites laid on one body, part or side say nothing of another, nor does a word given for another part: they
// are proposals again, and the words are gone.
void doubt_what_was_said(const Plan& before, Plan& plan);

}  // namespace wrapgauge
