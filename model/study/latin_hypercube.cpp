#include "model/study/latin_hypercube.hpp"

#include <numeric>
#include <utility>

#include "model/study/random_stream.hpp"

namespace wrapgauge {
namespace {

// Fisher-Yates.
std::vector<std::size_t> shuffled(std::size_t count, RandomStream& random) {
  std::vector<std::size_t> order(count);
  std::iota(order.begin(), order.end(), std::size_t{0});
  for (std::size_t i = count; i > 1; --i) std::swap(order[i - 1], order[random.below(i)]);
  return order;
}

}  // namespace

Eigen::MatrixXd latin_hypercube(const std::vector<std::string>& inputs, int runs, std::uint64_t seed) {
  Eigen::MatrixXd sample(runs, static_cast<Eigen::Index>(inputs.size()));
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    RandomStream random(seed ^ hash_of(inputs[i]));
    const std::vector<std::size_t> stratum = shuffled(static_cast<std::size_t>(runs), random);
    for (Eigen::Index run = 0; run < runs; ++run)
      sample(run, static_cast<Eigen::Index>(i)) =
          (static_cast<double>(stratum[static_cast<std::size_t>(run)]) + random.unit()) / runs;
  }
  return sample;
}

}  // namespace wrapgauge
