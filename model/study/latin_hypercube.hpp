#pragma once
// Samples that cover every input evenly with few runs: McKay, Beckman & Conover 1979, Technometrics 21:239.

#include <Eigen/Core>
#include <cstdint>
#include <string>
#include <vector>

namespace wrapgauge {

// A row a run, a column an input, each in [0, 1). In every column each of the `runs` equal strata holds one
// run. A column depends on the seed, its name and the number of runs only, so that an input that is added or
// left out leaves the others as they were.
Eigen::MatrixXd latin_hypercube(const std::vector<std::string>& inputs, int runs, std::uint64_t seed);

}  // namespace wrapgauge
