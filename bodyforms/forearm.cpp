#include "bodyforms/arm_sections.hpp"

namespace wrapgauge {
namespace {

// Where along the forearm its girths lie, from wrist to elbow. Judgement after the general shape of forearms:
// thin and slowly growing above the wrist, widest at three quarters.
constexpr double kForearmBellyBegins = 0.4, kForearmWidest = 0.75;
constexpr double kForearmShareAtBelly = 0.55;  // of the way from wrist girth to forearm girth

LimbShape forearm_shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length wrist = values.at("girth_wrist") * mm, forearm = values.at("girth_forearm") * mm;
  return {{{0.0 * mm, wrist, "girth_wrist"},
           {kForearmBellyBegins * length, wrist + kForearmShareAtBelly * (forearm - wrist)},
           {kForearmWidest * length, forearm, "girth_forearm"},
           {length, values.at("girth_elbow") * mm, "girth_elbow"}},
          forearm_sections(values.at("aspect_wrist"), values.at("aspect_elbow")),
          values.at("edge") * mm};
}

std::vector<SiteOnForm> forearm_sites() {
  std::vector<SiteOnForm> all = {{"ulnar styloid", 0.03, 195, 13, 3},
                                 {"radial styloid", 0.02, 5, 12, 3},
                                 {"median nerve at the wrist", 0.02, 95, 14, 10, SiteKind::kNerve,
                                  "Pressed here the palm and thumb go numb: no closing edge or seam on it."},
                                 {"ulnar nerve and artery at the wrist", 0.02, 150, 10, 8, SiteKind::kNerve,
                                  "Pressed here the little finger goes numb."},
                                 {"radial nerve under the skin", 0.2, 345, 14, 6, SiteKind::kNerve,
                                  "Tight bands above the wrist numb the back of the thumb."},
                                 {"head of the radius", 0.97, 340, 13, 6},
                                 {"ulnar nerve below the elbow", 0.96, 215, 15, 5, SiteKind::kNerve,
                                  "The nerve comes out of its groove behind the elbow here."},
                                 {"olecranon side of the elbow", 0.98, 270, 20, 3}};
  add_row(all, {"back edge of the ulna", 0.14, 232, 12, 5}, 0.86, 6);
  return all;
}

}  // namespace

std::vector<SectionAtShare> forearm_sections(double aspect_wrist, double aspect_elbow) {
  const auto aspect = [&](double share) { return aspect_wrist + share * (aspect_elbow - aspect_wrist); };
  return {{0.0, {aspect(0.0), {0.0, -0.052, -0.010, -0.006, -0.001}}, {-0.007, 0.0}},
          {0.2, {aspect(0.2), {-0.031, -0.011, -0.007, -0.011, -0.003}}, {0.001, 0.0}},
          {0.5, {aspect(0.5), {-0.024, 0.026, -0.019, -0.010, -0.005}}, {0.006, 0.0}},
          {0.75, {aspect(0.75), {0.003, 0.031, -0.034, 0.0, 0.003}}, {0.002, 0.0}},
          {1.0, {aspect(1.0), {0.060, 0.025, -0.050, 0.010, 0.007}}, {-0.007, 0.0}}};
}

FormMaker forearm_form() {
  return {{"forearm",
           "A forearm from wrist (station 0) to elbow. The default forearm girth was measured with the elbow "
           "bent and the fist clenched, so a relaxed one is smaller.",
           {length_parameter(0.0, {{"radialestylionlength", 1.0}},
                             "ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), radialestylionlength; "
                             "confirmed"),
            measured_girth("girth_wrist", "wristcircumference", "at the wrist"),
            measured_girth("girth_forearm", "forearmcircumferenceflexed", "where the forearm is widest",
                           "measured tensed: give a tape value for a relaxed arm"),
            shared_girth("girth_elbow", {{"girth_forearm", 0.94}}, "below the elbow crease",
                         "judgement: 0.94 of the widest; not in the survey"),
            aspect_parameter("aspect_wrist", 1.35, "at the wrist", "judgement"),
            aspect_parameter("aspect_elbow", 1.1, "at the elbow", "judgement"), edge_parameter()},
           "forearm relaxed",
           true,
           BodyPart::kForearm},
          forearm_sites(),
          limb<forearm_shape>};
}

}  // namespace wrapgauge
