#pragma once
// The standard places of a part laid on a scan, by share of the length and angle, from one or two landmarks.
// What comes out are proposals: people differ, so a person confirms or drops each.

#include <string>
#include <vector>

#include "model/body/skin_region.hpp"
#include "model/body/standard_site.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

struct CarryOptions {
  BodyPart part = BodyPart::kForearm;
  std::optional<BodySide> side;  // none: of the trunk and the head
  std::optional<Vec3> front;     // of the person; landmarks that contradict it are refused
  std::optional<Length> length;  // of the part, by tape; none: from two landmarks, or from the scan's far end
};

struct SiteProposal {
  BonySite site;          // status kProposedSite
  AnchorAtStation place;  // where it lies
  double share = 0.0;     // of the part's length
};

struct CarriedSites {
  std::vector<SiteProposal> proposals;  // of those that the scan reaches
  std::vector<std::string> beyond;      // names of those that it does not reach
  Length length, from;                  // of the part: how long, and the station it starts at
  Vec3 front = Vec3::Zero();            // of the person, as the landmarks have it; unit
  std::string rests_on;                 // what length and turn were taken from
};

// `standard`: the places of options.part. `landmarks`: one or two of them by name, points on the skin.
// Problems: a name that is not known or given twice; a landmark more than 20 mm off the skin; landmarks that
// lie in the wrong order along the axis, contradict each other or the front, or are those of the other side.
Result<CarriedSites> carry_sites(const Body& scan, const std::vector<StandardSite>& standard,
                                 const std::vector<Landmark>& landmarks, const CarryOptions& options);

}  // namespace wrapgauge
