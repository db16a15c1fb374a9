#pragma once
// What an estimate takes for granted and how far it may be off: data with source and status.

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

enum class UncertainQuantity {
  kSkinModulus,      // factor on the skin sheet's law
  kOuterModulus,     // factor on the outer sheet's law
  kSkinThickness,    // added, m
  kOuterThickness,   // added, m
  kTissueStiffness,  // factor
  kTissueDepth,      // factor
  kFriction,         // in place of the plan's
  kGirth,            // factor on every section of the body
  kClosingLength,    // added, m
  kGaugePressure,    // added to every inlet filled by pressure, Pa
  kFillVolume,       // factor on every inlet filled by volume
};

struct UncertainInput {
  UncertainQuantity quantity = UncertainQuantity::kFriction;
  std::string name;            // as tables and results write it: "tissue stiffness"
  std::string unit;            // "mm", "kPa", "" for factors
  double low = 0, high = 0;    // in that unit
  bool logarithmic = false;    // every ratio as likely, not every step
  bool band_of_grade = false;  // the grade's own stiffness band holds, once the plan is known
  std::string source, status, remark;

  double value(double share) const;  // 0: low, 1: high
};

struct SpreadTable {
  std::string name, remark;
  std::uint64_t seed = 1;
  int runs = 32;
  Length preview_edge = 8.0 * mm;
  std::vector<UncertainInput> inputs;
};

// Problems: an unknown or repeated input, a range that falls, fewer than 8 runs, an unknown key.
Result<SpreadTable> read_spread_table(const std::filesystem::path& file);

// The inputs that matter to this plan, grade bands filled in: no closing length without a closure, no fill
// volume without an inlet filled by volume, one sheet's modulus for two sheets of one grade from one batch is
// still two inputs.
Result<std::vector<UncertainInput>> inputs_of_plan(const SpreadTable& table, const Plan& plan,
                                                   const Resources& resources);

}  // namespace wrapgauge
