#pragma once
// What a triangle of the flat mesh is part of, and where it lies.

#include <optional>

#include "model/layout/flat_mesh.hpp"

namespace wrapgauge {

bool is_open(const FlatRegion& region);  // chamber or channel

// The group that fills the region; none on seams and straps.
std::optional<GroupId> group_of(const FlatMesh& flat, const FlatRegion& region);

Vec2 middle_of(const FlatMesh& flat, Eigen::Index triangle);  // metres

}  // namespace wrapgauge
