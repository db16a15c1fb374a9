#pragma once
#include <optional>
#include <vector>

#include "model/body/skin_region.hpp"
#include "model/core/result.hpp"
#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

// The first no-go region that some of the worn layout (a flat vertex each) lies on, named, with how much of
// the layout lies there and where; none when it keeps clear of all.
std::optional<Problem> covered_no_go(const std::vector<SkinRegion>& regions, const Axis& axis,
                                     const FlatMesh& flat, const Points3& worn_m);

}  // namespace wrapgauge
