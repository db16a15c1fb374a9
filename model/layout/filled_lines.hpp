#pragma once
// A layout's lines sampled, filled with points and triangulated.

#include <functional>

#include "model/geometry/size_field.hpp"
#include "model/layout/layout_lines.hpp"

namespace wrapgauge {

// Each line in pieces of about the wanted length, each with its line's sides. Lines between two open regions
// (a channel's mouth) are split at least once, so that they open in the middle.
LayoutLines sampled_lines(const LayoutLines& lines, const std::function<double(const Vec2&)>& size);

// `sampled` filled with points where `drawn`, a mesh of the same lines with long edges, has a region. Every
// line is a chain of edges. No angle is below 20 degrees except beside sharper corners of the lines, and no
// edge inside an open region spans from weld to weld, as it would hold the sheets together: such edges are
// split in their middle, lines among them.
RegionMesh filled_lines(LayoutLines sampled, const RegionMesh& drawn, const SizeField& size);

}  // namespace wrapgauge
