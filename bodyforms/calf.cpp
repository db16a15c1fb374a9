#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

// Where along the lower leg its girths lie, from ankle to knee. Judgement: the belly of the calf begins at a
// third and is widest at seven tenths.
constexpr double kBellyBegins = 0.33, kWidest = 0.7;
constexpr double kShareAtBelly = 0.35;  // of the way from ankle girth to calf girth

LimbShape shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length ankle = values.at("girth_ankle") * mm, calf = values.at("girth_calf") * mm;
  return {{{0.0 * mm, ankle},
           {kBellyBegins * length, ankle + kShareAtBelly * (calf - ankle)},
           {kWidest * length, calf},
           {length, values.at("girth_knee") * mm}},
          values.at("aspect_ankle"),
          values.at("aspect_knee"),
          values.at("edge") * mm};
}

}  // namespace

FormMaker calf_form() {
  const std::string ansur = "ANSUR II 2012, men, 50th percentile (Gordon et al. 2014, NATICK/TR-15/007): ";
  return {
      {"calf",
       "A lower leg from above the ankle (station 0) to below the knee.",
       {length_parameter(355.0, "derived: tibial height 467.5 mm (" + ansur +
                                    "confirmed) less 112 mm to above the malleoli (judgement)"),
        girth_parameter("girth_ankle", 228.0, "above the malleoli", ansur + "ankle circumference; confirmed"),
        girth_parameter("girth_calf", 392.0, "where the calf is widest",
                        ansur + "calf circumference; confirmed"),
        girth_parameter("girth_knee", 360.0, "below the knee", "judgement: 0.92 of the widest"),
        aspect_parameter("aspect_ankle", 0.85, "at the ankle, x from side to side", "judgement"),
        aspect_parameter("aspect_knee", 1.0, "at the knee, x from side to side", "judgement"),
        edge_parameter()},
       "calf"},
      shape};
}

}  // namespace wrapgauge
