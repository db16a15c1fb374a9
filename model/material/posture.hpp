#pragma once
// Relaxed or tense: muscle under the skin stiffens when it is tensed.

#include <optional>
#include <string_view>

#include "model/core/result.hpp"
#include "model/material/tissue.hpp"

namespace wrapgauge {

enum class Posture { kRelaxed, kTense };

std::string_view posture_name(Posture posture);  // as plans write it: "relaxed", "tense"

// A tense muscle layer has this many times the modulus of a relaxed one: 60 to 25 kPa, the forearm rows of
// the tissue table. Judgement; that the effective modulus rises markedly on contraction is confirmed (Zheng,
// Mak and Lue, "Objective assessment of limb tissue elasticity: development of a manual indentation
// procedure", J Rehabil Res Dev 36(2), 1999; title from memory), the numbers are not.
inline constexpr double kTenseFactor = 60.0 / 25.0;
// Judgement: a thinner layer over bone (wrist, shin, rib, forehead) holds no muscle to speak of.
inline constexpr Length kLeastMuscle = 12.0 * mm;

// On the modulus of a row of the tissue table. Rows whose name ends in "tense" are taken as they are.
// Problem: "relaxed" is asked for on such a row.
Result<double> posture_factor(const TissueSite& site, std::optional<Posture> posture);

}  // namespace wrapgauge
