#pragma once
// A starting layout made to the measures of a body.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/body/body.hpp"
#include "model/core/phrase.hpp"
#include "model/layout/forms/layout_form.hpp"

namespace wrapgauge {

struct LimbMeasure {
  std::string parameter;
  double value_mm = 0.0;
  std::string where;  // "at 60.0 mm"
};

// Girths, and differences of girths, that `form` can take from a body and that are not given, with the
// layout's middle at `station`. Problem: no single closed section there (the parameter and the body's length
// are named).
Result<std::vector<LimbMeasure>> measures_of(const LayoutForm& form,
                                             const std::map<std::string, double>& given, const Body& body,
                                             Length station);

struct MadeForBody {
  Layout layout;
  std::map<std::string, double> values;  // every parameter as it was drawn with
  double wider = 0.0;                    // share by which it is drawn wider than its edges ask for
};
// A form drawn for a body. A closing layout that is measured at a few heights does not reach round a limb
// that is rounder in between: unless `values` say how tight it is, it is drawn wider by what is missing at
// its middle and by what it would be tight elsewhere beyond 2 %, or at all where its sides are panelled
// (judgement), and closes at the length that it then has.
Result<MadeForBody> make_for_body(const LayoutForm& form, std::map<std::string, double> values,
                                  const Body& body, Length station, const MadeSheets& sheets = {});

// Where the limb's girth leaves what a closing layout's sides follow between its edges furthest, when that is
// by more than 2 % (judgement): `share` > 0 where the limb is rounder, so that the layout is tight there.
struct GirthBulge {
  Length station;
  Length girth;
  double share = 0.0;
};
std::optional<GirthBulge> girth_bulge(const Layout& layout, const Body& body, Length station);

// What to mind about a made layout before it is used, in whole sentences; none: nothing. `wider`: as above.
std::vector<Phrase> made_layout_cautions(const Layout& layout, const std::optional<GirthBulge>& bulge,
                                         double wider = 0.0);

}  // namespace wrapgauge
