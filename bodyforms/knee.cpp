#include "bodyforms/form_values.hpp"
#include "bodyforms/leg_parameters.hpp"

namespace wrapgauge {
namespace {

constexpr double kKneecap = 0.55;  // station of the knee girth, share of the length

// Harmonics at the ends derived: fitted to the ends of an adult man's calf and thigh of an open base mesh
// (CC0); at the kneecap judgement.
LimbShape knee_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  return {{{0.0 * mm, values.at("girth_below") * mm, "girth_below"},
           {kKneecap * length, values.at("girth_knee") * mm, "girth_knee"},
           {length, values.at("girth_lower_thigh") * mm, "girth_lower_thigh"}},
          {{0.0, {0.92, {-0.003, 0.030, -0.02, 0.018, 0.006}}, {0.0, -0.02}},
           {kKneecap, {0.95, {0.0, 0.0, -0.035, -0.02, 0.0}}, {0.0, 0.01}},
           {1.0, {0.94, {-0.030, 0.03, -0.04, 0.01, 0.0}}, {0.0, 0.0}}},
          values.at("edge") * mm};
}

std::vector<SiteOnForm> knee_sites() {
  return {{"kneecap", kKneecap, 90, 27, 3},
          {"tibial tuberosity", 0.22, 95, 14, 3},
          {"tibial crest", 0.05, 105, 18, 4},
          {"inner condyle of the tibia", 0.36, 175, 16, 6},
          {"head of the fibula", 0.3, 338, 14, 4},
          {"common peroneal nerve at the neck of the fibula", 0.22, 335, 17, 5, SiteKind::kNerve,
           "Bone behind, skin in front: pressed here the foot drops. No band, edge or strap on it."},
          {"inner epicondyle of the femur", 0.62, 178, 16, 6},
          {"outer epicondyle of the femur", 0.62, 2, 16, 6},
          {"nerve below the kneecap", 0.35, 140, 13, 6, SiteKind::kNerve},
          {"vessels and nerve in the hollow of the knee", kKneecap, 270, 26, 30, SiteKind::kVessel,
           "The leg's blood returns here: nothing firm, least of all with the knee bent."},
          {"tendon above the kneecap", 0.9, 90, 20, 8, SiteKind::kTendon}};
}

}  // namespace

FormMaker knee_form() {
  return {{"knee",
           "The region of the knee, straight, from the top of the calf (station 0) to above the kneecap. Its "
           "girth over the kneecap has to be measured.",
           {length_parameter(0.0, {{"tibialheight", 0.42}}, "judgement: 0.42 of ANSUR II 2012, tibialheight"),
            asked_girth("girth_knee", "over the middle of the kneecap",
                        "this table of ANSUR II 2012 has no knee girth, so measure it with a tape, leg "
                        "straight and relaxed"),
            girth_below_knee("girth_below", "calfcircumference", "ANSUR II 2012, calfcircumference"),
            measured_girth("girth_lower_thigh", "lowerthighcircumference", "just above the kneecap"),
            edge_parameter()},
           "shin",
           true,
           BodyPart::kKnee},
          knee_sites(),
          limb<knee_shape>};
}

}  // namespace wrapgauge
