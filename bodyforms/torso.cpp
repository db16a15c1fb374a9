#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

constexpr double kHip = 0.065, kWaist = 0.45, kChest = 0.935;  // stations, shares of the length

// Harmonics and middle line derived: fitted to an adult man's torso of an open base mesh (CC0), belly
// forward; without arms.
LimbShape torso_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length hip = values.at("girth_hip") * mm, chest = values.at("girth_chest") * mm;
  const double waist = values.at("aspect_waist");
  return {{{0.0 * mm, 0.985 * hip},
           {kHip * length, hip, "girth_hip"},
           {kWaist * length, values.at("girth_waist") * mm, "girth_waist"},
           {kChest * length, chest, "girth_chest"},
           {length, 0.995 * chest}},
          {{0.0, {values.at("aspect_hip"), {0.0, 0.0, 0.026, -0.040, 0.0}}, {0.0, -0.030}},
           {0.2, {0.5 * (values.at("aspect_hip") + waist), {0.0, 0.0, 0.002, -0.028, 0.0}}, {0.0, -0.008}},
           {kWaist, {waist, {0.0, 0.0, 0.010, -0.032, 0.0}}, {0.0, 0.020}},
           {0.7, {0.5 * (waist + values.at("aspect_chest")), {0.0, 0.0, 0.0, -0.050, 0.0}}, {0.0, 0.012}},
           {1.0, {values.at("aspect_chest"), {0.0, 0.0, -0.014, -0.065, 0.0}}, {0.0, 0.002}}},
          values.at("edge") * mm};
}

// Both sides of the body.
void add_pair(std::vector<SiteOnForm>& sites, SiteOnForm right) {
  SiteOnForm left = right;
  left.name = "left " + right.name;
  left.angle_deg = 180.0 - right.angle_deg;
  right.name = "right " + right.name;
  sites.push_back(std::move(right));
  sites.push_back(std::move(left));
}

std::vector<SiteOnForm> torso_sites() {
  std::vector<SiteOnForm> all = {{"sacrum", 0.14, 270, 32, 8},
                                 {"breastbone", 0.95, 90, 22, 9},
                                 {"lower end of the breastbone", 0.83, 90, 18, 9}};
  add_row(all, {"spine", 0.32, 270, 18, 8}, 0.96, 7);
  add_pair(all, {"greater trochanter", 0.02, 2, 25, 20});
  add_pair(all, {"front spine of the hip bone", 0.2, 48, 20, 8});
  add_pair(all, {"nerve of the outer thigh", 0.14, 44, 16, 12, SiteKind::kNerve,
                 "Waist and hip bands press it against the bone."});
  add_pair(all, {"iliac crest", 0.31, 8, 28, 10});
  add_pair(all, {"rim of the ribs", 0.66, 55, 26, 10, SiteKind::kBone, "Leave room to breathe."});
  add_pair(all, {"lower ribs", 0.68, 5, 32, 10, SiteKind::kBone, "Leave room to breathe."});
  add_pair(all, {"ribs", 0.86, 5, 32, 10, SiteKind::kBone, "Leave room to breathe."});
  add_pair(all, {"lower corner of the shoulder blade", 0.95, 305, 22, 10});
  return all;
}

FormParameter waist_girth() {
  return measured_girth("girth_waist", "waistcircumference", "at the navel");
}

}  // namespace

FormMaker torso_form() {
  return {{"torso",
           "A torso from the buttocks (station 0) to the chest below the armpits, without arms. A band round "
           "the chest or belly must not limit breathing.",
           {length_parameter(0.0, {{"stature", 0.235}}, "judgement: 0.235 of ANSUR II 2012, stature"),
            measured_girth("girth_hip", "buttockcircumference", "over the buttocks"), waist_girth(),
            measured_girth("girth_chest", "chestcircumference", "at nipple level"),
            aspect_parameter("aspect_hip", 1.42, "at the hip", "judgement"),
            measured_aspect("aspect_waist", "waistbreadth", "waistdepth", "at the waist"),
            aspect_parameter("aspect_chest", 1.38, "at the chest", "judgement"),
            [] {
              FormParameter edge = edge_parameter();
              edge.default_value = edge.base = 6.0;
              return edge;
            }()},
           "abdomen",
           false,
           BodyPart::kAbdomen},
          torso_sites(),
          limb<torso_shape>};
}

}  // namespace wrapgauge
