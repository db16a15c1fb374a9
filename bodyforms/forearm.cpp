#include "bodyforms/form_values.hpp"

namespace wrapgauge {
namespace {

// Where along the forearm its girths lie, from wrist to elbow. Judgement after the general shape of forearms:
// thin and slowly growing above the wrist, widest at three quarters.
constexpr double kBellyBegins = 0.4, kWidest = 0.75;
constexpr double kShareAtBelly = 0.55;  // of the way from wrist girth to forearm girth

LimbShape shape(const FormValues& values) {
  const Length length = values.at("length") * mm;
  const Length wrist = values.at("girth_wrist") * mm, forearm = values.at("girth_forearm") * mm;
  return {{{0.0 * mm, wrist},
           {kBellyBegins * length, wrist + kShareAtBelly * (forearm - wrist)},
           {kWidest * length, forearm},
           {length, values.at("girth_elbow") * mm}},
          values.at("aspect_wrist"),
          values.at("aspect_elbow"),
          values.at("edge") * mm};
}

}  // namespace

FormMaker forearm_form() {
  const std::string ansur = "ANSUR II 2012, men, 50th percentile (Gordon et al. 2014, NATICK/TR-15/007): ";
  return {{"forearm",
           "A forearm from wrist (station 0) to elbow. The default forearm girth was measured flexed, so a "
           "relaxed "
           "one is smaller.",
           {length_parameter(267.0, ansur + "radiale-stylion length; confirmed"),
            girth_parameter("girth_wrist", 176.0, "at the wrist", ansur + "wrist circumference; confirmed"),
            girth_parameter("girth_forearm", 310.0, "where the forearm is widest",
                            ansur + "forearm circumference, flexed; confirmed"),
            girth_parameter("girth_elbow", 290.0, "below the elbow crease", "judgement: 0.94 of the widest"),
            aspect_parameter("aspect_wrist", 1.35, "at the wrist", "judgement"),
            aspect_parameter("aspect_elbow", 1.1, "at the elbow", "judgement"), edge_parameter()},
           "forearm relaxed"},
          shape};
}

}  // namespace wrapgauge
