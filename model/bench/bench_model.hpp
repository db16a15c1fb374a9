#pragma once
// What every reading is predicted to be, for any factors on the plan's mechanics. Load paths are solved once
// on the plan's own mesh, if it is no finer than asked for, and once on a coarser one; for other factors the
// coarse states are settled anew and corrected by the ratio of the two. A pressure read by a sensor counts
// what its thickness adds, found by one solve with it in place.

#include <Eigen/Core>
#include <memory>
#include <vector>

#include "model/bench/bench_family.hpp"
#include "model/core/progress.hpp"
#include "model/inflation/sheet_factors.hpp"

namespace wrapgauge {

struct BenchJob {
  const Plan& plan;
  const Body& body;  // as the plan's file or form gives it
  const Resources& resources;
  Length preview_edge = 8.0 * mm;
  Length finest_edge =
      5.0 * mm;  // a plan's finer mesh is not solved: it moves the demo's readings by 1 to 2 %
};

class BenchModel {
 public:
  // Solves every load path that the rows ask for. Problems: those of prepare() and bench_setup(); a reading
  // beyond the limit point, or where no equilibrium was found, with its line; kCancelled.
  static Result<BenchModel> make(const BenchJob& job, const std::vector<Reading>& rows, Progress& progress);
  ~BenchModel();
  BenchModel(BenchModel&&) noexcept;
  BenchModel& operator=(BenchModel&&) noexcept;

  // SI, a row each, with all factors 1; none for a seam that is peeled and a map.
  const std::vector<std::optional<double>>& nominal() const;
  // The rows that are predicted, in order: what a fit takes in.
  const std::vector<std::size_t>& fitted_rows() const;
  bool tells_of_tissue() const;

  // ln of the prediction of each fitted row. `again`: of the tissue alone something changed since the last
  // call, so that off-body readings are the same. Problems: kNotConverged where one has none, kCancelled.
  Result<Eigen::VectorXd> log_predictions(const SheetFactors& factors, Progress& progress);
  // Later states are settled from those of the last prediction.
  void go_on_from_last();

 private:
  struct Parts;
  explicit BenchModel(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

// The mass whose weight a strip carries at the length that was read, N: nominal stress of the law pulled one
// way times the strip's width and thickness. `law_factor`: on the law.
double strip_load_n(const HyperelasticLaw& law, const Reading& strip);

}  // namespace wrapgauge
