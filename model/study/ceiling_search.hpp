#pragma once
// The highest inflation whose share of a limit is still at most one, found by solving.

#include <functional>
#include <vector>

#include "model/core/result.hpp"

namespace wrapgauge {

struct SharePoint {
  double inflation = 0.0;  // 0: closed, not inflated; 1: what the plan asks for
  double share = 0.0;      // of the limit
};

// One solve from closed to `inflation`: states on the way in order of inflation. Those known to be within are
// left out, and so is all that lies beyond the first that is above. The last is at `inflation` itself, unless
// it is above. `at_limit_point`: the last point is a limit point, and nothing lies beyond it.
struct SharePath {
  std::vector<SharePoint> points;
  bool at_limit_point = false;
};
using SolveShare = std::function<Result<SharePath>(double inflation, double known_within)>;

enum class CeilingStop {
  kLimit,          // a limit is met
  kLimitPoint,     // the path ends at a limit point: a chamber runs away, a sheet is overstretched or folds
  kNoEquilibrium,  // the solver found none above this, without a limit point to name
  kAlreadyAbove,   // above a limit when closed and not inflated
  kWithin,         // nothing met up to the largest inflation tried
};

struct CeilingSearch {
  CeilingStop stop = CeilingStop::kLimit;
  SharePoint at;  // solved; kAlreadyAbove: the closed state
  // The lowest inflation known to be too much; its share is infinite where there is no equilibrium.
  SharePoint above;
  int solves = 0;
};

struct CeilingSearchOptions {
  double first = 1.0;       // first inflation to try
  double largest = 8.0;     // and the last
  double tolerance = 0.01;  // width of the last bracket over its upper end
  int solves_at_most = 24;
};

// First crossing on the way up: states beyond it count for nothing. `at` is always a state that was solved to
// directly, never read off a path to a higher one. Problems: those of the solves other than kNotConverged;
// kNotConverged when the search does not settle.
Result<CeilingSearch> search_ceiling(const SolveShare& solve, const CeilingSearchOptions& options = {});

}  // namespace wrapgauge
