#pragma once
// What the Cholesky factors of a matrix will look like, found once for its pattern: the order of the unknowns
// by METIS, the supernodes by CHOLMOD. The same for any number of threads.

#include <vector>

#include "model/core/result.hpp"
#include "model/inflation/block_matrix.hpp"
#include "model/inflation/cholmod_session.hpp"
#include "model/inflation/front_tree.hpp"

namespace wrapgauge {

struct SymbolicAnalysis {
  std::vector<int> order;  // of the unknowns, as METIS gives it
  SupernodeLayout layout;  // in postorder: children before parents
};

// Problem: a library ran out of memory, or failed in another way.
Result<SymbolicAnalysis> analyse(const BlockMatrix& pattern);

// CHOLMOD's own symbolic factor in a given order, of the kind that the session is set to; null where the
// session has failed. The caller frees it.
cholmod_factor* symbolic_factor(const BlockMatrix& pattern, const std::vector<int>& order,
                                CholmodSession& session);

}  // namespace wrapgauge
