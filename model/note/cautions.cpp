#include "model/note/cautions.hpp"

namespace wrapgauge {

const Cautions& cautions() {
  static const Cautions all{
      "These are predictions of a model that has not been calibrated on this device. They are not a "
      "measurement and "
      "not a medical device's output, and no pressure below a limit is shown to be harmless. Measure before "
      "anyone "
      "wears it.",
      {"people with reduced feeling or diabetes, or who cannot say or show that it hurts",
       "people with arterial disease, heart failure, high blood pressure that is not controlled, sickle cell "
       "disease, "
       "a clotting disorder, a past or suspected thrombosis, or blood thinners",
       "people with lymph node removal, a shunt or a line on that limb, or swelling there",
       "people with broken, fragile or infected skin, a fresh injury or an implant under the device, or an "
       "allergy to "
       "silicone",
       "children, pregnant people, people asleep or drunk, and anyone who cannot take it off alone, unless a "
       "clinician "
       "is in charge"},
      {"pain, pins and needles, numbness or weakness",
       "skin that turns white, blue or dark red, or feels cold",
       "swelling beyond the device, or veins that stand out", "a mark that does not fade within 15 minutes",
       "a hiss, a bulge that grows by itself, or a pressure reading that is not the one asked for"},
      "Ask a clinician and your ethics board before anyone takes part. Keep a way to vent at once in the "
      "wearer's own "
      "hand."};
  return all;
}

}  // namespace wrapgauge
