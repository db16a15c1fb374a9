#include "model/note/cautions.hpp"

namespace wrapgauge {
namespace {

Cautions of_every_part() {
  return {
      .standing =
          "These are predictions of a model that has not been calibrated on this device. They are not a "
          "measurement and not a medical device's output, and no pressure below a limit is shown to be "
          "harmless. Measure before anyone wears it.",
      .never = "Never on neck, face, eyes or airway. No one can allow it.",
      .every_time = {"The wearer is awake and sober. No one can waive that.",
                     "The wearer can take it off alone, and has shown it.",
                     "To release it, open the closure. Venting is not enough: a vented band can still press.",
                     "Look at the skin before, and do not start on skin that is broken, red or swollen.",
                     "Take off rings, watches and tight cloth near it. Lay the tube where it cannot snag."},
      .of_part = {},
      .not_for =
          {"people with reduced feeling, nerve damage or diabetes, or who cannot say or show that it hurts",
           "people with arterial disease, heart failure, high blood pressure that is not controlled, sickle "
           "cell disease, a clotting disorder, a past or suspected thrombosis, or blood thinners",
           "people with lymphoedema or lymph node removal, on the side of a breast removal, with a shunt or "
           "a line on that limb, or swelling there",
           "people with broken, fragile or infected skin, a fresh injury, recent surgery or a fracture "
           "(healed or not), an implant under the device, or an allergy to silicone",
           "anyone under 18, pregnant people, and anyone who cannot take it off alone, unless a clinician is "
           "in charge",
           "people asleep or drunk, or on drugs that dull the senses: no clinician can allow it"},
      .stop_signs =
          {"pain above 2 of 10, throbbing, pins and needles, numbness or weakness",
           "skin that turns white, blue or dark, or feels cold",
           "colour that does not come back within 3 s after a press",
           "swelling beyond the device, or veins that stand out", "short breath or dizziness",
           "a mark that stays after 30 min",
           "a hiss, a bulge that grows by itself, or a pressure reading that is not the one asked for",
           "the wearer wants to stop, whatever the reason"},
      .ask =
          "Ask a clinician and your ethics board before anyone takes part. Keep a way to vent, and the "
          "closure, within the wearer's own reach.",
  };
}

std::vector<std::string> words_of_trunk() {
  return {
      "Leave room to breathe: a full breath in must be easy, sitting and lying. Talk with the wearer all "
      "the time.",
      "Never on a person who lies face down, sleeps or is sick."};
}

std::vector<std::string> words_of_head() {
  return {"Keep eyes, nose, mouth and airway free, and the tube away from them.",
          "Keep off the temples, where an artery and thin bone lie under the skin.",
          "It must come off with one pull, forwards and away from the face."};
}

void add(std::vector<std::string>& all, const std::vector<std::string>& more) {
  all.insert(all.end(), more.begin(), more.end());
}

}  // namespace

Cautions cautions(std::optional<BodyPart> part, bool calibrated) {
  Cautions all = of_every_part();
  if (calibrated)
    all.standing =
        "These are predictions of a model that was calibrated on readings of this device on a bench. They "
        "are not "
        "a measurement and not a medical device's output, and no pressure below a limit is shown to be "
        "harmless. Measure before anyone wears it.";
  const bool trunk = part == BodyPart::kChest || part == BodyPart::kAbdomen;
  if (!part || trunk) add(all.of_part, words_of_trunk());
  if (!part || part == BodyPart::kHead) add(all.of_part, words_of_head());
  return all;
}

}  // namespace wrapgauge
