#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

// Harmonics derived: fitted to the sections of an adult man's arm of an open base mesh (CC0), turned so that
// the elbow lies flat; which way round is judgement.
LimbShape upper_arm_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  return {{{0.0 * mm, values.at("girth_elbow") * mm, "girth_elbow"},
           {0.55 * length, values.at("girth_middle") * mm, "girth_middle"},
           {length, values.at("girth_armpit") * mm, "girth_armpit"}},
          {{0.0, {1.26, {0.016, -0.019, -0.002, 0.001, 0.007}}},
           {0.3, {1.18, {-0.039, -0.002, 0.035, -0.022, 0.005}}, {0.006, 0.0}},
           {0.6, {1.10, {-0.034, 0.014, 0.050, -0.019, 0.003}}, {0.008, 0.0}},
           {1.0, {1.15, {-0.028, 0.030, 0.041, -0.004, 0.020}}}},
          values.at("edge") * mm};
}

std::vector<SiteOnForm> upper_arm_sites() {
  std::vector<SiteOnForm> all = {
      {"medial epicondyle", 0.04, 182, 15, 3},
      {"ulnar nerve in its groove", 0.04, 218, 14, 4, SiteKind::kNerve,
       "Behind the medial epicondyle, between bone and skin: nothing may press here."},
      {"lateral epicondyle", 0.04, 358, 13, 4},
      {"olecranon", 0.03, 270, 20, 3}};
  add_row(all,
          {"radial nerve against the bone", 0.22, 350, 16, 14, SiteKind::kNerve,
           "It winds round the humerus; a band or edge here can drop the wrist."},
          0.55, 3);
  add_row(all,
          {"brachial artery and median nerve", 0.2, 165, 14, 18, SiteKind::kVessel,
           "In the groove on the inner side."},
          0.92, 5);
  return all;
}

}  // namespace

FormMaker upper_arm_form() {
  return {
      {"upper-arm",
       "An upper arm from the epicondyles (station 0) to the armpit. Its middle girth has to be measured.",
       {length_parameter(0.0, {{"acromionradialelength", 0.62}},
                         "judgement: 0.62 of ANSUR II 2012, acromionradialelength"),
        asked_girth("girth_middle", "half-way between shoulder and elbow",
                    "ANSUR II 2012 has no relaxed upper arm (its girth was taken with the muscle tensed, "
                    "which is larger), so measure it with a tape, arm hanging"),
        shared_girth("girth_elbow", {{"girth_middle", 0.93}}, "at the epicondyles",
                     "judgement: 0.93 of the middle; not in the survey"),
        shared_girth("girth_armpit", {{"girth_middle", 1.12}}, "at the armpit",
                     "judgement: 1.12 of the middle; not in the survey"),
        edge_parameter()},
       "upper arm relaxed",
       true,
       BodyPart::kUpperArm},
      upper_arm_sites(),
      limb<upper_arm_shape>};
}

}  // namespace wrapgauge
