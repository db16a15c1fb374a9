#pragma once
// Whether the relief valves keep their promise, should the supply's own valve stick open: solved with every
// inlet at its setting.

#include "model/limits/relief.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {

struct ReliefJob {
  const Body& body;  // as it was prepared
  const Prepared& worn;
  const InflationOptions& solver;
  const LimitSet& limits;
  const LimitInputs inputs;
};

struct SolvedRelief {
  std::vector<InletRelief> settings;
  double place_share = 0.0;  // of its limit, that the most pressed place takes there
};

// `settings` as the path gives them, lowered until no place takes more than the rule's share of its limit.
// None are left when none was found that keeps it. Problems: those of inflate other than kNotConverged.
Result<SolvedRelief> solved_relief(const ReliefJob& job, std::vector<InletRelief> settings,
                                   Progress& progress);

}  // namespace wrapgauge
