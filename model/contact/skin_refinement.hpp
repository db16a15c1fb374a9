#pragma once
// A body surface with short edges where the device lies on it, so that a pressure map painted on its vertices
// is as fine as the layout's own mesh. The shape does not change: faces are only split.

#include <functional>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

inline constexpr double kSkinEdge_m = 2e-3;  // judgement: half a contact mesh edge

// Splits every edge longer than `edge_m` of the faces for which `near(centroid, radius)` says that something
// lies within `radius` of the centroid, and halves their neighbours so that the surface stays closed.
TriangleMesh refined_where(const TriangleMesh& body, const std::function<bool(const Vec3&, double)>& near,
                           double edge_m = kSkinEdge_m);

}  // namespace wrapgauge
