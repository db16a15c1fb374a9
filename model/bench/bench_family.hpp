#pragma once
// Readings that one load path answers: the same device in the same bedding, one inlet or all of them filled
// step by step.

#include <vector>

#include "model/bench/bench_setup.hpp"
#include "model/bench/reading.hpp"

namespace wrapgauge {

struct BenchFamily {
  enum class Kind { kOffBody, kLimb, kFastened };
  Kind kind = Kind::kOffBody;
  Bedding bedding = Bedding::kTable;  // kOffBody
  bool by_volume = false;             // the inlet is filled by what is pushed in, else by gauge
  std::optional<GroupId> group;       // that is filled, the others vented; none: all of them
  Length gap{};                       // of a plate
  Length fastened{};                  // kFastened
  std::vector<std::size_t> readings;  // rows, in rising order of what is filled
};

// Of the kinds that a load path answers; strips, peeled seams and maps are left out. `flat`: of the layout,
// for its groups. The order of the families is that of their first rows.
std::vector<BenchFamily> bench_families(const std::vector<Reading>& rows, const Layout& layout,
                                        const FlatMesh& flat);

// What each group is asked for at a reading of the family.
InflationWaypoint waypoint_of(const BenchFamily& family, const Reading& reading, const FlatMesh& flat,
                              const Plan& plan);

// The chamber a reading names, or the one its place lies in; none: a seam.
std::optional<ChamberId> chamber_of_reading(const Reading& reading, const Layout& layout);

}  // namespace wrapgauge
