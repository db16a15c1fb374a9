#pragma once
// Soft tissue as an elastic foundation: contact pressure = modulus x indentation.

#include <filesystem>
#include <string>
#include <vector>

#include "model/core/quantity.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// Foundation: each place sinks under its own pressure only. Coupled: a pressed place lowers its surroundings
// too.
enum class TissueModel { kFoundation, kCoupled };

struct TissueSite {
  std::string name;      // "forearm relaxed"
  Pressure young;        // effective modulus to bone
  double poisson = 0.0;  // 0: the effective modulus already holds the confinement, k = E/h
  Length depth;          // skin to bone
  std::string source, status;
};

// K = (1-nu) E / ((1+nu)(1-2nu) h): a layer bonded to bone pressed over a width large against h.
// Rejects nu outside [0, 0.49], E or h not positive.
Result<FoundationModulus> foundation_modulus(Pressure young, double poisson, Length depth);

Result<std::vector<TissueSite>> read_tissue_sites(const std::filesystem::path& file);
Result<TissueSite> find_tissue(const std::vector<TissueSite>& sites, const std::string& name);

}  // namespace wrapgauge
