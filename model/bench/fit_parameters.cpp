#include "model/bench/fit_parameters.hpp"

#include <cmath>

namespace wrapgauge {
namespace {

struct ParameterRow {
  const char* key;
  bool factor;
};
constexpr std::array<ParameterRow, kFitParameters> kRows = {{{"skin_law", true},
                                                             {"outer_law", true},
                                                             {"skin_thickness", false},
                                                             {"outer_thickness", false},
                                                             {"tissue", true}}};

const ParameterRow& parameter_row(FitParameter parameter) {
  return kRows[static_cast<std::size_t>(parameter)];
}

}  // namespace

bool is_factor(FitParameter parameter) {
  return parameter_row(parameter).factor;
}

Phrase parameter_words(FitParameter parameter) {
  switch (parameter) {
    case FitParameter::kSkinLaw:
      return Phrase::worded("skin sheet's law");
    case FitParameter::kOuterLaw:
      return Phrase::worded("outer sheet's law");
    case FitParameter::kSkinThickness:
      return Phrase::worded("skin sheet's thickness");
    case FitParameter::kOuterThickness:
      return Phrase::worded("outer sheet's thickness");
    case FitParameter::kTissue:
      break;
  }
  return Phrase::worded("tissue's stiffness");
}

Phrase parameter_title(FitParameter parameter) {
  switch (parameter) {
    case FitParameter::kSkinLaw:
      return Phrase::worded("Skin sheet's law");
    case FitParameter::kOuterLaw:
      return Phrase::worded("Outer sheet's law");
    case FitParameter::kSkinThickness:
      return Phrase::worded("Skin sheet's thickness");
    case FitParameter::kOuterThickness:
      return Phrase::worded("Outer sheet's thickness");
    case FitParameter::kTissue:
      break;
  }
  return Phrase::worded("Tissue's stiffness");
}

const char* parameter_key(FitParameter parameter) {
  return parameter_row(parameter).key;
}

SheetFactors factors_of(const Eigen::VectorXd& parameters) {
  return {std::exp(parameters(0)), std::exp(parameters(1)), parameters(2) * mm, parameters(3) * mm,
          std::exp(parameters(4))};
}

Eigen::VectorXd known_before() {
  Eigen::VectorXd known(kFitParameters);
  for (int i = 0; i < kFitParameters; ++i)
    known(i) = is_factor(static_cast<FitParameter>(i)) ? std::log(kMostFactor)
                                                       : kThicknessTolerance / mm / std::sqrt(3.0);
  return known;
}

}  // namespace wrapgauge
