#pragma once
// Girth: the length round a limb where a plane across its axis cuts it.

#include <vector>

#include "model/body/body.hpp"
#include "model/geometry/plane_section.hpp"

namespace wrapgauge {

enum class SectionKind {
  kNone,          // the plane misses the body
  kOneLoop,       // a plain girth
  kSeveralLoops,  // more than one closed loop: two limbs, or a surface that passes through itself
  kOpen,          // the section crosses a hole or an end: the girth is bridged straight over the gap
};

struct Girth {
  Length station;  // from the distal-most vertex along the axis
  Length girth;  // one loop: its length; several: of the longest; open: pieces and straight bridges together
  Length bridged;  // part of `girth` that is straight bridge over gaps: the true girth is larger
  SectionKind kind = SectionKind::kNone;
  int loops = 0;  // closed loops
};

// The section at a station; see plane_section.
std::vector<SectionLine> section_at(const Body& body, Length station);

Girth girth_at(const Body& body, Length station);

// Extent of the body along its axis: the station of the proximal-most vertex.
Length body_length(const Body& body);

// Girths at 5, 10, 20, ... 90 and 95 % of the length.
std::vector<Girth> girth_profile(const Body& body);
// The same with the body's surface made ready for cuts already.
std::vector<Girth> girth_profile(const Body& body, const PlaneSections& sections);

}  // namespace wrapgauge
