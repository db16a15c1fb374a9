#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

// Of the way from the lower girth to the upper one at 0.3 and 0.6 of the length; derived from an adult man's
// thigh of an open base mesh (CC0), rounded.
constexpr double kAtThreeTenths = 0.41, kAtSixTenths = 0.79;

// Harmonics and middle line fitted to the same thigh, front forward.
LimbShape thigh_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length low = values.at("girth_lower_thigh") * mm, high = values.at("girth_thigh") * mm;
  return {{{0.0 * mm, low, "girth_lower_thigh"},
           {0.3 * length, low + kAtThreeTenths * (high - low)},
           {0.6 * length, low + kAtSixTenths * (high - low)},
           {length, high, "girth_thigh"}},
          {{0.0, {0.93, {-0.043, 0.040, -0.065, 0.017, 0.002}}, {-0.018, -0.055}},
           {0.2, {0.94, {-0.035, 0.021, -0.024, 0.005, -0.009}}, {-0.013, -0.024}},
           {0.5, {0.96, {-0.019, 0.023, 0.005, 0.003, -0.014}}, {-0.002, 0.010}},
           {1.0, {0.97, {-0.040, 0.017, -0.001, 0.003, -0.018}}, {0.033, 0.020}}},
          values.at("edge") * mm};
}

std::vector<SiteOnForm> thigh_sites() {
  std::vector<SiteOnForm> all = {{"tendon above the kneecap", 0.03, 90, 20, 8, SiteKind::kTendon},
                                 {"outer condyle of the femur", 0.03, 2, 16, 8},
                                 {"inner condyle of the femur", 0.03, 178, 16, 10},
                                 {"nerve of the outer thigh", 0.93, 45, 20, 35, SiteKind::kNerve,
                                  "Tight edges here numb the outer thigh."},
                                 {"sciatic nerve below the fold", 0.96, 268, 28, 45, SiteKind::kNerve}};
  add_row(all,
          {"femoral vessels and nerve", 0.35, 150, 20, 40, SiteKind::kVessel,
           "The leg's blood returns here: no firm band."},
          0.95, 4);
  return all;
}

}  // namespace

FormMaker thigh_form() {
  return {{"thigh",
           "A thigh from above the kneecap (station 0) to the gluteal fold.",
           {length_parameter(-50.0, {{"crotchheight", 1.0}, {"kneeheightmidpatella", -1.0}},
                             "derived: ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), crotchheight "
                             "less kneeheightmidpatella, confirmed, less 50 mm (judgement)"),
            measured_girth("girth_lower_thigh", "lowerthighcircumference", "just above the kneecap"),
            measured_girth("girth_thigh", "thighcircumference", "at the gluteal fold"), edge_parameter()},
           "thigh",
           true,
           BodyPart::kThigh},
          thigh_sites(),
          limb<thigh_shape>};
}

}  // namespace wrapgauge
