#pragma once
// What a fit may change, as plain numbers: logarithms of factors, and thicknesses in mm.

#include <Eigen/Core>
#include <array>
#include <string>

#include "model/core/phrase.hpp"
#include "model/inflation/sheet_factors.hpp"

namespace wrapgauge {

enum class FitParameter { kSkinLaw, kOuterLaw, kSkinThickness, kOuterThickness, kTissue };
inline constexpr int kFitParameters = 5;

inline constexpr double kLeastFactor = 0.3, kMostFactor = 3.0;  // of a law or the tissue: beyond, no fit
// Casting by hand to a mark, as in spread.json (judgement): half the width of an even distribution.
inline constexpr Length kThicknessTolerance = 0.2 * mm;

bool is_factor(FitParameter parameter);             // else a thickness
Phrase parameter_words(FitParameter parameter);     // "skin sheet's law"
Phrase parameter_title(FitParameter parameter);     // the same, to begin a line with
const char* parameter_key(FitParameter parameter);  // "skin_law"

SheetFactors factors_of(const Eigen::VectorXd& parameters);
// What is known of each before anything is read, as a standard deviation round 0: a law or tissue within
// 0.3 to 3, a thickness within its tolerance.
Eigen::VectorXd known_before();

}  // namespace wrapgauge
