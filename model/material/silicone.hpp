#pragma once
// Silicone grades by hardness, and cloth: data with source and status. No brands.

#include <filesystem>
#include <string>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"
#include "model/material/hyperelastic.hpp"

namespace wrapgauge {

struct SiliconeGrade {
  std::string hardness;  // "00-30", "A10"
  HyperelasticLaw law;
  double stretch_min = 1.0, stretch_max = 1.0;  // range the coefficients were fitted on
  double fit_rms = 0.0;                         // rms misfit of the law over that range, 0.01 = 1 %
  Density density;
  double elongation_at_break = 0.0;  // 9.0 = 900 %
  double stiffness_band_low = 1.0,
         stiffness_band_high = 1.0;  // factors on the law; the tensile set reads low
  std::string source, status;        // of the law; status: confirmed | from memory | judgement | derived
  std::string sheet_source;          // of density and elongation at break
  std::string caution;
};

Result<std::vector<SiliconeGrade>> read_silicone_grades(const std::filesystem::path& file);
// Unknown hardness: a Problem that lists the known ones.
Result<SiliconeGrade> find_grade(const std::vector<SiliconeGrade>& grades, const std::string& hardness);

// Gent 1958 relation Shore A -> Young's modulus (formula from memory). A marked fallback only: it over-reads
// soft cast grades two- to threefold. Valid Shore A 10..70.
Result<Pressure> young_modulus_from_shore_a(double shore_a);

}  // namespace wrapgauge
