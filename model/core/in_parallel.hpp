#pragma once
// Loops whose turns do not touch each other, over as many threads as are free.

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>

#include <cstddef>

#include "model/core/passage.hpp"

namespace wrapgauge {

// Calls `work` with parts of `range` (a tbb range) until all of it is done. What `work` throws comes out
// here. `partitioner`: one of tbb's, if another than its usual one is wanted.
template <class Range, class Work, class... Partitioner>
void in_parallel(const Range& range, const Work& work, const Partitioner&... partitioner) {
  Passage in, out;
  in.leave_behind();
  tbb::parallel_for(
      range,
      [&](const Range& part) {
        in.pick_up();
        work(part);
        out.leave_behind();
      },
      partitioner...);
  out.pick_up();
}

// Calls `work` with each of 0 .. count - 1.
template <class Work, class... Partitioner>
void each_in_parallel(std::size_t count, const Work& work, const Partitioner&... partitioner) {
  in_parallel(
      tbb::blocked_range<std::size_t>(0, count),
      [&](const tbb::blocked_range<std::size_t>& part) {
        for (std::size_t i = part.begin(); i < part.end(); ++i) work(i);
      },
      partitioner...);
}

}  // namespace wrapgauge
