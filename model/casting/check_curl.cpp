#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/casting/casting_check_parts.hpp"

namespace wrapgauge {
namespace {

Phrase way_words(bool lifts) {
  return lifts ? Phrase::worded("its edges lift away from the skin, as the skin sheet bulges more")
               : Phrase::worded("its edges press towards the skin, as the outer sheet bulges more");
}

void add_curl(const CastingCheck& check, CastingRule rule, Phrase what, double ratio, bool lifts) {
  const auto [value, most] = told_apart(ratio, check.rules.value(rule), "");
  check.findings.push_back(
      {rule,
       Phrase::worded(
           "%1 is %2, more than %3: inflated, the layout curls (%4); bring the sheets nearer to one "
           "another, or add backing or a closure that holds it.",
           {std::move(what), value, most, way_words(lifts)}),
       ratio,
       check.rules.value(rule),
       std::nullopt,
       {}});
}

Pressure skin_modulus(const CastingCheck& check) {
  return initial_shear_modulus(check.grades.skin.law);
}
Pressure outer_modulus(const CastingCheck& check) {
  return initial_shear_modulus(check.grades.outer.law);
}

}  // namespace

void check_curl(const CastingCheck& check) {
  const double skin = check.layout.skin_sheet.thickness.si(), outer = check.layout.outer_sheet.thickness.si();
  const double skin_stiffness = skin_modulus(check).si() * skin;
  const double outer_stiffness = outer_modulus(check).si() * outer;
  const double by_thickness = check.thicker_m() / check.thinner_m();
  const double by_stiffness =
      std::max(skin_stiffness, outer_stiffness) / std::min(skin_stiffness, outer_stiffness);
  const bool lifts = outer_stiffness >= skin_stiffness;
  if (exceeds(by_thickness, check.rules.value(CastingRule::kCurlThickness)))
    add_curl(check, CastingRule::kCurlThickness,
             Phrase::worded("the ratio of the sheets' thickness (skin %1, outer %2)",
                            {length_phrase(skin), length_phrase(outer)}),
             by_thickness, lifts);
  if (!is_held(check.layout) && exceeds(by_stiffness, check.rules.value(CastingRule::kCurlStiffness)))
    add_curl(check, CastingRule::kCurlStiffness,
             Phrase::worded("the ratio of the sheets' stiffness (shear modulus times thickness)"),
             by_stiffness, lifts);
}

double prestretch_curl(const Sheet& skin, const Sheet& outer, Pressure skin_modulus, Pressure outer_modulus) {
  const double strain = std::log(skin.prestretch / outer.prestretch);
  const double m = skin.thickness / outer.thickness, n = skin_modulus / outer_modulus;
  const double height_m = (skin.thickness + outer.thickness).si();
  const double sum2 = (1.0 + m) * (1.0 + m);
  return 6.0 * strain * sum2 / (height_m * (3.0 * sum2 + (1.0 + m * n) * (m * m + 1.0 / (m * n))));
}

// Towards the skin a closure or a bonded rim holds it; away from the skin it pulls at them.
void check_prestretch(const CastingCheck& check) {
  const Sheet &skin = check.layout.skin_sheet, &outer = check.layout.outer_sheet;
  const double curl = prestretch_curl(skin, outer, skin_modulus(check), outer_modulus(check));
  const Bounds2 box = bounds(check.layout.outline_m);
  const double degrees = std::abs(curl) * (box.high - box.low).x() * 180.0 / std::numbers::pi;
  const double most = check.rules.value(CastingRule::kCurlPrestretch);
  if (!exceeds(degrees, most) || (curl > 0.0 && is_held(check.layout))) return;
  const auto stretch = [](const Sheet& sheet) { return figures_of(fixed_text(sheet.prestretch, 3)); };
  const auto [value, threshold] = told_apart(degrees, most, "");
  check.findings.push_back(
      {CastingRule::kCurlPrestretch,
       Phrase::worded(
           "fused at unequal stretch (skin %1, outer %2), the layout curls by about %3 degrees along "
           "its length as soon as it is let go, more than %4: %5; stretch both sheets alike.",
           {stretch(skin), stretch(outer), value, threshold,
            curl > 0.0 ? Phrase::worded("its edges come towards the skin, and nothing holds it flat")
                       : Phrase::worded("its edges lift away from the skin")}),
       degrees,
       most,
       std::nullopt,
       {}});
}

}  // namespace wrapgauge
