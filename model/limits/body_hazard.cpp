#include "model/limits/body_hazard.hpp"

#include <algorithm>
#include <cmath>

#include "model/contact/area_average.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/number_text.hpp"
#include "model/limits/limit_place.hpp"

namespace wrapgauge {
namespace {

Hazard to_fill(HazardKind kind, Phrase name, Phrase control) {
  return {kind, std::move(name), Severity::kNote, {}, std::move(control)};
}

Pressure highest_with_factor(const HazardInputs& in) {
  return in.figures.peak_anywhere * in.limits.model_factor;
}

bool goes_round(const HazardInputs& in) {
  return in.figures.share_of_girth >= in.limits.circumferential_share;
}

// The highest mean over 1 cm2 that lies on a site.
Pressure peak_on(const BonySite& site, const HazardInputs& in) {
  const EquilibriumState& last = in.path.states.back();
  Pressure peak;
  for (std::size_t v = 0; v < in.path.sheet.skin_node.size(); ++v)
    if (const auto i = static_cast<Eigen::Index>(v); i < in.map.mean_1cm2_pa.size())
      if (lies_on(site, last.positions_m.row(in.path.sheet.skin_node[v])))
        peak = std::max(peak, Pressure(in.map.mean_1cm2_pa[i]));
  return peak;
}

// After the model factor, with every inlet vented and the closure still fastened; none: the path does not
// start deflated.
std::optional<Pressure> still_pressed(const HazardInputs& in) {
  if (in.exposure) return in.exposure->still_pressed;
  if (in.path.states.size() < 2) return std::nullopt;
  const EquilibriumState& deflated = in.path.states.front();
  if (deflated.group_pressure_pa.size() > 0 && deflated.group_pressure_pa.maxCoeff() > 1.0)
    return std::nullopt;
  const TriangleMesh side = skin_side(in.setup, in.path.sheet, deflated.positions_m);
  return Pressure(in.limits.model_factor * disc_average_pa(side, deflated.contact_pressure_pa).maxCoeff());
}

Phrase newtons(double force_n) {
  return figures_of(fixed_text(force_n, 1) + " N");
}

}  // namespace

Hazard vein_hazard(const HazardInputs& in) {
  Hazard out{HazardKind::kVeins,
             Phrase::worded("Venous congestion"),
             Severity::kNote,
             {},
             Phrase::worded("Watch hand or foot beyond the device; open the closure at the first swelling or "
                            "dark skin.")};
  const Phrase girth = percent_of(in.figures.share_of_girth);
  out.sentence =
      goes_round(in)
          ? Phrase::worded(
                "It presses on up to %1 of the girth, with up to %2 after the model factor; caution from %3 "
                "(%4).",
                {girth, figures_of(highest_with_factor(in)), figures_of(in.limits.tourniquet_warn),
                 table_words(in.limits.tourniquet_source)})
          : Phrase::worded("It presses on %1 of a girth, less than the %2 from which it counts as a cuff.",
                           {girth, percent_of(in.limits.circumferential_share)});
  return out;
}

Hazard nerve_hazard(const HazardInputs& in) {
  Hazard out{HazardKind::kNerve,
             Phrase::worded("Pressure on a nerve"),
             Severity::kNote,
             {},
             Phrase::worded("Keep it off nerves; open the closure at tingling or numbness.")};
  const BonySite* worst = nullptr;
  Pressure highest;
  for (const BonySite& site : in.use.bony_sites) {
    if (site.kind != SiteKind::kNerve || in.path.states.empty()) continue;
    const Pressure peak = peak_on(site, in);
    if (peak > highest) worst = &site, highest = peak;
  }
  if (worst)
    out.sentence = Phrase::worded("The highest is %1 with the model factor, over '%2'.",
                                  {figures_of(highest * in.limits.model_factor), name_of(worst->name)});
  else if (in.use.sites_known)
    out.sentence = Phrase::worded("No nerve site that is marked lies under it.");
  else
    out.sentence = Phrase::worded("Not calculated: nobody has marked the nerve sites of this body.");
  return out;
}

Hazard compartment_hazard(const HazardInputs& in) {
  Hazard out =
      to_fill(HazardKind::kCompartment, Phrase::worded("Compartment syndrome"),
              Phrase::worded("Never on a limb that is hurt or swollen; pain that grows, tightness or "
                             "weakness: open the closure and get medical help."));
  if (in.exposure)
    out.sentence = Phrase::worded(
        "The most pressed place takes up to %1 with the model factor, for up to %2 without a break.",
        {figures_of(in.exposure->worst.highest), figures_of(in.exposure->worst.longest_hold)});
  return out;
}

Hazard shear_hazard(const HazardInputs& in) {
  const double push_n = std::abs(in.audit.push_along_axis / newton);
  const double held_n = in.setup.friction * in.figures.total_force / newton;
  return {
      HazardKind::kShear, Phrase::worded("Shear and pinch"), Severity::kNote,
      Phrase::worded("Contact pressure pushes it along the limb with %1; friction can hold %2. Pinching "
                     "is not calculated.",
                     {newtons(push_n), newtons(held_n)}),
      Phrase::worded(
          "Keep seams and folds off joint creases; use a thin cloth sleeve; check the skin there first.")};
}

Hazard trapped_hazard(const HazardInputs& in) {
  Hazard out =
      to_fill(HazardKind::kTrapped, Phrase::worded("Cannot get it off"),
              Phrase::worded("Release means: open the closure, with one hand and without power. Time it "
                             "before each session."));
  const auto pressed = still_pressed(in);
  if (!pressed) return out;
  if (!(*pressed > in.limits.rest.below)) {
    out.sentence = Phrase::worded("Vented but still fastened, it presses up to %1 with the model factor.",
                                  {figures_of(*pressed)});
    return out;
  }
  out.severity = Severity::kWarn;
  out.sentence = Phrase::worded(
      "Vented but still fastened, it presses up to %1 with the model factor, more than the %2 of a rested "
      "place: venting alone does not release it.",
      {figures_of(*pressed), figures_of(in.limits.rest.below)});
  return out;
}

Hazard tube_hazard() {
  return to_fill(HazardKind::kTube, Phrase::worded("Tube snags or is swallowed"),
                 Phrase::worded("Run the tube along the limb; fit a coupling that comes apart when pulled; "
                                "keep small parts out of reach of children."));
}

Hazard fall_hazard() {
  return to_fill(
      HazardKind::kFall, Phrase::worded("Fall, if the cue affects balance"),
      Phrase::worded(
          "Someone stands beside the wearer; a rail within reach, no stairs; try it sitting down first."));
}

Hazard allergy_hazard() {
  return to_fill(
      HazardKind::kAllergy, Phrase::worded("Allergy"),
      Phrase::worded("Ask about allergies; try a patch on the forearm first; stop at itching or a rash."));
}

Hazard uncured_hazard() {
  return to_fill(
      HazardKind::kUncured, Phrase::worded("What uncured silicone gives off"),
      Phrase::worded("Cure and post-cure fully, wash, and write down the batch; never wear a tacky cast."));
}

Hazard latex_hazard() {
  return to_fill(HazardKind::kLatex, Phrase::worded("Latex"),
                 Phrase::worded("No latex in gloves, tubes or straps; ask about a latex allergy."));
}

Hazard dirt_hazard() {
  return to_fill(
      HazardKind::kDirt, Phrase::worded("Dirt"),
      Phrase::worded("Wash with mild soap, wipe and dry; one cast for each wearer, or a fresh liner."));
}

}  // namespace wrapgauge
