#pragma once
// A matrix of ours as CHOLMOD reads it, without a copy.

#include <cholmod.h>

#include <vector>

namespace wrapgauge {

// A view of a symmetric matrix's lower triangle, column by column; entries above the diagonal are ignored.
// Null values: of the pattern alone. What it is a view of has to outlive it.
inline cholmod_sparse view_of(const std::vector<int>& starts, const std::vector<int>& rows,
                              const double* values) {
  cholmod_sparse view{};
  view.nrow = view.ncol = starts.size() - 1;
  view.nzmax = rows.size();
  view.p = const_cast<int*>(starts.data());
  view.i = const_cast<int*>(rows.data());
  view.x = const_cast<double*>(values);
  view.stype = -1;
  view.itype = CHOLMOD_INT;
  view.xtype = values ? CHOLMOD_REAL : CHOLMOD_PATTERN;
  view.dtype = CHOLMOD_DOUBLE;
  view.sorted = 1;
  view.packed = 1;
  return view;
}

}  // namespace wrapgauge
